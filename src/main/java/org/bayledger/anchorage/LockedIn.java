package org.bayledger.anchorage;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * The forces that lock into a piece of mullion fixed at more than one place.
 *
 * <pre>
 *   N_i       = E A / L_i (u_(i+1) - u_i) - E A alpha dT          tension positive
 *   N_i - N_(i-1) = k_i (u_i - s_i)                               at each dead-load anchor
 *   two anchors:  |N| = (alpha L dT + s) / (L / (E A) + 1/k_1 + 1/k_2)
 *   that do not give:  N = E A (alpha dT + s / L)
 * </pre>
 *
 * <p>Bar on elastic supports (statics and Hooke's law): u the metal's movement at an anchor, s that
 * of its slab, k the anchor's stiffness, L_i the length between two anchors. Each slab is taken
 * loaded or not, and crept or not, as it is worst; column shortening and creep bring every two
 * neighboring anchors together. Elastic: yielding and buckling of the mullion and slip of the
 * anchors, which would relieve the force, are outside.
 */
final class LockedIn {

    private final List<Anchor> fixed;
    private final Movement movement;
    private final double rigidity;

    private LockedIn(List<Anchor> fixed, Movement movement, double rigidity) {
        this.fixed = fixed;
        this.movement = movement;
        this.rigidity = rigidity;
    }

    /**
     * The forces between each two neighboring dead-load anchors of a piece, from the lowest up;
     * empty where there are not two or where the metal, its area or its temperature is not known.
     */
    static List<LockedInResult> of(Piece piece, Movement movement) {
        List<Anchor> fixed = places(piece);
        MullionMaterial material = movement.material();
        Double area = movement.sectionArea();
        Double warming = movement.warmingStrain();
        Double cooling = movement.coolingStrain();
        if (fixed.size() < 2
                || material == null
                || area == null
                || warming == null
                || cooling == null) {
            return List.of();
        }
        return new LockedIn(fixed, movement, material.elasticModulus() * area)
                .forces(warming, cooling);
    }

    /** The dead-load anchors at different levels; of several at one level the stiffest. */
    private static List<Anchor> places(Piece piece) {
        List<Anchor> places = new ArrayList<>();
        for (Anchor anchor : piece.fixed()) {
            int last = places.size() - 1;
            if (last < 0
                    || anchor.elevation() - places.get(last).elevation()
                            > AnchorageMovementRequest.SAME_PLACE) {
                places.add(anchor);
            } else if (stiffness(anchor) > stiffness(places.get(last))) {
                places.set(last, anchor);
            }
        }
        return places;
    }

    private static double stiffness(Anchor anchor) {
        return anchor.stiffness() == null ? Double.POSITIVE_INFINITY : anchor.stiffness();
    }

    private List<LockedInResult> forces(double warming, double cooling) {
        int pairs = fixed.size() - 1;
        double[] none = new double[fixed.size()];
        double[] perStrain = solve(none, 1);
        double[] columns = new double[fixed.size()];
        double together = orZero(movement.columnShortening()) + orZero(movement.columnCreep());
        for (int j = 0; j < fixed.size(); j++) {
            columns[j] = -j * together;
        }
        double[] byColumns = solve(columns, 0);
        double[] pulled = new double[pairs];
        double[] pushed = new double[pairs];
        for (int j = 0; j < fixed.size(); j++) {
            double[] down = new double[fixed.size()];
            down[j] =
                    -orZero(fixed.get(j).slabLiveLoadDeflection())
                            - orZero(fixed.get(j).slabCreepDeflection());
            double[] bySlab = solve(down, 0);
            for (int i = 0; i < pairs; i++) {
                pulled[i] += Math.max(0, bySlab[i]);
                pushed[i] += Math.max(0, -bySlab[i]);
            }
        }
        boolean slabs = fixed.stream().allMatch(a -> a.slabLiveLoadDeflection() != null);
        boolean shortening = movement.columnShortening() != null;
        List<LockedInResult> results = new ArrayList<>();
        for (int i = 0; i < pairs; i++) {
            double unit = Math.abs(perStrain[i]);
            results.add(
                    new LockedInResult(
                            fixed.get(i).id(),
                            fixed.get(i + 1).id(),
                            force(unit * Math.max(warming, cooling)),
                            slabs && shortening
                                    ? force(unit * warming + pushed[i] + Math.max(0, -byColumns[i]))
                                    : null,
                            slabs ? force(unit * cooling + pulled[i]) : null));
        }
        return List.copyOf(results);
    }

    /**
     * Forces between neighboring anchors, N, tension positive.
     *
     * @param slabs movement of each slab, m, upward positive
     * @param strain free thermal strain of the metal
     */
    private double[] solve(double[] slabs, double strain) {
        int n = fixed.size();
        double[] diagonal = new double[n];
        double[] beyond = new double[n];
        double[] right = new double[n];
        for (int i = 0; i < n; i++) {
            Double spring = fixed.get(i).stiffness();
            if (spring == null) {
                diagonal[i] = 1;
                right[i] = slabs[i];
                continue;
            }
            double below = i == 0 ? 0 : rigidity / length(i - 1);
            double above = i == n - 1 ? 0 : rigidity / length(i);
            diagonal[i] = below + above + spring;
            beyond[i] = -above;
            right[i] = spring * slabs[i];
            right[i] += (i == 0 ? 0 : rigidity * strain) - (i == n - 1 ? 0 : rigidity * strain);
        }
        double[] moved = new double[n];
        for (int i = 1; i < n; i++) {
            if (fixed.get(i).stiffness() != null) {
                double factor = rigidity / length(i - 1) / diagonal[i - 1];
                diagonal[i] += factor * beyond[i - 1];
                right[i] += factor * right[i - 1];
            }
        }
        for (int i = n - 1; i >= 0; i--) {
            moved[i] = (right[i] - (i == n - 1 ? 0 : beyond[i] * moved[i + 1])) / diagonal[i];
        }
        double[] forces = new double[n - 1];
        for (int i = 0; i < n - 1; i++) {
            forces[i] = rigidity / length(i) * (moved[i + 1] - moved[i]) - rigidity * strain;
        }
        return forces;
    }

    private double length(int i) {
        return fixed.get(i + 1).elevation() - fixed.get(i).elevation();
    }

    private static Quantity force(double newtons) {
        return Quantity.of(Dimension.FORCE, newtons);
    }

    private static double orZero(@Nullable Double value) {
        return value == null ? 0 : value;
    }
}
