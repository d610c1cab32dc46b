package org.bayledger.glass;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.check.AllowableLoad;
import org.bayledger.check.Finding;
import org.bayledger.check.Reporting;
import org.bayledger.check.Verdict;
import org.bayledger.glazing.GlassBuildUp;
import org.bayledger.glazing.HeatTreatment;
import org.bayledger.glazing.Interlayer;
import org.bayledger.glazing.Pane;
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

    /** Edge deflection over its length, and at most, m (IBC 2018, 2403.3, from memory). */
    private static final double EDGE_RATIO = 175;

    private static final double EDGE_MOST = 0.75 * 0.0254;

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

    static Conclusion of(
            GlassRequest request,
            LiteSums sums,
            @Nullable SealedUnitResult sealed,
            AllowableLoad load,
            Reporting reporting) {
        GlassFindings all = new GlassFindings(request, sums, reporting);
        all.limits();
        all.load(load);
        all.duration();
        all.practiceLimits(load);
        all.laminates();
        all.bite();
        all.unit();
        all.sealed(sealed);
        all.edges();
        return new Conclusion(all.verdict, List.copyOf(all.findings));
    }

    private void limits() {
        if (!sums.isLoaded()) {
            return;
        }
        int pane = sums.governingPane();
        boolean failed = sums.strengthUtilization() > 1;
        String text =
                "Pane %d governs: the lite resists %s and the %s design pressure is %s."
                        .formatted(
                                pane + 1,
                                reporting.text(Dimension.PRESSURE, sums.loadResistance()),
                                sums.governingSign() == PressureSign.POSITIVE
                                        ? "positive"
                                        : "negative",
                                reporting.text(Dimension.PRESSURE, sums.load().greatest()));
        String pointer = GlassRequest.panePointer(pane);
        if (failed) {
            verdict = verdict.and(Verdict.EXCEEDED);
            findings.add(Finding.action("LOAD_RESISTANCE_EXCEEDED", pointer, text));
        } else {
            findings.add(Finding.info("GOVERNING_PANE", pointer, text));
        }
        if (sums.deflectionUtilization() > 1) {
            verdict = verdict.and(Verdict.EXCEEDED);
            findings.add(
                    Finding.action(
                            "CENTER_DEFLECTION_EXCEEDED",
                            "/centerDeflectionLimit",
                            "The middle of a pane moves further than the limit given."));
        }
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

    private void laminates() {
        List<Pane> panes = request.glass().panes();
        for (int i = 0; i < panes.size(); i++) {
            Pane pane = panes.get(i);
            Interlayer interlayer = pane.interlayer();
            if (interlayer == null) {
                continue;
            }
            String pointer = GlassRequest.panePointer(i);
            if (pane.minimumThicknesses().size() > 2) {
                findings.add(
                        Finding.note(
                                "PLIES_TAKEN_AS_LOOSE",
                                pointer + "/plies",
                                "More than two plies are taken as loose sheets, the least that they"
                                        + " can do, whatever the interlayer."));
            } else {
                findings.add(
                        interlayer.temperature() == null
                                ? Finding.note(
                                        "INTERLAYER_TEMPERATURE_NOT_GIVEN",
                                        pointer + "/interlayer/temperature",
                                        "No interlayer temperature was given. 50 degC is taken, as"
                                                + " the practice does for wind; colder is stiffer.")
                                : Finding.info(
                                        "INTERLAYER_MODULUS",
                                        pointer + "/interlayer",
                                        "The interlayer's shear modulus is a published value for"
                                                + " its kind, from memory; its maker's figure"
                                                + " governs."));
            }
        }
    }

    private void unit() {
        GlassBuildUp glass = request.glass();
        if (!glass.isInsulating()) {
            return;
        }
        if (request.sealedUnit() == null) {
            findings.add(
                    Finding.note(
                            "CAVITY_PRESSURE_NOT_CHECKED",
                            "/sealedUnit",
                            "The panes share the load by stiffness, as the practice has it."
                                    + " Pressure in the sealed cavity from altitude, temperature"
                                    + " and weather was not looked at: describe it in"
                                    + " sealedUnit."));
        }
        boolean treated =
                glass.panes().stream()
                        .anyMatch(pane -> pane.heatTreatment() != HeatTreatment.ANNEALED);
        if (glass.panes().size() == 3) {
            findings.add(
                    Finding.note(
                            "TRIPLE_FACTORS_FROM_MEMORY",
                            "/glass/panes",
                            "The glass type factor of a triple unit is taken as 0.81 of the single"
                                    + " lite's for every pane, from memory and on the safe side;"
                                    + " compare with the practice's table."));
        } else if (treated && !LoadDuration.isShort(sums.duration())) {
            findings.add(
                    Finding.note(
                            "LONG_DURATION_FACTORS_FROM_MEMORY",
                            "/load/duration",
                            "The glass type factors of heat-treated double units under long"
                                    + " duration are the short ones in proportion, from memory and"
                                    + " on the safe side; compare with the practice's table."));
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

    private void sealed(@Nullable SealedUnitResult sealed) {
        if (sealed == null) {
            return;
        }
        for (SealedUnitResult.Case each : sealed.cases()) {
            if (each.touches()) {
                undetermined(
                        "PANES_TOUCH",
                        "/sealedUnit",
                        "The middles of two panes touch (%s); neither model holds then."
                                .formatted(SealedUnitTrace.words(each)));
            } else if (each.utilization() == null) {
                undetermined(
                        "SEALED_CAVITY_BEYOND_SOLUTION",
                        "/sealedUnit",
                        "The pressure on a pane (%s) is beyond what the plate solution covers."
                                .formatted(SealedUnitTrace.words(each)));
            }
        }
        SealedUnitResult.Case worst = SealedUnitCheck.worst(sealed);
        if (worst == null || worst.utilization() == null) {
            return;
        }
        String text =
                "By the sealed-cavity model a pane reaches %s of its resistance (%s)."
                        .formatted(
                                reporting.text(Dimension.NONE, worst.utilization()),
                                SealedUnitTrace.words(worst));
        if (worst.utilization() > 1) {
            undetermined(
                    "SEALED_CAVITY_EXCEEDS_RESISTANCE",
                    "/sealedUnit",
                    text
                            + " The practice's load sharing and glass type factors give the"
                            + " verdict, but this is more than they allow for. A person has to"
                            + " decide; stiffer or heat-treated panes or a narrower cavity help.");
        } else {
            findings.add(
                    Finding.note(
                            "SEALED_CAVITY_STANDS_BESIDE",
                            "/sealedUnit",
                            text
                                    + " The verdict is that of the practice's load sharing and"
                                    + " glass type factors, which allow for the sealed cavity in"
                                    + " general."));
        }
    }

    private void edges() {
        boolean four = request.supportedEdges() == SupportedEdges.FOUR;
        boolean vertical = !four && request.span() == request.height();
        String width = "width (" + edge(request.width()) + ")";
        String height = "height (" + edge(request.height()) + ")";
        String which = four ? width + " and the " + height : vertical ? width : height;
        findings.add(
                Finding.note(
                        "EDGE_SUPPORT_TO_BE_PROVEN",
                        "",
                        "The answer holds where the framing keeps the deflection of each held edge"
                                + " within L/175 and 3/4 in (19 mm) under the design pressure (IBC"
                                + " 2403.3, from memory): along the "
                                + which
                                + ". The framing check has to show it."));
    }

    private String edge(double length) {
        return reporting.text(Dimension.LENGTH, Math.min(length / EDGE_RATIO, EDGE_MOST));
    }

    private void undetermined(String code, String pointer, String text) {
        verdict = verdict.and(Verdict.UNDETERMINED);
        findings.add(Finding.action(code, pointer, text));
    }
}
