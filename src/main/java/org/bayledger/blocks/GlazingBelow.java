package org.bayledger.blocks;

import org.bayledger.check.Faults;
import org.bayledger.check.Measured;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * What stands under the horizontal and loses clearance when it bends.
 *
 * @param kind what it is; with NONE the lengths are absent
 * @param edgeClearance from its top edge up to the metal, as drawn, m
 * @param bite how far it, or the glass, reaches into the pocket, as drawn, m; an operating sash has
 *     none
 * @param memberDeflection how far it sinks itself because its own horizontal bends, m: deflection
 *     of that horizontal at its setting blocks
 * @param tolerance how much of the clearance the tolerances of frame and glass may take, m; without
 *     it none is taken off, and said so
 * @param thermalGrowth how much of the clearance the glass below takes by growing more than the
 *     frame round it, m; likewise
 */
public record GlazingBelow(
        Kind kind,
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.POSITIVE, max = 1)
                @Nullable Double edgeClearance,
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.POSITIVE, max = 1)
                @Nullable Double bite,
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.NOT_NEGATIVE, max = 1)
                @Nullable Double memberDeflection,
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.NOT_NEGATIVE, max = 1)
                @Nullable Double tolerance,
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.NOT_NEGATIVE, max = 1)
                @Nullable Double thermalGrowth) {

    private static final String NOTHING = "must be absent where nothing stands below";

    public GlazingBelow {
        if (kind == Kind.NONE) {
            Faults faults = new Faults();
            faults.require(edgeClearance == null, "/edgeClearance", NOTHING);
            faults.require(bite == null, "/bite", NOTHING);
            faults.require(memberDeflection == null, "/memberDeflection", NOTHING);
            faults.require(tolerance == null, "/tolerance", NOTHING);
            faults.require(thermalGrowth == null, "/thermalGrowth", NOTHING);
            faults.throwIfAny();
        }
    }

    /** What tolerances and growth take of the clearance, as far as they are known, m. */
    double taken() {
        return (tolerance == null ? 0 : tolerance) + (thermalGrowth == null ? 0 : thermalGrowth);
    }

    GlazingBelow withEdgeClearance(double changed) {
        return new GlazingBelow(kind, changed, bite, memberDeflection, tolerance, thermalGrowth);
    }

    /** What can stand under a horizontal. */
    public enum Kind {
        /** A lite glazed into the frame. */
        FIXED_LITE(0.125),
        /** A sash that opens. */
        OPERATING_SASH(0.0625),
        /** A panel glazed into the frame as a lite is. */
        PANEL(0.125),
        /** Nothing stands below: there is no clearance to keep. */
        NONE(0);

        private final double clearanceInches;

        Kind(double clearanceInches) {
            this.clearanceInches = clearanceInches;
        }

        /**
         * Edge clearance that must be left after the horizontal has bent, m: 1/8 in over anything
         * fixed, 1/16 in over an operating sash (curtain-wall design guide rule, from memory), none
         * over nothing.
         */
        public double clearanceToKeep() {
            return clearanceInches * 0.0254;
        }

        /** Whether it reaches into the glazing pocket and so has a bite to keep. */
        public boolean hasBite() {
            return this == FIXED_LITE || this == PANEL;
        }
    }
}
