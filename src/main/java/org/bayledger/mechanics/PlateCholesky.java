package org.bayledger.mechanics;

import org.jspecify.annotations.Nullable;

/**
 * Cholesky factor U of a symmetric positive definite band matrix A = U^T U, with the solutions that
 * follow from it. Written over rows, so that the inner loop adds a multiple of one row to another.
 */
final class PlateCholesky {

    private final double[][] upper;

    /** Entries right of the diagonal that may differ from zero. */
    private final int band;

    private PlateCholesky(double[][] upper, int band) {
        this.upper = upper;
        this.band = band;
    }

    /**
     * Factor of a full matrix, made in place.
     *
     * @param a only the upper triangle is read; spoilt
     * @return null when it is not positive definite
     */
    static @Nullable PlateCholesky full(double[][] a) {
        return band(a, a.length);
    }

    /**
     * Factor of a band matrix, made in place.
     *
     * @param a only the band in the upper triangle is read; spoilt
     * @param band entries right of the diagonal that may differ from zero
     * @return null when it is not positive definite
     */
    static @Nullable PlateCholesky band(double[][] a, int band) {
        PlateCholesky factor = new PlateCholesky(a, band);
        for (int k = 0; k < a.length; k++) {
            double[] pivotRow = a[k];
            if (!(pivotRow[k] > 0.0)) {
                return null;
            }
            int end = factor.end(k);
            double scale = 1.0 / Math.sqrt(pivotRow[k]);
            for (int j = k; j < end; j++) {
                pivotRow[j] *= scale;
            }
            for (int i = k + 1; i < end; i++) {
                if (pivotRow[i] != 0.0) {
                    PlateAlgebra.addMultiple(a[i], -pivotRow[i], pivotRow, i, end);
                }
            }
        }
        return factor;
    }

    /** Solves A x = b in place. */
    void solve(double[] b) {
        for (int k = 0; k < b.length; k++) {
            b[k] /= upper[k][k];
            PlateAlgebra.addMultiple(b, -b[k], upper[k], k + 1, end(k));
        }
        for (int k = b.length - 1; k >= 0; k--) {
            double sum = b[k];
            int end = end(k);
            for (int j = k + 1; j < end; j++) {
                sum -= upper[k][j] * b[j];
            }
            b[k] = sum / upper[k][k];
        }
    }

    /** Solves U^T X = B in place, B given by its rows. */
    void forwardSubstitute(double[][] rows) {
        for (int k = 0; k < rows.length; k++) {
            double[] row = rows[k];
            double scale = 1.0 / upper[k][k];
            for (int j = 0; j < row.length; j++) {
                row[j] *= scale;
            }
            int end = end(k);
            for (int m = k + 1; m < end; m++) {
                if (upper[k][m] != 0.0) {
                    PlateAlgebra.addMultiple(rows[m], -upper[k][m], row, 0, row.length);
                }
            }
        }
    }

    private int end(int row) {
        return Math.min(upper.length, row + band + 1);
    }
}
