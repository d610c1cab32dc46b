package org.bayledger.mechanics;

/**
 * The little dense linear algebra of the plate solver, written over rows so that the inner loop
 * always adds a multiple of one row to another.
 */
final class PlateAlgebra {

    private PlateAlgebra() {}

    /** row[i] += factor * other[i] for i from {@code from} to below {@code to}. */
    static void addMultiple(double[] row, double factor, double[] other, int from, int to) {
        for (int i = from; i < to; i++) {
            row[i] += factor * other[i];
        }
    }

    /** row += factor * other. */
    static void addMultiple(double[] row, double factor, double[] other) {
        addMultiple(row, factor, other, 0, row.length);
    }

    /** Adds A^T A to the upper triangle of {@code sum}. */
    static void addGram(double[][] sum, double[][] a) {
        int k = 0;
        for (; k + 3 < a.length; k += 4) {
            double[] r0 = a[k];
            double[] r1 = a[k + 1];
            double[] r2 = a[k + 2];
            double[] r3 = a[k + 3];
            for (int i = 0; i < sum.length; i++) {
                addFour(sum[i], i, r0[i], r0, r1[i], r1, r2[i], r2, r3[i], r3);
            }
        }
        for (; k < a.length; k++) {
            for (int i = 0; i < sum.length; i++) {
                addMultiple(sum[i], a[k][i], a[k], i, sum.length);
            }
        }
    }

    /**
     * The matrix product A B.
     *
     * @param a [row][inner]
     * @param b [inner][column]
     */
    static double[][] product(double[][] a, double[][] b) {
        int inner = b.length;
        double[][] result = new double[a.length][b[0].length];
        for (int i = 0; i < a.length; i++) {
            double[] factors = a[i];
            double[] row = result[i];
            int k = 0;
            for (; k + 3 < inner; k += 4) {
                addFour(
                        row,
                        0,
                        factors[k],
                        b[k],
                        factors[k + 1],
                        b[k + 1],
                        factors[k + 2],
                        b[k + 2],
                        factors[k + 3],
                        b[k + 3]);
            }
            for (; k < inner; k++) {
                addMultiple(row, factors[k], b[k]);
            }
        }
        return result;
    }

    private static void addFour(
            double[] row,
            int from,
            double f0,
            double[] r0,
            double f1,
            double[] r1,
            double f2,
            double[] r2,
            double f3,
            double[] r3) {
        for (int j = from; j < row.length; j++) {
            row[j] += f0 * r0[j] + f1 * r1[j] + f2 * r2[j] + f3 * r3[j];
        }
    }

    static double[][] transpose(double[][] a) {
        double[][] result = new double[a[0].length][a.length];
        for (int i = 0; i < a.length; i++) {
            for (int j = 0; j < a[i].length; j++) {
                result[j][i] = a[i][j];
            }
        }
        return result;
    }

    static double dot(double[] a, double[] b) {
        double sum = 0.0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    static double norm(double[] vector) {
        return Math.sqrt(dot(vector, vector));
    }
}
