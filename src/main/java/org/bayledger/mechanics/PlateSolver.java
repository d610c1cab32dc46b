package org.bayledger.mechanics;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.mechanics.PlateNewton.Equilibrium;
import org.jspecify.annotations.Nullable;

/**
 * Direct solution of a uniformly loaded rectangular plate under large deflection, its four edges
 * held flat, turning freely and sliding freely in plane; see {@link PlateEquations} for the theory.
 *
 * <p>A coarse solution is carried up through finer bases: the load is raised by steps on the
 * coarsest only, and on the finest Newton's method never forms the tangent, see {@link
 * PlateNewton}.
 *
 * <p>The set-up belongs to one aspect ratio and Poisson's ratio and is reused for every load.
 * Instances are immutable and may be shared between threads.
 *
 * <p>Limits: a load is refused once the compressed ring along the edges buckles, because the smooth
 * symmetric state is not stable there and no answer of this solver would be right.
 */
public final class PlateSolver {

    private static final double TOLERANCE = 1e-7;
    private static final double COARSE_TOLERANCE = 1e-3;

    /** Functions of the coarse bases along the short side, and least number along the long one. */
    private static final int COARSE_ORDER = 6;

    /** Below this load number linear theory is a good enough start. */
    private static final double GENTLE = 0.5;

    /** From the coarsest; the last has all the functions along x of the finest. */
    private final List<PlateEquations> coarse = new ArrayList<>();

    private final PlateEquations finest;
    private final PlateGrid surface;

    /**
     * Set-up for one aspect ratio, with the number of functions that {@code standard} judges
     * enough.
     *
     * @param aspectRatio longer over shorter side, 1 to 10
     * @param poissonRatio Poisson's ratio
     */
    public static PlateSolver standard(double aspectRatio, double poissonRatio) {
        int orderX = 17 + (int) Math.round(20.0 * Math.log10(aspectRatio));
        return new PlateSolver(aspectRatio, poissonRatio, orderX, 16);
    }

    /**
     * Set-up with given numbers of functions.
     *
     * @param aspectRatio longer over shorter side, at least 1
     * @param poissonRatio Poisson's ratio, from 0 to below 0.5
     * @param orderX number of even functions along the long side
     * @param orderY number of even functions along the short side
     */
    public PlateSolver(double aspectRatio, double poissonRatio, int orderX, int orderY) {
        if (!(aspectRatio >= 1.0 && aspectRatio <= 20.0)) {
            throw new IllegalArgumentException("aspectRatio must be from 1 to 20: " + aspectRatio);
        }
        if (!(poissonRatio >= 0.0 && poissonRatio < 0.5)) {
            throw new IllegalArgumentException(
                    "poissonRatio must be from 0 to below 0.5: " + poissonRatio);
        }
        finest = new PlateEquations(aspectRatio, poissonRatio, orderX, orderY);
        int y = Math.min(COARSE_ORDER, orderY);
        for (int x = orderX; coarse.isEmpty() || x >= COARSE_ORDER; x = (x + 1) / 2) {
            coarse.add(0, new PlateEquations(aspectRatio, poissonRatio, x, y));
        }
        surface = PlateGrid.gauss(aspectRatio, orderX, orderY, 2 * orderX + 16, 2 * orderY + 16);
    }

    /**
     * The state under a load.
     *
     * @param loadNumber Q = q (b/2)^4 / (E t^4), see {@link Plate#loadNumber}; not negative
     * @throws IllegalArgumentException where no stable state is found
     */
    public PlateField solve(double loadNumber) {
        Plate.requireNotNegative(loadNumber, "loadNumber");
        PlateEquations equations = coarse.get(0);
        Equilibrium state = climb(equations, loadNumber, COARSE_TOLERANCE);
        for (PlateEquations finer : coarse.subList(1, coarse.size())) {
            if (state != null) {
                double[] start = PlateNewton.prolong(equations, finer, state.deflection());
                state = PlateNewton.direct(finer, loadNumber, start, COARSE_TOLERANCE);
            }
            equations = finer;
        }
        double[] c =
                state == null
                        ? null
                        : PlateNewton.iterative(finest, equations, state, loadNumber, TOLERANCE);
        if (c == null) {
            // A coarse basis may buckle early; climb with the full one before giving up.
            return fieldOf(loadNumber, climb(finest, loadNumber, TOLERANCE));
        }
        return new PlateField(finest, surface, c);
    }

    /** The state under a load, sought from a state under a load not far away. */
    public PlateField solve(double loadNumber, PlateField near) {
        Plate.requireNotNegative(loadNumber, "loadNumber");
        return fieldOf(
                loadNumber,
                PlateNewton.direct(finest, loadNumber, near.deflectionCoefficients(), TOLERANCE));
    }

    private PlateField fieldOf(double loadNumber, @Nullable Equilibrium state) {
        if (state == null) {
            throw new IllegalArgumentException(
                    "no stable state at load number "
                            + loadNumber
                            + " and aspect ratio "
                            + finest.aspectRatio
                            + ": the edge of the plate buckles, or the load is far beyond thin-plate"
                            + " theory");
        }
        return new PlateField(finest, surface, state.deflection());
    }

    /** Raises the load by steps, from the linear state under a small load. */
    private static @Nullable Equilibrium climb(
            PlateEquations equations, double loadNumber, double tolerance) {
        double load = Math.min(loadNumber, GENTLE);
        Equilibrium state = PlateNewton.direct(equations, load, equations.linear(load), tolerance);
        double factor = 4.0;
        while (state != null && load < loadNumber) {
            double next = Math.min(loadNumber, load * factor);
            double[] start = new double[state.deflection().length];
            // deflection grows between the first and the third power of the cube root of the load
            PlateAlgebra.addMultiple(start, Math.pow(next / load, 0.4), state.deflection());
            Equilibrium found = PlateNewton.direct(equations, next, start, tolerance);
            if (found == null) {
                factor = Math.sqrt(factor);
                if (factor < 1.02) {
                    return null;
                }
            } else {
                state = found;
                load = next;
            }
        }
        return state;
    }
}
