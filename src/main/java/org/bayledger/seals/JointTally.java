package org.bayledger.seals;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.StringJoiner;
import java.util.function.ToIntFunction;
import org.bayledger.check.Finding;
import org.bayledger.check.Reporting;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/** What has been counted of a frame's joints, and what could not be, while it is being counted. */
final class JointTally {

    /** What a length may exceed a whole number of stock lengths by and still be it. */
    private static final double ROUNDING = 1e-9;

    final SealsRequest request;
    final SealDetails details;
    final Reporting reporting;
    final int columns;
    private final WallSystem system;
    private final Map<JointType, JointCount> counts = new LinkedHashMap<>();
    private final List<JointType> notCounted = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();

    JointTally(SealsRequest request, Reporting reporting) {
        this.request = request;
        this.details = request.details();
        this.reporting = reporting;
        this.columns = request.columns().size();
        this.system = details.systemOrDefault();
    }

    /** The kinds that could be counted, in the order of their steps. */
    List<JointCount> counts() {
        return counts.values().stream()
                .sorted(Comparator.comparingInt(count -> system.step(count.type())))
                .toList();
    }

    /** The kinds that could not, in the order of their steps. */
    List<JointType> notCounted() {
        return notCounted.stream().sorted(Comparator.comparingInt(system::step)).toList();
    }

    /** What to say of counts that are missing or incomplete; each needs somebody's action. */
    List<Finding> findings() {
        return List.copyOf(findings);
    }

    /** A count that the shop drawings give and the grid does not. */
    void given(JointType type, @Nullable Integer count, String property) {
        if (count == null) {
            missing(type, property, property);
        } else {
            each(type, count, "given: " + count);
        }
    }

    /** Adds joints that each have the bead of their kind. */
    void each(JointType type, int count, String formula) {
        put(type, count, formula, details.beadLengthsOrDefault().of(type), Dimension.LENGTH);
    }

    /** Adds joints that each run along one length of the frame. */
    void run(JointType type, int count, String formula, double length) {
        put(type, count, formula + " " + count, length, Dimension.DISTANCE);
    }

    private void put(JointType type, int count, String formula, double one, Dimension dimension) {
        double length = count * one;
        add(
                type,
                count,
                formula,
                length,
                count
                        + " x "
                        + reporting.text(dimension, one)
                        + " = "
                        + reporting.text(Dimension.DISTANCE, length));
    }

    /** Adds joints whose lengths were added up. */
    void add(JointType type, int count, String formula, double length, String lengthFormula) {
        counts.put(type, new JointCount(type, count, formula, length, lengthFormula));
    }

    void missing(JointType type, String property, String needed) {
        missing(List.of(type), property, needed);
    }

    /** Kinds that can't be counted for the same reason. */
    void missing(List<JointType> types, String property, String needed) {
        notCounted.addAll(types);
        findings.add(
                Finding.action(
                        "JOINTS_NOT_COUNTED",
                        "/" + property,
                        (types.size() == 1 ? "Joints of type " : "Joints of types ")
                                + types.stream().map(JointType::name).collect(joining(", "))
                                + " are not counted, and so not in the amount of sealant: they"
                                + " follow from "
                                + needed
                                + ". Give 0 or an empty list if there are none."));
    }

    void partly(String property, String what) {
        findings.add(
                Finding.action(
                        "JOINTS_PARTLY_COUNTED",
                        "/" + property,
                        "Not counted: " + what + ". They follow from " + property + "."));
    }

    /** 1 for an edge that meets the building, 0 where the wall goes on. */
    int open(Edge edge) {
        return details.continues(edge) ? 0 : 1;
    }

    /**
     * Butts of lengths that run across the frame and are never carried from one frame to the next:
     * where the wall goes on at the left, one lies there.
     */
    int butts(double stock) {
        return pieces(request.width(), stock) - open(Edge.LEFT);
    }

    /** The sum behind {@link #butts}. */
    String buttSum(double stock) {
        return "(%d between lengths of %s + %d at a left edge at which the wall goes on)"
                .formatted(
                        pieces(request.width(), stock) - 1,
                        reporting.text(Dimension.DISTANCE, stock),
                        1 - open(Edge.LEFT));
    }

    /** Pieces of a stock length, or spaces up to it, along a length. */
    static int pieces(double length, double stock) {
        return (int) Math.ceil(length / stock * (1 - ROUNDING));
    }

    static int sum(List<Double> lengths, ToIntFunction<Double> each) {
        return lengths.stream().mapToInt(each).sum();
    }

    /** A sum over lengths with equal ones together: {@code 2 of 5 ft x 0 + 1 of 4 ft x 0}. */
    String terms(List<Double> lengths, ToIntFunction<Double> each) {
        Map<String, int[]> groups = new LinkedHashMap<>(); // how many, and what each counts
        for (double length : lengths) {
            groups.computeIfAbsent(
                            reporting.text(Dimension.DISTANCE, length),
                            text -> new int[] {0, each.applyAsInt(length)})[0]++;
        }
        StringJoiner terms = new StringJoiner(" + ");
        groups.forEach((text, of) -> terms.add(of[0] + " of " + text + " x " + of[1]));
        return terms.toString();
    }

    static String counted(int count, String one, String many) {
        return count + " " + (count == 1 ? one : many);
    }
}
