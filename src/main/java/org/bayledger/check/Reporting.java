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

    /** A quantity inside a sentence: {@code 0.2131 in}. */
    public String text(Dimension dimension, double si) {
        return Quantity.of(dimension, si).text(units);
    }

    /** A length as a shop drawing dimensions it: {@code 1'-3 1/2"} or {@code 394 mm}. */
    public String dimensioned(double metres) {
        return FeetInches.format(metres, units);
    }
}
