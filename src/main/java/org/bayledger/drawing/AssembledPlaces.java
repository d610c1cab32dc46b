package org.bayledger.drawing;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.bayledger.seals.Edge;
import org.bayledger.seals.JointPlace;
import org.bayledger.seals.JointType;
import org.bayledger.seals.SealsRequest;
import org.jspecify.annotations.Nullable;

/**
 * Marks of a unitized or a window wall, from the places that the check gives: each stands beside
 * its line on the side where the joint lies, so that those of the unit above and of the unit below
 * one line are told apart.
 */
final class AssembledPlaces {

    /** From a line to the marks beside it, to those further out and to those along an edge. */
    private static final double BESIDE = 6.5;

    private static final double OUT = 12;
    private static final double BEAD = 20.5;
    private static final double ROW = 9;
    private static final double NEXT_HEAD = 3.6;

    private final double width;
    private final Map<JointType, List<JointPlaces.Joint>> joints = new EnumMap<>(JointType.class);

    /** How often a type was put at a place: two units meet on a line. */
    private final Map<List<Object>, Integer> seen = new HashMap<>();

    AssembledPlaces(SealsRequest request) {
        width = request.columns().stream().mapToDouble(Double::doubleValue).sum();
        org.bayledger.seals.JointPlaces.of(request).forEach(this::put);
    }

    Map<JointType, List<JointPlaces.Joint>> joints() {
        return joints;
    }

    private void put(JointPlace place) {
        if (place.line()) {
            line(place);
            return;
        }
        int before =
                seen.merge(
                                List.of(place.type(), place.x(), place.y(), side(place.side())),
                                1,
                                Integer::sum)
                        - 1;
        for (int i = 0; i < place.joints(); i++) {
            double[] off = off(place, before, i);
            add(place, off[0], off[1]);
        }
    }

    private static String side(@Nullable Edge side) {
        return side == null ? "" : side.name();
    }

    private void line(JointPlace place) {
        double left = place.x() <= 0 ? -BEAD : place.x() >= width - 1e-6 ? BEAD : 0;
        boolean upright = place.x() == place.toX();
        double down =
                switch (place.type()) {
                    case PERIMETER_SILL -> -4;
                    case PERIMETER_HEAD -> 4;
                    case SLAB_EDGE_JOINT -> isUpperEdge(place) ? 3 : -3;
                    default -> 0;
                };
        add(place, upright && place.type() == JointType.PERIMETER_JAMB ? left : 0, down);
    }

    /** The slab's joints come in pairs, the lower edge first. */
    private boolean isUpperEdge(JointPlace place) {
        return joints.getOrDefault(place.type(), List.of()).size() % 2 == 1;
    }

    private double[] off(JointPlace place, int before, int head) {
        double outward = place.x() <= 0 ? -1 : place.x() >= width - 1e-6 ? 1 : 0;
        // the first on a line is of what lies below it, but for the lowest line of all
        double down = before == 0 && place.y() > 0 ? 1 : -1;
        double right = place.side() == Edge.RIGHT ? 1 : place.side() == Edge.LEFT ? -1 : 0;
        return switch (place.type()) {
            case HORIZONTAL_TO_VERTICAL -> new double[] {right * BESIDE, 0};
            case JOINT_PLUG -> new double[] {right * BESIDE, -BESIDE};
            case FRAME_CORNER -> new double[] {right * BESIDE, down * ROW};
            case VERTICAL_TO_HORIZONTAL ->
                    new double[] {0, (place.side() == Edge.TOP ? -1 : 1) * ROW};
            case END_DAM -> new double[] {outward * OUT, 5};
            case END_CAP -> new double[] {outward * OUT, -5};
            case RECEPTOR_SPLICE -> new double[] {0, before == 0 ? ROW : -ROW};
            case FASTENER_HEAD -> head(place, right, down, head, outward);
            default -> new double[] {0, 0};
        };
    }

    private double[] head(JointPlace place, double right, double down, int head, double outward) {
        if (place.side() == null) {
            boolean edge = outward != 0;
            return new double[] {edge ? outward * OUT : 0, edge ? 0 : down * OUT};
        }
        if (right == 0) {
            double up = place.side() == Edge.TOP ? -1 : 1;
            return new double[] {BESIDE + head * NEXT_HEAD, up * (ROW + 1)};
        }
        boolean corner =
                seen.containsKey(
                        List.of(JointType.FRAME_CORNER, place.x(), place.y(), side(place.side())));
        return new double[] {
            right * (BESIDE - 1 + head * NEXT_HEAD), corner ? down * (ROW + 6) : 5.4
        };
    }

    private void add(JointPlace place, double right, double down) {
        boolean atEnd =
                switch (place.type()) {
                    case HORIZONTAL_TO_VERTICAL, JOINT_PLUG -> true;
                    default -> false;
                };
        joints.computeIfAbsent(place.type(), none -> new ArrayList<>())
                .add(
                        new JointPlaces.Joint(
                                place.x(),
                                place.y(),
                                place.toX(),
                                place.toY(),
                                right,
                                down,
                                false,
                                atEnd));
    }
}
