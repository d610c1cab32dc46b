package org.bayledger.review;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.bayledger.check.Faults;
import org.bayledger.check.FaultsException;
import org.bayledger.check.Pointer;
import org.bayledger.quantity.UnitSystem;
import org.bayledger.wind.Site;
import org.bayledger.wind.SpecifiedPressures;
import org.bayledger.wind.ZoneScheme;
import org.jspecify.annotations.Nullable;

/**
 * A whole job: the site, what the wall is made of, and where each bay of it stands.
 *
 * @param name name of the job
 * @param units units of the answer where the caller asks for none; absent: SI
 * @param site the building and its wind
 * @param specifiedPressures wind pressures that come with the job; on the elevations that they name
 *     they are used instead of computed ones, and compared with them where there is a site
 * @param glassTypes glass build-ups by name
 * @param sections framing sections by name
 * @param elevations faces of the building
 * @param bays bays of wall on them
 */
public record ReviewDocument(
        @NotBlank @Size(max = 200) String name,
        @Nullable UnitSystem units,
        @Nullable Site site,
        @Nullable SpecifiedPressures specifiedPressures,
        @Size(max = 1000) @Nullable List<GlassType> glassTypes,
        @Size(max = 1000) @Nullable List<SectionType> sections,
        @Size(min = 1, max = 1000) List<Elevation> elevations,
        @Size(min = 1, max = 50_000) List<Bay> bays) {

    /** What an id may be: it becomes a part of item ids, which are separated by slashes. */
    static final String ID = "[^/\\x00-\\x1f\\x7f]{1,80}";

    static final String ID_RULE =
            "must have 1 to 80 characters, without slashes and control characters";

    /** Rounding between units that a fit may leave, m. */
    private static final double SLACK = 0.001;

    public ReviewDocument {
        glassTypes = glassTypes == null ? List.of() : List.copyOf(glassTypes);
        sections = sections == null ? List.of() : List.copyOf(sections);
        elevations = List.copyOf(elevations);
        bays = List.copyOf(bays);
        Faults faults = new Faults();
        Set<String> glass = unique(faults, "/glassTypes", glassTypes, GlassType::id);
        Set<String> metal = unique(faults, "/sections", sections, SectionType::id);
        unique(faults, "/elevations", elevations, Elevation::id);
        unique(faults, "/bays", bays, Bay::id);
        if (site != null) {
            meanRoofHeights(faults, site, elevations);
        }
        Map<String, Elevation> faces =
                elevations.stream()
                        .collect(Collectors.toMap(Elevation::id, e -> e, (first, again) -> first));
        if (specifiedPressures != null) {
            specified(faults, specifiedPressures, site, faces.keySet());
        }
        for (int i = 0; i < bays.size(); i++) {
            Bay bay = bays.get(i);
            String at = Pointer.child("/bays", i);
            named(faults, at + "/glassType", bay.glassType(), glass);
            if (bay.mullion() != null) {
                named(faults, at + "/mullion/section", bay.mullion().section(), metal);
            }
            if (bay.horizontal() != null) {
                named(faults, at + "/horizontal/section", bay.horizontal().section(), metal);
            }
            lites(faults, at, bay, glass);
            if (bay.anchors() != null) {
                unique(faults, at + "/anchors", bay.anchors(), anchor -> anchor.id());
            }
            Elevation face = faces.get(bay.elevation());
            if (face == null) {
                named(faults, at + "/elevation", bay.elevation(), faces.keySet());
            } else {
                placed(faults, at, bay, face);
            }
        }
        ReviewWork.require(bays, glassTypes, faults);
        faults.throwIfAny();
    }

    private static <T> Set<String> unique(
            Faults faults, String pointer, List<T> things, Function<T, String> id) {
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < things.size(); i++) {
            if (!seen.add(id.apply(things.get(i)))) {
                faults.outOfRange(
                        Pointer.child(pointer, i) + "/id",
                        "'" + id.apply(things.get(i)) + "' is used twice");
            }
        }
        return seen;
    }

    private static void named(
            Faults faults, String pointer, @Nullable String name, Set<String> known) {
        if (name != null && !known.contains(name)) {
            faults.outOfRange(
                    pointer,
                    "'"
                            + name
                            + "' is not in this document; known: "
                            + known.stream().sorted().limit(20).collect(Collectors.joining(", ")));
        }
    }

    private static void lites(Faults faults, String at, Bay bay, Set<String> glass) {
        if (bay.lites() == null) {
            return;
        }
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < bay.lites().size(); i++) {
            LiteChange lite = bay.lites().get(i);
            String pointer = Pointer.child(at + "/lites", i);
            faults.require(
                    lite.column() <= bay.columns().size(),
                    pointer + "/column",
                    "the bay has " + bay.columns().size() + " columns");
            faults.require(
                    lite.row() <= bay.rows().size(),
                    pointer + "/row",
                    "the bay has " + bay.rows().size() + " rows");
            faults.require(seen.add(lite.column() + "-" + lite.row()), pointer, "is given twice");
            named(faults, pointer + "/glassType", lite.glassType(), glass);
            if (lite.installed() != null && lite.column() <= bay.columns().size()) {
                double width = bay.columns().get(lite.column() - 1);
                lite.installed().check(faults, pointer + "/installed", width, null);
            }
        }
    }

    /** Whether the site's rules hold for the mean roof height of each part of an elevation. */
    private static void meanRoofHeights(Faults faults, Site site, List<Elevation> elevations) {
        for (int i = 0; i < elevations.size(); i++) {
            List<Step> parts = elevations.get(i).parts();
            for (int j = 0; j < parts.size(); j++) {
                Double height = parts.get(j).meanRoofHeight();
                try {
                    if (height != null) {
                        site.withMeanRoofHeight(height);
                    }
                } catch (FaultsException refused) {
                    String at = "/elevations/" + i + "/steps/" + j + "/meanRoofHeight";
                    refused.faults()
                            .forEach(
                                    fault ->
                                            faults.outOfRange(
                                                    at,
                                                    "with it, the site's "
                                                            + fault.pointer().substring(1)
                                                            + " "
                                                            + fault.detail()));
                }
            }
        }
    }

    private static void specified(
            Faults faults, SpecifiedPressures specified, @Nullable Site site, Set<String> faces) {
        String at = WallWind.SPECIFIED + "/pressures";
        for (int i = 0; i < specified.pressures().size(); i++) {
            String elevation = specified.pressures().get(i).elevation();
            named(faults, Pointer.child(at, i) + "/elevation", elevation, faces);
        }
        faults.require(
                site == null || specified.scheme() == ZoneScheme.of(site.standard()),
                at,
                "have zones that the site's standard, "
                        + (site == null ? "" : site.standard())
                        + ", does not have");
    }

    private static void placed(Faults faults, String at, Bay bay, Elevation face) {
        faults.require(
                bay.right() <= face.width() + SLACK,
                at + "/offset",
                "with its columns the bay reaches beyond the right end of elevation " + face.id());
        faults.require(
                bay.sill() >= face.base() - SLACK,
                at + "/sill",
                "lies below the base of elevation " + face.id());
        faults.require(
                bay.top() <= face.topBetween(bay.offset(), bay.right()) + SLACK,
                at + "/sill",
                "with its rows the bay reaches above the top of elevation "
                        + face.id()
                        + (face.steps() == null ? "" : " where it stands"));
    }

    /** Units of an answer for which the caller asked for none. */
    public UnitSystem unitsOrDefault() {
        return units == null ? UnitSystem.SI : units;
    }

    /** Glass types, none where none were given. */
    List<GlassType> glass() {
        return glassTypes == null ? List.of() : glassTypes;
    }

    /** Sections, none where none were given. */
    List<SectionType> metal() {
        return sections == null ? List.of() : sections;
    }
}
