package org.bayledger.framing;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.check.Finding;
import org.bayledger.check.Trace;
import org.bayledger.check.TraceLevel;
import org.bayledger.framing.FramingResult.AllowableStress;
import org.bayledger.mechanics.Beam;
import org.bayledger.mechanics.BeamLoad;
import org.bayledger.mechanics.BeamSolution;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * The weight that bends a member together with the wind.
 *
 * @param loads that weight
 * @param moment greatest moment from it, N m
 * @param stress greatest stress from it, Pa, or null without a section modulus
 * @param allowableMoment section modulus times allowable stress about its axis, N m, or null
 */
record ConcurrentWeight(
        List<BeamLoad> loads,
        double moment,
        @Nullable Double stress,
        @Nullable Double allowableMoment) {

    static ConcurrentWeight of(FramingRequest request, Trace trace, List<Finding> unchecked) {
        DeadLoad given = request.deadLoad();
        Section section = request.section();
        List<BeamLoad> loads =
                MemberLoads.dead(
                        request,
                        given == null ? null : given.weightPerLength(),
                        given == null ? null : given.pointLoads(),
                        trace,
                        unchecked);
        double moment = Math.abs(solve(request, loads).greatestMoment().value());
        Double modulus = section.deadLoadModulus();
        if (modulus == null) {
            unchecked.add(MemberStress.noModulus("deadLoadSectionModulus"));
            return new ConcurrentWeight(loads, moment, null, null);
        }
        trace.step(
                "f2",
                "greatest bending stress from weight, parallel to the wall",
                Dimension.STRESS,
                moment / modulus,
                "M2 / S2",
                "beam theory");
        List<AllowableStress> allowables =
                BendingStrength.of(
                        section,
                        false,
                        modulus,
                        List.of(),
                        new Trace(TraceLevel.GOVERNING),
                        unchecked);
        if (allowables.isEmpty()) {
            return new ConcurrentWeight(loads, moment, moment / modulus, null);
        }
        double allowable = allowables.get(0).stress().si();
        trace.step(
                "F2",
                "allowable bending stress about that axis",
                Dimension.STRESS,
                allowable,
                BendingStrength.origin(section, allowables.get(0).limitState()),
                BendingStrength.source(allowables.get(0).limitState()));
        return new ConcurrentWeight(loads, moment, moment / modulus, modulus * allowable);
    }

    /**
     * The greatest sum along the member of both moments over their allowable ones, found on the one
     * beam that carries both loads, each over its allowable moment, with equal and with opposite
     * signs: |a| + |b| is the greater of |a + b| and |a - b|. Of one rigidity throughout, a beam's
     * moments do not depend on it; beside steel the greatest of each are added, which is never
     * less.
     */
    double together(
            FramingRequest request,
            List<BeamLoad> wind,
            @Nullable Reinforcement steel,
            double windMoment,
            double allowed) {
        double weighed = allowableMoment == null ? 0 : 1 / allowableMoment;
        if (steel != null) {
            return windMoment / allowed + moment * weighed;
        }
        double greatest = 0;
        for (double sign : new double[] {1, -1}) {
            List<BeamLoad> both = new ArrayList<>();
            wind.forEach(load -> both.add(scaled(load, 1 / allowed)));
            loads.forEach(load -> both.add(scaled(load, sign * weighed)));
            double sum = Math.abs(solve(request, both).greatestMoment().value());
            greatest = Math.max(greatest, sum);
        }
        return greatest;
    }

    private static BeamSolution solve(FramingRequest request, List<BeamLoad> loads) {
        return Beam.solve(
                MemberLoads.model(
                        request.length(), request.supports(), request.splices(), 1, null, loads));
    }

    private static BeamLoad scaled(BeamLoad load, double factor) {
        if (load instanceof BeamLoad.Distributed spread) {
            return new BeamLoad.Distributed(
                    spread.from(), spread.to(), factor * spread.atFrom(), factor * spread.atTo());
        }
        if (load instanceof BeamLoad.Force force) {
            return new BeamLoad.Force(force.at(), factor * force.force());
        }
        throw new IllegalArgumentException("no member carries " + load);
    }
}
