package org.bayledger.mechanics;

import org.jspecify.annotations.Nullable;

/**
 * Newton's method for the equilibrium of a plate, with the tangent factorized or, on fine bases,
 * used through its products with vectors only.
 */
final class PlateNewton {

    private static final int MAX_ITERATIONS = 25;

    /** A step that is not this much smaller than the one before calls for a new tangent. */
    private static final double SLOW = 0.5;

    /** Error over solution, in the preconditioner's energy, at which conjugate gradients stop. */
    private static final double LINEAR_TOLERANCE = 0.03;

    private static final int MAX_CONJUGATE_STEPS = 200;

    /** A relative step beyond this is divergence. */
    private static final double DIVERGED = 1e3;

    private PlateNewton() {}

    /**
     * A state of equilibrium.
     *
     * @param deflection coefficients of the deflection
     * @param tangent factor of the tangent of a state near by
     */
    @SuppressWarnings("ArrayRecordComponent") // made and used by the solver alone
    record Equilibrium(double[] deflection, PlateCholesky tangent) {}

    /**
     * With the factor of the tangent, kept while it serves.
     *
     * @return null when no stable state was reached from here
     */
    static @Nullable Equilibrium direct(
            PlateEquations equations, double loadNumber, double[] start, double tolerance) {
        double[] c = start.clone();
        PlateCholesky tangent = null;
        double previous = 1.0;
        for (int iteration = 0; iteration < MAX_ITERATIONS; iteration++) {
            PlateEquations.State state = equations.new State(c);
            if (tangent == null) {
                tangent = state.tangent();
                if (tangent == null) {
                    return null;
                }
            }
            double[] step = state.residual(loadNumber);
            tangent.solve(step);
            PlateAlgebra.addMultiple(c, -1.0, step);
            double length = PlateAlgebra.norm(step);
            double size = PlateAlgebra.norm(c);
            if (length <= tolerance * size) {
                return new Equilibrium(c, tangent);
            }
            double relative = length / size;
            if (!(relative < DIVERGED)) {
                return null;
            }
            if (relative > SLOW * previous) {
                tangent = null;
            }
            previous = relative;
        }
        return null;
    }

    /**
     * With conjugate gradients on the tangent, from the equilibrium of a coarser basis of the same
     * plate.
     *
     * @return coefficients of the deflection, or null when no stable state was reached from here
     */
    static double @Nullable [] iterative(
            PlateEquations fine,
            PlateEquations coarse,
            Equilibrium onCoarse,
            double loadNumber,
            double tolerance) {
        Preconditioner preconditioner = new Preconditioner(fine, coarse, onCoarse.tangent());
        double[] c = prolong(coarse, fine, onCoarse.deflection());
        for (int iteration = 0; iteration < MAX_ITERATIONS; iteration++) {
            PlateEquations.State state = fine.new State(c);
            double[] step = conjugateGradients(state, preconditioner, state.residual(loadNumber));
            if (step == null) {
                return null;
            }
            PlateAlgebra.addMultiple(c, -1.0, step);
            double length = PlateAlgebra.norm(step);
            double size = PlateAlgebra.norm(c);
            if (length <= tolerance * size) {
                return c;
            }
            if (!(length < DIVERGED * size)) {
                return null;
            }
        }
        return null;
    }

    /** Solution x of T x = b, or null when T turns out not to be positive definite. */
    private static double @Nullable [] conjugateGradients(
            PlateEquations.State state, Preconditioner preconditioner, double[] b) {
        double[] x = new double[b.length];
        double[] r = b.clone();
        double[] z = preconditioner.apply(r);
        double[] direction = z.clone();
        double energy = PlateAlgebra.dot(r, z);
        double enough = LINEAR_TOLERANCE * LINEAR_TOLERANCE * energy;
        for (int i = 0; i < MAX_CONJUGATE_STEPS; i++) {
            if (energy <= enough) {
                return x;
            }
            double[] product = state.tangentTimes(direction);
            double stiffness = PlateAlgebra.dot(direction, product);
            if (!(stiffness > 0.0)) {
                return null;
            }
            PlateAlgebra.addMultiple(x, energy / stiffness, direction);
            PlateAlgebra.addMultiple(r, -energy / stiffness, product);
            z = preconditioner.apply(r);
            double next = PlateAlgebra.dot(r, z);
            for (int k = 0; k < direction.length; k++) {
                direction[k] = z[k] + next / energy * direction[k];
            }
            energy = next;
        }
        return null;
    }

    /**
     * Approximate inverse of the tangent: membrane action is felt by the smooth part of a
     * deflection, bending alone governs the rest,
     *
     * <pre>
     * K^-1 + P (Tc^-1 - Kc^-1) P^T
     * </pre>
     *
     * with P the coarse functions among the fine ones, and Tc and Kc tangent and bending stiffness
     * on them. It is the inverse of Tc on the coarse functions and of K on those orthogonal to them
     * in bending energy, so it is positive definite.
     */
    private record Preconditioner(
            PlateEquations fine, PlateEquations coarse, PlateCholesky coarseTangent) {

        double[] apply(double[] r) {
            double[] z = r.clone();
            fine.bending.solve(z);
            double[] withMembrane = restrict(fine, coarse, r);
            double[] bendingOnly = withMembrane.clone();
            coarseTangent.solve(withMembrane);
            coarse.bending.solve(bendingOnly);
            PlateAlgebra.addMultiple(withMembrane, -1.0, bendingOnly);
            PlateAlgebra.addMultiple(z, 1.0, prolong(coarse, fine, withMembrane));
            return z;
        }
    }

    /** The coefficients of coarse functions, which are the first ones of a fine basis. */
    private static double[] restrict(PlateEquations fine, PlateEquations coarse, double[] c) {
        double[] result = new double[coarse.orderX * coarse.orderY];
        for (int i = 0; i < coarse.orderX; i++) {
            System.arraycopy(c, i * fine.orderY, result, i * coarse.orderY, coarse.orderY);
        }
        return result;
    }

    /** A deflection on a coarse basis as one on a fine basis. */
    static double[] prolong(PlateEquations coarse, PlateEquations fine, double[] c) {
        double[] result = new double[fine.orderX * fine.orderY];
        for (int i = 0; i < coarse.orderX; i++) {
            System.arraycopy(c, i * coarse.orderY, result, i * fine.orderY, coarse.orderY);
        }
        return result;
    }
}
