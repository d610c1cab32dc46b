package org.bayledger.wind;

import org.bayledger.check.Faults;
import org.bayledger.check.Measured;
import org.bayledger.check.Measured.Sign;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * A ridge, escarpment or hill on which the building stands, from which the factor for topography
 * follows at every height (ASCE/SEI 7, 26.8; EN 1991-1-4, A.3).
 *
 * @param feature kind of the feature
 * @param height H, m: height of the crest above the upwind terrain
 * @param halfLength Lh, m: distance upwind of the crest to where the ground is at half the height;
 *     required by ASCE/SEI 7, refused by EN
 * @param upwindLength Lu, m: length of the whole upwind slope; required by EN 1991-1-4, refused by
 *     ASCE
 * @param downwindLength Ld, m: length of the downwind slope; EN 1991-1-4, required where the
 *     building stands downwind of the crest of a ridge or hill
 * @param crestDistance x, m: horizontal distance from the crest to the building
 * @param side side of the crest on which the building stands; required unless it stands on the
 *     crest
 * @param isolated whether no feature of comparable height stands upwind and the feature is at least
 *     twice as high as the terrain around, as ASCE/SEI 7, 26.8.1 conditions 1 and 2 ask; false: the
 *     wind is not speeded up; absent: it is, to be on the safe side
 */
public record Topography(
        Feature feature,
        @Measured(value = Dimension.DISTANCE, sign = Sign.POSITIVE) double height,
        @Measured(value = Dimension.DISTANCE, sign = Sign.POSITIVE) @Nullable Double halfLength,
        @Measured(value = Dimension.DISTANCE, sign = Sign.POSITIVE) @Nullable Double upwindLength,
        @Measured(value = Dimension.DISTANCE, sign = Sign.POSITIVE) @Nullable Double downwindLength,
        @Measured(value = Dimension.DISTANCE, sign = Sign.NOT_NEGATIVE) double crestDistance,
        @Nullable CrestSide side,
        @Nullable Boolean isolated) {

    /** Kind of a topographic feature. */
    public enum Feature {
        /** Two-dimensional ridge. */
        RIDGE,
        /** Two-dimensional escarpment or cliff. */
        ESCARPMENT,
        /** Three-dimensional axisymmetric hill; EN 1991-1-4 treats it as a ridge. */
        AXISYMMETRIC_HILL
    }

    /** Side of the crest, seen with the wind. */
    public enum CrestSide {
        /** Before the crest. */
        UPWIND,
        /** Beyond the crest. */
        DOWNWIND
    }

    public Topography {
        Faults faults = new Faults();
        if (crestDistance > 0 && side == null) {
            faults.malformed(
                    "/side",
                    "is required where crestDistance is not zero; one of UPWIND, DOWNWIND");
        }
        faults.throwIfAny();
    }

    boolean downwind() {
        return side == CrestSide.DOWNWIND;
    }

    /** What the standard of the site needs of it, with pointers relative to the site. */
    void require(WindStandard standard, Faults faults) {
        if (standard.isAsce()) {
            needed(faults, halfLength, "halfLength", standard);
            unknown(faults, upwindLength, "upwindLength", standard);
            unknown(faults, downwindLength, "downwindLength", standard);
        } else {
            needed(faults, upwindLength, "upwindLength", standard);
            unknown(faults, halfLength, "halfLength", standard);
            unknown(faults, isolated, "isolated", standard);
            if (downwind() && feature != Feature.ESCARPMENT) {
                needed(faults, downwindLength, "downwindLength", standard);
            }
        }
    }

    private static void needed(
            Faults faults, @Nullable Object value, String name, WindStandard standard) {
        if (value == null) {
            faults.malformed("/topography/" + name, "is required for " + standard);
        }
    }

    private static void unknown(
            Faults faults, @Nullable Object value, String name, WindStandard standard) {
        if (value != null) {
            faults.outOfRange("/topography/" + name, "does not belong to " + standard);
        }
    }
}
