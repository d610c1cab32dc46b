package org.bayledger.review;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.bayledger.check.Finding;
import org.bayledger.check.Load;
import org.bayledger.check.Reporting;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.bayledger.wind.GoverningPressure;
import org.bayledger.wind.Site;
import org.bayledger.wind.SitePressures;
import org.jspecify.annotations.Nullable;

/** The wind on the walls of a document: which zones an item touches and what it sees there. */
final class WallWind {

    /** Wind that nobody called out. */
    static final Load NO_LOAD = new Load(null, null, null);

    private final Reporting reporting;
    private final @Nullable SitePressures site;
    private final Map<String, ZoneMap> maps = new HashMap<>();

    WallWind(ReviewDocument document, Reporting reporting) {
        this.reporting = reporting;
        Site given = document.site();
        site = given == null ? null : SitePressures.of(given);
        for (Elevation face : document.elevations()) {
            List<ZoneMap.Part> parts = new ArrayList<>();
            for (Step step : face.parts()) {
                SitePressures computed =
                        given == null || step.meanRoofHeight() == null
                                ? site
                                : SitePressures.of(
                                        given.withMeanRoofHeight(step.meanRoofHeight()));
                parts.add(
                        new ZoneMap.Part(
                                step.from(),
                                step.to(),
                                face.base() + step.height(),
                                computed,
                                computed == null ? null : computed.cornerZones()));
            }
            String middle = site == null ? null : site.scheme().middle();
            maps.put(face.id(), new ZoneMap(face, parts, middle));
        }
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
        return site == null
                ? span * tributaryWidth
                : site.effectiveWindArea(span, tributaryWidth);
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
        List<String> zones =
                cells.stream()
                        .map(ZoneMap.Cell::zone)
                        .filter(Objects::nonNull)
                        .distinct()
                        .sorted()
                        .toList();
        ReviewItem.Wind wind =
                new ReviewItem.Wind(
                        zones,
                        governing.negative().zone(),
                        Quantity.of(Dimension.AREA, patch.area()),
                        Quantity.of(Dimension.DISTANCE, patch.top()),
                        Quantity.of(Dimension.PRESSURE, governing.positive().positive()),
                        Quantity.of(Dimension.PRESSURE, governing.negative().negative()),
                        governing.basis());
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
        if (zones.size() > 1) {
            findings.add(
                    Finding.info(
                            "TOUCHES_SEVERAL_ZONES",
                            pointer + "/offset",
                            "Touches the zones "
                                    + String.join(" and ", zones)
                                    + "; zone "
                                    + governing.negative().zone()
                                    + " governs the suction."));
        }
        return new Seen(governing.load(), wind, findings);
    }

    /**
     * The standard's governing pressures in some cells, at least one.
     *
     * @param area effective wind area, m2
     * @param top level of the top of what touches them, m
     */
    static GoverningPressure computed(
            ZoneMap map, List<ZoneMap.Cell> cells, double area, double top) {
        return GoverningPressure.of(
                cells.stream()
                        .map(
                                cell ->
                                        Objects.requireNonNull(cell.computed())
                                                .pressure(
                                                        Objects.requireNonNull(cell.zone()),
                                                        area,
                                                        map.level(cell, top)))
                        .toList());
    }
}
