package org.bayledger.seals;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.check.AllowableLoad;
import org.bayledger.check.Finding;
import org.bayledger.check.Reporting;
import org.bayledger.check.Trace;
import org.bayledger.mechanics.Fluid;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/** Driving pressure, chamber, weeps, storm and observed joints of one frame. */
final class WaterAndAirCheck {

    private final SealDetails details;
    private final List<Finding> gaps = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();
    private final WaterAndAirResult result;
    private @Nullable Double utilization;

    WaterAndAirCheck(
            SealsRequest request,
            AllowableLoad load,
            @Nullable TestPressure test,
            UnsealedJoint unsealed,
            SealantTakeOff takeOff,
            Trace trace,
            Reporting reporting) {
        this.details = request.details();
        WaterAndAir given = details.waterAndAirOrNone();
        Double testPressure = test == null ? null : (Double) test.laboratory();
        AirPressures air = given.air();
        DrivingPressure driving =
                air == null
                        ? null
                        : DrivingPressures.of(air, load, testPressure, request.height(), trace);
        if (air != null && driving == null) {
            gaps.add(
                    Finding.action(
                            "SILL_LEVEL_NOT_GIVEN",
                            "/air/sillLevel",
                            "Stack effect can't be computed, nor what drives water: give the level"
                                    + " of the frame's sill above the foot of the building."));
        }
        Double pressure =
                driving == null || driving.withRain() == null
                        ? testPressure
                        : (Double) driving.withRain().si();
        if (driving != null) {
            govern(head(driving));
        }
        Chamber chamber = given.pressureEqualization();
        PressureEqualization equalization =
                chamber == null ? null : Equalization.of(chamber, details, pressure, trace);
        if (chamber != null && equalization != null && chamber.outerShareLimit() != null) {
            govern(equalization.worstShare() / chamber.outerShareLimit());
        }
        WeepSizing weeps = weeps(given.weeps(), equalization, pressure, trace);
        StormWater storm = storm(request, given.stormOrDefault(), unsealed, pressure, trace);
        ObservedJoints observed =
                new ObservedJoints(request, takeOff, unsealed, storm, trace, reporting);
        gaps.addAll(observed.gaps());
        govern(observed.utilization());
        result = new WaterAndAirResult(driving, equalization, weeps, storm, observed.results());
        new WaterAndAirFindings(details, testPressure, unsealed, reporting).add(findings, result);
        findings.addAll(observed.findings());
    }

    WaterAndAirResult result() {
        return result;
    }

    /** What leaves the verdict open. */
    List<Finding> gaps() {
        return List.copyOf(gaps);
    }

    List<Finding> findings() {
        return List.copyOf(findings);
    }

    /** The greatest of the limits that were given; null where there was none. */
    @Nullable Double utilization() {
        return utilization;
    }

    private void govern(@Nullable Double other) {
        Double present = utilization;
        if (other != null) {
            utilization = present == null ? other : (Double) Math.max(present, other);
        }
    }

    private @Nullable Double head(DrivingPressure driving) {
        Quantity head = driving.waterHead();
        Double dam = details.endDamHeight();
        return head == null || dam == null || !details.holdsWater()
                ? null
                : (Double) (head.si() / dam);
    }

    private @Nullable WeepSizing weeps(
            @Nullable Weeps weeps,
            @Nullable PressureEqualization equalization,
            @Nullable Double pressure,
            Trace trace) {
        if (weeps == null) {
            return null;
        }
        Double available =
                weeps.availableHead() == null ? details.endDamHeight() : weeps.availableHead();
        if (available == null) {
            gaps.add(
                    Finding.action(
                            "WEEP_HEAD_NOT_GIVEN",
                            "/weeps/availableHead",
                            "What the weeps drain can't be computed: give the height of water that"
                                    + " may stand over them, or the height of the end dams."));
            return null;
        }
        if (available < weeps.halfHeight()) {
            gaps.add(
                    Finding.action(
                            "WEEPS_NOT_COVERED",
                            "/weeps/availableHead",
                            "The water that may stand over the middle of the weeps does not cover"
                                    + " them; how much they drain then is not computed. Choose"
                                    + " lower weeps or higher end dams."));
            return null;
        }
        if (pressure == null) {
            return null; // the missing load has been found already
        }
        Quantity outer = equalization == null ? null : equalization.outerPressure();
        WeepSizing sizing =
                WeepFlow.of(weeps, available, outer == null ? pressure : outer.si(), trace);
        govern(sizing.utilization());
        return sizing;
    }

    private static @Nullable StormWater storm(
            SealsRequest request,
            Storm storm,
            UnsealedJoint unsealed,
            @Nullable Double pressure,
            Trace trace) {
        Double driving = storm.pressure() == null ? pressure : storm.pressure();
        if (driving == null) {
            return null;
        }
        double duration = storm.durationOrDefault();
        double rain =
                storm.rain() == null
                        ? request.details().waterTestOrDefault().sprayRateOrDefault()
                        : storm.rain();
        double supply = rain * unsealed.wettedArea().si();
        LeakRange flow =
                LeakRange.of(
                                unsealed.gap().si(),
                                unsealed.length().si(),
                                unsealed.flowDepth().si(),
                                driving,
                                Fluid.WATER)
                        .atMost(supply);
        trace.detail(
                "Vs",
                "water through the unsealed joint in the storm",
                Dimension.VOLUME,
                flow.governing() * duration,
                "as Qw, at %.0f Pa and at most rain x wetted area, x %.0f s"
                        .formatted(driving, duration),
                "continuity");
        return new StormWater(
                Quantity.of(Dimension.PRESSURE, driving),
                Quantity.of(Dimension.TIME, duration),
                Quantity.of(Dimension.WATER_RATE, supply),
                Quantity.of(Dimension.VOLUME, flow.governing() * duration),
                flow.range(Dimension.VOLUME, duration));
    }
}
