package org.bayledger.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.bayledger.wind.GoverningPressure;
import org.bayledger.wind.SitePressures;
import org.jspecify.annotations.Nullable;

/**
 * The schedules of wind pressures: both signs for every zone of every elevation, whether a bay
 * stands there or not; one for the whole job, and one of each elevation band by band.
 */
final class WindSchedule {

    private final ReviewContext context;
    private final WindExtremes extremes;

    WindSchedule(ReviewContext context, List<BayResult> results) {
        this.context = context;
        extremes = new WindExtremes(context.document, results);
    }

    /** Pressures of lites, verticals and horizontals at their greatest heights. */
    List<ReviewResult.WindRow> ofJob() {
        List<ReviewResult.WindRow> rows = new ArrayList<>();
        SitePressures site = context.wind.site();
        for (Elevation face : context.document.elevations()) {
            Map<ReviewResult.Component, WindExtremes.Extremes> kinds = extremes.on(face);
            if (kinds.isEmpty() && site != null && face.top() <= site.greatestHeight()) {
                kinds = extremes.atTop(face);
            }
            ZoneMap map = context.wind.map(face.id());
            for (String zone : map.zones()) {
                List<ZoneMap.Cell> cells =
                        map.cells().stream().filter(cell -> zone.equals(cell.zone())).toList();
                kinds.forEach(
                        (kind, of) -> {
                            if (kind != ReviewResult.Component.ANCHOR) {
                                rows.add(
                                        row(
                                                face, zone, cells, kind, of.area(), face.base(),
                                                of.height(), of.height()));
                            }
                        });
            }
        }
        return rows;
    }

    /** The zones of each elevation and their pressures band by band. */
    List<ElevationZones> ofElevations() {
        return context.document.elevations().stream().map(this::zones).toList();
    }

    private ElevationZones zones(Elevation face) {
        ZoneMap map = context.wind.map(face.id());
        SitePressures site = context.wind.site();
        List<Double> levels = levels(face, site == null ? List.of() : site.bandLevels());
        return new ElevationZones(
                face.id(),
                distance(face.width()),
                distance(face.base()),
                distance(face.top()),
                site == null ? null : distance(site.zoneWidth()),
                face.parts().stream()
                        .map(
                                part ->
                                        new ElevationZones.ProfilePart(
                                                distance(part.from()),
                                                distance(part.to()),
                                                distance(face.base() + part.height())))
                        .toList(),
                map.edges().stream()
                        .map(
                                edge ->
                                        new ElevationZones.WallEdge(
                                                distance(edge.at()),
                                                distance(edge.bottom()),
                                                distance(edge.top()),
                                                edge.kind()))
                        .toList(),
                map.cells().stream()
                        .map(
                                cell ->
                                        new ElevationZones.ZoneRectangle(
                                                distance(cell.from()),
                                                distance(cell.to()),
                                                distance(cell.bottom()),
                                                distance(cell.top()),
                                                cell.zone()))
                        .toList(),
                bands(levels),
                pressures(face, map, levels));
    }

    /** The levels between bands, from the base to the top. */
    private static List<Double> levels(Elevation face, List<Double> within) {
        TreeSet<Double> levels = new TreeSet<>(List.of(face.base(), face.top()));
        within.stream()
                .filter(level -> level > face.base() + Layout.TOUCH)
                .filter(level -> level < face.top() - Layout.TOUCH)
                .forEach(levels::add);
        return List.copyOf(levels);
    }

    private static List<ElevationZones.HeightBand> bands(List<Double> levels) {
        List<ElevationZones.HeightBand> bands = new ArrayList<>();
        for (int i = 1; i < levels.size(); i++) {
            bands.add(band(levels.get(i - 1), levels.get(i)));
        }
        return bands;
    }

    private static ElevationZones.HeightBand band(double from, double to) {
        return new ElevationZones.HeightBand(distance(from), distance(to));
    }

    private List<ReviewResult.WindRow> pressures(
            Elevation face, ZoneMap map, List<Double> levels) {
        List<ReviewResult.WindRow> rows = new ArrayList<>();
        for (int i = 1; i < levels.size(); i++) {
            double from = levels.get(i - 1);
            double to = levels.get(i);
            for (String zone : map.zones()) {
                for (List<ZoneMap.Cell> cells : alike(map, zone, from, to)) {
                    double top = cells.stream().mapToDouble(ZoneMap.Cell::top).max().orElse(to);
                    double height = Math.min(to, top);
                    extremes.calledOut(face)
                            .forEach(
                                    (kind, of) ->
                                            rows.add(
                                                    row(
                                                            face, zone, cells, kind, of.area(), from,
                                                            height, height)));
                }
            }
        }
        return rows;
    }

    /** The cells of one zone in a band, those of parts with the same pressures together. */
    private static List<List<ZoneMap.Cell>> alike(
            ZoneMap map, String zone, double from, double to) {
        Map<@Nullable SitePressures, List<ZoneMap.Cell>> alike = new LinkedHashMap<>();
        map.cells().stream()
                .filter(cell -> zone.equals(cell.zone()) && cell.overlaps(from, to))
                .forEach(
                        cell ->
                                alike.computeIfAbsent(cell.computed(), of -> new ArrayList<>())
                                        .add(cell));
        return List.copyOf(alike.values());
    }

    private ReviewResult.WindRow row(
            Elevation face,
            String zone,
            List<ZoneMap.Cell> cells,
            ReviewResult.Component kind,
            double area,
            double from,
            double to,
            double height) {
        SitePressures site = java.util.Objects.requireNonNull(context.wind.site());
        GoverningPressure pressure =
                height > site.greatestHeight()
                        ? null
                        : WallWind.computed(context.wind.map(face.id()), cells, area, height);
        return new ReviewResult.WindRow(
                face.id(),
                zone,
                kind,
                strips(cells),
                Quantity.of(Dimension.AREA, area),
                band(from, to),
                distance(height),
                pressure == null ? null : pressure(pressure.positive().positive()),
                pressure == null ? null : pressure(pressure.negative().negative()),
                site.basis());
    }

    private static Quantity pressure(double pascal) {
        return Quantity.of(Dimension.PRESSURE, pascal);
    }

    /** Where some cells lie from left to right, those above one another once. */
    private static List<ReviewResult.Strip> strips(List<ZoneMap.Cell> cells) {
        List<ReviewResult.Strip> strips = new ArrayList<>();
        double from = Double.NaN;
        double to = Double.NEGATIVE_INFINITY;
        for (ZoneMap.Cell cell :
                cells.stream().sorted(Comparator.comparingDouble(ZoneMap.Cell::from)).toList()) {
            if (cell.from() > to + Layout.TOUCH) {
                if (!Double.isNaN(from)) {
                    strips.add(new ReviewResult.Strip(distance(from), distance(to)));
                }
                from = cell.from();
            }
            to = Math.max(to, cell.to());
        }
        strips.add(new ReviewResult.Strip(distance(from), distance(to)));
        return strips;
    }

    private static Quantity distance(double metres) {
        return Quantity.of(Dimension.DISTANCE, metres);
    }
}
