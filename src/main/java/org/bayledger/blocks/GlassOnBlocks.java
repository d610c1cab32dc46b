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
 *   s = 6 M / (t H^2) + 2 rho g H, w = rho g t H: the thickness t cancels
 * </pre>
 *
 * <p>f W is the distance from the corner to the block. The first part is the plain beam, which
 * holds where the piece between the blocks is at least twice as wide as it is high; where it is
 * less, the weight comes down by arching and sections do not stay plane. The second part covers
 * that: with it s is above what finite elements give for W/H from 0.2 to 8 and f from 0.1 to 0.25,
 * by up to ten times where s is small (the tests hold it against them). In wider lites the plain
 * beam is exact but for 0.2 rho g H (Timoshenko and Goodier, Theory of Elasticity, beam under
 * uniform load). The peak right over a block is not in it.
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

    /** Tension that the edges have to bear with the blocks at a part f of the width, Pa. */
    double stress(double f) {
        double between = Math.max(0, 1 - 4 * f) / 8;
        double over = f * f / 2;
        return bent(Math.max(between, over));
    }

    /**
     * Tension that the edges have to bear under a bending moment, Pa.
     *
     * @param moment M / (w W^2), without its sign
     */
    double bent(double moment) {
        double beam = 6 * moment * width * width / (height * height);
        return Pane.DENSITY * STANDARD_GRAVITY * height * (beam + 2);
    }
}
