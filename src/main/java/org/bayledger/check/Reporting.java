package org.bayledger.check;

import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.FeetInches;
import org.bayledger.quantity.Quantity;
import org.bayledger.quantity.UnitSystem;

/**
 * How an answer is to be worded: it never changes a number.
 *
 * @param units units of the sentences in findings, notes and remedies
 * @param trace how much derivation to give
 */
public record Reporting(UnitSystem units, TraceLevel trace) {

    /** Outweighs the rounding of a reported quantity to six digits. */
    private static final double REPORTED = 1 + 1e-5;

    /** A quantity inside a sentence: {@code 0.2131 in}. */
    public String text(Dimension dimension, double si) {
        return Quantity.of(dimension, si).text(units);
    }

    /**
     * A size that somebody is to provide at least, as a request takes it: rounded up to three
     * digits, {@code 5.43 in4}.
     *
     * @param si positive value in the SI unit of the dimension
     */
    public String atLeast(Dimension dimension, double si) {
        return Quantity.roundedUp(dimension, si * REPORTED, units, 3).text(units);
    }

    /** A length as a shop drawing dimensions it: {@code 1'-3 1/2"} or {@code 394 mm}. */
    public String dimensioned(double metres) {
        return FeetInches.format(metres, units);
    }
}
