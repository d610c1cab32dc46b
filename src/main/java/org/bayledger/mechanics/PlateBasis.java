package org.bayledger.mechanics;

/**
 * Even polynomials on [-1, 1] that meet a plate's edge conditions, as sums of three Legendre
 * polynomials:
 *
 * <pre>
 * u_i = s_i (L_k + alpha L_(k+2) + beta L_(k+4)),  k = 2 i
 * SUPPORTED: u = u'' = 0 at the ends (deflection: held, no bending moment)
 * CLAMPED:   u = u'  = 0 at the ends (stress function: no traction on the edge)
 * </pre>
 *
 * At x = 1: L_k = 1, L_k' = k (k+1)/2, L_k'' = (k-1) k (k+1) (k+2)/8. The scale s_i = (k+1)^(-3/2)
 * only keeps the matrices well conditioned. Method: J. Shen, "Efficient spectral-Galerkin method
 * I", SIAM Journal on Scientific Computing 15 (1994) 1489-1505.
 */
enum PlateBasis {
    SUPPORTED,
    CLAMPED;

    /**
     * Values of the first {@code count} functions and of their derivatives.
     *
     * @param points abscissas in [-1, 1]
     * @return [derivative 0..2][point][function]
     */
    double[][][] evaluate(int count, double[] points) {
        double[][][] result = new double[3][points.length][count];
        for (int p = 0; p < points.length; p++) {
            double[][] legendre = legendre(2 * count + 2, points[p]);
            for (int i = 0; i < count; i++) {
                int k = 2 * i;
                // 1 + alpha + beta = 0 and d(k) + alpha d(k+2) + beta d(k+4) = 0
                double beta =
                        (endDerivative(k + 2) - endDerivative(k))
                                / (endDerivative(k + 4) - endDerivative(k + 2));
                double alpha = -1.0 - beta;
                double scale = Math.pow(k + 1.0, -1.5);
                for (int d = 0; d < 3; d++) {
                    result[d][p][i] =
                            scale
                                    * (legendre[d][k]
                                            + alpha * legendre[d][k + 2]
                                            + beta * legendre[d][k + 4]);
                }
            }
        }
        return result;
    }

    /** The derivative that has to vanish at x = 1, of L_k. */
    private double endDerivative(double k) {
        return this == SUPPORTED
                ? (k - 1.0) * k * (k + 1.0) * (k + 2.0) / 8.0
                : k * (k + 1.0) / 2.0;
    }

    /** L_0..L_highest and their first two derivatives at x: [derivative][degree]. */
    private static double[][] legendre(int highest, double x) {
        double[][] l = new double[3][highest + 1];
        l[0][0] = 1.0;
        l[0][1] = x;
        l[1][1] = 1.0;
        for (int k = 1; k < highest; k++) {
            l[0][k + 1] = ((2.0 * k + 1.0) * x * l[0][k] - k * l[0][k - 1]) / (k + 1.0);
            // L_(k+1)' = L_(k-1)' + (2k+1) L_k, and once more for the second derivative
            l[1][k + 1] = l[1][k - 1] + (2.0 * k + 1.0) * l[0][k];
            l[2][k + 1] = l[2][k - 1] + (2.0 * k + 1.0) * l[1][k];
        }
        return l;
    }
}
