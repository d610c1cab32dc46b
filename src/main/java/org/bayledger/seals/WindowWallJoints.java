package org.bayledger.seals;

import static org.bayledger.seals.JointTally.counted;
import static org.bayledger.seals.JointTally.pieces;
import static org.bayledger.seals.JointTally.sum;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.quantity.Dimension;

/**
 * Counts the joints of a window wall. Common practice, no source, for what follows:
 *
 * <ul>
 *   <li>every storey has a head and a sill of its own, each in a receptor along the whole frame;
 *   <li>a sill receptor has an end dam, and a head receptor a cap, where the wall ends;
 *   <li>receptors and slab-edge covers are cut to their stock length and never carried from one
 *       frame to the next: where the wall goes on at the left, a butt of theirs lies there;
 *   <li>each slab-edge cover is sealed along its lower and upper edge.
 * </ul>
 */
final class WindowWallJoints {

    private final JointTally tally;
    private final SealsRequest request;
    private final SealDetails details;

    WindowWallJoints(JointTally tally) {
        this.tally = tally;
        this.request = tally.request;
        this.details = tally.details;
    }

    void count() {
        WindowWallFrame frame = details.windowWall();
        if (frame == null) {
            tally.missing(
                    WallSystem.WINDOW_WALL.jointTypes().stream()
                            .filter(type -> type != JointType.ANCHOR_PENETRATION)
                            .toList(),
                    "windowWall",
                    "windowWall/slabRows");
            return;
        }
        Storeys storeys = Storeys.of(request.rows(), frame);
        endsOfHorizontals(storeys);
        fasteners(storeys);
        receptors(storeys, frame);
        slabs(storeys, frame);
    }

    private static String storeyWords(Storeys storeys) {
        return counted(storeys.storeys().size(), "storey", "storeys");
    }

    private String ends(Storeys storeys) {
        int rows = storeys.horizontals() - storeys.storeys().size();
        return "2 ends x %s x %s (%s + %s)"
                .formatted(
                        counted(tally.columns, "column", "columns"),
                        counted(storeys.horizontals(), "horizontal", "horizontals"),
                        counted(rows, "row", "rows"),
                        storeyWords(storeys));
    }

    private void endsOfHorizontals(Storeys storeys) {
        int ends = 2 * tally.columns * storeys.horizontals();
        String formula = ends(storeys) + " = " + ends;
        tally.each(JointType.HORIZONTAL_TO_VERTICAL, ends, formula);
        if (details.drainage() == Drainage.PRESSURE_EQUALIZED) {
            tally.each(JointType.JOINT_PLUG, ends, formula);
        } else {
            tally.each(
                    JointType.JOINT_PLUG,
                    0,
                    "0: in a drained wall the horizontals drain into the verticals");
        }
    }

    private void fasteners(Storeys storeys) {
        Integer atEnds = details.fastenersPerHorizontalEnd();
        Double spacing = details.perimeterFastenerSpacing();
        if (atEnds == null && spacing == null) {
            tally.missing(
                    JointType.FASTENER_HEAD,
                    "fastenersPerHorizontalEnd",
                    "fastenersPerHorizontalEnd and perimeterFastenerSpacing");
            return;
        }
        List<String> parts = new ArrayList<>();
        int count = 0;
        if (atEnds == null) {
            tally.partly(
                    "fastenersPerHorizontalEnd", "fastener heads at the ends of the horizontals");
        } else {
            int part = atEnds * 2 * tally.columns * storeys.horizontals();
            parts.add("%s x %d each = %d".formatted(ends(storeys), atEnds, part));
            count += part;
        }
        if (spacing == null) {
            tally.partly("perimeterFastenerSpacing", "fastener heads along receptors and jambs");
        } else {
            int receptors = 2 * storeys.storeys().size();
            int jambs = tally.open(Edge.LEFT) + tally.open(Edge.RIGHT);
            int part =
                    receptors * pieces(request.width(), spacing)
                            + jambs * sum(storeys.heights(), h -> pieces(h, spacing));
            parts.add(
                    "at %s or less, receptors 2 x %s x %d, jambs %d x (%s), together %d"
                            .formatted(
                                    tally.reporting.text(Dimension.LENGTH, spacing),
                                    storeyWords(storeys),
                                    pieces(request.width(), spacing),
                                    jambs,
                                    tally.terms(storeys.heights(), h -> pieces(h, spacing)),
                                    part));
            count += part;
        }
        tally.each(JointType.FASTENER_HEAD, count, String.join("; ", parts) + "; in all " + count);
    }

    private void receptors(Storeys storeys, WindowWallFrame frame) {
        int count = storeys.storeys().size();
        int sides = tally.open(Edge.LEFT) + tally.open(Edge.RIGHT);
        String ends =
                "%s x %s where the wall ends = %d"
                        .formatted(
                                storeyWords(storeys), counted(sides, "end", "ends"), count * sides);
        tally.each(JointType.END_DAM, count * sides, "sill receptors: " + ends);
        tally.each(JointType.END_CAP, count * sides, "head receptors: " + ends);
        tally.run(
                JointType.PERIMETER_SILL,
                count,
                "sill receptors, one each storey:",
                request.width());
        tally.run(
                JointType.PERIMETER_HEAD,
                count,
                "head receptors, one each storey:",
                request.width());
        double jambs = sides * storeys.heights().stream().mapToDouble(h -> h).sum();
        tally.add(
                JointType.PERIMETER_JAMB,
                sides * count,
                "%s x %d = %d"
                        .formatted(
                                counted(sides, "side", "sides") + " against the building",
                                count,
                                sides * count),
                jambs,
                "%d x (%s) = %s"
                        .formatted(
                                sides,
                                added(storeys.heights()),
                                tally.reporting.text(Dimension.DISTANCE, jambs)));
        Double stock = frame.receptorLength();
        if (stock == null) {
            tally.missing(
                    JointType.RECEPTOR_SPLICE,
                    "windowWall/receptorLength",
                    "windowWall/receptorLength");
        } else {
            int butts = tally.butts(stock);
            tally.each(
                    JointType.RECEPTOR_SPLICE,
                    2 * count * butts,
                    "2 receptors x %s x %s = %d"
                            .formatted(
                                    storeyWords(storeys), tally.buttSum(stock), 2 * count * butts));
        }
    }

    private void slabs(Storeys storeys, WindowWallFrame frame) {
        List<Double> covers = storeys.slabs().stream().map(Storeys.Band::height).toList();
        tally.run(
                JointType.SLAB_EDGE_JOINT,
                2 * covers.size(),
                "2 edges x %s ="
                        .formatted(counted(covers.size(), "slab-edge cover", "slab-edge covers")),
                request.width());
        Double stock = frame.slabCoverLength();
        if (covers.isEmpty()) {
            tally.run(JointType.SLAB_COVER_BUTT, 0, "no slab edge crosses the frame:", 0);
        } else if (stock == null) {
            tally.missing(
                    JointType.SLAB_COVER_BUTT,
                    "windowWall/slabCoverLength",
                    "windowWall/slabCoverLength");
        } else {
            int butts = tally.butts(stock);
            double length = butts * covers.stream().mapToDouble(h -> h).sum();
            tally.add(
                    JointType.SLAB_COVER_BUTT,
                    butts * covers.size(),
                    "%s x %s = %d"
                            .formatted(
                                    counted(covers.size(), "slab-edge cover", "slab-edge covers"),
                                    tally.buttSum(stock),
                                    butts * covers.size()),
                    length,
                    "%d x (%s) = %s"
                            .formatted(
                                    butts,
                                    added(covers),
                                    tally.reporting.text(Dimension.DISTANCE, length)));
        }
    }

    private String added(List<Double> lengths) {
        return String.join(
                " + ",
                lengths.stream()
                        .map(length -> tally.reporting.text(Dimension.DISTANCE, length))
                        .toList());
    }
}
