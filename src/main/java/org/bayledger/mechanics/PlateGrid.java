package org.bayledger.mechanics;

import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * Points of one quarter of a plate, product of points along x (long side) and y (short side), with
 * the basis functions there. Lengths in units of half the shorter side: x runs from 0 to the aspect
 * ratio, y from 0 to 1.
 */
final class PlateGrid {

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
     * already the wanted derivatives.
     *
     * @return [point of x][point of y]
     */
    static double[][] field(double[] coefficients, double[][] x, double[][] y) {
        int orderX = x[0].length;
        int orderY = y[0].length;
        double[][] alongY = new double[orderX][y.length];
        for (int i = 0; i < orderX; i++) {
            for (int q = 0; q < y.length; q++) {
                double sum = 0.0;
                for (int j = 0; j < orderY; j++) {
                    sum += coefficients[i * orderY + j] * y[q][j];
                }
                alongY[i][q] = sum;
            }
        }
        double[][] result = new double[x.length][y.length];
        for (int p = 0; p < x.length; p++) {
            for (int i = 0; i < orderX; i++) {
                PlateAlgebra.addMultiple(result[p], x[p][i], alongY[i], 0);
            }
        }
        return result;
    }

    /**
     * Adds to {@code result} the sums over all points of values(x, y) X_i(x) Y_j(y): the transpose
     * of {@link #field}.
     */
    static void addProjection(double[] result, double[][] values, double[][] x, double[][] y) {
        int orderX = x[0].length;
        int orderY = y[0].length;
        double[][] alongX = new double[orderX][y.length];
        for (int p = 0; p < x.length; p++) {
            for (int i = 0; i < orderX; i++) {
                PlateAlgebra.addMultiple(alongX[i], x[p][i], values[p], 0);
            }
        }
        for (int i = 0; i < orderX; i++) {
            for (int j = 0; j < orderY; j++) {
                double sum = 0.0;
                for (int q = 0; q < y.length; q++) {
                    sum += alongX[i][q] * y[q][j];
                }
                result[i * orderY + j] += sum;
            }
        }
    }

    private static double[][] halfGauss(int points, double length) {
        GaussIntegrator rule = new GaussIntegratorFactory().legendre(2 * points);
        double[][] result = new double[2][points];
        for (int i = 0; i < points; i++) {
            result[0][i] = rule.getPoint(points + i);
            result[1][i] = rule.getWeight(points + i) * length;
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
