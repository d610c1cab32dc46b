package org.bayledger.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeSet;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.bayledger.wind.GoverningPressure;
import org.bayledger.wind.SitePressures;
import org.bayledger.wind.SpecifiedPick;
import org.bayledger.wind.SpecifiedPressures;
import org.jspecify.annotations.Nullable;

/**
 * The schedules of wind pressures: both signs for every zone of every elevation, whether a bay
 * stands there or not; one for the whole job, and one of each elevation band by band.
 */
final class WindSchedule {

    private final ReviewContext context;
    private final WindExtremes extremes;

    WindSchedule(ReviewContext context, List<BaySummary> bays) {
        this.context = context;
        extremes = new WindExtremes(context.document, bays);
    }

    /** Pressures of lites, verticals and horizontals at their greatest heights. */
    List<ReviewResult.WindRow> ofJob() {
        List<ReviewResult.WindRow> rows = new ArrayList<>();
        SitePressures site = context.wind.site();
        for (Elevation face : context.document.elevations()) {
            if (!calledOut(face)) {
                continue;
            }
            Map<ReviewResult.Component, WindExtremes.Extremes> kinds = extremes.on(face);
            boolean reached = site == null || face.top() <= site.greatestHeight();
            if (kinds.isEmpty() && (reached || context.wind.specifiedOn(face.id()) != null)) {
                kinds = extremes.atTop(face);
            }
            ZoneMap map = context.wind.map(face.id());
            for (String zone : map.zones()) {
                kinds.forEach(
                        (kind, of) -> {
                            List<ZoneMap.Cell> cells =
                                    map.cells().stream()
                                            .filter(cell -> zone.equals(cell.zone()))
                                            .filter(cell -> cell.bottom() < of.height())
                                            .toList();
                            if (kind != ReviewResult.Component.ANCHOR && !cells.isEmpty()) {
                                Slot slot =
                                        new Slot(
                                                face,
                                                zone,
                                                cells,
                                                kind,
                                                of.area(),
                                                face.base(),
                                                of.height());
                                rows.add(row(slot, of.height()));
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
        Double zoneWidth = context.wind.zoneWidth(face.id());
        return new ElevationZones(
                face.id(),
                distance(face.width()),
                distance(face.base()),
                distance(face.top()),
                zoneWidth == null ? null : distance(zoneWidth),
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
                bands(levels(face)),
                slots(face).stream().map(slot -> row(slot, slot.to())).toList());
    }

    /** The levels between bands, from the base to the top. */
    private List<Double> levels(Elevation face) {
        SitePressures site = context.wind.site();
        SpecifiedPressures specified = context.wind.specifiedOn(face.id());
        List<Double> within =
                specified != null
                        ? specified.levels(face.id())
                        : site == null ? List.of() : site.bandLevels();
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

    /**
     * What one row of an elevation's schedule is for.
     *
     * @param face the elevation
     * @param zone the zone
     * @param cells where the zone lies, of parts with the same pressures
     * @param kind kind of component
     * @param area effective wind area, m2
     * @param from level of the band's lower edge, m
     * @param to level of its upper edge, m
     */
    record Slot(
            Elevation face,
            String zone,
            List<ZoneMap.Cell> cells,
            ReviewResult.Component kind,
            double area,
            double from,
            double to) {}

    /** The rows of an elevation's schedule, from the base up; none without any pressures. */
    List<Slot> slots(Elevation face) {
        List<Slot> slots = new ArrayList<>();
        if (!calledOut(face)) {
            return slots;
        }
        ZoneMap map = context.wind.map(face.id());
        List<Double> levels = levels(face);
        for (int i = 1; i < levels.size(); i++) {
            double from = levels.get(i - 1);
            double to = levels.get(i);
            for (String zone : map.zones()) {
                for (List<ZoneMap.Cell> cells : alike(map, zone, from, to)) {
                    double top = cells.stream().mapToDouble(ZoneMap.Cell::top).max().orElse(to);
                    double low =
                            cells.stream().mapToDouble(ZoneMap.Cell::bottom).min().orElse(from);
                    extremes.calledOut(face)
                            .forEach(
                                    (kind, of) ->
                                            slots.add(
                                                    new Slot(
                                                            face,
                                                            zone,
                                                            cells,
                                                            kind,
                                                            of.area(),
                                                            Math.max(from, low),
                                                            Math.min(to, top))));
                }
            }
        }
        return slots;
    }

    private boolean calledOut(Elevation face) {
        return context.wind.site() != null || context.wind.specifiedOn(face.id()) != null;
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

    /**
     * The row of a slot.
     *
     * @param height level at which computed pressures are read, m
     */
    private ReviewResult.WindRow row(Slot slot, double height) {
        SpecifiedPressures specified = context.wind.specifiedOn(slot.face().id());
        SitePressures site = context.wind.site();
        Quantity positive = null;
        Quantity negative = null;
        if (specified != null) {
            SpecifiedPick pick =
                    WallWind.pick(
                            specified,
                            slot.face().id(),
                            slot.cells(),
                            slot.area(),
                            slot.from(),
                            slot.to());
            positive = WallWind.pressure(pick.positive());
            negative = WallWind.pressure(pick.negative());
        } else if (site != null && height <= site.greatestHeight()) {
            GoverningPressure pressure =
                    WallWind.computed(
                            context.wind.map(slot.face().id()), slot.cells(), slot.area(), height);
            positive = pressure(pressure.positive().positive());
            negative = pressure(pressure.negative().negative());
        }
        return new ReviewResult.WindRow(
                slot.face().id(),
                slot.zone(),
                slot.kind(),
                strips(slot.cells()),
                Quantity.of(Dimension.AREA, slot.area()),
                band(slot.from(), slot.to()),
                distance(height),
                positive,
                negative,
                specified == null ? Objects.requireNonNull(site).basis() : specified.basis(),
                specified == null ? PressureSource.COMPUTED : PressureSource.SPECIFIED);
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
