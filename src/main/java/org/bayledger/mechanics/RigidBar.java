package org.bayledger.mechanics;

import java.util.Arrays;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.LUDecomposition;
import org.jspecify.annotations.Nullable;

/**
 * A rigid bar that lies loose on several yielding supports, which push and never pull.
 *
 * <pre>
 *   balance                sum R = G,  sum R s = 0
 *   gap over a support     g = C R + e - v - t s
 *   contact                R &gt;= 0,  g &gt;= 0,  R g = 0
 * </pre>
 *
 * <p>R reactions, G load, s distance of each support from the load's line of action, C how far each
 * support sinks under a unit reaction at each, e level of each unloaded support (downward), v how
 * far the bar sinks under the load, t its slope. With C symmetric and positive definite these are
 * the conditions of a strictly convex quadratic program, so that there is one answer. The supports
 * that carry are found by trying every set of them, of which there are at most 255: nothing is
 * iterated and nothing can fail to converge.
 */
public final class RigidBar {

    /** Most supports: the sets to be tried double with each. */
    public static final int MOST_SUPPORTS = 8;

    /** Share of the load, or of the movements, that is rounding. */
    private static final double ROUNDING = 1e-9;

    private final double[] reactions;
    private final double drop;
    private final double slope;

    private RigidBar(double[] reactions, double drop, double slope) {
        this.reactions = reactions;
        this.drop = drop;
        this.slope = slope;
    }

    /** Reaction of each support, N. */
    public double[] reactions() {
        return reactions.clone();
    }

    /**
     * How far the bar sinks at a distance from the load's line of action, m.
     *
     * @param arm distance, positive the way the supports' distances are, m
     */
    public double dropAt(double arm) {
        return drop + slope * arm;
    }

    /**
     * The bar at rest.
     *
     * @param compliance C, m/N, symmetric, positive definite
     * @param level e of each support, m, positive downward
     * @param arm s of each support, m; some on either side of zero
     * @param load G, N, above zero
     */
    public static RigidBar rest(double[][] compliance, double[] level, double[] arm, double load) {
        int n = arm.length;
        if (n > MOST_SUPPORTS) {
            throw new IllegalArgumentException("more than " + MOST_SUPPORTS + " supports");
        }
        if (Arrays.stream(arm).noneMatch(s -> s > 0) || Arrays.stream(arm).noneMatch(s -> s < 0)) {
            throw new IllegalArgumentException(
                    "a bar needs a support on either side of its load to lie still");
        }
        double movement = 0;
        for (int i = 0; i < n; i++) {
            movement = Math.max(movement, compliance[i][i] * load + Math.abs(level[i]));
        }
        RigidBar best = null;
        double least = Double.POSITIVE_INFINITY;
        for (int set = 1; set < 1 << n; set++) {
            RigidBar bar = on(members(set, n), compliance, level, arm, load);
            if (bar != null) {
                double breach = bar.breach(compliance, level, arm, load, movement);
                if (breach < least) {
                    least = breach;
                    best = bar;
                }
            }
        }
        if (best == null || least > ROUNDING) {
            throw new IllegalArgumentException(
                    "the supports are too unlike one another to be solved for");
        }
        for (int i = 0; i < n; i++) {
            best.reactions[i] = Math.max(0, best.reactions[i]);
        }
        return best;
    }

    private static int[] members(int set, int n) {
        int[] members = new int[Integer.bitCount(set)];
        for (int i = 0, k = 0; i < n; i++) {
            if ((set & 1 << i) != 0) {
                members[k++] = i;
            }
        }
        return members;
    }

    /** How far the contact conditions are broken, as a share of load and movement. */
    private double breach(
            double[][] compliance, double[] level, double[] arm, double load, double movement) {
        double breach = 0;
        for (int i = 0; i < arm.length; i++) {
            double gap = level[i] - dropAt(arm[i]);
            for (int j = 0; j < arm.length; j++) {
                gap += compliance[i][j] * reactions[j];
            }
            breach = Math.max(breach, Math.max(-reactions[i] / load, -gap / movement));
        }
        return breach;
    }

    /** The bar on some of the supports as if these could pull; null where they can't hold it. */
    private static @Nullable RigidBar on(
            int[] set, double[][] compliance, double[] level, double[] arm, double load) {
        if (set.length == 1) {
            return onOne(set[0], compliance, level, arm, load);
        }
        int n = set.length;
        Array2DRowRealMatrix matrix = new Array2DRowRealMatrix(n + 2, n + 2);
        ArrayRealVector right = new ArrayRealVector(n + 2);
        // all rows brought to the size of the compliances, so that the pivots can be compared
        double size = 0;
        double reach = 0;
        for (int i : set) {
            size = Math.max(size, compliance[i][i]);
            reach = Math.max(reach, Math.abs(arm[i]));
        }
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                matrix.setEntry(i, j, compliance[set[i]][set[j]] / size);
            }
            matrix.setEntry(i, n, -1);
            matrix.setEntry(i, n + 1, -arm[set[i]] / reach);
            matrix.setEntry(n, i, 1);
            matrix.setEntry(n + 1, i, arm[set[i]] / reach);
            right.setEntry(i, -level[set[i]] / (size * load));
        }
        right.setEntry(n, 1);
        DecompositionSolver solver = new LUDecomposition(matrix, 1e-14).getSolver();
        if (!solver.isNonSingular()) {
            return null;
        }
        double[] answer = solver.solve(right).toArray();
        double[] reactions = new double[arm.length];
        for (int i = 0; i < n; i++) {
            reactions[set[i]] = answer[i] * load;
        }
        double scale = size * load;
        return new RigidBar(reactions, answer[n] * scale, answer[n + 1] * scale / reach);
    }

    /**
     * The bar balanced on the one support right under its load: it may lean either way as far as
     * the others let it, and is taken midway.
     */
    private static @Nullable RigidBar onOne(
            int only, double[][] compliance, double[] level, double[] arm, double load) {
        double reach = Arrays.stream(arm).map(Math::abs).max().orElse(0);
        if (Math.abs(arm[only]) > ROUNDING * reach) {
            return null;
        }
        double[] reactions = new double[arm.length];
        reactions[only] = load;
        double drop = compliance[only][only] * load + level[only];
        double from = Double.NEGATIVE_INFINITY;
        double to = Double.POSITIVE_INFINITY;
        for (int i = 0; i < arm.length; i++) {
            double slope = (compliance[i][only] * load + level[i] - drop) / arm[i];
            if (i != only && arm[i] > 0) {
                to = Math.min(to, slope);
            } else if (i != only && arm[i] < 0) {
                from = Math.max(from, slope);
            }
        }
        return new RigidBar(reactions, drop, (from + to) / 2);
    }
}
