package org.bayledger.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;

/** Which bays stand beside, above and below one another on each elevation. */
final class Layout {

    /** Gaps and overlaps up to this are rounding between units, m. */
    static final double TOUCH = 0.001;

    private final Map<String, NavigableMap<Double, List<Bay>>> byRight = new HashMap<>();
    private final Map<String, NavigableMap<Double, List<Bay>>> byLeft = new HashMap<>();
    private final Map<String, NavigableMap<Double, List<Bay>>> byTop = new HashMap<>();
    private final Map<String, NavigableMap<Double, List<Bay>>> bySill = new HashMap<>();

    Layout(List<Bay> bays) {
        for (Bay bay : bays) {
            index(byRight, bay, Bay::right);
            index(byLeft, bay, Bay::offset);
            index(byTop, bay, Bay::top);
            index(bySill, bay, Bay::sill);
        }
    }

    private static void index(
            Map<String, NavigableMap<Double, List<Bay>>> index,
            Bay bay,
            ToDoubleFunction<Bay> edge) {
        index.computeIfAbsent(bay.elevation(), name -> new TreeMap<>())
                .computeIfAbsent(edge.applyAsDouble(bay), at -> new ArrayList<>())
                .add(bay);
    }

    private static List<Bay> at(
            Map<String, NavigableMap<Double, List<Bay>>> index, String elevation, double edge) {
        List<Bay> found = new ArrayList<>();
        NavigableMap<Double, List<Bay>> face = index.get(elevation);
        if (face != null) {
            face.subMap(edge - TOUCH, true, edge + TOUCH, true).values().forEach(found::addAll);
        }
        return found;
    }

    /** Bays whose right edge is this bay's left edge, over some height. */
    List<Bay> leftOf(Bay bay) {
        return beside(bay, at(byRight, bay.elevation(), bay.offset()));
    }

    /** Bays whose left edge is this bay's right edge, over some height. */
    List<Bay> rightOf(Bay bay) {
        return beside(bay, at(byLeft, bay.elevation(), bay.right()));
    }

    /** Bays whose top is this bay's sill, over some width. */
    List<Bay> below(Bay bay) {
        return stacked(bay, at(byTop, bay.elevation(), bay.sill()));
    }

    /** Bays whose sill is this bay's top, over some width. */
    List<Bay> above(Bay bay) {
        return stacked(bay, at(bySill, bay.elevation(), bay.top()));
    }

    private static List<Bay> beside(Bay bay, List<Bay> others) {
        return others.stream()
                .filter(
                        other ->
                                Math.min(bay.top(), other.top())
                                                - Math.max(bay.sill(), other.sill())
                                        > TOUCH)
                .toList();
    }

    private static List<Bay> stacked(Bay bay, List<Bay> others) {
        return others.stream()
                .filter(
                        other ->
                                Math.min(bay.right(), other.right())
                                                - Math.max(bay.offset(), other.offset())
                                        > TOUCH)
                .toList();
    }

    /** Whether bays stand on all of the height beyond this bay's left edge. */
    boolean continuesLeft(Bay bay) {
        return covered(bay.sill(), bay.top(), leftOf(bay), Bay::sill, Bay::top);
    }

    /** Whether bays stand on all of the height beyond this bay's right edge. */
    boolean continuesRight(Bay bay) {
        return covered(bay.sill(), bay.top(), rightOf(bay), Bay::sill, Bay::top);
    }

    /** Whether bays stand under all of the width of this bay. */
    boolean continuesBelow(Bay bay) {
        return covered(bay.offset(), bay.right(), below(bay), Bay::offset, Bay::right);
    }

    /** Whether bays stand over all of the width of this bay. */
    boolean continuesAbove(Bay bay) {
        return covered(bay.offset(), bay.right(), above(bay), Bay::offset, Bay::right);
    }

    private static boolean covered(
            double from,
            double to,
            List<Bay> bays,
            ToDoubleFunction<Bay> start,
            ToDoubleFunction<Bay> end) {
        double reached = from;
        for (Bay bay : bays.stream().sorted(Comparator.comparingDouble(start)).toList()) {
            if (start.applyAsDouble(bay) > reached + TOUCH) {
                return false;
            }
            reached = Math.max(reached, end.applyAsDouble(bay));
        }
        return reached > to - TOUCH;
    }

    /**
     * Whether the verticals of the bays above, where they stand over this bay, are those of this
     * bay, so that every horizontal between them spans the same.
     */
    boolean sameVerticalsAbove(Bay bay) {
        List<Bay> above = above(bay);
        return standsOn(lines(bay), above.stream().map(Layout::lines).toList(), bay)
                && above.stream()
                        .allMatch(other -> standsOn(lines(other), List.of(lines(bay)), bay));
    }

    /** Whether each of some lines, as far as it lies over a bay, is met by one of the others. */
    private static boolean standsOn(List<Double> lines, List<List<Double>> others, Bay bay) {
        return lines.stream()
                .filter(at -> at > bay.offset() + TOUCH && at < bay.right() - TOUCH)
                .allMatch(
                        at ->
                                others.stream()
                                        .flatMap(List::stream)
                                        .anyMatch(other -> Math.abs(other - at) <= TOUCH));
    }

    private static List<Double> lines(Bay bay) {
        List<Double> lines = new ArrayList<>();
        for (int column = 1; column <= bay.columns().size() + 1; column++) {
            lines.add(bay.columnStart(column));
        }
        return lines;
    }

    /**
     * The verticals that belong to a bay, counted from 1 at its left edge: one at the left of each
     * column, and that at its right edge unless bays stand beyond all of it. A vertical between two
     * bays belongs to the bay on its right and takes half of each neighbour's width; where the bays
     * on the right reach over part of its height only, it is looked at in both.
     */
    List<Vertical> verticals(Bay bay) {
        List<Vertical> verticals = new ArrayList<>();
        int columns = bay.columns().size();
        double x = bay.offset();
        for (int k = 1; k <= columns + 1; k++) {
            double left = k == 1 ? lastColumn(leftOf(bay)) : bay.columns().get(k - 2);
            double right = k > columns ? firstColumn(rightOf(bay)) : bay.columns().get(k - 1);
            if (k <= columns || !continuesRight(bay)) {
                verticals.add(new Vertical(k, x, left / 2, right / 2));
            }
            x += right;
        }
        return verticals;
    }

    /** The widest first column of the bays on the right, 0 where there are none. */
    private static double firstColumn(List<Bay> bays) {
        return bays.stream().mapToDouble(bay -> bay.columns().get(0)).max().orElse(0);
    }

    /** The widest last column of the bays on the left, 0 where there are none. */
    private static double lastColumn(List<Bay> bays) {
        return bays.stream()
                .mapToDouble(bay -> bay.columns().get(bay.columns().size() - 1))
                .max()
                .orElse(0);
    }

    /**
     * A vertical of a bay.
     *
     * @param number from 1 at the bay's left edge
     * @param at distance from the elevation's left edge, m
     * @param left width of wall that it carries on its left, m
     * @param right width of wall that it carries on its right, m
     */
    record Vertical(int number, double at, double left, double right) {

        /** Width of wall that it carries, m. */
        double tributaryWidth() {
            return left + right;
        }
    }
}
