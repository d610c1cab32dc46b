package org.bayledger.drawing;

import java.util.List;

/**
 * Patterns that tell areas apart without colour, each of thin black lines or dots.
 *
 * @param spacing width and height of the tile that is repeated, in points
 * @param turned angle by which the tiles are turned, degrees
 * @param across whether lines run across the tile
 * @param down whether lines run down the tile
 * @param dotted whether a dot stands in the tile
 */
record Hatch(double spacing, int turned, boolean across, boolean down, boolean dotted) {

    /** From the most open one to ones that are told apart from all before them. */
    private static final List<Hatch> ALL =
            List.of(
                    new Hatch(7, 45, false, false, true),
                    new Hatch(4.5, 45, true, false, false),
                    new Hatch(4.5, 45, true, true, false),
                    new Hatch(4, -45, true, false, false),
                    new Hatch(4, 0, true, false, false),
                    new Hatch(4, 0, false, true, false),
                    new Hatch(4, 0, true, true, false),
                    new Hatch(3, 45, false, false, true),
                    new Hatch(8, 45, true, false, false),
                    new Hatch(8, 0, true, true, true));

    private static final String WEIGHT = "0.35";

    /** The pattern of the n-th kind of area, from 0; from the eleventh on they come again. */
    static Hatch of(int n) {
        return ALL.get(n % ALL.size());
    }

    /** How many kinds can be told apart. */
    static int count() {
        return ALL.size();
    }

    /** Its name in a document. */
    String id() {
        return "hatch-" + ALL.indexOf(this);
    }

    /** How an area is filled with it. */
    String fill() {
        return "url(#" + id() + ")";
    }

    /** Defines it in a document. */
    void define(Svg svg) {
        String size = Svg.number(spacing);
        svg.open(
                "pattern",
                "id",
                id(),
                "width",
                size,
                "height",
                size,
                "patternUnits",
                "userSpaceOnUse",
                "patternTransform",
                "rotate(" + turned + ")");
        String middle = Svg.number(spacing / 2);
        if (across) {
            line(svg, "0", middle, size, middle);
        }
        if (down) {
            line(svg, middle, "0", middle, size);
        }
        if (dotted) {
            svg.empty("circle", "cx", middle, "cy", middle, "r", "0.55", "fill", "black");
        }
        svg.close();
    }

    private static void line(Svg svg, String x1, String y1, String x2, String y2) {
        svg.empty(
                "line",
                "x1",
                x1,
                "y1",
                y1,
                "x2",
                x2,
                "y2",
                y2,
                "stroke",
                "black",
                "stroke-width",
                WEIGHT);
    }
}
