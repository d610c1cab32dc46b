package org.bayledger.mechanics;

/**
 * Probability that a brittle surface under static fatigue fails: the two-parameter Weibull model
 * over the faces of a plate.
 *
 * <pre>
 * Pb = 1 - exp(-B)
 * B  = k (td / 60 s)^(m/16) * Integral over the faces of (c sigma_max)^m dA
 * c  = [ (2/pi) Integral_0^theta_u (cos^2 th + n sin^2 th)^m dth ]^(1/m)
 * n  = sigma_min / sigma_max,  theta_u = pi/2 where n >= 0, else atan(sqrt(-1/n))
 * </pre>
 *
 * Symbols: sigma_max and sigma_min principal stresses at a point of a face (Pa, tension positive),
 * td duration (s), k surface flaw parameter (N^-7 m^12), m = 7 surface flaw exponent. Source: W. L.
 * Beason and J. R. Morgan, "Glass failure prediction model", Journal of Structural Engineering 110
 * (1984) 197-212; the form of ASTM E1300, appendix on the failure prediction model (both from
 * memory).
 *
 * <p>c sigma_max is a mean: with th = phi/2, (c sigma_max)^m = (1/pi) Integral_0^pi max(0, S + R
 * cos phi)^m dphi, S = (sigma_max + sigma_min)/2 and R = (sigma_max - sigma_min)/2, the tension
 * normal to a flaw to the power m, averaged over all directions. For m = 7 that has a closed form,
 * used here, so no table of c is needed.
 *
 * <p>The integral runs over both faces, since a flaw on either can start a fracture. The face away
 * from the load gives nearly all of it; the loaded face adds, near the corners, under 2 % to B in
 * usual proportions (0.3 % of pressure), and up to about 6 % under very large deflection (1 % of
 * pressure), on the safe side.
 */
public final class SurfaceFailure {

    /** Surface flaw exponent m; an integer on which the closed form and the plate table rest. */
    public static final int EXPONENT = 7;

    /** Static-fatigue exponent: stress strength falls with duration to the power 1/16. */
    public static final double DURATION_EXPONENT = 16.0;

    /** Duration in s to which the surface flaw parameter k belongs. */
    public static final double REFERENCE_DURATION = 60.0;

    private static final double[] BINOMIAL = {1.0, 7.0, 21.0, 35.0, 35.0, 21.0, 7.0, 1.0};

    private SurfaceFailure() {}

    /**
     * Probability of failure.
     *
     * @param failureIntegral integral of (c sigma)^7 dA, Pa^7 m^2
     * @param k surface flaw parameter for {@link #REFERENCE_DURATION}, N^-7 m^12
     * @param durationSeconds duration td of the constant load, s
     * @return Pb, from 0 to 1
     */
    public static double probability(double failureIntegral, double k, double durationSeconds) {
        Plate.requireNotNegative(failureIntegral, "failureIntegral");
        return -Math.expm1(-riskFactor(k, durationSeconds) * failureIntegral);
    }

    /**
     * Failure integral in Pa^7 m^2 at which the probability of failure is reached: the inverse of
     * {@link #probability}.
     *
     * @param probability Pb, from 0 to below 1
     * @param k surface flaw parameter for {@link #REFERENCE_DURATION}, N^-7 m^12
     * @param durationSeconds duration td of the constant load, s
     */
    public static double failureIntegralFor(double probability, double k, double durationSeconds) {
        if (!(probability >= 0.0 && probability < 1.0)) {
            throw new IllegalArgumentException(
                    "probability must be from 0 to below 1: " + probability);
        }
        return -Math.log1p(-probability) / riskFactor(k, durationSeconds);
    }

    /**
     * (c sigma_max)^7 in Pa^7 of two principal stresses in Pa; zero where neither is tension.
     *
     * @param first a principal stress, Pa, tension positive
     * @param second the other principal stress, Pa
     */
    public static double weightedStress(double first, double second) {
        double mean = (first + second) / 2.0;
        double radius = Math.abs(first - second) / 2.0;
        if (mean + radius <= 0.0) {
            return 0.0;
        }
        double s2 = mean * mean;
        double r2 = radius * radius;
        if (mean >= radius) {
            // Tension in every direction: the averages of cos^2, cos^4, cos^6 are 1/2, 3/8, 5/16.
            return mean * (s2 * s2 * s2 + r2 * (10.5 * s2 * s2 + r2 * (13.125 * s2 + r2 * 2.1875)));
        }
        double cosine = -mean / radius;
        double angle = Math.acos(cosine);
        double sine = Math.sqrt(1.0 - cosine * cosine);
        double ratio = mean / radius;
        // Sum over k of binomial(7,k) ratio^(7-k) J_k by Horner's rule, with
        // J_k = Integral_0^angle cos^k = cos^(k-1) sin / k + (k-1)/k J_(k-2).
        double beforeLast = angle;
        double last = sine;
        double sum = angle * ratio + BINOMIAL[1] * last;
        double cosinePower = cosine;
        for (int k = 2; k <= EXPONENT; k++) {
            double next = cosinePower * sine / k + (k - 1.0) / k * beforeLast;
            sum = sum * ratio + BINOMIAL[k] * next;
            beforeLast = last;
            last = next;
            cosinePower *= cosine;
        }
        return Math.max(0.0, sum / Math.PI) * r2 * r2 * r2 * radius;
    }

    private static double riskFactor(double k, double durationSeconds) {
        Plate.requirePositive(k, "k");
        Plate.requirePositive(durationSeconds, "durationSeconds");
        return k * Math.pow(durationSeconds / REFERENCE_DURATION, EXPONENT / DURATION_EXPONENT);
    }
}
