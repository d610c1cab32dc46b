package org.bayledger.drawing;

import java.util.List;
import org.bayledger.quantity.UnitSystem;

/**
 * A sheet of paper, landscape.
 *
 * @param name its name
 * @param width width with its unit
 * @param height height with its unit
 * @param points width in points
 * @param high height in points
 */
record Paper(String name, String width, String height, double points, double high) {

    private static final double MM = 72 / 25.4;
    private static final double INCH = 72;

    /** ISO 216. */
    private static final List<Paper> METRIC =
            List.of(
                    new Paper("A4", "297mm", "210mm", 297 * MM, 210 * MM),
                    new Paper("A3", "420mm", "297mm", 420 * MM, 297 * MM),
                    new Paper("A2", "594mm", "420mm", 594 * MM, 420 * MM),
                    new Paper("A1", "841mm", "594mm", 841 * MM, 594 * MM));

    /** ANSI/ASME Y14.1; the smallest is letter paper. */
    private static final List<Paper> INCHES =
            List.of(
                    new Paper("Letter", "11in", "8.5in", 11 * INCH, 8.5 * INCH),
                    new Paper("11 x 17 in", "17in", "11in", 17 * INCH, 11 * INCH),
                    new Paper("17 x 22 in", "22in", "17in", 22 * INCH, 17 * INCH),
                    new Paper("22 x 34 in", "34in", "22in", 34 * INCH, 22 * INCH));

    /** The sheets of a system of units, from the smallest up. */
    static List<Paper> sizes(UnitSystem units) {
        return units == UnitSystem.US ? INCHES : METRIC;
    }
}
