package org.bayledger.review;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.bayledger.check.Finding;
import org.bayledger.check.Reporting;
import org.bayledger.quantity.Dimension;
import org.bayledger.wind.SitePressures;
import org.bayledger.wind.SpecifiedComparison;
import org.bayledger.wind.SpecifiedPick;
import org.bayledger.wind.SpecifiedPressures;

/**
 * What is to be said of specified wind pressures on every zone of every elevation, whether a bay
 * stands there or not: what they leave out, and where they are below the site's standard.
 */
final class SpecifiedReview {

    /** The worst of several comparisons at one place, and what it was made for. */
    private record Worst(SpecifiedComparison.Pair pair, WindSchedule.Slot slot) {}

    private final ReviewContext context;
    private final WindSchedule schedule;
    private final Reporting reporting;
    private final List<Finding> findings = new ArrayList<>();

    private SpecifiedReview(ReviewContext context, WindSchedule schedule) {
        this.context = context;
        this.schedule = schedule;
        reporting = context.reporting;
    }

    /** The findings, with pointers into the document; none without specified pressures. */
    static List<Finding> findings(ReviewContext context, WindSchedule schedule) {
        SpecifiedReview review = new SpecifiedReview(context, schedule);
        SpecifiedPressures specified = context.document.specifiedPressures();
        if (specified != null) {
            review.add(specified);
        }
        return review.findings;
    }

    private void add(SpecifiedPressures specified) {
        SpecifiedComparison comparison = new SpecifiedComparison(specified, reporting);
        findings.add(comparison.govern().below(WallWind.SPECIFIED));
        SitePressures site = context.wind.site();
        if (site != null && comparison.factor(site.basis()) == null) {
            findings.add(comparison.notCompared(site.basis()).below(WallWind.SPECIFIED));
        }
        for (Elevation face : context.document.elevations()) {
            if (context.wind.specifiedOn(face.id()) == null) {
                findings.add(notCovered(face, site != null));
                continue;
            }
            if (context.wind.map(face.id()).cells().stream().anyMatch(c -> c.zone() == null)) {
                findings.add(WallWind.zonesNotLocated(face.id()));
            }
            Map<String, Worst> below = new LinkedHashMap<>();
            for (WindSchedule.Slot slot : schedule.slots(face)) {
                SpecifiedPick pick =
                        WallWind.pick(
                                specified,
                                face.id(),
                                slot.cells(),
                                slot.area(),
                                slot.from(),
                                slot.to());
                for (SpecifiedPick.Missing missing : pick.missing()) {
                    findings.add(missing.finding(face.id(), reporting).below(WallWind.SPECIFIED));
                }
                if (site != null && slot.to() <= site.greatestHeight()) {
                    compare(comparison, slot, pick, below);
                }
            }
            below.forEach((place, worst) -> findings.add(below(comparison, place, worst)));
        }
    }

    private void compare(
            SpecifiedComparison comparison,
            WindSchedule.Slot slot,
            SpecifiedPick pick,
            Map<String, Worst> below) {
        String place =
                "zone "
                        + slot.zone()
                        + " of elevation "
                        + slot.face().id()
                        + " from "
                        + reporting.text(Dimension.DISTANCE, slot.from())
                        + " to "
                        + reporting.text(Dimension.DISTANCE, slot.to());
        ZoneMap map = context.wind.map(slot.face().id());
        for (SpecifiedComparison.Pair pair :
                comparison.below(
                        pick, WallWind.computed(map, slot.cells(), slot.area(), slot.to()))) {
            below.merge(
                    pair.sign() + " " + place,
                    new Worst(pair, slot),
                    (one, other) ->
                            other.pair().shortfall() > one.pair().shortfall() ? other : one);
        }
    }

    private Finding below(SpecifiedComparison comparison, String place, Worst worst) {
        String kind = worst.slot().kind().name().toLowerCase(Locale.ROOT);
        return comparison
                .finding(
                        worst.pair(),
                        place.substring(place.indexOf(' ') + 1),
                        "the "
                                + kind
                                + " with the smallest effective wind area, "
                                + reporting.text(Dimension.AREA, worst.slot().area())
                                + ", at the top of that range")
                .below(WallWind.SPECIFIED);
    }

    private static Finding notCovered(Elevation face, boolean computed) {
        String text = "None of the specified pressures holds on elevation " + face.id();
        String pointer = WallWind.SPECIFIED + "/pressures";
        return computed
                ? Finding.note(
                        "ELEVATION_NOT_SPECIFIED",
                        pointer,
                        text + ": its pressures were computed from the site.")
                : Finding.action(
                        "ELEVATION_NOT_SPECIFIED",
                        pointer,
                        text
                                + ", and no site was given: no design wind pressure of either sign is"
                                + " called out there.");
    }
}
