package org.bayledger.seals;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.check.Finding;
import org.bayledger.check.Reporting;
import org.bayledger.check.Trace;
import org.bayledger.check.Verdict;
import org.bayledger.mechanics.Fluid;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * Joints as they were found: what each lets through, what all of them and the missed joint let
 * through together, and what is to be done. Flows as in {@link UnsealedFlow}.
 */
final class ObservedJoints {

    private final SealDetails details;
    private final WallSystem system;
    private final SealantTakeOff takeOff;
    private final UnsealedJoint unsealed;
    private final @Nullable StormWater storm;
    private final Reporting reporting;
    private final ObservedWords words;
    private final List<ObservedFinding> results = new ArrayList<>();
    private final List<Finding> gaps = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();
    private boolean computed;
    private LeakRange water = LeakRange.NONE;
    private LeakRange air = LeakRange.NONE;

    ObservedJoints(
            SealsRequest request,
            SealantTakeOff takeOff,
            UnsealedJoint unsealed,
            @Nullable StormWater storm,
            Trace trace,
            Reporting reporting) {
        this.details = request.details();
        this.system = details.systemOrDefault();
        this.takeOff = takeOff;
        this.unsealed = unsealed;
        this.storm = storm;
        this.reporting = reporting;
        this.words = new ObservedWords(unsealed, storm, reporting);
        List<ObservedJoint> joints = details.waterAndAirOrNone().observedOrNone();
        for (int i = 0; i < joints.size(); i++) {
            add(joints.get(i), "/observed/" + i);
        }
        together(trace);
    }

    List<ObservedFinding> results() {
        return List.copyOf(results);
    }

    /** What leaves the verdict open. */
    List<Finding> gaps() {
        return List.copyOf(gaps);
    }

    List<Finding> findings() {
        return List.copyOf(findings);
    }

    /**
     * All of them and the missed joint together over what may pass; null where none is computed.
     */
    @Nullable Double utilization() {
        return computed ? (Double) utilization(water.governing(), air.governing()) : null;
    }

    private double utilization(double waterRate, double airRate) {
        return Math.max(
                waterRate / unsealed.allowedWater().si(), airRate / unsealed.allowedAir().si());
    }

    private void add(ObservedJoint joint, String pointer) {
        @Nullable SealJoint counted = counted(joint.type());
        String name = ObservedWords.name(joint);
        Double length = joint.length() == null ? bead(joint.type()) : joint.length();
        LeakRange waterFlow = null;
        LeakRange airFlow = null;
        LeakRange stormFlow = null;
        if (length != null && (joint.gap() != null || joint.repaired())) {
            double gap = joint.gap() == null ? 0 : joint.gap();
            double depth = depth(joint.type());
            Quantity pressure = unsealed.waterPressure();
            if (pressure != null) {
                waterFlow =
                        LeakRange.of(gap, length, depth, pressure.si(), Fluid.WATER)
                                .atMost(unsealed.spraySupply().si());
                water = water.plus(waterFlow);
            }
            if (storm != null) {
                stormFlow =
                        LeakRange.of(gap, length, depth, storm.pressure().si(), Fluid.WATER)
                                .atMost(storm.supply().si());
            }
            airFlow = LeakRange.of(gap, length, depth, unsealed.airPressure().si(), Fluid.AIR);
            air = air.plus(airFlow);
            computed = true;
        }
        Double utilization =
                airFlow == null
                        ? null
                        : (Double)
                                utilization(
                                        waterFlow == null ? 0 : waterFlow.governing(),
                                        airFlow.governing());
        Verdict verdict = verdict(joint, utilization, waterFlow != null);
        String consequence =
                airFlow == null || joint.repaired()
                        ? ObservedWords.withoutFlow(joint, length)
                        : words.consequence(waterFlow, airFlow, volume(stormFlow), verdict);
        finding(joint, pointer, name, consequence, verdict);
        if (counted != null && counted.count() == 0) {
            gaps.add(
                    Finding.action(
                            "OBSERVED_KIND_NOT_IN_FRAME",
                            pointer + "/type",
                            name
                                    + ": by count the frame has no joint of this kind; correct the"
                                    + " type, or what the count rests on."));
        }
        Integer others = others(counted);
        List<Obstacle> toOpen =
                ObservedRepair.toOpen(
                        joint,
                        counted == null ? system.hiddenBy(joint.type()) : counted.hiddenBy(),
                        system);
        results.add(
                new ObservedFinding(
                        name,
                        joint.type(),
                        joint.condition(),
                        verdict,
                        severity(joint, verdict),
                        utilization,
                        length == null ? null : Quantity.of(Dimension.LENGTH, length),
                        joint.length() == null && length != null,
                        rate(Dimension.WATER_RATE, waterFlow),
                        waterFlow == null ? null : waterFlow.range(Dimension.WATER_RATE, 1),
                        rate(Dimension.AIR_RATE, airFlow),
                        airFlow == null ? null : airFlow.range(Dimension.AIR_RATE, 1),
                        volume(stormFlow),
                        consequence,
                        system.step(joint.type()),
                        ObservedRepair.repair(joint, system, reporting),
                        toOpen,
                        ObservedRepair.opening(joint, toOpen, others),
                        others));
    }

    private @Nullable SealJoint counted(JointType type) {
        for (SealJoint joint : takeOff.joints()) {
            if (joint.type() == type) {
                return joint;
            }
        }
        return null;
    }

    /** Length of one joint of a kind; null where it runs along the frame. */
    private @Nullable Double bead(JointType type) {
        return type.weatherSeal() ? null : (Double) details.beadLengthsOrDefault().of(type);
    }

    private double depth(JointType type) {
        return type.weatherSeal()
                ? details.perimeterBeadOrDefault().depth()
                : details.bead().depth();
    }

    private static Verdict verdict(
            ObservedJoint joint, @Nullable Double utilization, boolean waterKnown) {
        if (joint.repaired()) {
            return Verdict.SATISFIED;
        }
        if (utilization != null && utilization > 1) {
            return Verdict.EXCEEDED;
        }
        return utilization != null && waterKnown && joint.condition().onlyAGap()
                ? Verdict.SATISFIED
                : Verdict.UNDETERMINED;
    }

    private static Finding.Severity severity(ObservedJoint joint, Verdict verdict) {
        return verdict != Verdict.SATISFIED
                ? Finding.Severity.ACTION
                : joint.repaired() ? Finding.Severity.INFO : Finding.Severity.NOTE;
    }

    private void finding(
            ObservedJoint joint, String pointer, String name, String consequence, Verdict verdict) {
        String text = name + ": " + consequence;
        switch (verdict) {
            case EXCEEDED -> findings.add(Finding.action("OBSERVED_JOINT_LEAKS", pointer, text));
            case UNDETERMINED ->
                    gaps.add(Finding.action("OBSERVED_JOINT_NOT_SHOWN_TIGHT", pointer, text));
            case SATISFIED -> {
                if (!joint.repaired()) {
                    findings.add(Finding.note("OBSERVED_JOINT_LEAKS_WITHIN_LIMITS", pointer, text));
                }
            }
        }
    }

    private @Nullable Integer others(@Nullable SealJoint counted) {
        if (counted == null) {
            return null;
        }
        long reported =
                details.waterAndAirOrNone().observedOrNone().stream()
                        .filter(joint -> joint.type() == counted.type())
                        .count();
        return (int) Math.max(0, counted.count() - reported);
    }

    /** What all computed joints and the missed one let through together. */
    private void together(Trace trace) {
        if (!computed) {
            return;
        }
        if (details.missedJoint() != null) {
            Quantity missedWater = unsealed.waterRate();
            double rate = missedWater == null ? 0 : missedWater.si();
            water = water.plus(new LeakRange(rate, rate, rate));
            double airRate = unsealed.airRate().si();
            air = air.plus(new LeakRange(airRate, airRate, airRate));
        }
        water = water.atMost(unsealed.spraySupply().si());
        trace.step(
                        "Qw,sum",
                        "water through the observed joints and the missed one together",
                        Dimension.WATER_RATE,
                        water.governing(),
                        "sum, at most the spray's supply",
                        "continuity")
                .step(
                        "Qa,sum",
                        "air through them together",
                        Dimension.AIR_RATE,
                        air.governing(),
                        "sum",
                        "continuity");
        boolean eachWithin = results.stream().noneMatch(r -> r.verdict() == Verdict.EXCEEDED);
        double sum = utilization(water.governing(), air.governing());
        if (eachWithin && sum > 1) {
            findings.add(
                    Finding.action(
                            "OBSERVED_JOINTS_LEAK_TOGETHER",
                            "/observed",
                            "Together the observed joints%s let through %s of water and %s of air, more than the %s of water that count as no leakage or the %s of air that the whole frame may let through."
                                    .formatted(
                                            details.missedJoint() == null
                                                    ? ""
                                                    : " and the missed one",
                                            reporting.text(Dimension.WATER_RATE, water.governing()),
                                            reporting.text(Dimension.AIR_RATE, air.governing()),
                                            unsealed.allowedWater().text(reporting.units()),
                                            unsealed.allowedAir().text(reporting.units()))));
        }
    }

    private static @Nullable Quantity rate(Dimension dimension, @Nullable LeakRange flow) {
        return flow == null ? null : Quantity.of(dimension, flow.governing());
    }

    private @Nullable Quantity volume(@Nullable LeakRange flow) {
        return flow == null || storm == null
                ? null
                : Quantity.of(Dimension.VOLUME, flow.governing() * storm.duration().si());
    }
}
