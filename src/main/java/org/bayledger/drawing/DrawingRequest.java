package org.bayledger.drawing;

import jakarta.validation.constraints.Size;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.bayledger.check.Faults;
import org.bayledger.check.LoadBasis;
import org.bayledger.check.Measured;
import org.bayledger.quantity.Dimension;
import org.bayledger.review.Bay;
import org.bayledger.review.Elevation;
import org.bayledger.review.ReviewDocument;
import org.bayledger.review.SectionType;
import org.jspecify.annotations.Nullable;

/**
 * Which drawing of a review document is wanted.
 *
 * @param document the job
 * @param drawing what the drawing shows
 * @param elevation name of the elevation that is drawn, or on which the bay stands
 * @param bay name of a bay on that elevation; WIND_ZONES marks it, SPAN_CHART takes spacings from
 *     it alone, SETTING_BLOCKS, INTERNAL_SEALS and DEFLECTED_HORIZONTAL are of it and need it
 * @param item which horizontal of the bay DEFLECTED_HORIZONTAL shows: the review's name of it
 *     (N-03/horizontal/2), under the lite that governs, or of one lite that stands on it
 *     (N-03/lite/1-2); absent: the horizontal that governs the bay
 * @param section name of the section of a SPAN_CHART, which needs it
 * @param pressures pressures in either direction for a SPAN_CHART, Pa; absent: those of the
 *     document's wind schedule for the elevation
 * @param basis level of those pressures; absent: ALLOWABLE_STRESS
 * @param spacings spacings of the members for a SPAN_CHART, m; absent: the widths of wall that
 *     members with this section carry on the elevation
 */
public record DrawingRequest(
        ReviewDocument document,
        DrawingKind drawing,
        String elevation,
        @Nullable String bay,
        @Nullable String item,
        @Nullable String section,
        @Size(min = 1, max = 20)
                @Measured(value = Dimension.PRESSURE, sign = Measured.Sign.POSITIVE, max = 50e3)
                @Nullable List<Double> pressures,
        @Nullable LoadBasis basis,
        @Size(min = 1, max = 50)
                @Measured(value = Dimension.DISTANCE, sign = Measured.Sign.POSITIVE, max = 100)
                @Nullable List<Double> spacings) {

    /** Names that are listed of those that would be accepted. */
    private static final int LISTED = 20;

    private static final String CHART_ONLY = "belongs to SPAN_CHART; leave it out";

    public DrawingRequest {
        pressures = pressures == null ? null : List.copyOf(pressures);
        spacings = spacings == null ? null : List.copyOf(spacings);
        Faults faults = new Faults();
        boolean known =
                document.elevations().stream().anyMatch(face -> face.id().equals(elevation));
        faults.require(
                known,
                "/elevation",
                "'"
                        + elevation
                        + "' is not in the document; known: "
                        + listed(document.elevations().stream().map(Elevation::id).toList()));
        if (known) {
            bay(faults, document, drawing, elevation, bay, item);
        }
        faults.require(
                item == null || drawing == DrawingKind.DEFLECTED_HORIZONTAL,
                "/item",
                "belongs to DEFLECTED_HORIZONTAL; leave it out");
        if (drawing == DrawingKind.SPAN_CHART) {
            section(faults, document, section);
            faults.require(
                    basis == null || pressures != null,
                    "/basis",
                    "is that of pressures, which were not given; those of the document have their"
                            + " own");
        } else {
            faults.require(section == null, "/section", CHART_ONLY);
            faults.require(pressures == null, "/pressures", CHART_ONLY);
            faults.require(basis == null, "/basis", CHART_ONLY);
            faults.require(spacings == null, "/spacings", CHART_ONLY);
        }
        faults.throwIfAny();
    }

    private static void bay(
            Faults faults,
            ReviewDocument document,
            DrawingKind drawing,
            String elevation,
            @Nullable String name,
            @Nullable String item) {
        List<Bay> there = baysOn(document, elevation);
        String names = listed(there.stream().map(Bay::id).toList());
        if (name == null) {
            if (drawing.ofBay()) {
                faults.malformed(
                        "/bay",
                        "is required for "
                                + drawing
                                + "; on elevation "
                                + elevation
                                + " there stand: "
                                + names);
            }
            return;
        }
        Bay bay = there.stream().filter(b -> b.id().equals(name)).findFirst().orElse(null);
        if (bay == null) {
            faults.outOfRange(
                    "/bay",
                    "'"
                            + name
                            + "' does not stand on elevation "
                            + elevation
                            + "; there stand: "
                            + names);
        } else if (drawing == DrawingKind.DEFLECTED_HORIZONTAL) {
            horizontal(faults, bay, item);
        }
    }

    private static void horizontal(Faults faults, Bay bay, @Nullable String item) {
        List<String> names = HorizontalItem.names(bay);
        if (names.isEmpty()) {
            faults.outOfRange(
                    "/bay",
                    "'"
                            + bay.id()
                            + "' has no horizontal that bends under glass: all its lites stand on a"
                            + " sill that is shimmed");
        } else if (item != null && HorizontalItem.of(bay, item) == null) {
            faults.outOfRange(
                    "/item",
                    "'"
                            + item
                            + "' is no horizontal that bends under glass, nor a lite that stands on"
                            + " one; give one of "
                            + listed(names)
                            + ", or a lite as "
                            + bay.id()
                            + "/lite/column-row");
        }
    }

    private static void section(Faults faults, ReviewDocument document, @Nullable String name) {
        List<SectionType> sections = document.sections() == null ? List.of() : document.sections();
        String names = listed(sections.stream().map(SectionType::id).toList());
        if (name == null) {
            faults.malformed("/section", "is required for SPAN_CHART; known: " + names);
        } else {
            faults.require(
                    sections.stream().anyMatch(section -> section.id().equals(name)),
                    "/section",
                    "'" + name + "' is not in the document; known: " + names);
        }
    }

    private static String listed(List<String> names) {
        return names.isEmpty()
                ? "none"
                : names.stream().limit(LISTED).collect(Collectors.joining(", "))
                        + (names.size() > LISTED ? ", ..." : "");
    }

    private static List<Bay> baysOn(ReviewDocument document, String elevation) {
        return document.bays().stream().filter(b -> b.elevation().equals(elevation)).toList();
    }

    /** The bays on that elevation, in the order of the document. */
    List<Bay> bays() {
        return baysOn(document, elevation);
    }

    /** The bay that a drawing of one bay is of. */
    Bay ofBay() {
        return bays().stream().filter(b -> b.id().equals(bay)).findFirst().orElseThrow();
    }

    /** The section of a chart of spans. */
    SectionType ofSection() {
        return Objects.requireNonNull(document.sections()).stream()
                .filter(type -> type.id().equals(section))
                .findFirst()
                .orElseThrow();
    }
}
