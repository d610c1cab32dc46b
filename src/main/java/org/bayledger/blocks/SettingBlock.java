package org.bayledger.blocks;

import static org.bayledger.quantity.Constants.INCH;
import static org.bayledger.quantity.Constants.STANDARD_GRAVITY;

/**
 * The size and material of each of the two setting blocks of a lite (glazing industry handbook
 * rule, from memory).
 *
 * <pre>
 *   l = max(4 in, 0.1 in x A / ft2)      l length of each block, A area of the lite
 * </pre>
 */
final class SettingBlock {

    /** Blocks under a lite. */
    static final int COUNT = 2;

    /** Materials that the rule accepts. */
    static final String MATERIAL = "EPDM, neoprene or silicone, 85 +- 5 Shore A";

    /** Hardness that the rule names, degrees Shore A. */
    static final double HARDNESS = 85;

    /** Distance of the near end of a block that leaves the quarter point from the corner, m. */
    static final double LEAST_END_DISTANCE = 6 * 0.0254;

    /** Loads of the two blocks that differ from their mean by no more than this share are equal. */
    static final double UNEQUAL = 0.05;

    private static final double SQUARE_FOOT = 0.3048 * 0.3048;

    private SettingBlock() {}

    /**
     * Weight on each block, N.
     *
     * @param mass of the lite, kg
     */
    static double load(double mass) {
        return mass * STANDARD_GRAVITY / COUNT;
    }

    /**
     * Least length of each block, m.
     *
     * @param area of the lite, m2
     */
    static double length(double area) {
        return Math.max(4 * INCH, 0.1 * INCH * area / SQUARE_FOOT);
    }

    /**
     * Least length of a block that carries any share of the lite, m: the rule's, and where the
     * blocks share unequally that length in proportion, so that the load per length is no greater.
     *
     * @param area of the lite, m2
     * @param share of the lite's weight on the block
     */
    static double lengthFor(double area, double share) {
        double ofHalf = COUNT * share;
        return ofHalf > 1 + UNEQUAL
                ? Math.max(length(area), ofHalf * 0.1 * INCH * area / SQUARE_FOOT)
                : length(area);
    }

    /**
     * A length to cut blocks to, m: up to the next quarter inch.
     *
     * @param length least length, m
     */
    static double cutLength(double length) {
        double quarters = length / (INCH / 4);
        // a length that is a whole number of quarters but for rounding stays what it is
        return Math.ceil(quarters - 1e-9) * (INCH / 4);
    }
}
