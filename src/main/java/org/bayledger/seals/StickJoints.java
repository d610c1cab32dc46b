package org.bayledger.seals;

import static org.bayledger.seals.JointTally.counted;
import static org.bayledger.seals.JointTally.pieces;
import static org.bayledger.seals.JointTally.sum;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.bayledger.quantity.Dimension;

/**
 * Counts the joints of a stick-built frame with pressure plates. The verticals run through; each
 * horizontal is n pieces, each with two ends. Common practice, no source, for what follows:
 *
 * <ul>
 *   <li>plates of verticals run through, are cut to their stock length and are never carried across
 *       a splice or a stack joint, nor from one frame to the next above; plates of horizontals butt
 *       against them at each end;
 *   <li>fasteners along a piece stand half a spacing from its ends at most: length over spacing,
 *       rounded up;
 *   <li>a sill flashing has an end dam where the sill ends, not where the wall goes on.
 * </ul>
 */
final class StickJoints {

    private final JointTally tally;
    private final SealsRequest request;
    private final SealDetails details;
    private final int columns;
    private final int verticals;
    private final int horizontals;

    StickJoints(JointTally tally) {
        this.tally = tally;
        this.request = tally.request;
        this.details = tally.details;
        this.columns = tally.columns;
        this.verticals = columns + tally.open(Edge.RIGHT);
        this.horizontals = request.rows().size() + tally.open(Edge.TOP);
    }

    void count() {
        endsOfHorizontals();
        fasteners();
        plates();
        breaksOfVerticals();
        tally.given(JointType.JOINT_COVER, details.jointCovers(), "jointCovers");
        JointCounts.perimeter(tally);
    }

    private String ends() {
        return "2 ends x "
                + counted(columns, "column", "columns")
                + " x "
                + counted(horizontals, "horizontal", "horizontals");
    }

    private void endsOfHorizontals() {
        int ends = 2 * columns * horizontals;
        tally.each(JointType.HORIZONTAL_TO_VERTICAL, ends, ends() + " = " + ends);
        if (details.drainage() == Drainage.PRESSURE_EQUALIZED) {
            tally.each(JointType.JOINT_PLUG, ends, ends() + " = " + ends);
        } else {
            tally.each(
                    JointType.JOINT_PLUG,
                    0,
                    "0: in a drained wall the horizontals drain into the verticals");
        }
    }

    private void fasteners() {
        Integer atEnds = details.fastenersPerHorizontalEnd();
        Double spacing = details.perimeterFastenerSpacing();
        int edges = tally.open(Edge.TOP) + tally.open(Edge.BOTTOM);
        int jambs = tally.open(Edge.LEFT) + tally.open(Edge.RIGHT);
        boolean perimeter = edges + jambs > 0;
        if (atEnds == null && (spacing == null || !perimeter)) {
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
            int part = atEnds * 2 * columns * horizontals;
            parts.add(ends() + " x " + atEnds + " each = " + part);
            count += part;
        }
        if (perimeter && spacing == null) {
            tally.partly("perimeterFastenerSpacing", "fastener heads along head, jambs and sill");
        } else if (perimeter && spacing != null) {
            List<Double> jamb = List.of(request.height());
            int part =
                    edges * sum(request.columns(), c -> pieces(c, spacing))
                            + jambs * sum(jamb, h -> pieces(h, spacing));
            parts.add(
                    "at "
                            + tally.reporting.text(Dimension.LENGTH, spacing)
                            + " or less, head and sill "
                            + edges
                            + " x ("
                            + tally.terms(request.columns(), c -> pieces(c, spacing))
                            + "), jambs "
                            + jambs
                            + " x ("
                            + tally.terms(jamb, h -> pieces(h, spacing))
                            + "), together "
                            + part);
            count += part;
        }
        tally.each(JointType.FASTENER_HEAD, count, String.join("; ", parts) + "; in all " + count);
    }

    private void plates() {
        Double stock = details.pressurePlateLength();
        if (stock == null) {
            tally.missing(
                    JointType.PRESSURE_PLATE_BUTT, "pressurePlateLength", "pressurePlateLength");
            return;
        }
        int crossings = 2 * columns * horizontals;
        int along = horizontals * sum(request.columns(), c -> pieces(c, stock) - 1);
        List<Double> runs = runs(request);
        int breaks = runs.size() - 1 + (details.continues(Edge.BOTTOM) ? 1 : 0);
        int upright = verticals * (breaks + sum(runs, r -> pieces(r, stock) - 1));
        int count = crossings + along + upright;
        tally.each(
                JointType.PRESSURE_PLATE_BUTT,
                count,
                "at crossings "
                        + ends()
                        + " = "
                        + crossings
                        + "; plates of "
                        + tally.reporting.text(Dimension.DISTANCE, stock)
                        + " along "
                        + counted(horizontals, "horizontal", "horizontals")
                        + " x ("
                        + tally.terms(request.columns(), c -> pieces(c, stock) - 1)
                        + ") = "
                        + along
                        + "; along "
                        + counted(verticals, "vertical", "verticals")
                        + " x ("
                        + breaks
                        + " at splices, stack joints and a continuous sill + "
                        + tally.terms(runs, r -> pieces(r, stock) - 1)
                        + ") = "
                        + upright
                        + "; in all "
                        + count);
    }

    private void breaksOfVerticals() {
        List<Double> splices = details.splices();
        if (splices == null) {
            tally.missing(
                    JointType.SPLICE, "splices", "splices, and with them where plates are cut");
        } else {
            int count = splices.size() * verticals;
            String formula =
                    counted(splices.size(), "height", "heights")
                            + " x "
                            + counted(verticals, "vertical", "verticals")
                            + " = "
                            + count;
            tally.each(JointType.SPLICE, count, formula);
        }
        List<Double> stacks = details.stackJoints();
        if (stacks == null) {
            tally.missing(
                    JointType.STACK_JOINT,
                    "stackJoints",
                    "stackJoints, and with them where plates are cut");
        } else {
            tally.run(JointType.STACK_JOINT, stacks.size(), "stackJoints lists", request.width());
        }
    }

    /** Lengths of the verticals between splices and stack joints, from the sill up, m. */
    static List<Double> runs(SealsRequest request) {
        SealDetails details = request.details();
        List<Double> cuts = new ArrayList<>();
        cuts.add(0.0);
        if (details.splices() != null) {
            cuts.addAll(details.splices());
        }
        if (details.stackJoints() != null) {
            // one on the sill is where every run begins
            details.stackJoints().stream().filter(at -> at > SealsRequest.SAME).forEach(cuts::add);
        }
        cuts.add(request.height());
        Collections.sort(cuts);
        return IntStream.range(1, cuts.size())
                .mapToObj(i -> cuts.get(i) - cuts.get(i - 1))
                .toList();
    }
}
