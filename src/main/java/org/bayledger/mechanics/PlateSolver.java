package org.bayledger.mechanics;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Direct solution of a uniformly loaded rectangular plate under large deflection, its four edges
 * held flat, turning freely and sliding freely in plane; see {@link PlateEquations} for the theory.
 *
 * <p>The set-up belongs to one aspect ratio and Poisson's ratio and is reused for every load.
 * Instances are immutable and may be shared between threads.
 *
 * <p>Limits: a load is refused once the compressed ring along the edges buckles, because the smooth
 * symmetric state is not stable there and no answer of this solver would be right.
 */
public final class PlateSolver {

    private static final double TOLERANCE = 1e-9;
    private static final double COARSE_TOLERANCE = 1e-4;
    private static final int SMALLEST_ORDER = 6;

    /** Below this load number linear theory is a good enough start. */
    private static final double GENTLE = 0.5;

    private final List<PlateEquations> levels = new ArrayList<>();
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
        int x = orderX;
        int y = orderY;
        levels.add(new PlateEquations(aspectRatio, poissonRatio, x, y));
        while (Math.min(x, y) > SMALLEST_ORDER) {
            x = Math.max(SMALLEST_ORDER, (x + 1) / 2);
            y = Math.max(SMALLEST_ORDER, (y + 1) / 2);
            levels.add(0, new PlateEquations(aspectRatio, poissonRatio, x, y));
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
        PlateEquations coarse = levels.get(0);
        double[] c = climb(coarse, loadNumber, coarse.linear(Math.min(loadNumber, GENTLE)), GENTLE);
        for (PlateEquations level : levels.subList(1, levels.size())) {
            double[] start = c == null ? null : prolong(coarse, level, c);
            double tolerance = level == finest() ? TOLERANCE : COARSE_TOLERANCE;
            c = start == null ? null : level.refine(loadNumber, start, tolerance);
            coarse = level;
        }
        if (c == null) {
            // A coarse basis may buckle early; climb with the full one before giving up.
            c = climb(finest(), loadNumber, finest().linear(Math.min(loadNumber, GENTLE)), GENTLE);
        }
        return fieldOf(loadNumber, c);
    }

    /** The state under a load, sought from a state under a load not far away. */
    public PlateField solve(double loadNumber, PlateField near) {
        Plate.requireNotNegative(loadNumber, "loadNumber");
        return fieldOf(
                loadNumber, finest().refine(loadNumber, near.deflectionCoefficients(), TOLERANCE));
    }

    private PlateField fieldOf(double loadNumber, double @Nullable [] c) {
        if (c == null) {
            throw new IllegalArgumentException(
                    "no stable state at load number "
                            + loadNumber
                            + " and aspect ratio "
                            + finest().aspectRatio
                            + ": the edge of the plate buckles, or the load is far beyond thin-plate"
                            + " theory");
        }
        return new PlateField(finest(), surface, c);
    }

    private PlateEquations finest() {
        return levels.get(levels.size() - 1);
    }

    /** Raises the load by steps, from the linear state at {@code from}. */
    private static double @Nullable [] climb(
            PlateEquations equations, double loadNumber, double[] linear, double from) {
        double load = Math.min(loadNumber, from);
        double[] c =
                equations.refine(load, linear, load == loadNumber ? TOLERANCE : COARSE_TOLERANCE);
        double factor = 4.0;
        while (c != null && load < loadNumber) {
            double next = Math.min(loadNumber, load * factor);
            double[] start = new double[c.length];
            // deflection grows between the first and the third power of the cube root of the load
            PlateAlgebra.addMultiple(start, Math.pow(next / load, 0.4), c, 0);
            double[] found =
                    equations.refine(
                            next, start, next == loadNumber ? TOLERANCE : COARSE_TOLERANCE);
            if (found == null) {
                factor = Math.sqrt(factor);
                if (factor < 1.02) {
                    return null;
                }
            } else {
                c = found;
                load = next;
            }
        }
        return c;
    }

    private static double[] prolong(PlateEquations coarse, PlateEquations fine, double[] c) {
        double[] result = new double[fine.orderX * fine.orderY];
        for (int i = 0; i < coarse.orderX; i++) {
            System.arraycopy(c, i * coarse.orderY, result, i * fine.orderY, coarse.orderY);
        }
        return result;
    }
}
