package org.bayledger.drawing;

import java.util.List;
import org.bayledger.drawing.Sheet.Point;

/** Dimension lines and level marks. */
final class Dimensions {

    /** Half the length of the stroke at the end of a dimension line, points. */
    private static final double TICK = 2.2;

    /** How far lines reach beyond what they measure, points. */
    private static final double BEYOND = 3;

    private Dimensions() {}

    /** A line that measures a width, without its words. */
    static void across(Sheet sheet, double from, double to, double y) {
        sheet.line(Stroke.FINE, from - BEYOND, y, to + BEYOND, y);
        tick(sheet, from, y);
        tick(sheet, to, y);
    }

    /** A line that measures a height, without its words. */
    static void up(Sheet sheet, double from, double to, double x) {
        sheet.line(Stroke.FINE, x, from - BEYOND, x, to + BEYOND);
        tick(sheet, x, from);
        tick(sheet, x, to);
    }

    private static void tick(Sheet sheet, double x, double y) {
        sheet.line(Stroke.MEDIUM, x - TICK, y + TICK, x + TICK, y - TICK);
    }

    /** A line that measures a width, with its words on it where they fit, else beside it. */
    static void across(Sheet sheet, double from, double to, double y, String words) {
        across(sheet, from, to, y);
        double width = Label.width(words, Label.SMALL, false);
        sheet.put(
                width + 4 * TICK < to - from
                        ? Label.centred(words, (from + to) / 2, y)
                        : Label.centred(words, to + BEYOND + 2 + width / 2, y));
    }

    /** Leads from words to what they say something of. */
    static void leader(Sheet sheet, Point... points) {
        sheet.path(Stroke.FINE, List.of(points));
    }

    /** A small triangle that stands on a level. */
    static void level(Sheet sheet, double x, double y) {
        sheet.shape(
                Stroke.FINE,
                List.of(new Point(x, y), new Point(x - 2.5, y - 4), new Point(x + 2.5, y - 4)),
                "black");
    }
}
