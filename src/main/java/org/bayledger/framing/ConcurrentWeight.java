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
     * This weight and the wind on one member.
     *
     * @param wind answer of the beam to the wind alone; null beside steel
     * @param weight its answer to the weight alone, cut at the same places; null likewise
     * @param windMoment greatest moment from wind in the aluminum, N m
     * @param weightUse greatest moment from weight over its allowable one
     * @param weighed one over the allowable moment about the axis of the weight, 1/(N m)
     */
    record Together(
            @Nullable BeamSolution wind,
            @Nullable BeamSolution weight,
            double windMoment,
            double weightUse,
            double weighed) {

        /**
         * The greatest sum along the member of both moments over their allowable ones, found on the
         * one beam that carries both loads, each over its allowable moment, with equal and with
         * opposite signs: |a| + |b| is the greater of |a + b| and |a - b|. Beside steel the
         * greatest of each are added, which is never less.
         *
         * @param allowed allowable moment under wind, N m
         */
        double over(double allowed) {
            if (wind == null || weight == null) {
                return windMoment / allowed + weightUse;
            }
            return Math.max(
                    Math.abs(summed(wind, 1 / allowed, weight, weighed)),
                    Math.abs(summed(wind, 1 / allowed, weight, -weighed)));
        }

        private static double summed(
                BeamSolution wind, double factor, BeamSolution weight, double otherFactor) {
            return wind.superposed(factor, weight, otherFactor).greatestMoment().value();
        }
    }

    /**
     * With the wind on the member. Of one rigidity throughout, a beam's moments do not depend on
     * it, so that each load is solved once.
     *
     * @param windMoment greatest moment from wind in the aluminum, N m
     */
    Together with(
            FramingRequest request,
            List<BeamLoad> wind,
            @Nullable Reinforcement steel,
            double windMoment) {
        double weighed = allowableMoment == null ? 0 : 1 / allowableMoment;
        if (steel != null) {
            return new Together(null, null, windMoment, moment * weighed, weighed);
        }
        return new Together(
                solve(request, beside(wind, loads)),
                solve(request, beside(loads, wind)),
                windMoment,
                moment * weighed,
                weighed);
    }

    /** Loads, with the places of others. */
    private static List<BeamLoad> beside(List<BeamLoad> loads, List<BeamLoad> others) {
        List<BeamLoad> both = new ArrayList<>(loads);
        for (BeamLoad other : others) {
            both.add(withoutIntensity(other));
        }
        return both;
    }

    private static BeamSolution solve(FramingRequest request, List<BeamLoad> loads) {
        return Beam.solve(
                MemberLoads.model(
                        request.length(), request.supports(), request.splices(), 1, null, loads));
    }

    private static BeamLoad withoutIntensity(BeamLoad load) {
        if (load instanceof BeamLoad.Distributed spread) {
            return new BeamLoad.Distributed(spread.from(), spread.to(), 0, 0);
        }
        if (load instanceof BeamLoad.Force force) {
            return new BeamLoad.Force(force.at(), 0);
        }
        throw new IllegalArgumentException("no member carries " + load);
    }
}
