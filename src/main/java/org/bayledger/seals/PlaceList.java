package org.bayledger.seals;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The places of a frame's joints while they are being put down, and what all systems share. */
final class PlaceList {

    private final SealsRequest request;
    private final SealDetails details;
    private final List<JointPlace> places = new ArrayList<>();

    PlaceList(SealsRequest request) {
        this.request = request;
        this.details = request.details();
    }

    List<JointPlace> places() {
        return List.copyOf(places);
    }

    void ends(List<Double> levels, boolean plugs) {
        ends(levels, plugs, details.fastenersPerHorizontalEnd());
    }

    void end(double x, double y, Edge side, boolean plug, @Nullable Integer fasteners) {
        at(JointType.HORIZONTAL_TO_VERTICAL, 1, x, y, side);
        if (plug) {
            at(JointType.JOINT_PLUG, 1, x, y, side);
        }
        if (fasteners != null) {
            at(JointType.FASTENER_HEAD, fasteners, x, y, side);
        }
    }

    void ends(List<Double> levels, boolean plugs, @Nullable Integer fasteners) {
        for (double y : levels) {
            double x = 0;
            for (double column : request.columns()) {
                end(x, y, Edge.RIGHT, plugs, fasteners);
                x += column;
                end(x, y, Edge.LEFT, plugs, fasteners);
            }
        }
    }

    /** Points evenly spread along a line of length dx across or dy up. */
    void spread(JointType type, double spacing, double x, double y, double dx, double dy) {
        int count = JointTally.pieces(dx + dy, spacing);
        for (int i = 0; i < count; i++) {
            double share = (i + 0.5) / count;
            point(type, 1, x + share * dx, y + share * dy);
        }
    }

    void perimeter() {
        if (!details.continues(Edge.BOTTOM)) {
            sides().forEach(x -> point(JointType.END_DAM, 1, x, 0));
            across(JointType.PERIMETER_SILL, 0);
        }
        sides().forEach(x -> up(JointType.PERIMETER_JAMB, x, 0, request.height()));
        if (!details.continues(Edge.TOP)) {
            across(JointType.PERIMETER_HEAD, request.height());
        }
    }

    void cuts(JointType type, double y, double stock) {
        buttsAcross(stock).forEach(x -> point(type, 1, x, y));
    }

    /** Where lengths that run across the frame butt. */
    List<Double> buttsAcross(double stock) {
        List<Double> butts = new ArrayList<>();
        for (int i = 0; i < JointTally.pieces(request.width(), stock); i++) {
            if (i > 0 || details.continues(Edge.LEFT)) {
                butts.add(i * stock);
            }
        }
        return butts;
    }

    /** Left and right edges that meet the building. */
    List<Double> sides() {
        List<Double> sides = new ArrayList<>();
        if (!details.continues(Edge.LEFT)) {
            sides.add(0.0);
        }
        if (!details.continues(Edge.RIGHT)) {
            sides.add(request.width());
        }
        return sides;
    }

    /** The lines that part lengths laid end to end, both ends included. */
    static List<Double> levels(double start, List<Double> lengths) {
        List<Double> lines = new ArrayList<>();
        double at = start;
        lines.add(at);
        for (double length : lengths) {
            at += length;
            lines.add(at);
        }
        return lines;
    }

    void across(JointType type, double y) {
        places.add(new JointPlace(type, 1, 0, y, request.width(), y, null));
    }

    void up(JointType type, double x, double from, double to) {
        places.add(new JointPlace(type, 1, x, from, x, to, null));
    }

    void point(JointType type, int joints, double x, double y) {
        at(type, joints, x, y, null);
    }

    void at(JointType type, int joints, double x, double y, @Nullable Edge side) {
        if (joints > 0) {
            places.add(new JointPlace(type, joints, x, y, x, y, side));
        }
    }
}
