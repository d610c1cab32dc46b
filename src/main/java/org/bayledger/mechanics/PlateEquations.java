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
 *
 * <pre>
 * residual  r(W) = K W - Q f - Integral Phi [W_i, W]
 * tangent   T    = K - N(Phi) + C^T Kf^-1 C
 *           N_ij = Integral Phi [W_i, W_j],  C_kj = Integral Phi_k [W, W_j]
 * </pre>
 *
 * with K the bending stiffness, Kf its like for the stress function, and f the unit load.
 */
final class PlateEquations {

    final double aspectRatio;
    final double poissonRatio;
    final int orderX;
    final int orderY;

    /** Factor of the bending stiffness K. */
    final PlateCholesky bending;

    private final PlateGrid grid;
    private final double[][] bendingStiffness;
    private final PlateCholesky stress;
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
                PlateIntegrals.biharmonic(
                        grid,
                        grid.deflectionX,
                        grid.deflectionY,
                        1.0 / (12.0 * (1.0 - poissonRatio * poissonRatio)));
        double[][] copy =
                Arrays.stream(bendingStiffness).map(double[]::clone).toArray(double[][]::new);
        bending = factor(copy);
        stress = factor(PlateIntegrals.biharmonic(grid, grid.stressX, grid.stressY, 1.0));
        unitLoad = new double[orderX * orderY];
        double[][] one = new double[grid.xi.length][grid.eta.length];
        for (double[] row : one) {
            Arrays.fill(row, 1.0);
        }
        PlateGrid.addProjection(
                unitLoad, grid.weighted(one, 1.0), grid.deflectionX[0], grid.deflectionY[0]);
    }

    private PlateCholesky factor(double[][] biharmonic) {
        PlateCholesky factor = PlateCholesky.band(biharmonic, band());
        if (factor == null) {
            throw new IllegalArgumentException("basis too large for double precision: " + orderX);
        }
        return factor;
    }

    /**
     * Entries right of the diagonal of the biharmonic matrices: two functions on, in x and in y.
     */
    private int band() {
        return PlateIntegrals.OVERLAP * (orderY + 1);
    }

    /** Coefficients of the deflection by linear theory. */
    double[] linear(double loadNumber) {
        double[] result = new double[unitLoad.length];
        PlateAlgebra.addMultiple(result, loadNumber, unitLoad);
        bending.solve(result);
        return result;
    }

    /** Coefficients of the stress function that goes with the deflection. */
    double[] stressFunction(double[] deflection) {
        return new State(deflection).stressFunction;
    }

    /** A deflection, not necessarily in equilibrium, with its stress function. */
    final class State {
        private final double[] deflection;
        private final PlateCurvatures curvatures;
        private final double[] stressFunction;

        /** The stress function at the grid. */
        private final double[][] phi;

        State(double[] deflection) {
            this.deflection = deflection;
            curvatures = PlateCurvatures.of(deflection, grid);
            stressFunction = stressFunctionOf(curvatures.bracket(curvatures), -0.5);
            phi = atGrid(stressFunction);
        }

        /** What is missing to equilibrium under a load. */
        double[] residual(double loadNumber) {
            double[] r = new double[unitLoad.length];
            addMembrane(r, curvatures.times(phi));
            addBending(r, deflection);
            PlateAlgebra.addMultiple(r, -loadNumber, unitLoad);
            return r;
        }

        /** The tangent T times a vector of deflection coefficients. */
        double[] tangentTimes(double[] v) {
            PlateCurvatures change = PlateCurvatures.of(v, grid);
            double[][] phiChange = atGrid(stressFunctionOf(curvatures.bracket(change), -1.0));
            double[] result = new double[v.length];
            addMembrane(result, change.times(phi).plus(curvatures.times(phiChange)));
            addBending(result, v);
            return result;
        }

        /** Factor of the tangent T, or null when it is not positive definite. */
        @Nullable PlateCholesky tangent() {
            int n = unitLoad.length;
            double[][] t = new double[n][n];
            for (int i = 0; i < n; i++) {
                System.arraycopy(bendingStiffness[i], i, t[i], i, n - i);
            }
            PlateIntegrals.addGeometric(t, grid, grid.weighted(phi, -1.0));
            double[][] coupling = PlateIntegrals.coupling(grid, curvatures);
            stress.forwardSubstitute(coupling);
            PlateAlgebra.addGram(t, coupling);
            return PlateCholesky.full(t);
        }
    }

    /** Coefficients of the stress function with Laplace^2 Phi = factor * bracket. */
    private double[] stressFunctionOf(double[][] bracket, double factor) {
        double[] result = new double[unitLoad.length];
        PlateGrid.addProjection(
                result, grid.weighted(bracket, factor), grid.stressX[0], grid.stressY[0]);
        stress.solve(result);
        return result;
    }

    private double[][] atGrid(double[] stressFunction) {
        return PlateGrid.field(stressFunction, grid.stressX[0], grid.stressY[0]);
    }

    /** Adds -Integral Phi [W_i, W], given Phi times the curvatures of W. */
    private void addMembrane(double[] result, PlateCurvatures c) {
        double[][][] x = grid.deflectionX;
        double[][][] y = grid.deflectionY;
        PlateGrid.addProjection(result, grid.weighted(c.yy, -1.0), x[2], y[0]);
        PlateGrid.addProjection(result, grid.weighted(c.xx, -1.0), x[0], y[2]);
        PlateGrid.addProjection(result, grid.weighted(c.xy, 2.0), x[1], y[1]);
    }

    /** Adds K v. */
    private void addBending(double[] result, double[] v) {
        for (int i = 0; i < result.length; i++) {
            int end = Math.min(result.length, i + band() + 1);
            double sum = 0.0;
            for (int j = Math.max(0, i - band()); j < end; j++) {
                sum += bendingStiffness[i][j] * v[j];
            }
            result[i] += sum;
        }
    }
}
