package org.bayledger.anchorage;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * A piece of mullion between two joints.
 *
 * @param bottom elevation of the joint at its foot, m, or null where no joint was given there
 * @param top elevation of the joint at its head, m, or null likewise
 * @param anchors that hold it, from the lowest up
 */
record Piece(@Nullable Double bottom, @Nullable Double top, List<Anchor> anchors) {

    /** The pieces of a run, from the lowest up: one more than there are joints. */
    static List<Piece> of(AnchorageMovementRequest request) {
        List<Double> cuts = request.joints().stream().map(StackJoint::elevation).sorted().toList();
        List<Anchor> anchors =
                request.anchors().stream()
                        .sorted(Comparator.comparingDouble(Anchor::elevation))
                        .toList();
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i <= cuts.size(); i++) {
            Double bottom = i == 0 ? null : cuts.get(i - 1);
            Double top = i == cuts.size() ? null : cuts.get(i);
            pieces.add(
                    new Piece(
                            bottom,
                            top,
                            anchors.stream()
                                    .filter(a -> bottom == null || a.elevation() > bottom)
                                    .filter(a -> top == null || a.elevation() < top)
                                    .toList()));
        }
        return List.copyOf(pieces);
    }

    /** The anchors that carry its weight, from the lowest up. */
    List<Anchor> fixed() {
        List<Anchor> fixed = new ArrayList<>();
        for (Anchor anchor : anchors) {
            if (anchor.isFixed()) {
                fixed.add(anchor);
            }
        }
        return fixed;
    }

    /** Whether it runs on beyond what was given. */
    boolean isOpenEnded() {
        return bottom == null || top == null;
    }

    /** The anchor that carries its weight nearest to an elevation, or null where none does. */
    @Nullable Anchor fixedNear(double elevation) {
        return nearest(fixed(), elevation);
    }

    /** The nearest of some anchors, or null where there are none. */
    static @Nullable Anchor nearest(List<Anchor> anchors, double elevation) {
        Anchor nearest = null;
        double least = Double.POSITIVE_INFINITY;
        for (Anchor anchor : anchors) {
            double distance = Math.abs(anchor.elevation() - elevation);
            if (distance < least) {
                nearest = anchor;
                least = distance;
            }
        }
        return nearest;
    }

    /**
     * Elevation, m, from which the metal of this piece moves into the joint at one of its ends: the
     * dead-load anchor next to the joint; without one the far end of the piece, as far as it is
     * known, since any of it may then be what stays put.
     */
    double stillPoint(double joint) {
        Anchor fixed = fixedNear(joint);
        if (fixed != null) {
            return fixed.elevation();
        }
        boolean above = bottom != null && bottom == joint;
        Double end = above ? top : bottom;
        if (end != null) {
            return end;
        }
        if (anchors.isEmpty()) {
            return joint;
        }
        return anchors.get(above ? anchors.size() - 1 : 0).elevation();
    }

    /**
     * How far the slab goes down that this piece hangs on at a joint, m; without a dead-load anchor
     * the greatest of its anchors' slabs. Null where it is not known.
     */
    @Nullable Double slabDeflection(double joint) {
        List<Double> known = given(joint, Anchor::slabLiveLoadDeflection);
        return known.size() < holding(joint).size() ? null : greatest(known);
    }

    /** How far that slab creeps, m; null where that was given for none of the anchors it may be. */
    @Nullable Double slabCreep(double joint) {
        return greatest(given(joint, Anchor::slabCreepDeflection));
    }

    private List<Anchor> holding(double joint) {
        Anchor fixed = fixedNear(joint);
        return fixed == null ? anchors : List.of(fixed);
    }

    private List<Double> given(double joint, Function<Anchor, @Nullable Double> movement) {
        List<Double> given = new ArrayList<>();
        for (Anchor anchor : holding(joint)) {
            Double metres = movement.apply(anchor);
            if (metres != null) {
                given.add(metres);
            }
        }
        return given;
    }

    private static @Nullable Double greatest(List<Double> values) {
        return values.isEmpty() ? null : Collections.max(values);
    }
}
