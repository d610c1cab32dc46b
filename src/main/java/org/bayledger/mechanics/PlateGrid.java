package org.bayledger.mechanics;

/**
 * Points of one quarter of a plate, product of points along x (long side) and y (short side), with
 * the basis functions there. Lengths in units of half the shorter side: x runs from 0 to the aspect
 * ratio, y from 0 to 1.
 */
final class PlateGrid {

    /** From the start that is used, far more than enough for every digit of a double. */
    private static final int NEWTON_STEPS = 5;

    /** Abscissas as fractions of the half sides, from 0 at the centre to 1 at the edge. */
    final double[] xi;

    final double[] eta;

    /** Quadrature weights of the quarter in x and y; zero for points that are not for integrals. */
    final double[] weightX;

    final double[] weightY;

    /** Deflection functions along x and y: [derivative with respect to x or y][point][function]. */
    final double[][][] deflectionX;

    final double[][][] deflectionY;

    /** Stress functions along x and y, likewise. */
    final double[][][] stressX;

    final double[][][] stressY;

    private PlateGrid(
            double aspectRatio,
            int orderX,
            int orderY,
            double[] xi,
            double[] eta,
            double[] weightX,
            double[] weightY) {
        this.xi = xi;
        this.eta = eta;
        this.weightX = weightX;
        this.weightY = weightY;
        deflectionX = stretch(PlateBasis.SUPPORTED.evaluate(orderX, xi), aspectRatio);
        deflectionY = PlateBasis.SUPPORTED.evaluate(orderY, eta);
        stressX = stretch(PlateBasis.CLAMPED.evaluate(orderX, xi), aspectRatio);
        stressY = PlateBasis.CLAMPED.evaluate(orderY, eta);
    }

    /** Gauss points of the quarter, with their weights. */
    static PlateGrid gauss(double aspectRatio, int orderX, int orderY, int pointsX, int pointsY) {
        double[][] x = halfGauss(pointsX, aspectRatio);
        double[][] y = halfGauss(pointsY, 1.0);
        return new PlateGrid(aspectRatio, orderX, orderY, x[0], y[0], x[1], y[1]);
    }

    /** Given points; no weights. */
    static PlateGrid points(double aspectRatio, int orderX, int orderY, double[] xi, double[] eta) {
        return new PlateGrid(
                aspectRatio,
                orderX,
                orderY,
                xi,
                eta,
                new double[xi.length],
                new double[eta.length]);
    }

    /**
     * The field sum over i, j of coefficients[i * orderY + j] X_i(x) Y_j(y), where X and Y are
     * already the wanted derivatives: the matrix product X C Y^T.
     *
     * @return [point of x][point of y]
     */
    static double[][] field(double[] coefficients, double[][] x, double[][] y) {
        int orderX = x[0].length;
        int orderY = y[0].length;
        double[][] c = new double[orderX][orderY];
        for (int i = 0; i < orderX; i++) {
            System.arraycopy(coefficients, i * orderY, c[i], 0, orderY);
        }
        return PlateAlgebra.product(PlateAlgebra.product(x, c), PlateAlgebra.transpose(y));
    }

    /**
     * Adds to {@code result} the sums over all points of values(x, y) X_i(x) Y_j(y), X^T V Y: the
     * transpose of {@link #field}.
     */
    static void addProjection(double[] result, double[][] values, double[][] x, double[][] y) {
        double[][] sums =
                PlateAlgebra.product(PlateAlgebra.product(PlateAlgebra.transpose(x), values), y);
        int orderY = y[0].length;
        for (int i = 0; i < sums.length; i++) {
            for (int j = 0; j < orderY; j++) {
                result[i * orderY + j] += sums[i][j];
            }
        }
    }

    /** Values at the points times a factor and the points' quadrature weights. */
    double[][] weighted(double[][] values, double factor) {
        double[][] result = new double[values.length][weightY.length];
        for (int p = 0; p < result.length; p++) {
            double weight = factor * weightX[p];
            for (int q = 0; q < weightY.length; q++) {
                result[p][q] = weight * weightY[q] * values[p][q];
            }
        }
        return result;
    }

    /**
     * Gauss-Legendre points above zero and their weights, for an even number of points on [-1, 1]:
     * Newton's method for the roots of the Legendre polynomial L_n from x_k = cos(pi (k - 1/4)/(n +
     * 1/2)), and w = 2/((1 - x^2) L_n'(x)^2). Source: M. Abramowitz and I. A. Stegun, Handbook of
     * Mathematical Functions, 25.4.29 and 22.16.6 (from memory).
     *
     * @param points half of the number of points
     * @param length the weights are those of [0, length]
     * @return {points, weights}, ascending
     */
    private static double[][] halfGauss(int points, double length) {
        int n = 2 * points;
        double[][] result = new double[2][points];
        for (int k = 1; k <= points; k++) {
            double x = Math.cos(Math.PI * (k - 0.25) / (n + 0.5));
            double slope = 0.0;
            for (int iteration = 0; iteration < NEWTON_STEPS; iteration++) {
                double value = 1.0;
                double before = 0.0;
                for (int degree = 1; degree <= n; degree++) {
                    double next =
                            ((2.0 * degree - 1.0) * x * value - (degree - 1.0) * before) / degree;
                    before = value;
                    value = next;
                }
                slope = n * (before - x * value) / (1.0 - x * x);
                x -= value / slope;
            }
            result[0][points - k] = x;
            result[1][points - k] = 2.0 * length / ((1.0 - x * x) * slope * slope);
        }
        return result;
    }

    private static double[][][] stretch(double[][][] basis, double length) {
        for (int d = 1; d < 3; d++) {
            double scale = d == 1 ? length : length * length;
            for (double[] row : basis[d]) {
                for (int i = 0; i < row.length; i++) {
                    row[i] /= scale;
                }
            }
        }
        return basis;
    }
}
