package org.bayledger.seals;

import java.util.List;
import java.util.stream.Collectors;
import org.bayledger.check.Finding;
import org.bayledger.check.Reporting;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/** What to say of a frame's seals beside what is missing. */
final class SealFindings {

    /** Half the face of a nominal profile, m: a splice nearer to a horizontal lies behind it. */
    private static final double HALF_FACE = 1.25 * 0.0254;

    private SealFindings() {}

    static void add(
            List<Finding> findings,
            SealsRequest request,
            @Nullable TestPressure test,
            UnsealedJoint unsealed,
            SealantTakeOff takeOff,
            Reporting reporting) {
        SealDetails details = request.details();
        if (test != null) {
            water(findings, details, test, reporting);
        }
        unsealed(findings, unsealed, reporting);
        assumptions(findings, details, takeOff);
        splices(findings, request, reporting);
    }

    /** What to say of the system and of the inspection. */
    static void plan(
            List<Finding> findings, SealDetails details, @Nullable InspectionPlans inspection) {
        if (details.system() == null) {
            findings.add(
                    Finding.info(
                            "STICK_BUILT_TAKEN",
                            "/system",
                            "The wall is taken to be STICK_BUILT. Give system where it is UNITIZED"
                                    + " or a WINDOW_WALL: it has other joints."));
        }
        if (details.systemOrDefault() == WallSystem.UNITIZED) {
            findings.add(
                    Finding.note(
                            "UNITS_CLOSED_BY_GASKETS",
                            "/system",
                            "The verticals and stack joints between units are taken to be closed"
                                    + " by gaskets: no sealant is counted for them."));
        }
        if (inspection == null) {
            findings.add(
                    Finding.info(
                            "INSPECTION_NOT_PLANNED",
                            "/inspection",
                            "No inspection plan was asked for. Give inspection with confidence and"
                                    + " defectRate; usual are 0.95 and 0.10 (common practice)."));
        } else {
            findings.addAll(inspection.notes());
        }
    }

    private static void water(
            List<Finding> findings, SealDetails details, TestPressure test, Reporting reporting) {
        Double dam = details.endDamHeight();
        if (dam != null && test.head() > dam && details.holdsWater()) {
            findings.add(
                    Finding.action(
                            "WATER_HEAD_ABOVE_END_DAM",
                            "/endDamHeight",
                            "At the water test pressure of %s water stands %s high; the end dams hold %s."
                                    .formatted(
                                            reporting.text(Dimension.PRESSURE, test.laboratory()),
                                            reporting.text(Dimension.LENGTH, test.head()),
                                            reporting.text(Dimension.LENGTH, dam))));
        }
        if (test.capped()) {
            findings.add(
                    Finding.note(
                            "TEST_PRESSURE_CAPPED",
                            "/waterTest/cap",
                            "The share of the design pressure is above the cap, so that the water"
                                    + " test shows less than that share; confirm the cap with the"
                                    + " specification."));
        }
    }

    private static void unsealed(
            List<Finding> findings, UnsealedJoint unsealed, Reporting reporting) {
        String water =
                unsealed.waterRate() == null
                        ? "an unknown amount"
                        : unsealed.waterRate().text(reporting.units());
        String rates =
                "a gap of "
                        + unsealed.gap().text(reporting.units())
                        + ", "
                        + unsealed.length().text(reporting.units())
                        + " long, lets through about "
                        + water
                        + " of water at the water test pressure and "
                        + unsealed.airRate().text(reporting.units())
                        + " of air at "
                        + unsealed.airPressure().text(reporting.units());
        if (unsealed.illustrative()) {
            findings.add(
                    Finding.info(
                            "ILLUSTRATIVE_GAP",
                            "/missedJoint",
                            "No missed joint was given. For illustration only, outside the verdict:"
                                    + " "
                                    + rates
                                    + "."));
        } else if (unsealed.utilization() > 1) {
            Quantity allowedWater = unsealed.allowedWater();
            findings.add(
                    Finding.action(
                            "MISSED_JOINT_LEAKS",
                            "/missedJoint",
                            "Known to be unsealed: %s. That is more than the %s of water that count as no leakage or the %s of air that the whole frame may let through. Open it up and seal it before anything hides it."
                                    .formatted(
                                            rates,
                                            allowedWater.text(reporting.units()),
                                            unsealed.allowedAir().text(reporting.units()))));
        }
        if (unsealed.waterRegime() == FlowRegime.WICKING) {
            findings.add(
                    Finding.note(
                            "GAP_WETS_BY_WICKING",
                            "/missedJoint",
                            "The gap is below the capillary threshold: at first surface tension may"
                                    + " hold the water back, but the gap wets by wicking, and the"
                                    + " rate given is that of a gap wet on both sides."));
        }
    }

    private static void assumptions(
            List<Finding> findings, SealDetails details, SealantTakeOff takeOff) {
        BeadLengths lengths = details.beadLengthsOrDefault();
        String assumed =
                takeOff.joints().stream()
                        .filter(joint -> joint.count() > 0)
                        .map(SealJoint::type)
                        .filter(type -> !type.weatherSeal())
                        .filter(type -> lengths.given(type) == null)
                        .map(JointType::name)
                        .collect(Collectors.joining(", "));
        if (!assumed.isEmpty()) {
            findings.add(
                    Finding.note(
                            "BEAD_LENGTHS_ASSUMED",
                            "/beadLengths",
                            "The amount of sealant rests on a nominal profile for: "
                                    + assumed
                                    + ". Give the lengths from the system's details."));
        }
        if (details.perimeterBead() == null) {
            findings.add(
                    Finding.note(
                            "PERIMETER_BEAD_ASSUMED",
                            "/perimeterBead",
                            "Beads at the perimeter and at stack joints are taken as wide and deep"
                                    + " as those inside the system; they are usually wider."));
        }
        if (details.continuousEdges() == null) {
            findings.add(
                    Finding.info(
                            "FRAME_STANDS_ALONE",
                            "/continuousEdges",
                            "All four edges are taken to meet the building. Name the edges at which"
                                    + " the wall goes on, else joints shared with neighbours are"
                                    + " counted twice."));
        }
    }

    private static void splices(List<Finding> findings, SealsRequest request, Reporting reporting) {
        List<Double> splices = request.details().splices();
        for (int i = 0; splices != null && i < splices.size(); i++) {
            double horizontal = 0;
            for (double row : request.rows()) {
                horizontal += row;
                if (Math.abs(splices.get(i) - horizontal) < HALF_FACE) {
                    findings.add(
                            Finding.note(
                                    "SPLICE_AT_HORIZONTAL",
                                    "/splices/" + i,
                                    "The splice at %s lies behind a horizontal, whose end hides it; seal it before the horizontal goes on, or move it."
                                            .formatted(
                                                    reporting.text(
                                                            Dimension.DISTANCE, splices.get(i)))));
                }
            }
        }
    }
}
