package org.bayledger.review;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.bayledger.wind.CornerZones;
import org.bayledger.wind.SitePressures;
import org.bayledger.wind.ZoneStrip;
import org.jspecify.annotations.Nullable;

/**
 * Where the wind zones of one elevation lie.
 *
 * <p>End zones stand on both sides of every outside corner. Where one part of the elevation is
 * higher than the next, its edge above the lower roof is free to the wind and counts as an outside
 * corner from that roof up. A re-entrant corner has no end zone of its own, and the end zone of an
 * outside corner near it runs on through it (common practice, no source).
 */
final class ZoneMap {

    /**
     * A part of the elevation with its pressures.
     *
     * @param from left edge, m
     * @param to right edge, m
     * @param top level of its top above the building datum, m
     * @param computed the standard's pressures there; null without a site
     * @param zones widths of its zones; null where they are not known
     */
    record Part(
            double from,
            double to,
            double top,
            @Nullable SitePressures computed,
            @Nullable CornerZones zones) {}

    /**
     * A rectangle of one zone.
     *
     * @param from left edge, m
     * @param to right edge, m
     * @param bottom level of its lower edge above the building datum, m
     * @param top level of its upper edge, m
     * @param zone its zone; null where the widths of the zones are not known
     * @param computed the standard's pressures there; null without a site
     */
    record Cell(
            double from,
            double to,
            double bottom,
            double top,
            @Nullable String zone,
            @Nullable SitePressures computed) {

        /** Whether a rectangle of wall shares more than an edge with it. */
        boolean touches(double left, double right, double low, double high) {
            return Math.min(to, right) - Math.max(from, left) > Layout.TOUCH && overlaps(low, high);
        }

        /** Whether a range of levels shares more than an edge with it. */
        boolean overlaps(double low, double high) {
            return Math.min(top, high) - Math.max(bottom, low) > Layout.TOUCH;
        }
    }

    /**
     * A vertical edge that bounds the wall or bends it.
     *
     * @param at distance from the elevation's left edge, m
     * @param bottom level at which it begins, m
     * @param top level at which it ends, m
     * @param kind which way the building turns there
     */
    record Edge(double at, double bottom, double top, Corner.Kind kind) {}

    private final Elevation face;
    private final List<Part> parts;
    private final @Nullable String middle;
    private final List<Cell> cells = new ArrayList<>();
    private final List<Edge> freeEdges = new ArrayList<>();

    /**
     * Lays out the zones.
     *
     * @param parts from left to right, without gaps
     * @param middle name of the zone away from all corners; null where no zones are known
     */
    ZoneMap(Elevation face, List<Part> parts, @Nullable String middle) {
        this.face = face;
        this.parts = List.copyOf(parts);
        this.middle = middle;
        double bottom = face.base();
        TreeSet<Double> tops = new TreeSet<>();
        parts.forEach(part -> tops.add(part.top()));
        for (double top : tops) {
            if (top - bottom > Layout.TOUCH) {
                level(bottom, top);
                bottom = top;
            }
        }
    }

    /** The rectangles, from left to right and from the base up. */
    List<Cell> cells() {
        return cells;
    }

    /** The cells that a rectangle of wall touches. */
    List<Cell> touched(double from, double to, double bottom, double top) {
        List<Cell> touched = new ArrayList<>();
        for (Cell cell : cells) {
            if (cell.touches(from, to, bottom, top)) {
                touched.add(cell);
            }
        }
        return touched;
    }

    /**
     * Level, m, at which a cell's pressures are read for something whose top is at a level: that of
     * its own top, and in a cell that ends below the elevation's top not more than the cell's.
     */
    double level(Cell cell, double top) {
        return cell.top() >= face.top() - Layout.TOUCH ? top : Math.min(top, cell.top());
    }

    /** Outside corners, re-entrant corners and free edges above a lower roof. */
    List<Edge> edges() {
        List<Edge> edges = new ArrayList<>();
        for (Corner corner : face.allCorners()) {
            double top =
                    parts.stream()
                            .filter(part -> within(corner.at(), part.from(), part.to()))
                            .mapToDouble(Part::top)
                            .max()
                            .orElse(face.top());
            edges.add(new Edge(corner.at(), face.base(), top, corner.kind()));
        }
        edges.addAll(freeEdges);
        return edges;
    }

    private static boolean within(double at, double from, double to) {
        return at >= from - Layout.TOUCH && at <= to + Layout.TOUCH;
    }

    /** The stretches of wall between two levels at which no part ends. */
    private void level(double bottom, double top) {
        List<Part> stretch = new ArrayList<>();
        for (Part part : parts) {
            if (part.top() >= top - Layout.TOUCH) {
                stretch.add(part);
            } else {
                stretch(stretch, bottom, top);
                stretch.clear();
            }
        }
        stretch(stretch, bottom, top);
    }

    private void stretch(List<Part> stretch, double bottom, double top) {
        if (stretch.isEmpty()) {
            return;
        }
        double from = stretch.get(0).from();
        double to = stretch.get(stretch.size() - 1).to();
        List<Double> corners = new ArrayList<>();
        for (Corner corner : face.allCorners()) {
            if (corner.kind() == Corner.Kind.OUTSIDE && within(corner.at(), from, to)) {
                corners.add(corner.at());
            }
        }
        if (from > Layout.TOUCH) {
            corners.add(free(from, bottom, top));
        }
        if (to < face.width() - Layout.TOUCH) {
            corners.add(free(to, bottom, top));
        }
        int first = 0;
        for (int i = 1; i <= stretch.size(); i++) {
            if (i == stretch.size() || !alike(stretch.get(i), stretch.get(first))) {
                Part part = stretch.get(first);
                zones(part, part.from(), stretch.get(i - 1).to(), bottom, top, corners);
                first = i;
            }
        }
    }

    private static boolean alike(Part one, Part other) {
        return one.computed() == other.computed();
    }

    private double free(double at, double bottom, double top) {
        int last = freeEdges.size() - 1;
        for (int i = last; i >= 0; i--) {
            Edge edge = freeEdges.get(i);
            if (edge.at() == at && Math.abs(edge.top() - bottom) <= Layout.TOUCH) {
                freeEdges.set(i, new Edge(at, edge.bottom(), top, Corner.Kind.OUTSIDE));
                return at;
            }
        }
        freeEdges.add(new Edge(at, bottom, top, Corner.Kind.OUTSIDE));
        return at;
    }

    private void zones(
            Part part, double from, double to, double bottom, double top, List<Double> corners) {
        if (part.zones() == null || corners.isEmpty()) {
            String zone = corners.isEmpty() ? middle : null;
            add(new Cell(from, to, bottom, top, zone, part.computed()));
            return;
        }
        for (ZoneStrip strip : part.zones().strips(from, to, corners)) {
            add(new Cell(strip.from(), strip.to(), bottom, top, strip.zone(), part.computed()));
        }
    }

    /** Adds a cell, or makes the one below it taller where it is of the same zone and width. */
    private void add(Cell next) {
        for (int i = 0; i < cells.size(); i++) {
            Cell cell = cells.get(i);
            if (cell.from() == next.from()
                    && cell.to() == next.to()
                    && cell.top() == next.bottom()
                    && Objects.equals(cell.zone(), next.zone())
                    && cell.computed() == next.computed()) {
                cells.set(
                        i,
                        new Cell(
                                cell.from(),
                                cell.to(),
                                cell.bottom(),
                                next.top(),
                                cell.zone(),
                                cell.computed()));
                return;
            }
        }
        cells.add(next);
    }

    /** Names of the zones that exist on the elevation, in order. */
    List<String> zones() {
        Set<String> zones = new HashSet<>();
        for (Cell cell : cells) {
            if (cell.zone() != null) {
                zones.add(cell.zone());
            }
        }
        return zones.stream().sorted().toList();
    }
}
