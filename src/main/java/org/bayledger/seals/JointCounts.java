package org.bayledger.seals;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.bayledger.check.Finding;
import org.bayledger.check.Reporting;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * Counts the joints of a stick-built frame with pressure plates.
 *
 * <p>A frame of n columns and m rows has n + 1 verticals and m + 1 horizontals. The verticals run
 * through; each horizontal is n pieces, each with two ends. Where the wall goes on, the vertical at
 * a shared edge belongs to the frame on its right and the horizontal to the frame above it, so that
 * the frames of a wall add up. Common practice, no source, for what follows:
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
final class JointCounts {

    /** What a length may exceed a whole number of stock lengths by and still be it. */
    private static final double ROUNDING = 1e-9;

    private final SealsRequest request;
    private final SealDetails details;
    private final Reporting reporting;
    private final int columns;
    private final int verticals;
    private final int horizontals;
    private final Map<JointType, JointCount> counts = new LinkedHashMap<>();
    private final List<JointType> notCounted = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();

    JointCounts(SealsRequest request, Reporting reporting) {
        this.request = request;
        this.details = request.details();
        this.reporting = reporting;
        this.columns = request.columns().size();
        this.verticals = columns + (details.continues(Edge.RIGHT) ? 0 : 1);
        this.horizontals = request.rows().size() + (details.continues(Edge.TOP) ? 0 : 1);
        endsOfHorizontals();
        fasteners();
        plates();
        breaksOfVerticals();
        given(JointType.JOINT_COVER, details.jointCovers(), "jointCovers");
        given(JointType.ANCHOR_PENETRATION, details.anchorPenetrations(), "anchorPenetrations");
        perimeter();
    }

    /** The kinds that could be counted, in the order of their steps. */
    List<JointCount> counts() {
        return counts.values().stream()
                .sorted(Comparator.comparingInt(count -> count.type().step()))
                .toList();
    }

    /** The kinds that could not, in the order of their steps. */
    List<JointType> notCounted() {
        return notCounted.stream().sorted().toList();
    }

    /** What to say of counts that are missing or incomplete; each needs somebody's action. */
    List<Finding> findings() {
        return List.copyOf(findings);
    }

    private String ends() {
        return "2 ends x %s x %s"
                .formatted(
                        counted(columns, "column", "columns"),
                        counted(horizontals, "horizontal", "horizontals"));
    }

    private void endsOfHorizontals() {
        int ends = 2 * columns * horizontals;
        each(JointType.HORIZONTAL_TO_VERTICAL, ends, ends() + " = " + ends);
        if (details.drainage() == Drainage.PRESSURE_EQUALIZED) {
            each(JointType.JOINT_PLUG, ends, ends() + " = " + ends);
        } else {
            each(
                    JointType.JOINT_PLUG,
                    0,
                    "0: in a drained wall the horizontals drain into the verticals");
        }
    }

    private void fasteners() {
        Integer atEnds = details.fastenersPerHorizontalEnd();
        Double spacing = details.perimeterFastenerSpacing();
        boolean perimeter = !details.continues(Edge.TOP) || !details.continues(Edge.BOTTOM);
        perimeter |= !details.continues(Edge.LEFT) || !details.continues(Edge.RIGHT);
        if (atEnds == null && (spacing == null || !perimeter)) {
            missing(
                    JointType.FASTENER_HEAD,
                    "fastenersPerHorizontalEnd",
                    "fastenersPerHorizontalEnd and perimeterFastenerSpacing");
            return;
        }
        List<String> parts = new ArrayList<>();
        int count = 0;
        if (atEnds == null) {
            partly("fastenersPerHorizontalEnd", "fastener heads at the ends of the horizontals");
        } else {
            int part = atEnds * 2 * columns * horizontals;
            parts.add("%s x %d each = %d".formatted(ends(), atEnds, part));
            count += part;
        }
        if (perimeter && spacing == null) {
            partly("perimeterFastenerSpacing", "fastener heads along head, jambs and sill");
        } else if (perimeter && spacing != null) {
            int edges = open(Edge.TOP) + open(Edge.BOTTOM);
            int jambs = open(Edge.LEFT) + open(Edge.RIGHT);
            List<Double> jamb = List.of(request.height());
            int part =
                    edges * sum(request.columns(), c -> pieces(c, spacing))
                            + jambs * sum(jamb, h -> pieces(h, spacing));
            parts.add(
                    "at %s or less, head and sill %d x (%s), jambs %d x (%s), together %d"
                            .formatted(
                                    reporting.text(Dimension.LENGTH, spacing),
                                    edges,
                                    terms(request.columns(), c -> pieces(c, spacing)),
                                    jambs,
                                    terms(jamb, h -> pieces(h, spacing)),
                                    part));
            count += part;
        }
        each(JointType.FASTENER_HEAD, count, String.join("; ", parts) + "; in all " + count);
    }

    private void plates() {
        Double stock = details.pressurePlateLength();
        if (stock == null) {
            missing(JointType.PRESSURE_PLATE_BUTT, "pressurePlateLength", "pressurePlateLength");
            return;
        }
        int crossings = 2 * columns * horizontals;
        int along = horizontals * sum(request.columns(), c -> pieces(c, stock) - 1);
        List<Double> runs = runs();
        int breaks = runs.size() - 1 + (details.continues(Edge.BOTTOM) ? 1 : 0);
        int upright = verticals * (breaks + sum(runs, r -> pieces(r, stock) - 1));
        int count = crossings + along + upright;
        String formula =
                "at crossings %s = %d; plates of %s along %s x (%s) = %d; along %s x (%d at splices,"
                        + " stack joints and a continuous sill + %s) = %d; in all %d";
        each(
                JointType.PRESSURE_PLATE_BUTT,
                count,
                formula.formatted(
                        ends(),
                        crossings,
                        reporting.text(Dimension.DISTANCE, stock),
                        counted(horizontals, "horizontal", "horizontals"),
                        terms(request.columns(), c -> pieces(c, stock) - 1),
                        along,
                        counted(verticals, "vertical", "verticals"),
                        breaks,
                        terms(runs, r -> pieces(r, stock) - 1),
                        upright,
                        count));
    }

    private void breaksOfVerticals() {
        List<Double> splices = details.splices();
        if (splices == null) {
            missing(JointType.SPLICE, "splices", "splices, and with them where plates are cut");
        } else {
            int count = splices.size() * verticals;
            String formula =
                    "%s x %s = %d"
                            .formatted(
                                    counted(splices.size(), "height", "heights"),
                                    counted(verticals, "vertical", "verticals"),
                                    count);
            each(JointType.SPLICE, count, formula);
        }
        List<Double> stacks = details.stackJoints();
        if (stacks == null) {
            missing(
                    JointType.STACK_JOINT,
                    "stackJoints",
                    "stackJoints, and with them where plates are cut");
        } else {
            run(JointType.STACK_JOINT, stacks.size(), "stackJoints lists", request.width());
        }
    }

    private void perimeter() {
        int dams = details.continues(Edge.BOTTOM) ? 0 : open(Edge.LEFT) + open(Edge.RIGHT);
        each(JointType.END_DAM, dams, "ends of the sill where the wall ends: " + dams);
        run(
                JointType.PERIMETER_SILL,
                open(Edge.BOTTOM),
                "sills against the building:",
                request.width());
        run(
                JointType.PERIMETER_JAMB,
                open(Edge.LEFT) + open(Edge.RIGHT),
                "jambs against the building:",
                request.height());
        run(
                JointType.PERIMETER_HEAD,
                open(Edge.TOP),
                "heads against the building:",
                request.width());
    }

    private void given(JointType type, @Nullable Integer count, String property) {
        if (count == null) {
            missing(type, property, property);
        } else {
            each(type, count, "given: " + count);
        }
    }

    /** Adds joints that each have the bead of their kind. */
    private void each(JointType type, int count, String formula) {
        double one = details.beadLengthsOrDefault().of(type);
        put(type, count, formula, one, Dimension.LENGTH);
    }

    /** Adds joints that each run along the whole frame. */
    private void run(JointType type, int count, String formula, double length) {
        put(type, count, formula + " " + count, length, Dimension.DISTANCE);
    }

    private void put(JointType type, int count, String formula, double one, Dimension dimension) {
        double length = count * one;
        String lengthFormula =
                "%d x %s = %s"
                        .formatted(
                                count,
                                reporting.text(dimension, one),
                                reporting.text(Dimension.DISTANCE, length));
        counts.put(type, new JointCount(type, count, formula, length, lengthFormula));
    }

    private void missing(JointType type, String property, String needed) {
        notCounted.add(type);
        findings.add(
                Finding.action(
                        "JOINTS_NOT_COUNTED",
                        "/" + property,
                        "Joints of type "
                                + type
                                + " are not counted, and so not in the amount of sealant: they"
                                + " follow from "
                                + needed
                                + ". Give 0 or an empty list if there are none."));
    }

    private void partly(String property, String what) {
        findings.add(
                Finding.action(
                        "JOINTS_PARTLY_COUNTED",
                        "/" + property,
                        "Not counted: " + what + ". They follow from " + property + "."));
    }

    /** Lengths of the verticals between splices and stack joints, from the sill up. */
    private List<Double> runs() {
        List<Double> cuts = new ArrayList<>();
        cuts.add(0.0);
        if (details.splices() != null) {
            cuts.addAll(details.splices());
        }
        if (details.stackJoints() != null) {
            cuts.addAll(details.stackJoints());
        }
        cuts.add(request.height());
        Collections.sort(cuts);
        return IntStream.range(1, cuts.size())
                .mapToObj(i -> cuts.get(i) - cuts.get(i - 1))
                .toList();
    }

    private int open(Edge edge) {
        return details.continues(edge) ? 0 : 1;
    }

    private static int pieces(double length, double stock) {
        return (int) Math.ceil(length / stock * (1 - ROUNDING));
    }

    private static int sum(List<Double> lengths, ToIntFunction<Double> each) {
        return lengths.stream().mapToInt(each).sum();
    }

    /** A sum over lengths with equal ones together: {@code 2 of 5 ft x 0 + 1 of 4 ft x 0}. */
    private String terms(List<Double> lengths, ToIntFunction<Double> each) {
        return lengths.stream()
                .collect(
                        Collectors.groupingBy(
                                length -> reporting.text(Dimension.DISTANCE, length),
                                LinkedHashMap::new,
                                Collectors.toList()))
                .entrySet()
                .stream()
                .map(
                        group ->
                                "%d of %s x %d"
                                        .formatted(
                                                group.getValue().size(),
                                                group.getKey(),
                                                each.applyAsInt(group.getValue().get(0))))
                .collect(Collectors.joining(" + "));
    }

    private static String counted(int count, String one, String many) {
        return count + " " + (count == 1 ? one : many);
    }
}
