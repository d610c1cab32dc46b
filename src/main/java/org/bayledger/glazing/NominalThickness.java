package org.bayledger.glazing;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The thicknesses in which float glass is made: how they are called in millimetres and in inches,
 * and the least thickness that a sheet so called may have.
 *
 * <p>Minimum thicknesses: ASTM E1300-16, table of nominal and minimum thicknesses (which follows
 * ASTM C1036), from memory. Strength and stiffness rest on the minimum, weight on the nominal.
 */
public enum NominalThickness {
    /** 2.5 mm, 3/32 in; at least 2.16 mm. */
    MM_2_5(2.5, 3, 32, 2.16),
    /** 2.7 mm, made for laminating, without a designation in inches; at least 2.59 mm. */
    MM_2_7(2.7, 0, 1, 2.59),
    /** 3 mm, 1/8 in; at least 2.92 mm. */
    MM_3(3, 1, 8, 2.92),
    /** 4 mm, 5/32 in; at least 3.78 mm. */
    MM_4(4, 5, 32, 3.78),
    /** 5 mm, 3/16 in; at least 4.57 mm. */
    MM_5(5, 3, 16, 4.57),
    /** 6 mm, 1/4 in; at least 5.56 mm. */
    MM_6(6, 1, 4, 5.56),
    /** 8 mm, 5/16 in; at least 7.42 mm. */
    MM_8(8, 5, 16, 7.42),
    /** 10 mm, 3/8 in; at least 9.02 mm. */
    MM_10(10, 3, 8, 9.02),
    /** 12 mm, 1/2 in; at least 11.91 mm. */
    MM_12(12, 1, 2, 11.91),
    /** 16 mm, 5/8 in; at least 15.09 mm. */
    MM_16(16, 5, 8, 15.09),
    /** 19 mm, 3/4 in; at least 18.26 mm. */
    MM_19(19, 3, 4, 18.26),
    /** 22 mm, 7/8 in; at least 21.44 mm. */
    MM_22(22, 7, 8, 21.44);

    /** How far a text may lie from a designation for rounding of inches (0.313 in), m. */
    private static final double ROUNDING = 0.015e-3;

    private final double millimetres;
    private final int numerator;
    private final int denominator;
    private final double minimumMillimetres;
    private final String metricText;
    private final String customaryText;

    NominalThickness(
            double millimetres, int numerator, int denominator, double minimumMillimetres) {
        this.millimetres = millimetres;
        this.numerator = numerator;
        this.denominator = denominator;
        this.minimumMillimetres = minimumMillimetres;
        this.metricText =
                String.format(
                        Locale.ROOT, millimetres % 1 == 0 ? "%.0f mm" : "%.1f mm", millimetres);
        this.customaryText = numerator == 0 ? metricText : numerator + "/" + denominator + " in";
    }

    /**
     * The designation that a nominal thickness stands for, or null where the table has none.
     *
     * @param nominal nominal thickness as written on a drawing, m
     */
    public static @Nullable NominalThickness find(double nominal) {
        for (NominalThickness each : values()) {
            if (Math.abs(nominal - each.metric()) < ROUNDING
                    || Math.abs(nominal - each.customary()) < ROUNDING) {
                return each;
            }
        }
        return null;
    }

    /** The designation of a nominal thickness (m) that was found on the table before. */
    public static NominalThickness of(double nominal) {
        NominalThickness found = find(nominal);
        if (found == null) {
            throw new IllegalArgumentException(refusal());
        }
        return found;
    }

    /** Advice to the caller who gave a thickness that is not on the table. */
    public static String refusal() {
        return "is not a nominal thickness of the table; use one of "
                + Arrays.stream(values())
                        .map(
                                each ->
                                        each.isMetricOnly()
                                                ? each.text(false)
                                                : each.text(false) + " (" + each.text(true) + ")")
                        .collect(Collectors.joining(", "));
    }

    /** Least thickness of glass so called, m. */
    public double minimum() {
        return minimumMillimetres / 1000;
    }

    /** The metric designation, m. */
    double metric() {
        return millimetres / 1000;
    }

    /** The designation in inches, or in millimetres where there is no other, m. */
    double customary() {
        return isMetricOnly() ? metric() : 0.0254 * numerator / denominator;
    }

    private boolean isMetricOnly() {
        return numerator == 0;
    }

    /** The next thicker one of those that every sheet is made in, or null where there is none. */
    @Nullable NominalThickness thicker() {
        for (NominalThickness each : values()) {
            if (each.millimetres > millimetres && !each.isMetricOnly()) {
                return each;
            }
        }
        return null;
    }

    /** The designation as a request takes it: {@code 6 mm}, or in inches {@code 1/4 in}. */
    public String text(boolean inches) {
        return inches ? customaryText : metricText;
    }

    /** Whether a nominal thickness, m, was written as the designation in inches. */
    public boolean isCustomary(double nominal) {
        return Math.abs(nominal - customary()) < Math.abs(nominal - metric());
    }
}
