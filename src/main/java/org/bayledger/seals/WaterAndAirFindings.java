package org.bayledger.seals;

import java.util.List;
import org.bayledger.check.Finding;
import org.bayledger.check.Reporting;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/** What to say of driving pressure, chamber and weeps. */
final class WaterAndAirFindings {

    /** 5/16 in, the usual weep: water leaves a smaller one badly; common practice, no source. */
    private static final double USUAL_WEEP = 0.0254 * 5 / 16;

    /** In about this a gust rises, s; common practice, no source. */
    private static final double GUST_RISE = 1;

    private final SealDetails details;
    private final @Nullable Double testPressure;
    private final UnsealedJoint unsealed;
    private final Reporting reporting;

    WaterAndAirFindings(
            SealDetails details,
            @Nullable Double testPressure,
            UnsealedJoint unsealed,
            Reporting reporting) {
        this.details = details;
        this.testPressure = testPressure;
        this.unsealed = unsealed;
        this.reporting = reporting;
    }

    void add(List<Finding> findings, WaterAndAirResult result) {
        WaterAndAir given = details.waterAndAirOrNone();
        if (given.air() != null && result.drivingPressure() != null) {
            driving(findings, given.air(), result.drivingPressure());
        }
        if (given.pressureEqualization() != null && result.pressureEqualization() != null) {
            chamber(findings, given.pressureEqualization(), result.pressureEqualization());
        }
        if (given.weeps() != null && result.weepSizing() != null) {
            weeps(findings, given.weeps(), result.weepSizing());
        }
        if (details.missedJoint() != null
                && unsealed.utilization() <= 1
                && unsealed.greatestUtilization() > 1) {
            findings.add(
                    Finding.note(
                            "LEAK_RANGE_PASSES_LIMIT",
                            "/missedJoint",
                            "The missed joint keeps the limits at the rate that is reported, but not"
                                    + " at the high end of the range in which it is expected to"
                                    + " lie."));
        }
    }

    private void driving(List<Finding> findings, AirPressures air, DrivingPressure driving) {
        Quantity withRain = driving.withRain();
        Double test = testPressure;
        if (withRain != null && test != null && withRain.si() > test) {
            findings.add(
                    Finding.note(
                            "DRIVING_PRESSURE_ABOVE_TEST",
                            "/air",
                            "Wind with rain, stack effect and fans together drive water with %s, more than the water test pressure of %s: the test shows less than the building will see. Agree on a test pressure that covers it."
                                    .formatted(
                                            withRain.text(reporting.units()),
                                            reporting.text(Dimension.PRESSURE, test))));
        }
        Quantity head = driving.waterHead();
        Double dam = details.endDamHeight();
        if (head != null && dam != null && head.si() > dam && details.holdsWater()) {
            findings.add(
                    Finding.action(
                            "DRIVING_HEAD_ABOVE_END_DAM",
                            "/endDamHeight",
                            "Under wind with rain, stack effect and fans together water stands %s high; the end dams hold %s."
                                    .formatted(
                                            head.text(reporting.units()),
                                            reporting.text(Dimension.LENGTH, dam))));
        }
        Quantity stack = driving.stackEffectInward();
        if (stack != null && air.neutralLevel() == null) {
            findings.add(
                    Finding.note(
                            "NEUTRAL_LEVEL_ASSUMED",
                            "/air/neutralLevel",
                            "The neutral level was not given; stack effect is taken for the worse of"
                                    + " 0.3 and 0.7 of the building's height."));
        }
        boolean outwardStack = stack != null && stack.si() < 0;
        boolean outwardFans = driving.mechanicalPressure().si() < 0;
        if (outwardStack || outwardFans) {
            findings.add(
                    Finding.info(
                            "OUTWARD_PART_NOT_COUNTED",
                            "/air",
                            "%s outward at this frame and so against the water; that is not counted, since it may be absent when it rains."
                                    .formatted(
                                            !outwardFans
                                                    ? "Stack effect acts"
                                                    : outwardStack
                                                            ? "Stack effect and fans act"
                                                            : "The fans act")));
        }
    }

    private void chamber(
            List<Finding> findings, Chamber chamber, PressureEqualization equalization) {
        Double limit = chamber.outerShareLimit();
        Quantity needed = equalization.requiredVentArea();
        if (limit != null && needed != null && equalization.worstShare() > limit) {
            boolean missed = equalization.outerShare() <= limit;
            findings.add(
                    Finding.action(
                            "OUTER_SHARE_ABOVE_LIMIT",
                            missed ? "/missedJoint" : "/pressureEqualization/ventArea",
                            "%s of the pressure stays on the outer line%s; the limit is %s. %s"
                                    .formatted(
                                            share(equalization.worstShare()),
                                            equalization.outerShareWithMissedJoint() == null
                                                    ? ""
                                                    : " with the missed joint open into the"
                                                            + " chamber",
                                            share(limit),
                                            missed
                                                    ? "With the joint sealed it is kept."
                                                    : "It takes vents of "
                                                            + reporting.atLeast(
                                                                    Dimension.SECTION_AREA,
                                                                    needed.si())
                                                            + " or a tighter inner line.")));
        }
        if (details.drainage() == Drainage.DRAINED) {
            findings.add(
                    Finding.note(
                            "CHAMBER_IN_A_DRAINED_WALL",
                            "/pressureEqualization",
                            "In a drained wall the pockets open into one another: wind that varies"
                                    + " over the face blows through them, and more of it stays on"
                                    + " the outer line than is computed here."));
        }
        Quantity time = equalization.equalizationTime();
        if (time != null && time.si() > GUST_RISE) {
            findings.add(
                    Finding.note(
                            "CHAMBER_FOLLOWS_SLOWLY",
                            "/pressureEqualization/volume",
                            "The chamber follows a step of pressure in %s; a gust rises in about %s, and until the chamber follows the outer line carries all of it. Divide the chamber or open more vents."
                                    .formatted(
                                            time.text(reporting.units()),
                                            reporting.text(Dimension.TIME, GUST_RISE))));
        }
    }

    private String share(double share) {
        return reporting.text(Dimension.NONE, 100 * share) + " %";
    }

    private void weeps(List<Finding> findings, Weeps weeps, WeepSizing sizing) {
        if (sizing.utilization() > 1) {
            findings.add(
                    Finding.action(
                            "WEEPS_DRAIN_TOO_LITTLE",
                            "/weeps",
                            "To drain %s through %d %s water must stand %s over them (%s held back by surface tension, %s by pressure); %s may. %s"
                                    .formatted(
                                            reporting.text(Dimension.WATER_RATE, weeps.flow()),
                                            weeps.count(),
                                            weeps.count() == 1 ? "weep" : "weeps",
                                            sizing.requiredHead().text(reporting.units()),
                                            sizing.retainedHead().text(reporting.units()),
                                            sizing.opposingHead().text(reporting.units()),
                                            sizing.availableHead().text(reporting.units()),
                                            sizing.requiredCount() == null
                                                    ? "More weeps of this size do not help."
                                                    : "It takes "
                                                            + sizing.requiredCount()
                                                            + " weeps.")));
        }
        String least =
                "%s for a round weep, %s for a long slot"
                        .formatted(
                                sizing.leastDiameter().text(reporting.units()),
                                sizing.leastSlotHeight().text(reporting.units()));
        if (sizing.holdsFilm()) {
            findings.add(
                    Finding.note(
                            "WEEP_HOLDS_WATER",
                            "/weeps",
                            "A film of water spans the weep: "
                                    + sizing.retainedHead().text(reporting.units())
                                    + " of water stay behind when the rain is over. Surface tension"
                                    + " lets go above "
                                    + least
                                    + "."));
        } else if (weeps.diameter() != null && weeps.diameter() < USUAL_WEEP) {
            findings.add(
                    Finding.info(
                            "WEEP_SMALLER_THAN_USUAL",
                            "/weeps/diameter",
                            "Weeps are usually "
                                    + reporting.text(Dimension.LENGTH, USUAL_WEEP)
                                    + " across or more; water and dirt leave smaller ones badly."));
        }
    }
}
