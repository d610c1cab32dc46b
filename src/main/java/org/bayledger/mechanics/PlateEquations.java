package org.bayledger.mechanics;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * The von Karman equations of one aspect ratio and Poisson's ratio, reduced to the coefficients of
 * the deflection by Galerkin's method.
 *
 * <p>Dimensionless, with lengths in half shorter sides L = b/2, W = w/t, Phi = F/(E t^2) and the
 * load number Q = q L^4/(E t^4):
 *
 * <pre>
 * Laplace^2 W / (12 (1 - nu^2)) = Q + [Phi, W]        W = 0, no bending moment on the edges
 * Laplace^2 Phi = -[W, W]/2                            Phi = 0, dPhi/dn = 0: no traction on the edges
 * [F, G] = F_xx G_yy + F_yy G_xx - 2 F_xy G_xy
 * </pre>
 *
 * Source: S. Timoshenko and S. Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed., eqs. (245)
 * and (246) (from memory). Both unknowns are sums of products of {@link PlateBasis} functions;
 * doubly symmetric, so a quarter is enough. Gauss quadrature integrates every product exactly. Phi
 * follows from W by one linear solve and is eliminated; since Integral W_i [Phi, W] = Integral Phi
 * [W_i, W] on these edges, the tangent is symmetric, and positive definite as long as the state is
 * stable.
 */
final class PlateEquations {

    private static final int MAX_ITERATIONS = 25;

    /** A step that is not this much smaller than the one before calls for a new tangent. */
    private static final double SLOW = 0.1;

    final double aspectRatio;
    final double poissonRatio;
    final int orderX;
    final int orderY;

    private final PlateGrid grid;
    private final double[][] bendingStiffness;
    private final double[][] stressFactor;
    private final double[] unitLoad;

    PlateEquations(double aspectRatio, double poissonRatio, int orderX, int orderY) {
        this.aspectRatio = aspectRatio;
        this.poissonRatio = poissonRatio;
        this.orderX = orderX;
        this.orderY = orderY;
        // Degree 3 (2 n + 2) - 2 at most in each direction; 2 m points are exact to 4 m - 1.
        grid =
                PlateGrid.gauss(
                        aspectRatio, orderX, orderY, (3 * orderX) / 2 + 2, (3 * orderY) / 2 + 2);
        bendingStiffness =
                biharmonic(
                        grid.deflectionX,
                        grid.deflectionY,
                        1.0 / (12.0 * (1.0 - poissonRatio * poissonRatio)));
        stressFactor = biharmonic(grid.stressX, grid.stressY, 1.0);
        if (!PlateAlgebra.factorize(stressFactor)) {
            throw new IllegalArgumentException("basis too large for double precision: " + orderX);
        }
        unitLoad = new double[orderX * orderY];
        double[][] one = weighted((p, q) -> 1.0);
        PlateGrid.addProjection(unitLoad, one, grid.deflectionX[0], grid.deflectionY[0]);
    }

    /** Coefficients of the deflection by linear theory. */
    double[] linear(double loadNumber) {
        double[][] stiffness = new double[bendingStiffness.length][];
        for (int i = 0; i < stiffness.length; i++) {
            stiffness[i] = bendingStiffness[i].clone();
        }
        PlateAlgebra.factorize(stiffness);
        double[] result = new double[unitLoad.length];
        PlateAlgebra.addMultiple(result, loadNumber, unitLoad, 0);
        PlateAlgebra.solve(stiffness, result);
        return result;
    }

    /**
     * Newton's method, with the tangent kept while it serves.
     *
     * @return coefficients of the deflection, or null when no stable state was reached from here
     */
    double @Nullable [] refine(double loadNumber, double[] start, double tolerance) {
        double[] c = start.clone();
        double[] @Nullable [] tangent = null;
        double previous = 1.0;
        for (int iteration = 0; iteration < MAX_ITERATIONS; iteration++) {
            State state = new State(c);
            if (tangent == null) {
                tangent = tangent(state);
                if (!PlateAlgebra.factorize(tangent)) {
                    return null;
                }
            }
            double[] step = residual(state, loadNumber);
            PlateAlgebra.solve(tangent, step);
            PlateAlgebra.addMultiple(c, -1.0, step, 0);
            double length = PlateAlgebra.norm(step);
            double size = PlateAlgebra.norm(c);
            if (length <= tolerance * size) {
                return c;
            }
            double relative = length / size;
            if (!(relative < 1e3)) {
                return null;
            }
            if (relative > SLOW * previous) {
                tangent = null;
            }
            previous = relative;
        }
        return null;
    }

    /** Coefficients of the stress function that goes with the deflection. */
    double[] stressFunction(double[] deflection) {
        return new State(deflection).stress;
    }

    /** Curvatures of a deflection at the grid, and its stress function. */
    private final class State {
        final double[] deflection;
        final double[][] xx;
        final double[][] yy;
        final double[][] xy;
        final double[] stress;

        State(double[] deflection) {
            this.deflection = deflection;
            xx = PlateGrid.field(deflection, grid.deflectionX[2], grid.deflectionY[0]);
            yy = PlateGrid.field(deflection, grid.deflectionX[0], grid.deflectionY[2]);
            xy = PlateGrid.field(deflection, grid.deflectionX[1], grid.deflectionY[1]);
            stress = new double[orderX * orderY];
            double[][] source = weighted((p, q) -> xy[p][q] * xy[p][q] - xx[p][q] * yy[p][q]);
            PlateGrid.addProjection(stress, source, grid.stressX[0], grid.stressY[0]);
            PlateAlgebra.solve(stressFactor, stress);
        }
    }

    private double[] residual(State state, double loadNumber) {
        double[][] phi = PlateGrid.field(state.stress, grid.stressX[0], grid.stressY[0]);
        double[] r = new double[unitLoad.length];
        project(r, phi, state.yy, -1.0, 2, 0);
        project(r, phi, state.xx, -1.0, 0, 2);
        project(r, phi, state.xy, 2.0, 1, 1);
        for (int i = 0; i < r.length; i++) {
            double sum = 0.0;
            for (int j = 0; j < r.length; j++) {
                sum += bendingStiffness[i][j] * state.deflection[j];
            }
            r[i] += sum - loadNumber * unitLoad[i];
        }
        return r;
    }

    private void project(
            double[] r, double[][] phi, double[][] curvature, double factor, int dx, int dy) {
        double[][] values = weighted((p, q) -> factor * phi[p][q] * curvature[p][q]);
        PlateGrid.addProjection(r, values, grid.deflectionX[dx], grid.deflectionY[dy]);
    }

    /**
     * Upper triangle of d residual / d deflection = K - N(Phi) + C^T Kf^-1 C, with N_ij = Integral
     * Phi [W_i, W_j] and C_kj = Integral Phi_k [W, W_j].
     */
    private double[][] tangent(State state) {
        int n = unitLoad.length;
        double[][] coupling = new double[n][n];
        double[][] result = new double[n][n];
        for (int i = 0; i < n; i++) {
            System.arraycopy(bendingStiffness[i], i, result[i], i, n - i);
        }
        double[][][] x = grid.deflectionX;
        double[][][] y = grid.deflectionY;
        double[][] phi = PlateGrid.field(state.stress, grid.stressX[0], grid.stressY[0]);

        double[][] phiWeighted = weighted((p, q) -> -phi[p][q]);
        double[][] phiTwist = weighted((p, q) -> 2.0 * phi[p][q]);
        addBilinear(result, true, phiWeighted, x[2], y[0], x[0], y[2]);
        addBilinear(result, true, phiWeighted, x[0], y[2], x[2], y[0]);
        addBilinear(result, true, phiTwist, x[1], y[1], x[1], y[1]);

        double[][] fx = grid.stressX[0];
        double[][] fy = grid.stressY[0];
        addBilinear(coupling, false, weighted((p, q) -> state.xx[p][q]), fx, fy, x[0], y[2]);
        addBilinear(coupling, false, weighted((p, q) -> state.yy[p][q]), fx, fy, x[2], y[0]);
        addBilinear(coupling, false, weighted((p, q) -> -2.0 * state.xy[p][q]), fx, fy, x[1], y[1]);
        PlateAlgebra.forwardSubstitute(stressFactor, coupling);
        PlateAlgebra.addGram(result, coupling);
        return result;
    }

    /**
     * Adds the sums over all points of v(x, y) A_a(x) B_b(y) X_i(x) Y_j(y) at row (a, b), column
     * (i, j); y first, then x (sum factorization).
     */
    private void addBilinear(
            double[][] matrix,
            boolean upperOnly,
            double[][] v,
            double[][] a,
            double[][] b,
            double[][] x,
            double[][] y) {
        double[][] alongY = new double[v.length][orderY * orderY];
        double[] row = new double[orderY];
        for (int p = 0; p < v.length; p++) {
            for (int k = 0; k < orderY; k++) {
                Arrays.fill(row, 0.0);
                for (int q = 0; q < v[p].length; q++) {
                    PlateAlgebra.addMultiple(row, v[p][q] * b[q][k], y[q], 0);
                }
                System.arraycopy(row, 0, alongY[p], k * orderY, orderY);
            }
        }
        double[] block = new double[orderY * orderY];
        for (int k = 0; k < orderX; k++) {
            for (int i = upperOnly ? k : 0; i < orderX; i++) {
                Arrays.fill(block, 0.0);
                for (int p = 0; p < v.length; p++) {
                    PlateAlgebra.addMultiple(block, a[p][k] * x[p][i], alongY[p], 0);
                }
                for (int l = 0; l < orderY; l++) {
                    double[] target = matrix[k * orderY + l];
                    for (int j = 0; j < orderY; j++) {
                        target[i * orderY + j] += block[l * orderY + j];
                    }
                }
            }
        }
    }

    /** Integral of Laplace u_a Laplace u_b times {@code factor}, for products of the functions. */
    private double[][] biharmonic(double[][][] x, double[][][] y, double factor) {
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
            for (int column = 0; column < result.length; column++) {
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
                if (Math.abs(i - k) > 2) {
                    m[i][k] = 0.0;
                }
            }
        }
        return m;
    }

    private interface PointFunction {
        double at(int p, int q);
    }

    private double[][] weighted(PointFunction f) {
        double[][] v = new double[grid.weightX.length][grid.weightY.length];
        for (int p = 0; p < v.length; p++) {
            for (int q = 0; q < v[p].length; q++) {
                v[p][q] = grid.weightX[p] * grid.weightY[q] * f.at(p, q);
            }
        }
        return v;
    }
}
