package org.bayledger.review;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/** Which bays stand beside, above and below one another on each elevation. */
final class Layout {

    /** Gaps and overlaps up to this are rounding between units, m. */
    static final double TOUCH = 0.001;

    /**
     * A bay with its extent.
     *
     * @param bay the bay
     * @param index its place in the document
     * @param left distance of its left edge from the elevation's left edge, m
     * @param right distance of its right edge, m
     * @param bottom level of its bottom edge above the building datum, m
     * @param top level of its top, m
     */
    record Placed(Bay bay, int index, double left, double right, double bottom, double top) {

        Placed(Bay bay, int index) {
            this(bay, index, bay.offset(), bay.right(), bay.sill(), bay.top());
        }
    }

    /** Bays that have an edge on one line, by where along it they begin. */
    private static final class Line {

        private final NavigableMap<Double, List<Placed>> byStart = new TreeMap<>();
        private double longest;

        void add(Placed placed, double start, double end) {
            byStart.computeIfAbsent(start, at -> new ArrayList<>()).add(placed);
            longest = Math.max(longest, end - start);
        }

        /** Those that may reach into a range of the line. */
        Collection<List<Placed>> near(double from, double to) {
            return byStart.subMap(from - longest - TOUCH, true, to, true).values();
        }
    }

    /** The lines of each elevation on which one kind of edge lies, by their distance or level. */
    private static final class Lines {

        private final Map<String, NavigableMap<Double, Line>> ofFaces = new HashMap<>();

        void add(Placed placed, double edge, double start, double end) {
            ofFaces.computeIfAbsent(placed.bay().elevation(), name -> new TreeMap<>())
                    .computeIfAbsent(edge, at -> new Line())
                    .add(placed, start, end);
        }

        /** Bays on the line of an edge that pass a test, in the order of the document. */
        List<Bay> at(
                String elevation, double edge, double from, double to, Predicate<Placed> shares) {
            NavigableMap<Double, Line> face = ofFaces.get(elevation);
            if (face == null) {
                return List.of();
            }
            List<Bay> found = new ArrayList<>();
            for (Line line : face.subMap(edge - TOUCH, true, edge + TOUCH, true).values()) {
                List<Placed> onLine = new ArrayList<>();
                for (List<Placed> alike : line.near(from, to)) {
                    for (Placed placed : alike) {
                        if (shares.test(placed)) {
                            onLine.add(placed);
                        }
                    }
                }
                onLine.sort(Comparator.comparingInt(Placed::index));
                for (Placed placed : onLine) {
                    found.add(placed.bay());
                }
            }
            return found;
        }
    }

    private final Lines byRight = new Lines();
    private final Lines byLeft = new Lines();
    private final Lines byTop = new Lines();
    private final Lines bySill = new Lines();
    private final List<Placed> all = new ArrayList<>();

    Layout(List<Bay> bays) {
        for (Bay bay : bays) {
            Placed placed = new Placed(bay, all.size());
            all.add(placed);
            byRight.add(placed, placed.right(), placed.bottom(), placed.top());
            byLeft.add(placed, placed.left(), placed.bottom(), placed.top());
            byTop.add(placed, placed.top(), placed.left(), placed.right());
            bySill.add(placed, placed.bottom(), placed.left(), placed.right());
        }
    }

    /** Every bay with its extent, in the order of the document. */
    List<Placed> all() {
        return all;
    }

    /** Bays whose right edge is this bay's left edge, over some height. */
    List<Bay> leftOf(Bay bay) {
        return beside(bay, byRight, bay.offset());
    }

    /** Bays whose left edge is this bay's right edge, over some height. */
    List<Bay> rightOf(Bay bay) {
        return beside(bay, byLeft, bay.right());
    }

    /** Bays whose top is this bay's sill, over some width. */
    List<Bay> below(Bay bay) {
        return stacked(bay, byTop, bay.sill());
    }

    /** Bays whose sill is this bay's top, over some width. */
    List<Bay> above(Bay bay) {
        return stacked(bay, bySill, bay.top());
    }

    private static List<Bay> beside(Bay bay, Lines lines, double edge) {
        double bottom = bay.sill();
        double top = bay.top();
        return lines.at(
                bay.elevation(),
                edge,
                bottom,
                top,
                other -> Math.min(top, other.top()) - Math.max(bottom, other.bottom()) > TOUCH);
    }

    private static List<Bay> stacked(Bay bay, Lines lines, double edge) {
        double left = bay.offset();
        double right = bay.right();
        return lines.at(
                bay.elevation(),
                edge,
                left,
                right,
                other -> Math.min(right, other.right()) - Math.max(left, other.left()) > TOUCH);
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
