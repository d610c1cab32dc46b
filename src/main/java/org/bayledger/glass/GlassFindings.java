package org.bayledger.glass;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.check.AllowableLoad;
import org.bayledger.check.Finding;
import org.bayledger.check.LoadBasis;
import org.bayledger.check.Reporting;
import org.bayledger.check.Verdict;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/** What a reviewer should read about a lite, and the verdict that follows. */
final class GlassFindings {

    /** Design load up to which every edition of the practice goes, Pa (from memory). */
    private static final double OLDER_CAP = 10_000;

    /** Design load up to which newer editions of the practice go, Pa (from memory). */
    private static final double NEWER_CAP = 15_000;

    /** Aspect ratio up to which the practice has charts (from memory). */
    private static final double CHART_ASPECT = 5;

    /** Longer side up to which the practice has charts, m (from memory). */
    private static final double CHART_SIDE = 5;

    private final GlassRequest request;
    private final LiteSums sums;
    private final Reporting reporting;
    private final List<Finding> findings = new ArrayList<>();
    private Verdict verdict;

    private GlassFindings(GlassRequest request, LiteSums sums, Reporting reporting) {
        this.request = request;
        this.sums = sums;
        this.reporting = reporting;
        this.verdict = Verdict.SATISFIED;
    }

    /**
     * Findings and verdict.
     *
     * @param verdict what the check concludes
     * @param findings in the order in which they should be read
     */
    record Conclusion(Verdict verdict, List<Finding> findings) {}

    /**
     * What keeps the verdict undetermined whatever glass is taken: for each reason, until when.
     * Null where the practice doesn't reach the load at all.
     */
    static @Nullable List<String> openWhateverTheGlass(GlassRequest request, AllowableLoad load) {
        if (load.greatest() > NEWER_CAP) {
            return null;
        }
        List<String> until = new ArrayList<>();
        if (!load.complete()) {
            until.add(
                    "the "
                            + (load.positive() == null ? "positive" : "negative")
                            + " design pressure is called out");
        }
        if (request.load().duration() == null) {
            until.add("the duration of the load is given");
        }
        if (load.greatest() > OLDER_CAP) {
            until.add("the edition of the practice is confirmed");
        }
        return until;
    }

    static Conclusion of(
            GlassRequest request,
            LiteSums sums,
            @Nullable SealedUnitResult sealed,
            AllowableLoad load,
            Reporting reporting) {
        GlassFindings all = new GlassFindings(request, sums, reporting);
        all.limits();
        all.load(load);
        all.basis();
        all.duration();
        all.practiceLimits(load);
        BuildUpFindings.add(request, all.findings);
        all.bite();
        all.verdict = all.verdict.and(SealedUnitFindings.add(sealed, reporting, all.findings));
        all.verdict = all.verdict.and(EdgeFindings.add(request, sums, reporting, all.findings));
        return new Conclusion(all.verdict, List.copyOf(all.findings));
    }

    private void limits() {
        if (!sums.isLoaded()) {
            return;
        }
        int pane = sums.governingPane();
        boolean failed = sums.strengthUtilization() > 1;
        String text =
                "Pane "
                        + (pane + 1)
                        + " governs: the lite resists "
                        + reporting.text(Dimension.PRESSURE, sums.loadResistance())
                        + " and the "
                        + (sums.governingSign() == PressureSign.POSITIVE ? "positive" : "negative")
                        + " design pressure is "
                        + reporting.text(Dimension.PRESSURE, sums.load().greatest())
                        + ".";
        String pointer = GlassRequest.panePointer(pane);
        if (failed) {
            verdict = verdict.and(Verdict.EXCEEDED);
            findings.add(Finding.action("LOAD_RESISTANCE_EXCEEDED", pointer, text));
        } else {
            findings.add(Finding.info("GOVERNING_PANE", pointer, text));
        }
        centerDeflection();
        if (sums.isBeyondTable()) {
            undetermined(
                    "DEFLECTION_BEYOND_SOLUTION",
                    "/load",
                    "The deflection or the breakage probability of a pane under this pressure lies"
                            + " beyond what the plate solution covers (on two edges: a twentieth of"
                            + " the span); it is left out.");
        }
        for (int i = 0; i < sums.panes().size(); i++) {
            if (sums.isDoubted(i) && !failed) {
                doubt(i);
            }
        }
    }

    private void centerDeflection() {
        Double limit = sums.deflectionLimit();
        if (limit == null || sums.deflectionUtilization() <= 1) {
            return;
        }
        verdict = verdict.and(Verdict.EXCEEDED);
        List<String> further = new ArrayList<>();
        for (int i = 0; i < sums.deflections().size(); i++) {
            Double deflection = sums.deflections().get(i);
            if (deflection != null && deflection > limit) {
                further.add(
                        "that of pane %d by %s"
                                .formatted(i + 1, reporting.text(Dimension.LENGTH, deflection)));
            }
        }
        findings.add(
                Finding.action(
                        "CENTER_DEFLECTION_EXCEEDED",
                        "/centerDeflectionLimit",
                        "The middle of the glass moves further than the limit given, "
                                + reporting.text(Dimension.LENGTH, limit)
                                + ": "
                                + String.join(", ", further)
                                + "."));
    }

    private void doubt(int index) {
        PaneSums pane = sums.panes().get(index);
        double direct =
                GlassModel.of(request)
                        .resistance(
                                pane.thickness().stress(),
                                sums.askedProbability(),
                                sums.duration());
        undetermined(
                "FAILURE_MODEL_DISAGREES",
                GlassRequest.panePointer(index),
                "For this duration the failure model gives pane %d a greater breakage probability"
                                .formatted(index + 1)
                        + " than asked for, although the practice's factor on the load allows it:"
                        + " much of the load is carried by membrane action. By the model the pane"
                        + " resists "
                        + reporting.text(Dimension.PRESSURE, direct * pane.loadShareFactor())
                        + ". A person has to decide.");
    }

    private void load(AllowableLoad load) {
        findings.addAll(load.missingSigns("/load"));
        if (!load.complete()) {
            verdict = verdict.and(Verdict.UNDETERMINED);
        }
    }

    private void basis() {
        if (request.load().pressure().basis() == LoadBasis.CHARACTERISTIC) {
            findings.add(
                    Finding.note(
                            "CHARACTERISTIC_LOAD_WITH_ALLOWABLE_RESISTANCE",
                            "/load/basis",
                            "The load is a characteristic value of EN 1991 and no factor was put on"
                                    + " it; the resistance of ASTM E1300 is an allowable-stress"
                                    + " quantity. Whether the two together are safe enough, and"
                                    + " which partial factor the load should carry, is for the"
                                    + " engineer to decide."));
        }
    }

    private void duration() {
        if (request.load().duration() == null) {
            undetermined(
                    "LOAD_DURATION_NOT_GIVEN",
                    "/load/duration",
                    "No duration was given. The numbers are those of 3 s, at which glass is"
                            + " strongest; state the duration (3 s for a wind gust).");
        }
    }

    private void practiceLimits(AllowableLoad load) {
        if (load.greatest() > OLDER_CAP) {
            undetermined(
                    "LOAD_BEYOND_PRACTICE",
                    "/load",
                    load.greatest() > NEWER_CAP
                            ? "The design pressure is above 15 kPa, beyond what the practice covers"
                                    + " in any edition."
                            : "The design pressure is above 10 kPa, beyond what older editions of"
                                    + " the practice cover; newer ones go to 15 kPa. Confirm the"
                                    + " edition that governs.");
        }
        double longer = Math.max(request.width(), request.height());
        double aspect = longer / Math.min(request.width(), request.height());
        if (aspect > CHART_ASPECT || longer > CHART_SIDE) {
            findings.add(
                    Finding.note(
                            "SIZE_BEYOND_CHARTS",
                            "",
                            "The practice's charts end at about 5 m and an aspect ratio of 5 (from"
                                    + " memory); the resistance is found from its failure model"
                                    + " directly."));
        }
        if (request.supportedEdges() == SupportedEdges.TWO && request.spanDirection() == null) {
            findings.add(
                    Finding.note(
                            "SPAN_DIRECTION_NOT_GIVEN",
                            "/spanDirection",
                            "It was not said which two edges are held. The longer side is taken as"
                                    + " the span, which is the worse."));
        }
    }

    private void bite() {
        Double bite = request.bite();
        Double least = request.minimumBite();
        if (bite == null || !sums.isLoaded()) {
            return;
        }
        double rest = bite - sums.greatestBiteLoss();
        String left =
                "As the glass bends, "
                        + reporting.text(Dimension.LENGTH, sums.greatestBiteLoss())
                        + " is drawn out of the bite of the worst edge (the sill edge stays on its"
                        + " blocks, the head takes both); "
                        + (rest > 0 ? reporting.text(Dimension.LENGTH, rest) : "nothing")
                        + " of the bite is left";
        if (least == null && sums.biteUtilization() <= 1) {
            findings.add(
                    Finding.info(
                            "BITE_LEFT",
                            "/bite",
                            left
                                    + ". How much must be left (minimumBite) was not given, and it"
                                    + " is not judged."));
        } else if (sums.biteUtilization() > 1) {
            verdict = verdict.and(Verdict.EXCEEDED);
            findings.add(
                    Finding.action(
                            "BITE_LOST",
                            "/bite",
                            left
                                    + (least == null
                                            ? ": the edge leaves the pocket."
                                            : ", less than "
                                                    + reporting.text(Dimension.LENGTH, least)
                                                    + ".")));
        }
    }

    private void undetermined(String code, String pointer, String text) {
        verdict = verdict.and(Verdict.UNDETERMINED);
        findings.add(Finding.action(code, pointer, text));
    }
}
