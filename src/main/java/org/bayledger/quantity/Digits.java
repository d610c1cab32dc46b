package org.bayledger.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Writes numbers to significant digits: an answer holds thousands of them. */
final class Digits {

    /** Powers of ten that a double holds exactly. */
    private static final double[] TENS = {
        1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15
    };

    /** Nearer to the middle between two last digits than this, the double itself has to tell. */
    private static final double TOO_NEAR = 1e-4;

    private Digits() {}

    /**
     * A number rounded half to even to significant digits, as JSON and a sentence write it: without
     * an exponent and without zeros after its last digit behind the point.
     *
     * <p>The number is brought to one with as many digits before its point as are to stay: a
     * multiplication by an exact power of ten, which is off by less than a billionth of the last
     * digit. Where that could change the rounding, and for numbers beyond those powers, the exact
     * expansion of the double is rounded.
     *
     * @param digits at most 6
     */
    static String plain(double value, int digits) {
        double size = Math.abs(value);
        if (size >= 1e-6 && size < 1e9) {
            int before = 0; // digits before the point; of a fraction, minus the zeros after it
            while (before < 9 && size >= TENS[before]) {
                before++;
            }
            while (before <= 0 && size * TENS[1 - before] < 1) {
                before--;
            }
            int shift = digits - before;
            double shifted = shift >= 0 ? value * TENS[shift] : value / TENS[-shift];
            double whole = Math.rint(shifted);
            if (Math.abs(shifted - whole) < 0.5 - TOO_NEAR) {
                return plain((long) whole, shift);
            }
        }
        return new BigDecimal(value)
                .round(new MathContext(digits, RoundingMode.HALF_EVEN))
                .stripTrailingZeros()
                .toPlainString();
    }

    /**
     * A whole number with its point moved to the left, or zeros added where places are negative.
     */
    private static String plain(long whole, int places) {
        long number = whole;
        int behind = places;
        while (behind > 0 && number % 10 == 0) {
            number /= 10;
            behind--;
        }
        if (behind <= 0) {
            return Long.toString(number * (long) TENS[-behind]);
        }
        String figures = Long.toString(Math.abs(number));
        StringBuilder text = new StringBuilder(behind + 3).append(number < 0 ? "-" : "");
        int before = figures.length() - behind;
        if (before <= 0) {
            return text.append("0.").append("0".repeat(-before)).append(figures).toString();
        }
        return text.append(figures, 0, before)
                .append('.')
                .append(figures, before, figures.length())
                .toString();
    }
}
