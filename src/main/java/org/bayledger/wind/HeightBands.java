package org.bayledger.wind;

import static org.bayledger.wind.Imperial.FOOT;

import java.util.ArrayList;
import java.util.List;

/**
 * Heights above ground, m, at which a schedule of pressures divides a wall into bands; the
 * pressures of a band are those at its top. None where they are the same at every height.
 */
final class HeightBands {

    /** Heights of the rows of the table of Kz (ASCE/SEI 7-16 Table 26.10-1, from memory), ft. */
    private static final List<Integer> TABLE_HEIGHTS =
            List.of(
                    15, 20, 25, 30, 40, 50, 60, 70, 80, 90, 100, 120, 140, 160, 180, 200, 250, 300,
                    350, 400, 450, 500);

    /** Greatest height of a strip between the lowest and the highest part in EN, m. */
    private static final double STRIP = 10;

    private HeightBands() {}

    /** The heights for a site. */
    static List<Double> of(Site site) {
        Double breadth = site.crosswindBreadth();
        if (!site.standard().isAsce()) {
            return breadth == null ? List.of() : strips(site.meanRoofHeight(), breadth);
        }
        boolean low =
                Imperial.atMost(site.meanRoofHeight(), AsceWalls.LOW_RISE_HEIGHT)
                        || Boolean.TRUE.equals(site.lowRiseAlternative());
        return low ? List.of() : TABLE_HEIGHTS.stream().map(feet -> feet * FOOT).toList();
    }

    /**
     * Strips of EN 1991-1-4 Fig. 7.4 (from memory): up to b, the part of the same size below the
     * top, and between them equal strips of at most {@value #STRIP} m, whose height it leaves open.
     */
    private static List<Double> strips(double height, double breadth) {
        if (height <= breadth) {
            return List.of();
        }
        List<Double> levels = new ArrayList<>(List.of(breadth));
        double middle = height - 2 * breadth;
        int strips = (int) Math.ceil(Math.max(middle, 0) / STRIP);
        for (int i = 1; i <= strips; i++) {
            levels.add(breadth + middle * i / strips);
        }
        return levels;
    }
}
