package org.bayledger.mechanics;

/**
 * The little dense linear algebra of the plate solver, written over rows so that the inner loop
 * always adds a multiple of one row to another.
 */
final class PlateAlgebra {

    private PlateAlgebra() {}

    /** row[i] += factor * other[i] for i from {@code from}. */
    static void addMultiple(double[] row, double factor, double[] other, int from) {
        for (int i = from; i < row.length; i++) {
            row[i] += factor * other[i];
        }
    }

    /**
     * Cholesky factor of a symmetric positive definite matrix, in place: the upper triangle becomes
     * U with A = U^T U; only the upper triangle is read.
     *
     * @return false, with the matrix spoilt, when it is not positive definite
     */
    static boolean factorize(double[][] a) {
        for (int k = 0; k < a.length; k++) {
            double[] pivotRow = a[k];
            if (!(pivotRow[k] > 0.0)) {
                return false;
            }
            double scale = 1.0 / Math.sqrt(pivotRow[k]);
            for (int j = k; j < a.length; j++) {
                pivotRow[j] *= scale;
            }
            for (int i = k + 1; i < a.length; i++) {
                if (pivotRow[i] != 0.0) {
                    addMultiple(a[i], -pivotRow[i], pivotRow, i);
                }
            }
        }
        return true;
    }

    /** Solves U^T U x = b in place. */
    static void solve(double[][] upper, double[] b) {
        for (int k = 0; k < b.length; k++) {
            b[k] /= upper[k][k];
            addMultiple(b, -b[k], upper[k], k + 1);
        }
        for (int k = b.length - 1; k >= 0; k--) {
            double sum = b[k];
            for (int j = k + 1; j < b.length; j++) {
                sum -= upper[k][j] * b[j];
            }
            b[k] = sum / upper[k][k];
        }
    }

    /** Solves U^T X = B in place, B given by its rows. */
    static void forwardSubstitute(double[][] upper, double[][] rows) {
        for (int k = 0; k < rows.length; k++) {
            double[] row = rows[k];
            double scale = 1.0 / upper[k][k];
            for (int j = 0; j < row.length; j++) {
                row[j] *= scale;
            }
            for (int m = k + 1; m < rows.length; m++) {
                if (upper[k][m] != 0.0) {
                    addMultiple(rows[m], -upper[k][m], row, 0);
                }
            }
        }
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
                addMultiple(sum[i], a[k][i], a[k], i);
            }
        }
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

    static double norm(double[] vector) {
        double sum = 0.0;
        for (double v : vector) {
            sum += v * v;
        }
        return Math.sqrt(sum);
    }
}
