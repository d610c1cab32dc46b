package org.bayledger.mechanics;

/**
 * A rectangular elastic plate of uniform thickness.
 *
 * @param longSide longer side a in m
 * @param shortSide shorter side b in m, not longer than {@code longSide}
 * @param thickness thickness t in m, at most a tenth of the shorter side (thin-plate theory)
 * @param elasticModulus Young's modulus E in Pa
 * @param poissonRatio Poisson's ratio, at least 0 and below 0.5
 */
public record Plate(
        double longSide,
        double shortSide,
        double thickness,
        double elasticModulus,
        double poissonRatio) {

    /** Smallest ratio of shorter side to thickness taken as thin (common practice, no source). */
    private static final double SMALLEST_SLENDERNESS = 10.0;

    /** Refuses sizes, moduli and ratios that are not those of a thin elastic plate. */
    public Plate {
        requirePositive(longSide, "longSide");
        requirePositive(shortSide, "shortSide");
        requirePositive(thickness, "thickness");
        requirePositive(elasticModulus, "elasticModulus");
        if (!(poissonRatio >= 0.0 && poissonRatio < 0.5)) {
            throw new IllegalArgumentException(
                    "poissonRatio must be from 0 to below 0.5: " + poissonRatio);
        }
        if (shortSide > longSide) {
            throw new IllegalArgumentException(
                    "shortSide " + shortSide + " m exceeds longSide " + longSide + " m");
        }
        if (thickness * SMALLEST_SLENDERNESS > shortSide) {
            throw new IllegalArgumentException(
                    "thickness "
                            + thickness
                            + " m is over a tenth of the shorter side "
                            + shortSide
                            + " m: not a thin plate");
        }
    }

    /** The plate with these two sides in m, whichever is the longer; the rest as in the record. */
    public static Plate of(
            double side,
            double otherSide,
            double thickness,
            double elasticModulus,
            double poissonRatio) {
        return new Plate(
                Math.max(side, otherSide),
                Math.min(side, otherSide),
                thickness,
                elasticModulus,
                poissonRatio);
    }

    /** Longer side over shorter side, at least 1. */
    public double aspectRatio() {
        return longSide / shortSide;
    }

    /** Load number Q = q (b/2)^4 / (E t^4) of a uniform pressure q in Pa; dimensionless. */
    public double loadNumber(double pressure) {
        return pressure / pressureUnit();
    }

    /** Pressure in Pa whose load number is 1: E t^4 / (b/2)^4. */
    double pressureUnit() {
        double slope = thickness / (shortSide / 2.0);
        return elasticModulus * slope * slope * slope * slope;
    }

    /** Stress in Pa whose dimensionless value is 1: E t^2 / (b/2)^2. */
    double stressUnit() {
        double slope = thickness / (shortSide / 2.0);
        return elasticModulus * slope * slope;
    }

    /** Failure integral in Pa^7 m^2 whose dimensionless value is 1: stress unit^7 (b/2)^2. */
    double failureIntegralUnit() {
        return Math.pow(stressUnit(), SurfaceFailure.EXPONENT)
                * (shortSide / 2.0)
                * (shortSide / 2.0);
    }

    /** Volume in m3 whose dimensionless value is 1: a b t. */
    double volumeUnit() {
        return longSide * shortSide * thickness;
    }

    /** In-plane movement of an edge in m whose dimensionless value is 1: t^2/(b/2). */
    double pullInUnit() {
        return thickness * thickness / (shortSide / 2.0);
    }

    static double requirePositive(double value, String name) {
        if (!(value > 0.0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(name + " must be positive and finite: " + value);
        }
        return value;
    }

    static double requireNotNegative(double value, String name) {
        if (!(value >= 0.0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(name + " must be finite and not negative: " + value);
        }
        return value;
    }
}
