package org.bayledger.quantity;

/** Lengths as a shop drawing dimensions them. */
public final class FeetInches {

    private FeetInches() {}

    /**
     * A length as a glazier reads it off a tape: feet, inches and sixteenths in US units ({@code
     * 1'-3"}, {@code 2'-7 1/2"}, {@code 9 3/16"}), whole millimetres in SI.
     *
     * @param metres length in m
     * @param system units of the drawing
     */
    public static String format(double metres, UnitSystem system) {
        if (system == UnitSystem.SI) {
            return Math.round(metres * 1000) + " mm";
        }
        long sixteenths = Math.round(Math.abs(metres) / 0.0254 * 16);
        String sign = metres < 0 && sixteenths > 0 ? "-" : "";
        long feet = sixteenths / (12 * 16);
        long rest = sixteenths % (12 * 16);
        long inches = rest / 16;
        long numerator = rest % 16;
        long denominator = 16;
        while (numerator > 0 && numerator % 2 == 0) {
            numerator /= 2;
            denominator /= 2;
        }
        String fraction = numerator == 0 ? "" : numerator + "/" + denominator;
        String inchText;
        if (fraction.isEmpty()) {
            inchText = Long.toString(inches);
        } else if (inches == 0 && feet == 0) {
            inchText = fraction;
        } else {
            inchText = inches + " " + fraction;
        }
        return sign + (feet > 0 ? feet + "'-" : "") + inchText + "\"";
    }
}
