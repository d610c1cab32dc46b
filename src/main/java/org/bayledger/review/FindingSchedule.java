package org.bayledger.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.bayledger.check.Finding;
import org.bayledger.check.Finding.Severity;
import org.bayledger.check.Verdict;
import org.bayledger.quantity.Dimension;
import org.bayledger.wind.SitePressures;

/**
 * What a reviewer has to read first: findings of the document itself, and of its items those on
 * which somebody has to act; alike ones become one with all its items.
 */
final class FindingSchedule {

    /** Pairs of bays on one another that are named; a job with more has another trouble. */
    private static final int MOST_OVERLAPS = 200;

    /** Narrower than any column, m: not a piece of wall but a slip in an offset. */
    private static final double NO_COLUMN = 0.05;

    private record Key(String code, Severity severity, String text) {}

    private static final class Merged {
        final String pointer;
        final Set<String> items = new LinkedHashSet<>();
        Verdict worst = Verdict.SATISFIED;

        Merged(String pointer) {
            this.pointer = pointer;
        }
    }

    private final Map<Key, Merged> merged = new LinkedHashMap<>();

    private FindingSchedule() {}

    static List<ReviewResult.ReviewFinding> of(
            ReviewContext context,
            List<BaySummary> bays,
            List<ReviewResult.WindRow> windSchedule,
            List<Finding> said) {
        FindingSchedule schedule = new FindingSchedule();
        schedule.document(context, windSchedule, said);
        bays.forEach(bay -> bay.actions().forEach(schedule::add));
        // what is worst first: a limit that is exceeded before something that was not given
        Comparator<Map.Entry<Key, Merged>> worstLast =
                Comparator.<Map.Entry<Key, Merged>, Severity>comparing(
                                entry -> entry.getKey().severity())
                        .thenComparing(entry -> entry.getValue().worst);
        List<Map.Entry<Key, Merged>> entries = new ArrayList<>(schedule.merged.entrySet());
        entries.sort(worstLast.reversed());
        List<ReviewResult.ReviewFinding> findings = new ArrayList<>();
        for (Map.Entry<Key, Merged> entry : entries) {
            findings.add(
                    new ReviewResult.ReviewFinding(
                            entry.getKey().code(),
                            entry.getKey().severity(),
                            entry.getValue().pointer,
                            entry.getKey().text(),
                            List.copyOf(entry.getValue().items)));
        }
        return findings;
    }

    private void add(BaySummary.Action action) {
        Merged of = merge(action.finding(), action.pointer());
        of.items.add(action.item().id());
        of.worst = of.worst.and(action.item().verdict());
    }

    private Merged merge(Finding finding, String pointer) {
        return merged.computeIfAbsent(
                new Key(finding.code(), finding.severity(), finding.text()),
                key -> new Merged(pointer));
    }

    private void document(
            ReviewContext context, List<ReviewResult.WindRow> windSchedule, List<Finding> said) {
        SitePressures site = context.wind.site();
        boolean specified = context.document.specifiedPressures() != null;
        if (site != null) {
            boolean compared =
                    context.document.elevations().stream()
                            .allMatch(face -> context.wind.specifiedOn(face.id()) != null);
            site.findings()
                    .forEach(
                            finding ->
                                    merge(
                                            compared ? forComparison(finding) : finding,
                                            "/site" + finding.pointer()));
        } else if (!specified) {
            merge(
                    Finding.action(
                            "WIND_NOT_CALLED_OUT",
                            "/site",
                            "No site was given: no design wind pressure of either sign is called"
                                    + " out for any zone."),
                    "/site");
        }
        if (site != null || specified) {
            withoutBays(context.document, windSchedule);
        }
        said.forEach(finding -> merge(finding, finding.pointer()));
        reentrant(context.document);
        overlaps(context);
    }

    /** A site's finding where its pressures are used for nothing but a comparison. */
    private static Finding forComparison(Finding finding) {
        boolean ofWall = finding.pointer().equals("/windborneDebrisRegion");
        return ofWall || finding.severity() != Severity.ACTION
                ? finding
                : Finding.note(
                        finding.code(),
                        finding.pointer(),
                        finding.text()
                                + " This bears only on the comparison with the specified"
                                + " pressures.");
    }

    /** Corners at which no end zone was taken, and parts that share the site's roof height. */
    private void reentrant(ReviewDocument document) {
        for (int i = 0; i < document.elevations().size(); i++) {
            Elevation face = document.elevations().get(i);
            List<Corner> corners = face.corners() == null ? List.of() : face.corners();
            for (int j = 0; j < corners.size(); j++) {
                if (corners.get(j).kind() == Corner.Kind.REENTRANT) {
                    merge(
                            Finding.note(
                                    "REENTRANT_CORNER_WITHOUT_END_ZONE",
                                    "",
                                    "At re-entrant corners of elevation "
                                            + face.id()
                                            + " no end zone was taken (common practice, no"
                                            + " source). Where one is wanted there, give the corner"
                                            + " as OUTSIDE."),
                            "/elevations/" + i + "/corners/" + j);
                }
            }
            boolean lower =
                    document.site() != null
                            && face.parts().stream()
                                    .anyMatch(
                                            part ->
                                                    part.meanRoofHeight() == null
                                                            && part.height()
                                                                    < face.height() - Layout.TOUCH);
            if (lower) {
                merge(
                        Finding.note(
                                "PART_WITH_ROOF_HEIGHT_OF_SITE",
                                "",
                                "Lower parts of elevation "
                                        + face.id()
                                        + " were given no mean roof height of their own: their"
                                        + " pressures are those of the site's."),
                        "/elevations/" + i + "/steps");
            }
        }
    }

    /** Elevations on which no bay of the document stands, whose wind nothing else shows. */
    private void withoutBays(ReviewDocument document, List<ReviewResult.WindRow> windSchedule) {
        for (int i = 0; i < document.elevations().size(); i++) {
            String face = document.elevations().get(i).id();
            if (document.bays().stream().noneMatch(bay -> bay.elevation().equals(face))) {
                boolean calledOut =
                        windSchedule.stream().anyMatch(row -> row.elevation().equals(face));
                merge(
                        Finding.note(
                                "ELEVATION_WITHOUT_BAYS",
                                "",
                                "No bay of this document stands on elevation "
                                        + face
                                        + (calledOut
                                                ? ": its pressures are called out at its top for"
                                                        + " the smallest components of the"
                                                        + " document."
                                                : ", and its pressures are not called out: the"
                                                        + " wind standard ends below its top, or no"
                                                        + " component of the document saw wind.")),
                        "/elevations/" + i);
            }
        }
    }

    /**
     * Two bays on the same piece of wall, or a hair apart: one of them is not where the document
     * says.
     */
    private void overlaps(ReviewContext context) {
        Map<String, List<Layout.Placed>> byFace = new LinkedHashMap<>();
        for (Layout.Placed placed : context.layout.all()) {
            byFace.computeIfAbsent(placed.bay().elevation(), face -> new ArrayList<>()).add(placed);
        }
        int found = 0;
        for (List<Layout.Placed> face : byFace.values()) {
            face.sort(Comparator.comparingDouble(Layout.Placed::left));
            for (int a = 0; a < face.size(); a++) {
                Layout.Placed left = face.get(a);
                for (int b = a + 1;
                        b < face.size() && face.get(b).left() < left.right() + NO_COLUMN;
                        b++) {
                    Layout.Placed right = face.get(b);
                    double common =
                            Math.min(left.top(), right.top())
                                    - Math.max(left.bottom(), right.bottom());
                    double gap = right.left() - left.right();
                    if (common > Layout.TOUCH && gap > Layout.TOUCH) {
                        merge(
                                Finding.action(
                                        "BAYS_ALMOST_TOUCH",
                                        "",
                                        "Between bays "
                                                + left.bay().id()
                                                + " and "
                                                + right.bay().id()
                                                + " there is a gap of "
                                                + context.reporting.text(Dimension.LENGTH, gap)
                                                + ": each vertical there was given the wind of its"
                                                + " own bay only. Correct the offset where they"
                                                + " share one."),
                                "/bays/" + right.index() + "/offset");
                    } else if (common > Layout.TOUCH && gap < -Layout.TOUCH) {
                        if (found == MOST_OVERLAPS) {
                            merge(
                                    Finding.action(
                                            "BAYS_OVERLAP",
                                            "",
                                            "More bays than these "
                                                    + MOST_OVERLAPS
                                                    + " pairs stand on the same piece of wall:"
                                                    + " correct these first."),
                                    "/bays/" + right.index() + "/offset");
                            return;
                        }
                        found++;
                        merge(
                                Finding.action(
                                        "BAYS_OVERLAP",
                                        "",
                                        "Bays "
                                                + left.bay().id()
                                                + " and "
                                                + right.bay().id()
                                                + " stand on the same piece of wall, over a height"
                                                + " of "
                                                + context.reporting.text(Dimension.DISTANCE, common)
                                                + "."),
                                "/bays/" + right.index() + "/offset");
                    }
                }
            }
        }
    }
}
