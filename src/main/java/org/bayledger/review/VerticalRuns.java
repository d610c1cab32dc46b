package org.bayledger.review;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.stream.Stream;
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

    /**
     * A vertical in the order in which they were found.
     *
     * @param number from 0
     * @param run the vertical
     */
    private record Found(int number, VerticalRun run) {}

    /** By elevation, distance from its left edge, and level at which they begin or end. */
    private final Map<String, NavigableMap<Double, NavigableMap<Double, List<Found>>>> bySill =
            new HashMap<>();

    private final Map<String, NavigableMap<Double, NavigableMap<Double, List<Found>>>> byTop =
            new HashMap<>();

    private int found;
    private final Map<String, NavigableMap<Double, NavigableMap<Double, List<Foot>>>> feet =
            new HashMap<>();

    void add(VerticalRun run) {
        Found next = new Found(found++, run);
        levels(bySill, run).computeIfAbsent(run.bay().sill(), at -> new ArrayList<>()).add(next);
        levels(byTop, run).computeIfAbsent(run.bay().top(), at -> new ArrayList<>()).add(next);
    }

    private static NavigableMap<Double, List<Found>> levels(
            Map<String, NavigableMap<Double, NavigableMap<Double, List<Found>>>> index,
            VerticalRun run) {
        return index.computeIfAbsent(run.bay().elevation(), face -> new TreeMap<>())
                .computeIfAbsent(run.at(), at -> new TreeMap<>());
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
        Stream<Found> above = at(bySill, run, run.bay().top());
        Stream<Found> below = at(byTop, run, run.bay().sill());
        return Stream.concat(above, below)
                .sorted(
                        Comparator.comparingDouble((Found of) -> of.run().at())
                                .thenComparingInt(Found::number))
                .map(Found::run)
                .toList();
    }

    private static Stream<Found> at(
            Map<String, NavigableMap<Double, NavigableMap<Double, List<Found>>>> index,
            VerticalRun run,
            double level) {
        NavigableMap<Double, NavigableMap<Double, List<Found>>> face =
                index.get(run.bay().elevation());
        return face == null
                ? Stream.empty()
                : near(face, run.at()).stream()
                        .flatMap(line -> near(line, level).stream())
                        .flatMap(List::stream);
    }

    private static <T> Collection<T> near(NavigableMap<Double, T> map, double place) {
        return map.subMap(place - Layout.TOUCH, true, place + Layout.TOUCH, true).values();
    }
}
