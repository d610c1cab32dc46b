package org.bayledger.framing;

import org.bayledger.check.FaultsException;
import org.bayledger.check.Measured;
import org.bayledger.check.Measured.Sign;
import org.bayledger.quantity.Dimension;

/**
 * A stretch of a member on which the width of wall that it carries varies in a straight line:
 * uniform, triangular or trapezoidal load.
 *
 * @param from where it begins, m from the member's start
 * @param to where it ends, m
 * @param widthAtFrom width of wall at from, m
 * @param widthAtTo width of wall at to, m
 */
public record TributaryStrip(
        @Measured(value = Dimension.DISTANCE, sign = Sign.NOT_NEGATIVE) double from,
        @Measured(value = Dimension.DISTANCE, sign = Sign.POSITIVE) double to,
        @Measured(value = Dimension.DISTANCE, sign = Sign.NOT_NEGATIVE, max = 100)
                double widthAtFrom,
        @Measured(value = Dimension.DISTANCE, sign = Sign.NOT_NEGATIVE, max = 100)
                double widthAtTo) {

    public TributaryStrip {
        if (to <= from) {
            throw FaultsException.outOfRange("/to", "must lie beyond from");
        }
    }
}
