package org.bayledger.framing;

import org.bayledger.check.Measured;
import org.bayledger.check.Measured.Sign;
import org.bayledger.quantity.Dimension;

/**
 * A flat wall of a section, for local buckling under wind.
 *
 * @param width flat width between the walls that support it or to its free edge, m
 * @param thickness m
 * @param supportedEdges which of its long edges other walls hold
 * @param stress how bending stresses it
 */
public record Wall(
        @Measured(value = Dimension.LENGTH, sign = Sign.POSITIVE, max = 2) double width,
        @Measured(value = Dimension.LENGTH, sign = Sign.POSITIVE, max = 0.2) double thickness,
        SupportedEdges supportedEdges,
        Stress stress) {

    /** Which long edges of a wall are held. */
    public enum SupportedEdges {
        /** Both, as those of a tube's walls or of the web of an I. */
        BOTH,
        /** One, as those of an outstanding leg. */
        ONE
    }

    /** How bending stresses a wall. */
    public enum Stress {
        /** Compression all over, as in a flange. */
        UNIFORM_COMPRESSION,
        /**
         * From compression to tension across its width, as in a web; of a wall that is held at one
         * edge the free one is in compression.
         */
        FLEXURE
    }
}
