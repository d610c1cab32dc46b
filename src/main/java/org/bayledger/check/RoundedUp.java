package org.bayledger.check;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.bayledger.quantity.UnitSystem;

/** A size that somebody is to provide at least, as a request takes it. */
public final class RoundedUp {

    /** Outweighs the rounding of a reported quantity to six digits. */
    private static final double MARGIN = 1 + 1e-5;

    private RoundedUp() {}

    /**
     * A positive quantity rounded up to three significant digits, with its unit: {@code 5.43 in4}.
     *
     * @param si least value, in the SI unit of the dimension
     * @param units units in which it is written
     */
    public static String text(Dimension dimension, double si, UnitSystem units) {
        Quantity quantity = Quantity.of(dimension, si * MARGIN);
        BigDecimal rounded =
                quantity.value(units)
                        .round(new MathContext(3, RoundingMode.CEILING))
                        .stripTrailingZeros();
        return rounded.toPlainString() + " " + quantity.unit(units);
    }
}
