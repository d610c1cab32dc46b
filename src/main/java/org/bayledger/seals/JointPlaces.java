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
    private final PlaceList list;

    private JointPlaces(SealsRequest request) {
        this.request = request;
        this.details = request.details();
        this.list = new PlaceList(request);
    }

    /** The places of a frame's joints, kind by kind. */
    public static List<JointPlace> of(SealsRequest request) {
        JointPlaces found = new JointPlaces(request);
        switch (request.details().systemOrDefault()) {
            case STICK_BUILT -> found.stick();
            case UNITIZED -> found.unitized();
            case WINDOW_WALL -> found.windowWall();
        }
        return found.list.places();
    }

    private void stick() {
        List<Double> levels = PlaceList.levels(0, request.rows());
        List<Double> uprights = uprights();
        if (details.continues(Edge.TOP)) {
            levels.remove(levels.size() - 1);
        }
        list.ends(levels, details.drainage() == Drainage.PRESSURE_EQUALIZED);
        along(JointType.FASTENER_HEAD, details.perimeterFastenerSpacing());
        plates(levels, uprights);
        if (details.splices() != null) {
            details.splices()
                    .forEach(y -> uprights.forEach(x -> list.point(JointType.SPLICE, 1, x, y)));
        }
        if (details.stackJoints() != null) {
            details.stackJoints().forEach(y -> list.across(JointType.STACK_JOINT, y));
        }
        list.perimeter();
    }

    private void plates(List<Double> levels, List<Double> uprights) {
        Double stock = details.pressurePlateLength();
        if (stock == null) {
            return;
        }
        for (double y : levels) {
            double x = 0;
            for (double column : request.columns()) {
                list.at(JointType.PRESSURE_PLATE_BUTT, 1, x, y, Edge.RIGHT);
                for (int i = 1; i < JointTally.pieces(column, stock); i++) {
                    list.point(JointType.PRESSURE_PLATE_BUTT, 1, x + i * stock, y);
                }
                x += column;
                list.at(JointType.PRESSURE_PLATE_BUTT, 1, x, y, Edge.LEFT);
            }
        }
        for (double x : uprights) {
            double y = 0;
            for (double run : StickJoints.runs(request)) {
                if (y > 0 || details.continues(Edge.BOTTOM)) {
                    list.point(JointType.PRESSURE_PLATE_BUTT, 1, x, y);
                }
                for (int i = 1; i < JointTally.pieces(run, stock); i++) {
                    list.point(JointType.PRESSURE_PLATE_BUTT, 1, x, y + i * stock);
                }
                y += run;
            }
        }
    }

    private void unitized() {
        list.perimeter();
        UnitizedFrame frame = details.unitized();
        Double stock = frame == null ? null : frame.starterSillLength();
        if (stock != null && !details.continues(Edge.BOTTOM)) {
            list.cuts(JointType.RECEPTOR_SPLICE, 0, stock);
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
            list.across(JointType.STACK_JOINT, y);
            list.sides().forEach(x -> list.point(JointType.END_CAP, 1, x, y));
        }
        Integer fasteners = frame == null ? null : details.fastenersPerHorizontalEnd();
        List<Double> inner = PlaceList.levels(0, request.rows());
        inner.removeIf(
                y ->
                        y > request.height() - SealsRequest.SAME
                                || tiers.stream().anyMatch(t -> Math.abs(t - y) <= 0.001));
        list.ends(inner, false, fasteners);
        if (frame != null) {
            tiers.add(request.height());
            units(frame, tiers, gutters, fasteners);
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
                list.spread(type, spacing, x, 0, column, 0);
            }
            if (!details.continues(Edge.TOP)) {
                list.spread(type, spacing, x, request.height(), column, 0);
            }
            x += column;
        }
        list.sides().forEach(side -> list.spread(type, spacing, side, 0, 0, request.height()));
    }

    private void units(
            UnitizedFrame frame,
            List<Double> tiers,
            List<Double> gutters,
            @Nullable Integer fasteners) {
        List<Double> lines = PlaceList.levels(0, request.columns());
        int column = 0;
        for (int unit = 0; unit < frame.units(); unit++) {
            double left = lines.get(column);
            if (unit > 0 || details.continues(Edge.LEFT)) {
                gutters.forEach(y -> list.point(JointType.SPLICE_SLEEVE, 1, left, y));
            }
            int last = column + frame.columnsPerUnit().get(unit);
            for (int tier = 1; tier < tiers.size(); tier++) {
                double bottom = tiers.get(tier - 1);
                double top = tiers.get(tier);
                if (unit > 0 || details.continues(Edge.LEFT)) {
                    list.up(JointType.UNIT_VERTICAL, left, bottom, top);
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
        list.at(type, 1, x, y, side);
        if (fasteners != null) {
            list.at(JointType.FASTENER_HEAD, fasteners, x, y, side);
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
            list.ends(PlaceList.levels(storey.bottom(), storey.rows()), plugs);
            list.across(JointType.PERIMETER_SILL, storey.bottom());
            list.across(JointType.PERIMETER_HEAD, top);
            for (double x : list.sides()) {
                list.point(JointType.END_DAM, 1, x, storey.bottom());
                list.point(JointType.END_CAP, 1, x, top);
                list.up(JointType.PERIMETER_JAMB, x, storey.bottom(), top);
            }
            for (double y : List.of(storey.bottom(), top)) {
                if (frame.receptorLength() != null) {
                    list.cuts(JointType.RECEPTOR_SPLICE, y, frame.receptorLength());
                }
            }
            Double spacing = details.perimeterFastenerSpacing();
            if (spacing != null) {
                JointType type = JointType.FASTENER_HEAD;
                list.spread(type, spacing, 0, storey.bottom(), request.width(), 0);
                list.spread(type, spacing, 0, top, request.width(), 0);
                list.sides()
                        .forEach(
                                x ->
                                        list.spread(
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
        list.across(JointType.SLAB_EDGE_JOINT, slab.bottom());
        list.across(JointType.SLAB_EDGE_JOINT, top);
        if (stock != null) {
            list.buttsAcross(stock)
                    .forEach(x -> list.up(JointType.SLAB_COVER_BUTT, x, slab.bottom(), top));
        }
    }

    private List<Double> uprights() {
        List<Double> lines = PlaceList.levels(0, request.columns());
        if (details.continues(Edge.RIGHT)) {
            lines.remove(lines.size() - 1);
        }
        return lines;
    }
}
