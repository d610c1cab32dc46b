package org.bayledger.mechanics;

import java.util.Arrays;

/** Matrices of the plate solver: integrals of products of basis functions over a grid. */
final class PlateIntegrals {

    /** Functions of one direction overlap in the biharmonic form up to so many indices apart. */
    static final int OVERLAP = 2;

    private PlateIntegrals() {}

    /** Adds Integral v [W_i, W_j] to the upper triangle, v given times the grid's weights. */
    static void addGeometric(double[][] matrix, PlateGrid grid, double[][] v) {
        double[][][] x = grid.deflectionX;
        double[][][] y = grid.deflectionY;
        double[][] twist = new double[v.length][v[0].length];
        for (int p = 0; p < v.length; p++) {
            PlateAlgebra.addMultiple(twist[p], -2.0, v[p]);
        }
        addBilinear(matrix, true, v, x[2], y[0], x[0], y[2]);
        addBilinear(matrix, true, v, x[0], y[2], x[2], y[0]);
        addBilinear(matrix, true, twist, x[1], y[1], x[1], y[1]);
    }

    /** Integral Phi_k [W, W_j] at row k, column j. */
    static double[][] coupling(PlateGrid grid, PlateCurvatures w) {
        double[][] fx = grid.stressX[0];
        double[][] fy = grid.stressY[0];
        double[][][] x = grid.deflectionX;
        double[][][] y = grid.deflectionY;
        int n = fx[0].length * fy[0].length;
        double[][] result = new double[n][n];
        addBilinear(result, false, grid.weighted(w.xx, 1.0), fx, fy, x[0], y[2]);
        addBilinear(result, false, grid.weighted(w.yy, 1.0), fx, fy, x[2], y[0]);
        addBilinear(result, false, grid.weighted(w.xy, -2.0), fx, fy, x[1], y[1]);
        return result;
    }

    /**
     * Adds the sums over all points of v(x, y) A_a(x) B_b(y) X_i(x) Y_j(y) at row (a, b), column
     * (i, j); y first, then x (sum factorization).
     */
    private static void addBilinear(
            double[][] matrix,
            boolean upperOnly,
            double[][] v,
            double[][] a,
            double[][] b,
            double[][] x,
            double[][] y) {
        int orderX = x[0].length;
        int orderY = y[0].length;
        double[][] alongY = new double[v.length][orderY * orderY];
        double[] row = new double[orderY];
        for (int p = 0; p < v.length; p++) {
            for (int k = 0; k < orderY; k++) {
                Arrays.fill(row, 0.0);
                for (int q = 0; q < v[p].length; q++) {
                    PlateAlgebra.addMultiple(row, v[p][q] * b[q][k], y[q]);
                }
                System.arraycopy(row, 0, alongY[p], k * orderY, orderY);
            }
        }
        for (int k = 0; k < orderX; k++) {
            int first = upperOnly ? k : 0;
            double[][] alongX = new double[orderX - first][v.length];
            for (int i = first; i < orderX; i++) {
                for (int p = 0; p < v.length; p++) {
                    alongX[i - first][p] = a[p][k] * x[p][i];
                }
            }
            double[][] blocks = PlateAlgebra.product(alongX, alongY);
            for (int i = first; i < orderX; i++) {
                for (int l = 0; l < orderY; l++) {
                    double[] target = matrix[k * orderY + l];
                    for (int j = 0; j < orderY; j++) {
                        target[i * orderY + j] += blocks[i - first][l * orderY + j];
                    }
                }
            }
        }
    }

    /** Integral of Laplace u_a Laplace u_b times {@code factor}, for products of the functions. */
    static double[][] biharmonic(PlateGrid grid, double[][][] x, double[][][] y, double factor) {
        int orderX = x[0][0].length;
        int orderY = y[0][0].length;
        double[][] x22 = mass(x[2], x[2], grid.weightX);
        double[][] x20 = mass(x[2], x[0], grid.weightX);
        double[][] x00 = mass(x[0], x[0], grid.weightX);
        double[][] y22 = mass(y[2], y[2], grid.weightY);
        double[][] y20 = mass(y[2], y[0], grid.weightY);
        double[][] y00 = mass(y[0], y[0], grid.weightY);
        double[][] result = new double[orderX * orderY][orderX * orderY];
        for (int row = 0; row < result.length; row++) {
            int i = row / orderY;
            int j = row % orderY;
            int band = OVERLAP * (orderY + 1);
            int end = Math.min(result.length, row + band + 1);
            for (int column = Math.max(0, row - band); column < end; column++) {
                int k = column / orderY;
                int l = column % orderY;
                result[row][column] =
                        factor
                                * (x22[i][k] * y00[j][l]
                                        + x20[i][k] * y20[l][j]
                                        + x20[k][i] * y20[j][l]
                                        + x00[i][k] * y22[j][l]);
            }
        }
        return result;
    }

    private static double[][] mass(double[][] u, double[][] v, double[] weight) {
        int n = u[0].length;
        double[][] m = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int k = 0; k < n; k++) {
                for (int p = 0; p < weight.length; p++) {
                    m[i][k] += weight[p] * u[p][i] * v[p][k];
                }
            }
        }
        // The exact matrices are banded: clear rounding errors outside the band, so that the
        // factor stays sparse and the substitutions can skip its zeros.
        for (int i = 0; i < n; i++) {
            for (int k = 0; k < n; k++) {
                if (Math.abs(i - k) > OVERLAP) {
                    m[i][k] = 0.0;
                }
            }
        }
        return m;
    }
}
