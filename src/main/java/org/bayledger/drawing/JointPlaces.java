package org.bayledger.drawing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.bayledger.seals.Drainage;
import org.bayledger.seals.Edge;
import org.bayledger.seals.JointType;
import org.bayledger.seals.SealDetails;
import org.bayledger.seals.SealsRequest;
import org.bayledger.seals.WallSystem;
import org.jspecify.annotations.Nullable;

/**
 * Where the joints of a frame lie; those of walls that come in units or storeys are found by {@link
 * AssembledPlaces}. In a stick-built frame, from the same grid and details from which the check
 * counts them: joints at the ends of horizontals beside each crossing, plates cut to their stock
 * length from the left and from the sill up, fasteners along the edges at equal distances. Of types
 * that are not here nobody knows where they lie.
 */
final class JointPlaces {

    /** What a length may exceed a whole number of stock lengths by and still be it. */
    private static final double ROUNDING = 1e-9;

    /** From a crossing to the marks beside it and from line to line, points. */
    private static final double BESIDE = 6.5;

    private static final double FURTHER = 13;

    private static final double UPWARD = -6.6;
    private static final double DOWNWARD = 5.4;
    private static final double NEXT_HEAD = 3.6;

    /** From an edge of the frame to the fasteners and to the bead along it, points. */
    private static final double FASTENERS = 12;

    private static final double BEAD = 20.5;

    /** Heads that have room at one end of a horizontal. */
    static final int MOST_HEADS = 3;

    /**
     * A joint in the frame.
     *
     * @param x from the left edge of the frame, m
     * @param y above its sill, m
     * @param endX where a line ends; of a place, where it is
     * @param endY likewise
     * @param right how far to the right of it the mark stands, points
     * @param down how far below it, points
     * @param turned whether the joint runs along the wall rather than up
     * @param atEnd whether it belongs to an end of a horizontal
     */
    record Joint(
            double x,
            double y,
            double endX,
            double endY,
            double right,
            double down,
            boolean turned,
            boolean atEnd) {}

    private final Map<JointType, List<Joint>> joints = new EnumMap<>(JointType.class);
    private final List<Joint> ends = new ArrayList<>();
    private final SealDetails details;
    private final List<Double> across;
    private final List<Double> up;

    JointPlaces(SealsRequest request) {
        details = request.details();
        across = BayFrame.lines(request.columns());
        up = BayFrame.lines(request.rows());
        if (details.systemOrDefault() != WallSystem.STICK_BUILT) {
            new AssembledPlaces(request).joints().forEach(this::add);
            joints.getOrDefault(JointType.HORIZONTAL_TO_VERTICAL, List.of()).forEach(ends::add);
            return;
        }
        ends();
        fastenersAlongEdges();
        plates();
        breaks();
        edges();
    }

    /** Where joints of a type lie, as far as that is known. */
    List<Joint> of(JointType type) {
        return joints.getOrDefault(type, List.of());
    }

    /** One place at each end of each horizontal. */
    List<Joint> ofEnds() {
        return List.copyOf(ends);
    }

    private boolean open(Edge edge) {
        List<Edge> continuous = details.continuousEdges();
        return continuous == null || !continuous.contains(edge);
    }

    /** Verticals that are the frame's own: the last belongs to a neighbour on its right. */
    private List<Double> verticals() {
        return open(Edge.RIGHT) ? across : across.subList(0, across.size() - 1);
    }

    /** Horizontals that are the frame's own: the top one belongs to a neighbour above. */
    private List<Double> horizontals() {
        return open(Edge.TOP) ? up : up.subList(0, up.size() - 1);
    }

    private double width() {
        return across.get(across.size() - 1);
    }

    private double height() {
        return up.get(up.size() - 1);
    }

    private void put(
            JointType type, double x, double y, double right, double down, boolean turned) {
        add(type, new Joint(x, y, x, y, right, down, turned, false));
    }

    private void add(JointType type, List<Joint> all) {
        all.forEach(joint -> add(type, joint));
    }

    private void add(JointType type, Joint joint) {
        joints.computeIfAbsent(type, none -> new ArrayList<>()).add(joint);
    }

    private void ends() {
        for (double y : horizontals()) {
            for (int column = 1; column < across.size(); column++) {
                end(across.get(column - 1), y, 1);
                end(across.get(column), y, -1);
            }
        }
    }

    /** The joints at one end of a horizontal, which goes on in a direction. */
    private void end(double x, double y, int direction) {
        Integer heads = details.fastenersPerHorizontalEnd();
        ends.add(atEnd(x, y, direction * BESIDE, 0));
        add(JointType.HORIZONTAL_TO_VERTICAL, atEnd(x, y, direction * BESIDE, 0));
        if (details.drainage() == Drainage.PRESSURE_EQUALIZED) {
            add(JointType.JOINT_PLUG, atEnd(x, y, direction * BESIDE, UPWARD));
        }
        for (int i = 0; heads != null && heads <= MOST_HEADS && i < heads; i++) {
            double right = direction * (BESIDE - 1 + i * NEXT_HEAD);
            add(JointType.FASTENER_HEAD, atEnd(x, y, right, DOWNWARD));
        }
        if (details.pressurePlateLength() != null) {
            add(JointType.PRESSURE_PLATE_BUTT, atEnd(x, y, direction * FURTHER, 0));
        }
    }

    private static Joint atEnd(double x, double y, double right, double down) {
        return new Joint(x, y, x, y, right, down, false, true);
    }

    private void fastenersAlongEdges() {
        Double spacing = details.perimeterFastenerSpacing();
        if (spacing == null) {
            return;
        }
        for (int column = 1; column < across.size(); column++) {
            double from = across.get(column - 1);
            double length = across.get(column) - from;
            for (double at : middles(length, spacing)) {
                if (open(Edge.BOTTOM)) {
                    put(JointType.FASTENER_HEAD, from + at, 0, 0, FASTENERS, false);
                }
                if (open(Edge.TOP)) {
                    put(JointType.FASTENER_HEAD, from + at, height(), 0, -FASTENERS, false);
                }
            }
        }
        for (double at : middles(height(), spacing)) {
            if (open(Edge.LEFT)) {
                put(JointType.FASTENER_HEAD, 0, at, -FASTENERS, 0, false);
            }
            if (open(Edge.RIGHT)) {
                put(JointType.FASTENER_HEAD, width(), at, FASTENERS, 0, false);
            }
        }
    }

    /** Middles of the equal parts of a length that are no longer than a spacing. */
    private static List<Double> middles(double length, double spacing) {
        int count = pieces(length, spacing);
        List<Double> middles = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            middles.add((i + 0.5) * length / count);
        }
        return middles;
    }

    private static int pieces(double length, double stock) {
        return (int) Math.ceil(length / stock * (1 - ROUNDING));
    }

    private void plates() {
        Double stock = details.pressurePlateLength();
        if (stock == null) {
            return;
        }
        for (double y : horizontals()) {
            for (int column = 1; column < across.size(); column++) {
                double from = across.get(column - 1);
                for (int i = 1; i < pieces(across.get(column) - from, stock); i++) {
                    put(JointType.PRESSURE_PLATE_BUTT, from + i * stock, y, 0, 0, false);
                }
            }
        }
        List<Double> cuts = new ArrayList<>(list(details.splices()));
        cuts.addAll(list(details.stackJoints()));
        Collections.sort(cuts);
        for (double x : verticals()) {
            if (!open(Edge.BOTTOM)) {
                put(JointType.PRESSURE_PLATE_BUTT, x, 0, 0, FURTHER - 4, true);
            }
            double from = 0;
            for (int run = 0; run <= cuts.size(); run++) {
                double to = run < cuts.size() ? cuts.get(run) : height();
                for (int i = 1; i < pieces(to - from, stock); i++) {
                    put(JointType.PRESSURE_PLATE_BUTT, x, from + i * stock, 0, 0, true);
                }
                if (run < cuts.size()) {
                    put(JointType.PRESSURE_PLATE_BUTT, x, to, 0, BESIDE, true);
                }
                from = to;
            }
        }
    }

    private static List<Double> list(@Nullable List<Double> heights) {
        return heights == null ? List.of() : heights;
    }

    private void breaks() {
        for (double y : list(details.splices())) {
            verticals().forEach(x -> put(JointType.SPLICE, x, y, 0, 0, false));
        }
        for (double y : list(details.stackJoints())) {
            run(JointType.STACK_JOINT, 0, y, width(), y, 0, 0);
        }
    }

    private void run(
            JointType type,
            double x,
            double y,
            double endX,
            double endY,
            double right,
            double down) {
        add(type, new Joint(x, y, endX, endY, right, down, false, false));
    }

    private void edges() {
        if (open(Edge.BOTTOM)) {
            run(JointType.PERIMETER_SILL, 0, 0, width(), 0, 0, BEAD);
            if (open(Edge.LEFT)) {
                put(JointType.END_DAM, 0, 0, -FASTENERS, DOWNWARD, false);
            }
            if (open(Edge.RIGHT)) {
                put(JointType.END_DAM, width(), 0, FASTENERS, DOWNWARD, false);
            }
        }
        if (open(Edge.LEFT)) {
            run(JointType.PERIMETER_JAMB, 0, 0, 0, height(), -BEAD, 0);
        }
        if (open(Edge.RIGHT)) {
            run(JointType.PERIMETER_JAMB, width(), 0, width(), height(), BEAD, 0);
        }
        if (open(Edge.TOP)) {
            run(JointType.PERIMETER_HEAD, 0, height(), width(), height(), 0, -BEAD);
        }
    }
}
