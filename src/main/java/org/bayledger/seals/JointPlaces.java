package org.bayledger.seals;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Where the joints of a frame are. The joints of a kind add up to its count, except for joint
 * covers and anchors, whose number is given and whose places are not, and for kinds that could not
 * be counted.
 */
public final class JointPlaces {

    private final SealsRequest request;
    private final SealDetails details;
    private final List<JointPlace> places = new ArrayList<>();

    private JointPlaces(SealsRequest request) {
        this.request = request;
        this.details = request.details();
    }

    /** The places of a frame's joints, kind by kind. */
    public static List<JointPlace> of(SealsRequest request) {
        JointPlaces found = new JointPlaces(request);
        switch (request.details().systemOrDefault()) {
            case STICK_BUILT -> found.stick();
            case UNITIZED -> found.unitized();
            case WINDOW_WALL -> found.windowWall();
        }
        return List.copyOf(found.places);
    }

    private void stick() {
        List<Double> levels = levels(0, request.rows());
        List<Double> uprights = uprights();
        if (details.continues(Edge.TOP)) {
            levels.remove(levels.size() - 1);
        }
        ends(levels, details.drainage() == Drainage.PRESSURE_EQUALIZED);
        along(JointType.FASTENER_HEAD, details.perimeterFastenerSpacing());
        plates(levels, uprights);
        if (details.splices() != null) {
            details.splices().forEach(y -> uprights.forEach(x -> point(JointType.SPLICE, 1, x, y)));
        }
        if (details.stackJoints() != null) {
            details.stackJoints().forEach(y -> across(JointType.STACK_JOINT, y));
        }
        perimeter();
    }

    private void ends(List<Double> levels, boolean plugs) {
        ends(levels, plugs, details.fastenersPerHorizontalEnd());
    }

    private void end(double x, double y, Edge side, boolean plug, @Nullable Integer fasteners) {
        at(JointType.HORIZONTAL_TO_VERTICAL, 1, x, y, side);
        if (plug) {
            at(JointType.JOINT_PLUG, 1, x, y, side);
        }
        if (fasteners != null) {
            at(JointType.FASTENER_HEAD, fasteners, x, y, side);
        }
    }

    private void plates(List<Double> levels, List<Double> uprights) {
        Double stock = details.pressurePlateLength();
        if (stock == null) {
            return;
        }
        for (double y : levels) {
            double x = 0;
            for (double column : request.columns()) {
                at(JointType.PRESSURE_PLATE_BUTT, 1, x, y, Edge.RIGHT);
                for (int i = 1; i < JointTally.pieces(column, stock); i++) {
                    point(JointType.PRESSURE_PLATE_BUTT, 1, x + i * stock, y);
                }
                x += column;
                at(JointType.PRESSURE_PLATE_BUTT, 1, x, y, Edge.LEFT);
            }
        }
        for (double x : uprights) {
            double y = 0;
            for (double run : StickJoints.runs(request)) {
                if (y > 0 || details.continues(Edge.BOTTOM)) {
                    point(JointType.PRESSURE_PLATE_BUTT, 1, x, y);
                }
                for (int i = 1; i < JointTally.pieces(run, stock); i++) {
                    point(JointType.PRESSURE_PLATE_BUTT, 1, x, y + i * stock);
                }
                y += run;
            }
        }
    }

    /** Fasteners along the edges of a stick-built frame that meet the building. */
    private void along(JointType type, @Nullable Double spacing) {
        if (spacing == null) {
            return;
        }
        double x = 0;
        for (double column : request.columns()) {
            if (!details.continues(Edge.BOTTOM)) {
                spread(type, spacing, x, 0, column, 0);
            }
            if (!details.continues(Edge.TOP)) {
                spread(type, spacing, x, request.height(), column, 0);
            }
            x += column;
        }
        sides().forEach(side -> spread(type, spacing, side, 0, 0, request.height()));
    }

    /** Points evenly spread along a line of length dx across or dy up. */
    private void spread(
            JointType type, double spacing, double x, double y, double dx, double dy) {
        int count = JointTally.pieces(dx + dy, spacing);
        for (int i = 0; i < count; i++) {
            double share = (i + 0.5) / count;
            point(type, 1, x + share * dx, y + share * dy);
        }
    }

    private void perimeter() {
        if (!details.continues(Edge.BOTTOM)) {
            sides().forEach(x -> point(JointType.END_DAM, 1, x, 0));
            across(JointType.PERIMETER_SILL, 0);
        }
        sides().forEach(x -> up(JointType.PERIMETER_JAMB, x, 0, request.height()));
        if (!details.continues(Edge.TOP)) {
            across(JointType.PERIMETER_HEAD, request.height());
        }
    }

    private void unitized() {
        perimeter();
        UnitizedFrame frame = details.unitized();
        Double stock = frame == null ? null : frame.starterSillLength();
        if (stock != null && !details.continues(Edge.BOTTOM)) {
            cuts(JointType.RECEPTOR_SPLICE, 0, stock);
        }
        List<Double> stacks = details.stackJoints();
        if (stacks == null) {
            return;
        }
        List<Double> tiers = new ArrayList<>(List.of(0.0));
        stacks.stream().filter(y -> y > SealsRequest.SAME).sorted().forEach(tiers::add);
        List<Double> gutters = new ArrayList<>(tiers);
        if (!details.continues(Edge.BOTTOM)) {
            gutters.remove(0);
        }
        for (double y : gutters) {
            across(JointType.STACK_JOINT, y);
            sides().forEach(x -> point(JointType.END_CAP, 1, x, y));
        }
        Integer fasteners = frame == null ? null : details.fastenersPerHorizontalEnd();
        List<Double> inner = levels(0, request.rows());
        inner.removeIf(
                y ->
                        y > request.height() - SealsRequest.SAME
                                || tiers.stream().anyMatch(t -> Math.abs(t - y) <= 0.001));
        ends(inner, false, fasteners);
        if (frame != null) {
            tiers.add(request.height());
            units(frame, tiers, gutters, fasteners);
        }
    }

    private void ends(List<Double> levels, boolean plugs, @Nullable Integer fasteners) {
        for (double y : levels) {
            double x = 0;
            for (double column : request.columns()) {
                end(x, y, Edge.RIGHT, plugs, fasteners);
                x += column;
                end(x, y, Edge.LEFT, plugs, fasteners);
            }
        }
    }

    private void units(
            UnitizedFrame frame,
            List<Double> tiers,
            List<Double> gutters,
            @Nullable Integer fasteners) {
        List<Double> lines = levels(0, request.columns());
        int column = 0;
        for (int unit = 0; unit < frame.units(); unit++) {
            double left = lines.get(column);
            if (unit > 0 || details.continues(Edge.LEFT)) {
                gutters.forEach(y -> point(JointType.SPLICE_SLEEVE, 1, left, y));
            }
            int last = column + frame.columnsPerUnit().get(unit);
            for (int tier = 1; tier < tiers.size(); tier++) {
                double bottom = tiers.get(tier - 1);
                double top = tiers.get(tier);
                if (unit > 0 || details.continues(Edge.LEFT)) {
                    up(JointType.UNIT_VERTICAL, left, bottom, top);
                }
                for (double y : List.of(bottom, top)) {
                    Edge side = y == bottom ? Edge.TOP : Edge.BOTTOM;
                    shop(JointType.FRAME_CORNER, left, y, Edge.RIGHT, fasteners);
                    shop(JointType.FRAME_CORNER, lines.get(last), y, Edge.LEFT, fasteners);
                    for (double x : lines.subList(column + 1, last)) {
                        shop(JointType.VERTICAL_TO_HORIZONTAL, x, y, side, fasteners);
                    }
                }
            }
            column = last;
        }
    }

    private void shop(JointType type, double x, double y, Edge side, @Nullable Integer fasteners) {
        at(type, 1, x, y, side);
        if (fasteners != null) {
            at(JointType.FASTENER_HEAD, fasteners, x, y, side);
        }
    }

    private void windowWall() {
        WindowWallFrame frame = details.windowWall();
        if (frame == null) {
            return;
        }
        Storeys storeys = Storeys.of(request.rows(), frame);
        boolean plugs = details.drainage() == Drainage.PRESSURE_EQUALIZED;
        for (Storeys.Band storey : storeys.storeys()) {
            double top = storey.bottom() + storey.height();
            ends(levels(storey.bottom(), storey.rows()), plugs);
            across(JointType.PERIMETER_SILL, storey.bottom());
            across(JointType.PERIMETER_HEAD, top);
            for (double x : sides()) {
                point(JointType.END_DAM, 1, x, storey.bottom());
                point(JointType.END_CAP, 1, x, top);
                up(JointType.PERIMETER_JAMB, x, storey.bottom(), top);
            }
            for (double y : List.of(storey.bottom(), top)) {
                if (frame.receptorLength() != null) {
                    cuts(JointType.RECEPTOR_SPLICE, y, frame.receptorLength());
                }
            }
            Double spacing = details.perimeterFastenerSpacing();
            if (spacing != null) {
                JointType type = JointType.FASTENER_HEAD;
                spread(type, spacing, 0, storey.bottom(), request.width(), 0);
                spread(type, spacing, 0, top, request.width(), 0);
                sides().forEach(
                                x ->
                                        spread(
                                                type,
                                                spacing,
                                                x,
                                                storey.bottom(),
                                                0,
                                                storey.height()));
            }
        }
        storeys.slabs().forEach(slab -> slab(slab, frame.slabCoverLength()));
    }

    private void slab(Storeys.Band slab, @Nullable Double stock) {
        double top = slab.bottom() + slab.height();
        across(JointType.SLAB_EDGE_JOINT, slab.bottom());
        across(JointType.SLAB_EDGE_JOINT, top);
        if (stock != null) {
            buttsAcross(stock)
                    .forEach(x -> up(JointType.SLAB_COVER_BUTT, x, slab.bottom(), top));
        }
    }

    private void cuts(JointType type, double y, double stock) {
        buttsAcross(stock).forEach(x -> point(type, 1, x, y));
    }

    /** Where lengths that run across the frame butt. */
    private List<Double> buttsAcross(double stock) {
        List<Double> butts = new ArrayList<>();
        for (int i = 0; i < JointTally.pieces(request.width(), stock); i++) {
            if (i > 0 || details.continues(Edge.LEFT)) {
                butts.add(i * stock);
            }
        }
        return butts;
    }

    /** Left and right edges that meet the building. */
    private List<Double> sides() {
        List<Double> sides = new ArrayList<>();
        if (!details.continues(Edge.LEFT)) {
            sides.add(0.0);
        }
        if (!details.continues(Edge.RIGHT)) {
            sides.add(request.width());
        }
        return sides;
    }

    private List<Double> uprights() {
        List<Double> lines = levels(0, request.columns());
        if (details.continues(Edge.RIGHT)) {
            lines.remove(lines.size() - 1);
        }
        return lines;
    }

    /** The lines that part lengths laid end to end, both ends included. */
    private static List<Double> levels(double start, List<Double> lengths) {
        List<Double> lines = new ArrayList<>();
        double at = start;
        lines.add(at);
        for (double length : lengths) {
            at += length;
            lines.add(at);
        }
        return lines;
    }

    private void across(JointType type, double y) {
        places.add(new JointPlace(type, 1, 0, y, request.width(), y, null));
    }

    private void up(JointType type, double x, double from, double to) {
        places.add(new JointPlace(type, 1, x, from, x, to, null));
    }

    private void point(JointType type, int joints, double x, double y) {
        at(type, joints, x, y, null);
    }

    private void at(JointType type, int joints, double x, double y, @Nullable Edge side) {
        if (joints > 0) {
            places.add(new JointPlace(type, joints, x, y, x, y, side));
        }
    }
}
