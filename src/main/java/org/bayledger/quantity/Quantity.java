package org.bayledger.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * A computed quantity: an SI value and what it measures.
 *
 * @param si value in the SI unit of the dimension
 * @param dimension what the value measures
 */
public record Quantity(double si, Dimension dimension) {

    /**
     * Guards against a number that no reader could use.
     *
     * @throws IllegalArgumentException where the value is not finite
     */
    public Quantity {
        if (!Double.isFinite(si)) {
            throw new IllegalArgumentException("a quantity must be finite, not " + si);
        }
    }

    /** A quantity of a dimension, from its SI value. */
    public static Quantity of(Dimension dimension, double si) {
        return new Quantity(si, dimension);
    }

    /** A pure number. */
    public static Quantity number(double value) {
        return new Quantity(value, Dimension.NONE);
    }

    /**
     * The least quantity not under an SI value that somebody would write in a request: with the
     * given number of significant digits in the unit of the system.
     *
     * @param si positive value in the SI unit of the dimension
     */
    public static Quantity roundedUp(
            Dimension dimension, double si, UnitSystem system, int digits) {
        return rounded(dimension, si, system, new MathContext(digits, RoundingMode.CEILING));
    }

    /** The greatest quantity not over an SI value, likewise. */
    public static Quantity roundedDown(
            Dimension dimension, double si, UnitSystem system, int digits) {
        return rounded(dimension, si, system, new MathContext(digits, RoundingMode.FLOOR));
    }

    private static Quantity rounded(
            Dimension dimension, double si, UnitSystem system, MathContext context) {
        Units.Conversion conversion = Units.get(dimension.symbol(system));
        BigDecimal rounded = new BigDecimal(conversion.fromSi(si)).round(context);
        return new Quantity(conversion.toSi(rounded.doubleValue()), dimension);
    }

    /** The value in the unit of the system, to six significant digits. */
    public BigDecimal value(UnitSystem system) {
        return new BigDecimal(digits(system));
    }

    /** The same as JSON writes it: {@code 1200}, {@code 0.0213}. */
    public String digits(UnitSystem system) {
        return Digits.plain(in(system), 6);
    }

    private double in(UnitSystem system) {
        return Units.get(dimension.symbol(system)).fromSi(si);
    }

    /** The symbol of the unit in the system. */
    public String unit(UnitSystem system) {
        return dimension.symbol(system);
    }

    /** The quantity as a sentence holds it, to four significant digits: {@code 0.2131 in}. */
    public String text(UnitSystem system) {
        String number = Digits.plain(in(system), 4);
        return dimension == Dimension.NONE ? number : number + " " + unit(system);
    }
}
