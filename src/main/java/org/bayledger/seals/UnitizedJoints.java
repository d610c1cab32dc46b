package org.bayledger.seals;

import static org.bayledger.seals.JointTally.counted;

import java.util.List;
import org.bayledger.quantity.Dimension;

/**
 * Counts the joints of a frame of units. Common practice, no source, for what follows:
 *
 * <ul>
 *   <li>a unit's frame has four corners; its inner verticals run from sill to head, and its inner
 *       horizontals are a piece in each column;
 *   <li>the heads of a tier make the gutter of the stack joint above it; a sleeve carries it from
 *       unit to unit, and a cap closes it where the wall ends;
 *   <li>the lowest tier stands in a starter sill with an end dam at each end;
 *   <li>there are no pressure plates, joint plugs or covers.
 * </ul>
 */
final class UnitizedJoints {

    private static final String NO_TIERS = "stackJoints, which part the frame into tiers of units";
    private static final String NO_UNITS = "unitized/columnsPerUnit and stackJoints";

    private final JointTally tally;
    private final SealsRequest request;
    private final SealDetails details;

    UnitizedJoints(JointTally tally) {
        this.tally = tally;
        this.request = tally.request;
        this.details = tally.details;
    }

    void count() {
        JointCounts.perimeter(tally);
        starterSill();
        List<Double> stacks = details.stackJoints();
        if (stacks == null) {
            tally.missing(
                    List.of(
                            JointType.HORIZONTAL_TO_VERTICAL,
                            JointType.END_CAP,
                            JointType.STACK_JOINT),
                    "stackJoints",
                    NO_TIERS);
        } else {
            ofTiers(tiers(stacks));
        }
        UnitizedFrame frame = details.unitized();
        if (stacks == null || frame == null) {
            String property = frame == null ? "unitized" : "stackJoints";
            tally.missing(
                    List.of(
                            JointType.FRAME_CORNER,
                            JointType.VERTICAL_TO_HORIZONTAL,
                            JointType.FASTENER_HEAD,
                            JointType.UNIT_VERTICAL,
                            JointType.SPLICE_SLEEVE),
                    property,
                    NO_UNITS + ", the fasteners from fastenersPerHorizontalEnd as well");
        } else {
            ofUnits(tiers(stacks), frame.units());
        }
    }

    /** Tiers of units: one more than the stack joints above the sill. */
    static int tiers(List<Double> stacks) {
        return 1 + (int) stacks.stream().filter(at -> at > SealsRequest.SAME).count();
    }

    private int gutters(int tiers) {
        return tiers - tally.open(Edge.BOTTOM);
    }

    private String gutterSum(int tiers) {
        return "%s = %s between tiers + %d at a lower edge at which the wall goes on"
                .formatted(
                        counted(gutters(tiers), "gutter", "gutters"),
                        tiers - 1,
                        1 - tally.open(Edge.BOTTOM));
    }

    private void ofTiers(int tiers) {
        int inner = request.rows().size() - tiers;
        int ends = 2 * tally.columns * inner;
        tally.each(
                JointType.HORIZONTAL_TO_VERTICAL,
                ends,
                "2 ends x %s x %s (%s - %s) = %d"
                        .formatted(
                                counted(tally.columns, "column", "columns"),
                                counted(inner, "inner horizontal", "inner horizontals"),
                                counted(request.rows().size(), "row", "rows"),
                                counted(tiers, "tier", "tiers"),
                                ends));
        tally.run(
                JointType.STACK_JOINT,
                gutters(tiers),
                gutterSum(tiers) + "; lines closed by gaskets:",
                request.width());
        int sides = tally.open(Edge.LEFT) + tally.open(Edge.RIGHT);
        int caps = gutters(tiers) * sides;
        tally.each(
                JointType.END_CAP,
                caps,
                "%s; x %s where the wall ends = %d"
                        .formatted(gutterSum(tiers), counted(sides, "end", "ends"), caps));
    }

    private void ofUnits(int tiers, int units) {
        String all = "%s x %s".formatted(counted(units, "unit", "units"), tierWords(tiers));
        int corners = 4 * units * tiers;
        tally.each(JointType.FRAME_CORNER, corners, "4 corners x %s = %d".formatted(all, corners));
        int inner = tally.columns - units;
        int ends = 2 * inner * tiers;
        tally.each(
                JointType.VERTICAL_TO_HORIZONTAL,
                ends,
                "2 ends x %s (%s - %s) x %s = %d"
                        .formatted(
                                counted(inner, "inner vertical", "inner verticals"),
                                counted(tally.columns, "column", "columns"),
                                counted(units, "unit", "units"),
                                tierWords(tiers),
                                ends));
        int meetings = units - tally.open(Edge.LEFT);
        String met =
                "(%d between %s + %d at a left edge at which the wall goes on)"
                        .formatted(
                                units - 1,
                                counted(units, "unit", "units"),
                                1 - tally.open(Edge.LEFT));
        double length = meetings * request.height();
        tally.add(
                JointType.UNIT_VERTICAL,
                meetings * tiers,
                "%s x %s = %d, closed by gaskets"
                        .formatted(met, tierWords(tiers), meetings * tiers),
                length,
                "%d x %s = %s"
                        .formatted(
                                meetings,
                                tally.reporting.text(Dimension.DISTANCE, request.height()),
                                tally.reporting.text(Dimension.DISTANCE, length)));
        int sleeves = meetings * gutters(tiers);
        tally.each(
                JointType.SPLICE_SLEEVE,
                sleeves,
                "%s; x %s = %d".formatted(gutterSum(tiers), met, sleeves));
        fasteners(corners, ends, 2 * tally.columns * (request.rows().size() - tiers));
    }

    private void fasteners(int corners, int ofVerticals, int ofHorizontals) {
        Integer each = details.fastenersPerHorizontalEnd();
        if (each == null) {
            tally.missing(
                    JointType.FASTENER_HEAD,
                    "fastenersPerHorizontalEnd",
                    "fastenersPerHorizontalEnd");
            return;
        }
        int count = each * (corners + ofHorizontals + ofVerticals);
        tally.each(
                JointType.FASTENER_HEAD,
                count,
                "(%d corners + %d ends of inner horizontals + %d ends of inner verticals) x %d each = %d"
                        .formatted(corners, ofHorizontals, ofVerticals, each, count));
    }

    private void starterSill() {
        UnitizedFrame frame = details.unitized();
        Double stock = frame == null ? null : frame.starterSillLength();
        if (details.continues(Edge.BOTTOM)) {
            tally.each(JointType.RECEPTOR_SPLICE, 0, "0: the wall goes on below, without a sill");
        } else if (stock == null) {
            tally.missing(
                    JointType.RECEPTOR_SPLICE,
                    frame == null ? "unitized" : "unitized/starterSillLength",
                    "unitized/starterSillLength");
        } else {
            int butts = tally.butts(stock);
            tally.each(
                    JointType.RECEPTOR_SPLICE,
                    butts,
                    "starter sill: %s = %d".formatted(tally.buttSum(stock), butts));
        }
    }

    private static String tierWords(int tiers) {
        return counted(tiers, "tier", "tiers");
    }
}
