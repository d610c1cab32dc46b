package org.bayledger.mechanics;

/**
 * A rectangular plate held on two opposite edges only, under uniform pressure: a strip that bends
 * to a cylinder, taken as a beam of unit width.
 *
 * <pre>
 * sigma_0 = 6 M / t^2 with M = q s^2 / 8        mean stress at mid-span, along the span
 * sigma   = 1.10 sigma_0                        greatest tension, in the free edges at mid-span
 * w       = 5 q s^4 / (32 E t^3)                deflection at mid-span, 5 q s^4 / (384 E I)
 * Integral (c sigma)^7 dA = c(nu)^7 sigma_0^7 B s Integral_0^1 (1 - u^2)^7 du
 * V       = 16/25 w s B                         volume between strip and chord plane
 * Delta   = 1/2 Integral_0^s w'^2 dx = 2176/875 w^2/s   by which the held edges come closer
 * </pre>
 *
 * The last two from the deflected line w(x) = 16/5 w (z - 2 z^3 + z^4), z = x/s; each held edge
 * moves in by half of Delta.
 *
 * <p>Symbols: q pressure (Pa), s span between the held edges (m), B width along them (m), t
 * thickness (m), E Young's modulus (Pa), u distance from mid-span over half the span.
 *
 * <p>Assumptions: the held edges turn and slide freely, so no membrane force arises and everything
 * is linear in the pressure. The deflection is that of a beam, stiffness E and not E/(1 - nu^2).
 *
 * <p>Across its width the strip is not uniform. The middle of a wide one bends to a cylinder: the
 * stress along the span is sigma_0 and nu sigma_0 across it, and the strip sags by 1 - nu^2 of the
 * beam. Toward the free edges, over about half a span, it curls: the stress there is uniaxial, and
 * in the edges both stress and deflection exceed the beam's by up to (1 + nu)(3 - nu)/(3 + nu), 5.3
 * % for nu = 0.22. That is the limit for great widths of M. Levy's solution (Timoshenko and
 * Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed., section 48, from memory); a narrow strip
 * is a beam without any excess.
 *
 * <p>Rule, on the safe side for every width: the failure integral takes the biaxial correction of
 * the middle, c(nu), over the whole width. The excess of the edges never weighs up what is counted
 * too much where the stress is uniaxial: by Levy's solution the rule gives a pressure that is too
 * low by 1.9 % for a very narrow strip, 0.9 % for a square and 0.2 % at five spans wide; by finite
 * elements at large deflection, too low by 0.4 to 2.3 %.
 *
 * <p>The greatest tension is taken 10 % above sigma_0, whatever the width. Levy's 5.3 % is not a
 * bound once the strip sags by more than a fraction of its thickness: finite elements of five
 * strips, up to 2.5 spans wide and to a sag of 0.045 spans, give 1.7 to 8.9 %
 * (src/test/oracle/plate). The 10 % rests on those five alone. The centre deflection is the beam's,
 * up to 7 % above the middle of a wide strip; its free edges sag up to 5.3 % more than that. Flaws
 * of the edge faces themselves are not in the failure integral.
 *
 * <p>Limit: deflection at most a twentieth of the span (common practice, no source). There the held
 * edges turn by 3.2 w/s = 0.16 rad and come closer by 2.5 w^2/s = 0.6 % of the span; further out
 * neither the linear sum nor the edges' hold can be relied on. Poisson's ratio is that of {@link
 * PlateTable}.
 */
public final class PlateStrip {

    private static final double NU = PlateTable.POISSON_RATIO;

    /** c^7 where the lesser principal stress is nu times the greater, as in cylindrical bending. */
    private static final double CYLINDRICAL_FACTOR = SurfaceFailure.weightedStress(1.0, NU);

    /** Greatest tension, in the free edges, over the mean stress at mid-span; the rule above. */
    private static final double FREE_EDGE_FACTOR = 1.10;

    /** Integral_0^1 (1 - u^2)^7 du = 14!!/15!!. */
    private static final double PARABOLA_FACTOR = 645_120.0 / 2_027_025.0;

    /** Mean over greatest deflection: 16/5 (1/2 - 1/2 + 1/5). */
    private static final double MEAN_FACTOR = 16.0 / 25.0;

    /** Shortening of the chord over w^2/s: 1/2 (16/5)^2 Integral (1 - 6 z^2 + 4 z^3)^2 dz. */
    private static final double SHORTENING_FACTOR = 0.5 * (256.0 / 25.0) * (17.0 / 35.0);

    /** Greatest deflection over span at which the linear sum is used. */
    private static final double GREATEST_DEFLECTION = 1.0 / 20.0;

    private PlateStrip() {}

    /**
     * Response to a uniform pressure.
     *
     * @param span distance between the held edges, m
     * @param width length of the held edges, m
     * @param thickness thickness, m
     * @param elasticModulus Young's modulus, Pa
     * @param pressure uniform pressure, Pa, not negative
     * @throws IllegalArgumentException where the deflection exceeds a twentieth of the span
     */
    public static PlateResponse respond(
            double span, double width, double thickness, double elasticModulus, double pressure) {
        Plate.requireNotNegative(pressure, "pressure");
        double stress = pressure * stressPerPressure(span, width, thickness, elasticModulus);
        double deflection = pressure * deflectionPerPressure(span, thickness, elasticModulus);
        if (deflection > GREATEST_DEFLECTION * span) {
            throw new IllegalArgumentException(
                    "deflection "
                            + deflection
                            + " m is over a twentieth of the span "
                            + span
                            + " m: beyond linear theory");
        }
        double pullIn = SHORTENING_FACTOR * deflection * deflection / span / 2.0;
        return new PlateResponse(
                deflection,
                FREE_EDGE_FACTOR * stress,
                areaFactor(span, width) * power(stress),
                MEAN_FACTOR * deflection * span * width,
                pullIn,
                pullIn);
    }

    /**
     * Pressure in Pa at which the failure integral is reached; parameters as in {@link #respond}.
     *
     * @param integral failure integral, Pa^7 m^2, not negative
     */
    public static double pressureForFailureIntegral(
            double span, double width, double thickness, double elasticModulus, double integral) {
        Plate.requireNotNegative(integral, "integral");
        double perPressure = stressPerPressure(span, width, thickness, elasticModulus);
        double stress = Math.pow(integral / areaFactor(span, width), 1.0 / SurfaceFailure.EXPONENT);
        return stress / perPressure;
    }

    /**
     * Pressure in Pa at which the mid-span deflection is reached; parameters as in {@link
     * #respond}.
     *
     * @param deflection mid-span deflection, m, not negative
     */
    public static double pressureForDeflection(
            double span, double width, double thickness, double elasticModulus, double deflection) {
        Plate.requireNotNegative(deflection, "deflection");
        double pressure = deflection / deflectionPerPressure(span, thickness, elasticModulus);
        respond(span, width, thickness, elasticModulus, pressure);
        return pressure;
    }

    private static double stressPerPressure(
            double span, double width, double thickness, double elasticModulus) {
        Plate.requirePositive(span, "span");
        Plate.requirePositive(width, "width");
        Plate.requirePositive(thickness, "thickness");
        Plate.requirePositive(elasticModulus, "elasticModulus");
        if (thickness * 10.0 > span) {
            throw new IllegalArgumentException(
                    "thickness "
                            + thickness
                            + " m is over a tenth of the span "
                            + span
                            + " m: not a thin strip");
        }
        return 0.75 * (span / thickness) * (span / thickness);
    }

    private static double deflectionPerPressure(
            double span, double thickness, double elasticModulus) {
        double slenderness = span / thickness;
        return 5.0 * span * slenderness * slenderness * slenderness / (32.0 * elasticModulus);
    }

    private static double areaFactor(double span, double width) {
        return CYLINDRICAL_FACTOR * PARABOLA_FACTOR * span * width;
    }

    private static double power(double stress) {
        return Math.pow(stress, SurfaceFailure.EXPONENT);
    }
}
