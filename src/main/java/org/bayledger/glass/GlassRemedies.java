package org.bayledger.glass;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.bayledger.check.AllowableLoad;
import org.bayledger.check.FaultsException;
import org.bayledger.check.Pointer;
import org.bayledger.check.Remedy;
import org.bayledger.check.Remedy.Change;
import org.bayledger.check.Reporting;
import org.bayledger.glazing.GlassBuildUp;
import org.bayledger.glazing.HeatTreatment;
import org.bayledger.glazing.NominalThickness;
import org.bayledger.glazing.Pane;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.bayledger.quantity.UnitSystem;
import org.jspecify.annotations.Nullable;

/**
 * Changes that make a lite pass that does not: thicker glass, stronger heat treatment, a smaller
 * lite, more bite; each computed anew and offered only where it keeps every limit and nothing about
 * the glass stays in doubt. What stays open whatever the glass, such as a duration that was not
 * given, is said beside it; under a load beyond the practice nothing is offered.
 */
final class GlassRemedies {

    /** Sheets above this are not heat-strengthened (common practice, no source), m. */
    private static final double THICKEST_HEAT_STRENGTHENED = 0.0128;

    /** Sheets below this are not heat-treated (common practice, no source), m. */
    private static final double THINNEST_TREATED = 0.0029;

    /** Sizes are offered in steps of 10 mm, or of half an inch. */
    private static final double METRIC_STEP = 0.01;

    private static final double CUSTOMARY_STEP = 0.0127;

    /** A lite is not made smaller than half its size. */
    private static final double SMALLEST_SHARE = 0.5;

    /** A bite is offered to three digits and a little more than is needed. */
    private static final int BITE_DIGITS = 3;

    private static final double ROUNDING = 1 + 1e-5;

    private final GlassRequest request;
    private final AllowableLoad load;
    private final Reporting reporting;
    private final List<String> open;
    private final List<Remedy> remedies = new ArrayList<>();

    private GlassRemedies(
            GlassRequest request, AllowableLoad load, Reporting reporting, List<String> open) {
        this.request = request;
        this.load = load;
        this.reporting = reporting;
        this.open = open;
    }

    /** Every remedy found for a lite that does not pass. */
    static List<Remedy> of(
            GlassRequest request, LiteSums failed, AllowableLoad load, Reporting reporting) {
        List<String> open = GlassFindings.openWhateverTheGlass(request, load);
        if (open == null || failed.edgeUtilization() > 1) {
            return List.of();
        }
        GlassRemedies search = new GlassRemedies(request, load, reporting, open);
        int panes = request.glass().panes().size();
        List<Integer> all = IntStream.range(0, panes).boxed().toList();
        List<Integer> governing = List.of(failed.governingPane());
        if (!search.thicker(governing) && panes > 1) {
            search.thicker(all);
        }
        if (!search.stronger(governing) && panes > 1) {
            search.stronger(all);
        }
        search.smaller();
        search.moreBite(failed);
        return List.copyOf(search.remedies);
    }

    private boolean thicker(List<Integer> which) {
        GlassBuildUp glass = request.glass();
        while (true) {
            for (int index : which) {
                Pane next = glass.panes().get(index).thicker();
                if (next == null) {
                    return false;
                }
                glass = glass.withPane(index, next);
            }
            LiteSums sums = sums(glass);
            if (sums != null && sums.passes()) {
                GlassBuildUp found = glass;
                offer(
                        which.stream()
                                .map(
                                        i ->
                                                "pane %d: %s"
                                                        .formatted(
                                                                i + 1, name(found.panes().get(i))))
                                .collect(Collectors.joining("; ", "Thicker glass, ", "")),
                        which.stream()
                                .flatMap(i -> thicknesses(i, found.panes().get(i)).stream())
                                .toList(),
                        sums);
                return true;
            }
        }
    }

    private static String name(Pane pane) {
        return pane.nominalThicknesses().stream()
                .map(GlassRemedies::designation)
                .collect(Collectors.joining(" + "));
    }

    private static String designation(double nominal) {
        NominalThickness known = NominalThickness.of(nominal);
        return known.text(known.isCustomary(nominal));
    }

    private static List<Change> thicknesses(int index, Pane pane) {
        String pointer = GlassRequest.panePointer(index);
        List<Change> changes = new ArrayList<>();
        List<Double> sheets = pane.nominalThicknesses();
        for (int ply = 0; ply < sheets.size(); ply++) {
            String at = pane.isLaminated() ? Pointer.child(pointer + "/plies", ply) : pointer;
            changes.add(new Change(at + "/nominalThickness", designation(sheets.get(ply))));
        }
        return changes;
    }

    private boolean stronger(List<Integer> which) {
        if (request.probability() != GlassModel.PROBABILITY || !treatedDuration()) {
            return false;
        }
        GlassBuildUp glass = request.glass();
        while (true) {
            for (int index : which) {
                Pane now = glass.panes().get(index);
                HeatTreatment next = next(now);
                if (next == null) {
                    return false;
                }
                glass = glass.withPane(index, now.with(next));
            }
            LiteSums sums = sums(glass);
            if (sums != null && sums.passes()) {
                List<Change> changes = new ArrayList<>();
                List<String> words = new ArrayList<>();
                for (int index : which) {
                    HeatTreatment to = glass.panes().get(index).heatTreatment();
                    changes.add(
                            new Change(
                                    GlassRequest.panePointer(index) + "/heatTreatment", to.name()));
                    words.add("pane %d: %s".formatted(index + 1, to.words()));
                }
                offer("Stronger glass, " + String.join("; ", words), changes, sums);
                return true;
            }
        }
    }

    private boolean treatedDuration() {
        double duration = request.load().durationOrShort();
        return LoadDuration.isShort(duration) || LoadDuration.isLong(duration);
    }

    /** The next treatment that glass of this thickness is given, or null. */
    private static @Nullable HeatTreatment next(Pane pane) {
        List<Double> sheets = pane.nominalThicknesses();
        if (sheets.stream().anyMatch(sheet -> sheet < THINNEST_TREATED)) {
            return null;
        }
        HeatTreatment next = pane.heatTreatment().stronger();
        return next == HeatTreatment.HEAT_STRENGTHENED
                        && sheets.stream().anyMatch(sheet -> sheet > THICKEST_HEAT_STRENGTHENED)
                ? HeatTreatment.FULLY_TEMPERED
                : next;
    }

    /** The largest width, and the largest height, at which the lite passes. */
    private void smaller() {
        smaller("width", request.width());
        smaller("height", request.height());
    }

    private void smaller(String side, double now) {
        int most = (int) Math.ceil(now / step() - 1e-9) - 1;
        double smallest = Math.max(GlassRequest.MIN_SIDE, now * SMALLEST_SHARE);
        int least = (int) Math.ceil(smallest / step() - 1e-9);
        if (least > most) {
            return;
        }
        LiteSums found = passing(side, least);
        if (found == null) {
            return;
        }
        while (least < most) {
            int middle = (least + most + 1) / 2;
            LiteSums sums = passing(side, middle);
            if (sums == null) {
                most = middle - 1;
            } else {
                least = middle;
                found = sums;
            }
        }
        double size = least * step();
        offer(
                "Smaller lite, "
                        + side
                        + " "
                        + reporting.text(Dimension.LENGTH, size)
                        + " in place of "
                        + reporting.text(Dimension.LENGTH, now),
                List.of(
                        new Change(
                                "/" + side,
                                customary()
                                        ? String.format(Locale.ROOT, "%.1f in", size / 0.0254)
                                        : String.format(Locale.ROOT, "%.0f mm", size * 1000))),
                found);
    }

    private double step() {
        return customary() ? CUSTOMARY_STEP : METRIC_STEP;
    }

    private boolean customary() {
        return reporting.units() == UnitSystem.US;
    }

    /** The least bite at which the lite passes, where nothing else stands against it. */
    private void moreBite(LiteSums failed) {
        if (failed.biteUtilization() <= 1) {
            return;
        }
        Quantity bite =
                Quantity.roundedUp(
                        Dimension.LENGTH,
                        failed.biteNeeded() * ROUNDING,
                        reporting.units(),
                        BITE_DIGITS);
        LiteSums sums = sums(request.withBite(bite.si()));
        if (sums != null && sums.passes()) {
            String text = bite.text(reporting.units());
            offer(
                    "Pockets with more bite, " + text + " on each edge",
                    List.of(new Change("/bite", text)),
                    sums);
        }
    }

    private @Nullable LiteSums passing(String side, int steps) {
        double size = steps * step();
        LiteSums sums =
                sums(
                        "width".equals(side)
                                ? request.withSize(size, request.height())
                                : request.withSize(request.width(), size));
        return sums != null && sums.passes() ? sums : null;
    }

    /** The same with other glass; null likewise, and where such a request is refused. */
    private @Nullable LiteSums sums(GlassBuildUp glass) {
        try {
            return sums(request.withGlass(glass));
        } catch (FaultsException refused) {
            return null;
        }
    }

    /**
     * The lite changed; null where it is not covered or a sealed cavity would leave it in doubt.
     */
    private @Nullable LiteSums sums(GlassRequest changed) {
        try {
            LiteSums sums = LiteSums.of(changed, load);
            return sums.passes() && !SealedUnitCheck.passes(changed, load) ? null : sums;
        } catch (FaultsException beyond) {
            return null;
        }
    }

    private void offer(String text, List<Change> changes, LiteSums sums) {
        remedies.add(
                new Remedy(
                        String.format(
                                        Locale.ROOT,
                                        "%s: utilization %.2f.",
                                        text,
                                        sums.utilization())
                                + (open.isEmpty()
                                        ? ""
                                        : " The verdict is then UNDETERMINED until "
                                                + String.join(" and ", open)
                                                + "."),
                        changes,
                        sums.utilization()));
    }
}
