package org.bayledger.wind;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * The zones of a wall from an outside corner inward, with the distances from the corner at which
 * they end.
 *
 * @param endsAt distance at which each zone ends, m; infinite for the last
 * @param names their names
 */
public record CornerZones(List<Double> endsAt, List<String> names) {

    /** Edges nearer than this are one, m. */
    private static final double SAME = 1e-9;

    public CornerZones {
        endsAt = List.copyOf(endsAt);
        names = List.copyOf(names);
        if (endsAt.isEmpty() || endsAt.size() != names.size()) {
            throw new IllegalArgumentException("each zone has a name and an end");
        }
    }

    /** Width of the outermost zone, m. */
    public double width() {
        return endsAt.get(0);
    }

    /**
     * The zones of a stretch of wall from left to right, seen from outside. Where zones of two
     * corners overlap, the one of the nearer corner is the more severe and counts.
     *
     * @param from left end of the stretch, m
     * @param to its right end, m
     * @param corners places of the outside corners, on the stretch or beyond it, m
     */
    public List<ZoneStrip> strips(double from, double to, List<Double> corners) {
        if (!(from < to) || !Double.isFinite(to - from)) {
            throw new IllegalArgumentException("no wall between " + from + " and " + to);
        }
        TreeSet<Double> edges = new TreeSet<>();
        for (double corner : corners) {
            for (double end : endsAt) {
                edges.add(corner - end);
                edges.add(corner + end);
            }
        }
        List<ZoneStrip> strips = new ArrayList<>();
        double left = from;
        for (double edge : edges.subSet(from, false, to, false)) {
            if (edge - left > SAME && to - edge > SAME) {
                add(strips, new ZoneStrip(left, edge, zoneAt((left + edge) / 2, corners)));
                left = edge;
            }
        }
        add(strips, new ZoneStrip(left, to, zoneAt((left + to) / 2, corners)));
        return List.copyOf(strips);
    }

    private static void add(List<ZoneStrip> strips, ZoneStrip next) {
        int last = strips.size() - 1;
        if (last >= 0 && strips.get(last).zone().equals(next.zone())) {
            strips.set(last, new ZoneStrip(strips.get(last).from(), next.to(), next.zone()));
        } else {
            strips.add(next);
        }
    }

    private String zoneAt(double place, List<Double> corners) {
        double nearest =
                corners.stream()
                        .mapToDouble(corner -> Math.abs(place - corner))
                        .min()
                        .orElse(Double.POSITIVE_INFINITY);
        for (int i = 0; i < names.size(); i++) {
            if (nearest < endsAt.get(i)) {
                return names.get(i);
            }
        }
        return names.get(names.size() - 1);
    }
}
