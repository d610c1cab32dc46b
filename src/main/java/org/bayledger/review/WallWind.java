package org.bayledger.review;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SortedSet;
import java.util.TreeSet;
import org.bayledger.check.Finding;
import org.bayledger.check.Load;
import org.bayledger.check.Reporting;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.bayledger.wind.CornerZones;
import org.bayledger.wind.GoverningPressure;
import org.bayledger.wind.Site;
import org.bayledger.wind.SitePressures;
import org.bayledger.wind.SpecifiedPick;
import org.bayledger.wind.SpecifiedPressures;
import org.bayledger.wind.ZonePressure;
import org.bayledger.wind.ZoneScheme;
import org.jspecify.annotations.Nullable;

/** The wind on the walls of a document: which zones an item touches and what it sees there. */
final class WallWind {

    /** Wind that nobody called out. */
    static final Load NO_LOAD = new Load(null, null, null);

    /** Pointer to the specified pressures. */
    static final String SPECIFIED = "/specifiedPressures";

    private final Reporting reporting;
    private final @Nullable SitePressures site;
    private final @Nullable SpecifiedPressures specified;
    private final Map<String, ZoneMap> maps = new HashMap<>();

    WallWind(ReviewDocument document, Reporting reporting) {
        this.reporting = reporting;
        Site given = document.site();
        site = given == null ? null : SitePressures.of(given);
        specified = document.specifiedPressures();
        for (Elevation face : document.elevations()) {
            List<ZoneMap.Part> parts = new ArrayList<>();
            for (Step step : face.parts()) {
                SitePressures computed =
                        given == null || step.meanRoofHeight() == null
                                ? site
                                : SitePressures.of(given.withMeanRoofHeight(step.meanRoofHeight()));
                parts.add(
                        new ZoneMap.Part(
                                step.from(),
                                step.to(),
                                face.base() + step.height(),
                                computed,
                                cornerZones(face.id(), computed)));
            }
            ZoneScheme scheme = scheme();
            maps.put(face.id(), new ZoneMap(face, parts, scheme == null ? null : scheme.middle()));
        }
    }

    private @Nullable CornerZones cornerZones(String face, @Nullable SitePressures computed) {
        SpecifiedPressures table = specifiedOn(face);
        if (table != null && table.zoneWidth() != null) {
            return table.scheme().cornerZones(table.zoneWidth());
        }
        return computed == null ? null : computed.cornerZones();
    }

    /** How the walls are divided into zones; null where nobody said. */
    @Nullable ZoneScheme scheme() {
        if (specified != null) {
            return specified.scheme();
        }
        return site == null ? null : site.scheme();
    }

    /** Width of the outermost zone of an elevation, m; null where it is not known. */
    @Nullable Double zoneWidth(String face) {
        CornerZones zones = cornerZones(face, site);
        return zones == null ? null : (Double) zones.width();
    }

    /** The specified pressures where they hold on an elevation, else null. */
    @Nullable SpecifiedPressures specifiedOn(String face) {
        return specified != null && specified.coversSomeOf(face) ? specified : null;
    }

    /** The standard's pressures with the site's own mean roof height, or null without a site. */
    @Nullable SitePressures site() {
        return site;
    }

    /** The zones of an elevation. */
    ZoneMap map(String elevation) {
        return Objects.requireNonNull(maps.get(elevation));
    }

    /** Effective wind area of a member, m2, from its span and tributary width, m. */
    double effectiveWindArea(double span, double tributaryWidth) {
        ZoneScheme scheme = scheme();
        return scheme == null
                ? span * tributaryWidth
                : scheme.effectiveWindArea(span, tributaryWidth);
    }

    /**
     * The wind on an item.
     *
     * @param load both signs with their basis, nothing called out where no wind could be found
     * @param wind what to show of it; null likewise
     * @param findings what to say of it, with pointers into the document
     */
    record Seen(Load load, ReviewItem.@Nullable Wind wind, List<Finding> findings) {}

    /**
     * What loads an item.
     *
     * @param elevation name of its elevation
     * @param from left edge, from the elevation's left edge, m
     * @param to right edge of it, m
     * @param bottom level of its lower edge above the building datum, m
     * @param top level of its upper edge, m
     * @param area effective wind area, m2
     */
    record Patch(
            String elevation, double from, double to, double bottom, double top, double area) {}

    /**
     * The wind on an item of a bay.
     *
     * @param pointer pointer to the bay
     */
    Seen on(String pointer, Patch patch) {
        SpecifiedPressures table = specifiedOn(patch.elevation());
        if (table != null) {
            return specified(pointer, patch, table);
        }
        if (site == null) {
            return new Seen(NO_LOAD, null, List.of());
        }
        if (patch.top() > site.greatestHeight()) {
            return new Seen(
                    NO_LOAD,
                    null,
                    List.of(
                            Finding.action(
                                    "WIND_NOT_COVERED_AT_THIS_HEIGHT",
                                    pointer + "/sill",
                                    "The wind standard does not reach up to "
                                            + reporting.text(Dimension.DISTANCE, patch.top())
                                            + " above ground here.")));
        }
        ZoneMap map = map(patch.elevation());
        List<ZoneMap.Cell> cells =
                map.touched(patch.from(), patch.to(), patch.bottom(), patch.top());
        GoverningPressure governing = computed(map, cells, patch.area(), patch.top());
        List<String> zones = zones(cells);
        ReviewItem.Wind wind =
                new ReviewItem.Wind(
                        zones,
                        governing.negative().zone(),
                        governing.positive().zone(),
                        Quantity.of(Dimension.AREA, patch.area()),
                        Quantity.of(Dimension.DISTANCE, patch.top()),
                        Quantity.of(Dimension.PRESSURE, governing.positive().positive()),
                        Quantity.of(Dimension.PRESSURE, governing.negative().negative()),
                        governing.basis(),
                        PressureSource.COMPUTED);
        List<Finding> findings = new ArrayList<>();
        for (ZoneMap.Cell cell : cells) {
            if (findings.isEmpty() && cell.computed() != null) {
                findings.addAll(
                        cell.computed()
                                .heightFindings(
                                        map.level(cell, patch.top()),
                                        pointer + "/sill",
                                        "This part of the bay"));
            }
        }
        severalZones(findings, pointer, zones, governing.negative().zone());
        return new Seen(governing.load(), wind, findings);
    }

    private static List<String> zones(List<ZoneMap.Cell> cells) {
        SortedSet<String> zones = new TreeSet<>();
        for (ZoneMap.Cell cell : cells) {
            if (cell.zone() != null) {
                zones.add(cell.zone());
            }
        }
        return List.copyOf(zones);
    }

    private static void severalZones(
            List<Finding> findings,
            String pointer,
            List<String> zones,
            @Nullable String governing) {
        if (zones.size() > 1) {
            findings.add(
                    Finding.info(
                            "TOUCHES_SEVERAL_ZONES",
                            pointer + "/offset",
                            "Touches the zones "
                                    + String.join(" and ", zones)
                                    + (governing == null
                                            ? "; which of them governs the suction is not known."
                                            : "; zone " + governing + " governs the suction.")));
        }
    }

    private Seen specified(String pointer, Patch patch, SpecifiedPressures table) {
        List<ZoneMap.Cell> cells =
                map(patch.elevation())
                        .touched(patch.from(), patch.to(), patch.bottom(), patch.top());
        if (cells.stream().anyMatch(cell -> cell.zone() == null)) {
            return new Seen(NO_LOAD, null, List.of(zonesNotLocated(patch.elevation())));
        }
        SpecifiedPick picked =
                pick(table, patch.elevation(), cells, patch.area(), patch.bottom(), patch.top());
        List<String> zones = zones(cells);
        String suction = zoneOf(table, picked.negative());
        Quantity positive = pressure(picked.positive());
        Quantity negative = pressure(picked.negative());
        ReviewItem.Wind wind =
                new ReviewItem.Wind(
                        zones,
                        suction,
                        zoneOf(table, picked.positive()),
                        Quantity.of(Dimension.AREA, patch.area()),
                        Quantity.of(Dimension.DISTANCE, patch.top()),
                        positive,
                        negative,
                        table.basis(),
                        PressureSource.SPECIFIED);
        List<Finding> findings = new ArrayList<>();
        picked.missing()
                .forEach(
                        missing ->
                                findings.add(
                                        missing.finding(patch.elevation(), reporting)
                                                .below(SPECIFIED)));
        severalZones(findings, pointer, zones, suction);
        Load load =
                new Load(
                        positive == null ? null : (Double) positive.si(),
                        negative == null ? null : (Double) negative.si(),
                        table.basis());
        return new Seen(load, wind, findings);
    }

    /** That nobody can say which zone is which on an elevation. */
    static Finding zonesNotLocated(String elevation) {
        return Finding.action(
                "ZONE_WIDTH_NOT_GIVEN",
                SPECIFIED + "/zoneWidth",
                "Elevation "
                        + elevation
                        + " has outside corners or free edges, and neither the width of the zones"
                        + " there was specified nor a site given to work it out: which zone is"
                        + " where is not known.");
    }

    private static @Nullable String zoneOf(
            SpecifiedPressures table, SpecifiedPick.@Nullable Line line) {
        return line == null ? null : table.pressures().get(line.index()).zone();
    }

    static @Nullable Quantity pressure(SpecifiedPick.@Nullable Line line) {
        return line == null ? null : Quantity.of(Dimension.PRESSURE, line.pressure());
    }

    /**
     * What is specified for a piece of wall that lies in some cells.
     *
     * @param area effective wind area, m2
     * @param bottom level of its lower edge, m
     * @param top level of its upper edge, m
     */
    static SpecifiedPick pick(
            SpecifiedPressures table,
            String elevation,
            List<ZoneMap.Cell> cells,
            double area,
            double bottom,
            double top) {
        return cells.stream()
                .map(
                        cell ->
                                table.pick(
                                        elevation,
                                        Objects.requireNonNull(cell.zone()),
                                        area,
                                        Math.max(bottom, cell.bottom()),
                                        Math.min(top, cell.top())))
                .reduce(SpecifiedPick::and)
                .orElseThrow();
    }

    /**
     * The standard's governing pressures in some cells, at least one.
     *
     * @param area effective wind area, m2
     * @param top level of the top of what touches them, m
     */
    static GoverningPressure computed(
            ZoneMap map, List<ZoneMap.Cell> cells, double area, double top) {
        List<ZonePressure> pressures = new ArrayList<>();
        for (ZoneMap.Cell cell : cells) {
            pressures.add(
                    Objects.requireNonNull(cell.computed())
                            .pressure(
                                    Objects.requireNonNull(cell.zone()),
                                    area,
                                    map.level(cell, top)));
        }
        return GoverningPressure.of(pressures);
    }
}
