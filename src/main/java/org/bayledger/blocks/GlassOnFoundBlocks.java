package org.bayledger.blocks;

import java.util.Arrays;

/**
 * The lite bending in its own plane under its own weight over blocks in any places that carry what
 * they may; stress and limits of validity as in {@link GlassOnBlocks}. Its comparison with finite
 * elements is for two blocks a tenth to a quarter of the width from the corners.
 *
 * <pre>
 *   M = sum of R (x - p) over the blocks to the left - w x^2 / 2
 * </pre>
 *
 * <p>The greatest is at a block or where the shear, R to the left less w x, is nothing.
 */
final class GlassOnFoundBlocks {

    private final double width;
    private final double[] places;
    private final double[] shares;

    private GlassOnFoundBlocks(double width, double[] places, double[] shares) {
        this.width = width;
        this.places = places;
        this.shares = shares;
    }

    /**
     * Tension that the edges of the glass have to bear, Pa.
     *
     * @param places of the blocks from the left glass corner, in any order, m
     * @param loads on them, N
     */
    static double stress(SettingBlocksRequest request, double[] places, double[] loads) {
        double weight = Arrays.stream(loads).sum();
        double[] shares = Arrays.stream(loads).map(load -> load / weight).toArray();
        double moment = new GlassOnFoundBlocks(request.width(), places, shares).greatest();
        return new GlassOnBlocks(request.width(), request.height()).bent(moment);
    }

    /** Greatest moment without its sign, over w W^2. */
    private double greatest() {
        double greatest = 0;
        for (double place : places) {
            double carried = 0;
            for (int i = 0; i < places.length; i++) {
                carried += places[i] <= place ? shares[i] : 0;
            }
            greatest = Math.max(greatest, Math.abs(moment(place)));
            greatest = Math.max(greatest, Math.abs(moment(carried * width)));
        }
        return greatest;
    }

    /** Bending moment at x over w W^2; positive where the bottom edge is pulled. */
    private double moment(double x) {
        double moment = -x * x / (2 * width * width);
        for (int i = 0; i < places.length; i++) {
            moment += shares[i] * Math.max(0, x - places[i]) / width;
        }
        return moment;
    }
}
