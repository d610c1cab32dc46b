package org.bayledger.glass;

import org.jspecify.annotations.Nullable;

/**
 * The practice's approximate formula for the deflection of the middle of a lite on four edges: a
 * cross-check of the plate solution, never the answer.
 *
 * <pre>
 * w  = t exp(r0 + r1 x + r2 x^2),  x = ln(ln(q (a b)^2 / (E t^4)))
 * r0 =  0.553 - 3.83  (a/b) + 1.11  (a/b)^2 - 0.0969 (a/b)^3
 * r1 = -2.29  + 5.83  (a/b) - 2.17  (a/b)^2 + 0.2067 (a/b)^3
 * r2 =  1.485 - 1.908 (a/b) + 0.815 (a/b)^2 - 0.0822 (a/b)^3
 * </pre>
 *
 * a, b longer and shorter side, t thickness (m), q pressure (Pa), E 71.7 GPa. Source: ASTM
 * E1300-16, appendix on approximate maximum lateral deflection, from memory. Limits: aspect ratio
 * to 5 and load number q (a b)^2 / (E t^4) from 30 to 500, some one to five thicknesses of
 * deflection. There it lies within some 2 % of the plate solution to an aspect ratio of 1.7, within
 * 4 % to 2 and within 9 % to 5; below it does not tend to linear theory, above it grows away from
 * the plate.
 */
final class DeflectionPolynomial {

    static final double GREATEST_ASPECT = 5;

    static final double LEAST_LOAD = 30;
    static final double GREATEST_LOAD = 500;

    private DeflectionPolynomial() {}

    /**
     * Deflection of the middle, m; null outside the formula's limits.
     *
     * @param model a lite on four edges
     * @param thickness t, m
     * @param pressure q, Pa
     */
    static @Nullable Double deflection(GlassModel model, double thickness, double pressure) {
        double area = model.width() * model.height();
        double load =
                pressure * area * area / (GlassModel.ELASTIC_MODULUS * Math.pow(thickness, 4));
        double r = model.aspectRatio();
        if (r > GREATEST_ASPECT || load < LEAST_LOAD || load > GREATEST_LOAD) {
            return null;
        }
        double x = Math.log(Math.log(load));
        double r0 = 0.553 + r * (-3.83 + r * (1.11 - r * 0.0969));
        double r1 = -2.29 + r * (5.83 + r * (-2.17 + r * 0.2067));
        double r2 = 1.485 + r * (-1.908 + r * (0.815 - r * 0.0822));
        return thickness * Math.exp(r0 + x * (r1 + x * r2));
    }
}
