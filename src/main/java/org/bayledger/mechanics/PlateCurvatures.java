package org.bayledger.mechanics;

/**
 * Second derivatives of a deflection W at the points of a grid: W_xx, W_yy, W_xy, each [point of
 * x][point of y]; or their products with another field.
 */
final class PlateCurvatures {

    final double[][] xx;
    final double[][] yy;
    final double[][] xy;

    private PlateCurvatures(double[][] xx, double[][] yy, double[][] xy) {
        this.xx = xx;
        this.yy = yy;
        this.xy = xy;
    }

    static PlateCurvatures of(double[] deflection, PlateGrid grid) {
        return new PlateCurvatures(
                PlateGrid.field(deflection, grid.deflectionX[2], grid.deflectionY[0]),
                PlateGrid.field(deflection, grid.deflectionX[0], grid.deflectionY[2]),
                PlateGrid.field(deflection, grid.deflectionX[1], grid.deflectionY[1]));
    }

    /** [W, V] = W_xx V_yy + W_yy V_xx - 2 W_xy V_xy at every point. */
    double[][] bracket(PlateCurvatures other) {
        double[][] result = new double[xx.length][xx[0].length];
        for (int p = 0; p < result.length; p++) {
            for (int q = 0; q < result[p].length; q++) {
                result[p][q] =
                        xx[p][q] * other.yy[p][q]
                                + yy[p][q] * other.xx[p][q]
                                - 2.0 * xy[p][q] * other.xy[p][q];
            }
        }
        return result;
    }

    /** Each multiplied by a field. */
    PlateCurvatures times(double[][] field) {
        return new PlateCurvatures(product(xx, field), product(yy, field), product(xy, field));
    }

    PlateCurvatures plus(PlateCurvatures other) {
        return new PlateCurvatures(sum(xx, other.xx), sum(yy, other.yy), sum(xy, other.xy));
    }

    private static double[][] product(double[][] a, double[][] b) {
        double[][] result = new double[a.length][a[0].length];
        for (int p = 0; p < a.length; p++) {
            for (int q = 0; q < a[p].length; q++) {
                result[p][q] = a[p][q] * b[p][q];
            }
        }
        return result;
    }

    private static double[][] sum(double[][] a, double[][] b) {
        double[][] result = new double[a.length][];
        for (int p = 0; p < a.length; p++) {
            result[p] = a[p].clone();
            PlateAlgebra.addMultiple(result[p], 1.0, b[p]);
        }
        return result;
    }
}
