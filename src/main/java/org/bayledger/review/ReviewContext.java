package org.bayledger.review;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.bayledger.check.Finding;
import org.bayledger.check.Load;
import org.bayledger.check.Reporting;
import org.bayledger.framing.DeflectionRule;
import org.bayledger.framing.Section;
import org.bayledger.glass.SealedUnit;
import org.bayledger.glazing.GlassBuildUp;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.bayledger.wind.GoverningPressure;
import org.bayledger.wind.SitePressures;
import org.bayledger.wind.WindStandard;
import org.bayledger.wind.ZoneStrip;
import org.jspecify.annotations.Nullable;

/** What all bays of a document share, worked out once. */
final class ReviewContext {

    /** Wind that nobody called out. */
    static final Load NO_LOAD = new Load(null, null, null);

    final ReviewDocument document;
    final Reporting reporting;
    final Layout layout;
    final @Nullable SitePressures pressures;
    final DeflectionRule deflectionRule;
    private final Map<String, GlassType> glass = new HashMap<>();
    private final Map<String, Section> sections = new HashMap<>();
    private final Map<String, List<ZoneStrip>> strips = new HashMap<>();
    private final Map<String, Double> widths = new HashMap<>();

    ReviewContext(ReviewDocument document, Reporting reporting) {
        this.document = document;
        this.reporting = reporting;
        layout = new Layout(document.bays());
        document.elevations().forEach(face -> widths.put(face.id(), face.width()));
        document.glass().forEach(type -> glass.put(type.id(), type));
        document.metal().forEach(type -> sections.put(type.id(), type.section()));
        boolean european =
                document.site() != null && document.site().standard() == WindStandard.EN_1991_1_4;
        deflectionRule = european ? DeflectionRule.EN_13830 : DeflectionRule.IBC;
        SitePressures found = document.site() == null ? null : SitePressures.of(document.site());
        pressures = found;
        if (found != null) {
            for (Elevation face : document.elevations()) {
                strips.put(
                        face.id(),
                        found.strips(face.width(), face.cornerAtLeft(), face.cornerAtRight()));
            }
        }
    }

    /** The build-up of a glass type, or null where none was named. */
    @Nullable GlassBuildUp glass(@Nullable String id) {
        GlassType type = id == null ? null : glass.get(id);
        return type == null ? null : type.buildUp();
    }

    /** How the units of a glass type were sealed, or null where none was named or said. */
    @Nullable SealedUnit sealedUnit(@Nullable String id) {
        GlassType type = id == null ? null : glass.get(id);
        return type == null ? null : type.sealedUnit();
    }

    /** The properties of a section, or null where none was named. */
    @Nullable Section section(@Nullable String id) {
        return id == null ? null : sections.get(id);
    }

    /** Whether a place on an elevation is an outside corner of the building. */
    boolean isOutsideCorner(String elevation, double at) {
        return document.elevations().stream()
                .filter(face -> face.id().equals(elevation))
                .anyMatch(
                        face ->
                                (face.cornerAtLeft() && at <= Layout.TOUCH)
                                        || (face.cornerAtRight()
                                                && at >= face.width() - Layout.TOUCH));
    }

    /** Width of an elevation, m. */
    double width(String elevation) {
        return widths.getOrDefault(elevation, 0.0);
    }

    /** The zones of an elevation from left to right; none without a site. */
    List<ZoneStrip> strips(String elevation) {
        return strips.getOrDefault(elevation, List.of());
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
     * The wind on an item of a bay.
     *
     * @param pointer pointer to the bay
     * @param elevation name of its elevation
     * @param from left edge of what loads the item, from the elevation's left edge, m
     * @param to right edge of it, m
     * @param area effective wind area, m2
     * @param height height of the item's top above the building datum, m
     */
    Seen wind(
            String pointer, String elevation, double from, double to, double area, double height) {
        if (pressures == null) {
            return new Seen(NO_LOAD, null, List.of());
        }
        if (height > pressures.greatestHeight()) {
            return new Seen(
                    NO_LOAD,
                    null,
                    List.of(
                            Finding.action(
                                    "WIND_NOT_COVERED_AT_THIS_HEIGHT",
                                    pointer + "/sill",
                                    "The wind standard does not reach up to "
                                            + reporting.text(Dimension.DISTANCE, height)
                                            + " above ground here.")));
        }
        List<String> zones =
                strips(elevation).stream()
                        .filter(
                                strip ->
                                        Math.min(to, strip.to()) - Math.max(from, strip.from())
                                                > Layout.TOUCH)
                        .map(ZoneStrip::zone)
                        .distinct()
                        .sorted()
                        .toList();
        GoverningPressure governing = pressures.governing(zones, area, height);
        Load load = governing.load();
        ReviewItem.Wind wind =
                new ReviewItem.Wind(
                        zones,
                        governing.negative().zone(),
                        Quantity.of(Dimension.AREA, area),
                        Quantity.of(Dimension.DISTANCE, height),
                        Quantity.of(Dimension.PRESSURE, governing.positive().positive()),
                        Quantity.of(Dimension.PRESSURE, governing.negative().negative()),
                        governing.basis());
        List<Finding> findings =
                new ArrayList<>(
                        pressures.heightFindings(
                                height, pointer + "/sill", "This part of the bay"));
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
        return new Seen(load, wind, findings);
    }
}
