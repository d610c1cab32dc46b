package org.bayledger.blocks;

import static org.bayledger.quantity.Constants.PSI;
import static org.bayledger.quantity.Constants.STANDARD_GRAVITY;

import org.bayledger.glazing.Pane;

/**
 * The lite bending in its own plane over its two blocks, under its own weight.
 *
 * <pre>
 *   between the blocks   M = w W^2 (1 - 4 f) / 8, tension in the bottom edge
 *   over a block         M = w W^2 f^2 / 2, tension in the top edge
 *   s = 6 M / (t h^2), w = rho g t H: the thickness t cancels
 * </pre>
 *
 * <p>f W is the distance from the corner to the block. Plane sections hold where the piece between
 * the blocks is at least twice as wide as it is high. The depth h that counts is H, and where the
 * lite is higher than that piece is wide, (1 - 2 f) W, or over a block 2 f W, it is that width:
 * weight from above comes down by arching (rule for deep beams, from memory; finite elements in the
 * tests). The peak right over a block is not in it.
 *
 * <p>Limit: stress in a clean-cut edge of annealed glass at which 8 of 1000 break under 3 s, 16.6
 * MPa (2400 psi), times 0.31 for a load that stays for longer than a year (both ASTM E1300, from
 * memory). It is taken for heat-treated glass as well, which can bear more.
 *
 * @param width W, m
 * @param height H, m
 */
record GlassOnBlocks(double width, double height) {

    private static final double EDGE_STRENGTH = 2400 * PSI;
    private static final double BEYOND_A_YEAR = 0.31;

    /** The stress that the edge may bear for good, Pa. */
    static double allowable() {
        return EDGE_STRENGTH * BEYOND_A_YEAR;
    }

    /** The greatest tension in an edge with the blocks at a part f of the width, Pa. */
    double stress(double f) {
        return Math.max(betweenBlocks(f), overBlock(f));
    }

    /** Tension in the bottom edge half-way between the blocks, Pa. */
    double betweenBlocks(double f) {
        return stress(Math.max(0, 1 - 4 * f) / 8, (1 - 2 * f) * width);
    }

    /** Tension in the top edge over a block, Pa. */
    double overBlock(double f) {
        return stress(f * f / 2, 2 * f * width);
    }

    private double stress(double moment, double piece) {
        double depth = Math.min(height, piece);
        return 6 * moment * Pane.DENSITY * STANDARD_GRAVITY * height * width * width
                / (depth * depth);
    }
}
