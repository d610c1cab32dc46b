package org.bayledger.review;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.bayledger.check.Reporting;
import org.bayledger.framing.DeflectionRule;
import org.bayledger.framing.Section;
import org.bayledger.framing.SectionCandidate;
import org.bayledger.glass.SealedUnit;
import org.bayledger.glazing.GlassBuildUp;
import org.bayledger.wind.SitePressures;
import org.bayledger.wind.ZoneScheme;
import org.jspecify.annotations.Nullable;

/** What all bays of a document share, worked out once. */
final class ReviewContext {

    final ReviewDocument document;
    final Reporting reporting;
    final Layout layout;
    final WallWind wind;
    final DeflectionRule deflectionRule;

    /** The site's explicit share of the strength-level wind for deflections; null: none chosen. */
    final @Nullable Double deflectionLoadFactor;

    /** The sections of the document that verticals are made of somewhere. */
    final List<SectionCandidate> verticalSections;

    /** The sections of the document that horizontals are made of somewhere. */
    final List<SectionCandidate> horizontalSections;

    private final Map<String, GlassType> glass = new HashMap<>();
    private final Map<String, Section> sections = new HashMap<>();
    private final Map<String, Double> widths = new HashMap<>();

    ReviewContext(ReviewDocument document, Reporting reporting) {
        this.document = document;
        this.reporting = reporting;
        layout = new Layout(document.bays());
        document.elevations().forEach(face -> widths.put(face.id(), face.width()));
        document.glass().forEach(type -> glass.put(type.id(), type));
        document.metal().forEach(type -> sections.put(type.id(), type.section()));
        verticalSections = named(document, ReviewContext::ofVerticals);
        horizontalSections = named(document, ReviewContext::ofHorizontals);
        wind = new WallWind(document, reporting);
        deflectionRule =
                wind.scheme() == ZoneScheme.EN ? DeflectionRule.EN_13830 : DeflectionRule.IBC;
        SitePressures site = wind.site();
        deflectionLoadFactor = site == null ? null : site.serviceabilityFactor();
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

    private static @Nullable String ofVerticals(Bay bay) {
        return bay.mullion() == null ? null : bay.mullion().section();
    }

    private static @Nullable String ofHorizontals(Bay bay) {
        return bay.horizontal() == null ? null : bay.horizontal().section();
    }

    private static List<SectionCandidate> named(
            ReviewDocument document, Function<Bay, @Nullable String> of) {
        Set<String> names = new HashSet<>();
        for (Bay bay : document.bays()) {
            String name = of.apply(bay);
            if (name != null) {
                names.add(name);
            }
        }
        return document.metal().stream()
                .filter(type -> names.contains(type.id()))
                .map(type -> new SectionCandidate(type.id(), null, type.section()))
                .toList();
    }

    /** The corner of the building at a place on an elevation, or null where the wall runs on. */
    @Nullable Corner corner(String elevation, double at) {
        return document.elevations().stream()
                .filter(face -> face.id().equals(elevation))
                .flatMap(face -> face.allCorners().stream())
                .filter(corner -> Math.abs(corner.at() - at) <= Layout.TOUCH)
                .findFirst()
                .orElse(null);
    }

    /** Width of an elevation, m. */
    double width(String elevation) {
        return widths.getOrDefault(elevation, 0.0);
    }
}
