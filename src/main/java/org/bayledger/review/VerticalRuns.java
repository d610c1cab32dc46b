package org.bayledger.review;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * The verticals of all bays by where they stand, from the highest bay down, so that what stands in
 * a stack joint is known before what carries it.
 */
final class VerticalRuns {

    /**
     * What stands in a stack joint.
     *
     * @param bay id of the bay above
     * @param at distance from the elevation's left edge, m
     * @param force on the joint; null where it is not known
     */
    record Foot(String bay, double at, VerticalRun.@Nullable Force force) {}

    private final Map<String, NavigableMap<Double, List<VerticalRun>>> runs = new HashMap<>();
    private final Map<String, NavigableMap<Double, NavigableMap<Double, List<Foot>>>> feet =
            new HashMap<>();

    void add(VerticalRun run) {
        runs.computeIfAbsent(run.bay().elevation(), face -> new TreeMap<>())
                .computeIfAbsent(run.at(), at -> new ArrayList<>())
                .add(run);
    }

    /** Notes that a vertical of a bay stands in the stack joint at its sill. */
    void stands(Bay bay, Foot foot) {
        feet.computeIfAbsent(bay.elevation(), face -> new TreeMap<>())
                .computeIfAbsent(bay.sill(), level -> new TreeMap<>())
                .computeIfAbsent(foot.at(), at -> new ArrayList<>())
                .add(foot);
    }

    /** What stands on top of a bay between two distances from the elevation's left edge. */
    List<Foot> feet(Bay bay, double from, double to) {
        List<Foot> found = new ArrayList<>();
        NavigableMap<Double, NavigableMap<Double, List<Foot>>> face = feet.get(bay.elevation());
        if (face != null) {
            for (NavigableMap<Double, List<Foot>> level :
                    face.subMap(bay.top() - Layout.TOUCH, true, bay.top() + Layout.TOUCH, true)
                            .values()) {
                level.subMap(from, true, to, true).values().forEach(found::addAll);
            }
        }
        return found;
    }

    /**
     * Verticals in line with one of a bay that end where the bay begins, or begin where it ends.
     */
    List<VerticalRun> inLine(VerticalRun run) {
        List<VerticalRun> found = new ArrayList<>();
        NavigableMap<Double, List<VerticalRun>> face = runs.get(run.bay().elevation());
        if (face != null) {
            face.subMap(run.at() - Layout.TOUCH, true, run.at() + Layout.TOUCH, true)
                    .values()
                    .forEach(found::addAll);
        }
        return found.stream()
                .filter(
                        other ->
                                Math.abs(other.bay().top() - run.bay().sill()) <= Layout.TOUCH
                                        || Math.abs(other.bay().sill() - run.bay().top())
                                                <= Layout.TOUCH)
                .toList();
    }
}
