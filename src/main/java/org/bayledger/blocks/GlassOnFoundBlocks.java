package org.bayledger.blocks;

import static org.bayledger.quantity.Constants.STANDARD_GRAVITY;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.bayledger.glazing.Pane;

/**
 * The lite bending in its own plane over blocks in any places, under its own weight: {@link
 * GlassOnBlocks}, of which the method and its limits are, for loads that are not the same.
 *
 * <pre>
 *   M = sum of R (x - p) over the blocks to the left - w x^2 / 2
 *   between two blocks    depth: the piece between them
 *   over a block          depth: twice the way to the nearer of corner and next block that carries
 * </pre>
 */
final class GlassOnFoundBlocks {

    private final double width;
    private final double height;
    private final double[] places;
    private final double[] shares;

    /**
     * @param places of the blocks that carry something, from the left glass corner, increasing, m
     * @param shares of the lite's weight on them
     */
    private GlassOnFoundBlocks(double width, double height, double[] places, double[] shares) {
        this.width = width;
        this.height = height;
        this.places = places;
        this.shares = shares;
    }

    /**
     * Greatest tension in an edge of the glass, Pa.
     *
     * @param places of the blocks from the left glass corner, in any order, m
     * @param loads on them, N
     */
    static double stress(SettingBlocksRequest request, double[] places, double[] loads) {
        double weight = Arrays.stream(loads).sum();
        int[] carrying =
                IntStream.range(0, places.length)
                        .filter(i -> loads[i] > 1e-6 * weight)
                        .boxed()
                        .sorted((i, j) -> Double.compare(places[i], places[j]))
                        .mapToInt(Integer::intValue)
                        .toArray();
        return new GlassOnFoundBlocks(
                        request.width(),
                        request.height(),
                        Arrays.stream(carrying).mapToDouble(i -> places[i]).toArray(),
                        Arrays.stream(carrying).mapToDouble(i -> loads[i] / weight).toArray())
                .greatest();
    }

    private double greatest() {
        double greatest = 0;
        double carried = 0;
        for (int i = 0; i < places.length; i++) {
            double before = i == 0 ? places[0] : places[i] - places[i - 1];
            double after = (i == places.length - 1 ? width : places[i + 1]) - places[i];
            greatest = Math.max(greatest, stress(-moment(places[i]), 2 * Math.min(before, after)));
            carried += shares[i];
            double noShear = carried * width;
            if (i < places.length - 1 && noShear > places[i] && noShear < places[i + 1]) {
                greatest = Math.max(greatest, stress(moment(noShear), after));
            }
        }
        return greatest;
    }

    /** Bending moment over the lite's weight at x, m; positive where the bottom edge is pulled. */
    private double moment(double x) {
        double moment = -x * x / (2 * width);
        for (int i = 0; i < places.length; i++) {
            moment += shares[i] * Math.max(0, x - places[i]);
        }
        return moment;
    }

    /** Tension in an edge, Pa; the thickness of the glass cancels against its weight. */
    private double stress(double moment, double piece) {
        double depth = Math.min(height, piece);
        return depth <= 0
                ? 0
                : 6
                        * Math.abs(moment)
                        * Pane.DENSITY
                        * STANDARD_GRAVITY
                        * height
                        * width
                        / (depth * depth);
    }
}
