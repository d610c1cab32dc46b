package org.bayledger.mechanics;

/**
 * Air that passes two openings one after the other, with a chamber between them: how the difference
 * of pressure divides, and how soon the chamber follows a step.
 *
 * <p>The same flow passes both, Q = C A dp^n with equal C and n, so that
 *
 * <pre>
 * dp_outer / dp = 1 / (1 + (A_outer / A_inner)^(1/n))        n = 0.5: sharp-edged, turbulent
 * A_outer / A_inner = (dp / dp_outer - 1)^n                   n = 1: wholly viscous
 * </pre>
 *
 * Source: continuity and the orifice equation (fluid mechanics textbooks, from memory). Limits:
 * steady flow; the same outside pressure on all of the outer openings.
 */
public final class SeriesOpenings {

    private SeriesOpenings() {}

    /**
     * Share of the whole difference of pressure that falls across the outer opening.
     *
     * @param outer area of the outer opening, m2
     * @param inner area of the inner opening, m2
     * @param exponent n, from 0.5 to 1
     */
    public static double outerShare(double outer, double inner, double exponent) {
        require(outer >= 0 && inner >= 0 && outer + inner > 0, "one area must be open");
        requireExponent(exponent);
        if (inner == 0) {
            return 0;
        }
        return 1 / (1 + Math.pow(outer / inner, 1 / exponent));
    }

    /**
     * Area of the outer opening over that of the inner one for a wanted share.
     *
     * @param share dp_outer / dp, over 0 and under 1
     * @param exponent n, from 0.5 to 1
     */
    public static double areaRatio(double share, double exponent) {
        require(share > 0 && share < 1, "the share must lie between 0 and 1");
        requireExponent(exponent);
        return Math.pow(1 / share - 1, exponent);
    }

    /**
     * Time that a rigid chamber, closed on its inner side, needs to follow a step of pressure
     * through its outer opening.
     *
     * <pre>
     * V/p0 d(pc)/dt = Cd A sqrt(2 (p - pc) / rho)   ->   t = V sqrt(2 rho dp) / (p0 Cd A)
     * </pre>
     *
     * Air taken as isothermal, which is the slowest (adiabatic: 1.4 times as fast).
     *
     * @param volume V, m3
     * @param coefficient Cd
     * @param area A, m2
     * @param pressure dp, height of the step, Pa
     * @param atmosphere p0, Pa
     * @param density rho of the air, kg/m3
     * @return t, s
     */
    public static double equalizationTime(
            double volume,
            double coefficient,
            double area,
            double pressure,
            double atmosphere,
            double density) {
        require(volume >= 0 && pressure >= 0, "volume and pressure must not be negative");
        require(
                coefficient > 0 && area > 0 && atmosphere > 0 && density > 0,
                "coefficient, area, atmosphere and density must be greater than zero");
        return volume * Math.sqrt(2 * density * pressure) / (atmosphere * coefficient * area);
    }

    private static void requireExponent(double exponent) {
        require(exponent >= 0.5 && exponent <= 1, "the exponent must be from 0.5 to 1");
    }

    private static void require(boolean condition, String message) {
        if (!condition) {
            throw new IllegalArgumentException(message);
        }
    }
}
