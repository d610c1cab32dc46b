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
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * Bending stress of a member against the least of its allowable ones.
 *
 * @param bending greatest bending stress of the aluminum about the axis of the request, Pa; null
 *     without a section modulus
 * @param utilization that and the one from the other axis over the allowable; null where it was not
 *     checked
 * @param requiredModulus least section modulus, m3; null where it was not checked or no section
 *     modulus would do
 * @param allowables allowable stresses, the governing one first
 * @param dead greatest bending stress from the weight that acts with the wind, Pa, or null
 * @param steel the steel inside, or null
 */
record MemberStress(
        @Nullable Double bending,
        @Nullable Double utilization,
        @Nullable Double requiredModulus,
        List<AllowableStress> allowables,
        @Nullable Double dead,
        FramingResult.@Nullable Steel steel) {

    /**
     * The bending stress of a member.
     *
     * @param beam its answer to the load
     * @param loads that load
     * @param trace receives the steps
     * @param unchecked receives what was missing, so that the stress was not checked
     */
    static MemberStress of(
            FramingRequest request,
            SectionProperties properties,
            BeamSolution beam,
            List<BeamLoad> loads,
            Trace trace,
            List<Finding> unchecked) {
        Section section = request.section();
        boolean wind = request.axis() == Axis.WIND;
        Double modulus = wind ? properties.modulus() : section.deadLoadModulus();
        if (modulus == null) {
            unchecked.add(noModulus(wind ? "sectionModulus" : "deadLoadSectionModulus"));
        }
        boolean strength = section.allowableBendingStress() != null || section.alloy() != null;
        if (!strength) {
            unchecked.add(
                    Finding.action(
                            "STRESS_NOT_CHECKED",
                            "/section/allowableBendingStress",
                            "Bending stress is not checked: no allowable bending stress was"
                                    + " given."));
        }
        Reinforcement inside = wind ? section.reinforcement() : null;
        double moment = Math.abs(beam.greatestMoment().value());
        FramingResult.Steel steel = null;
        if (inside != null) {
            double share = share(section, properties, inside);
            double shared = greatestMoment(beam, inside.start(), inside.end(request.length()));
            double alone =
                    Math.max(
                            greatestMoment(beam, 0, inside.start()),
                            greatestMoment(beam, inside.end(request.length()), request.length()));
            moment = Math.max(alone, (1 - share) * shared);
            steel = steel(inside, share, shared, moment, trace);
        }
        List<Finding> buckling = new ArrayList<>();
        List<AllowableStress> allowables =
                BendingStrength.of(section, wind, modulus, trace, buckling);
        Weight weight = request.deadLoad() == null ? null : Weight.of(request, trace, unchecked);
        unchecked.addAll(buckling);
        Double dead = weight == null ? null : weight.stress();
        if (modulus == null) {
            return new MemberStress(null, null, null, allowables, dead, steel);
        }
        double bending = moment / modulus;
        trace.step(
                "S",
                "section modulus",
                Dimension.SECTION_MODULUS,
                modulus,
                wind ? properties.origin() : section.outline() == null ? "input" : "outline",
                wind ? properties.source() : section.outline() == null ? "input" : "outline");
        trace.step("f", "bending stress", Dimension.STRESS, bending, "M / S", "beam theory");
        if (allowables.isEmpty()) {
            return new MemberStress(bending, null, null, allowables, dead, steel);
        }
        double allowable = allowables.get(0).stress().si();
        trace.step(
                "F",
                "allowable bending stress",
                Dimension.STRESS,
                allowable,
                BendingStrength.origin(section, allowables.get(0).limitState()),
                BendingStrength.source(allowables.get(0).limitState()));
        if (weight != null && weight.allowableMoment() != null) {
            double together =
                    weight.together(request, loads, inside, moment, modulus * allowable);
            trace.step(
                    "f/F + f2/F2",
                    "greatest sum of both bending stresses over their allowable ones",
                    Dimension.NONE,
                    together,
                    inside == null
                            ? "linear sum at the same place of the member"
                            : "linear sum of the greatest of each along the member",
                    "Aluminum Design Manual 2015, H.1 without axial force (from memory)");
            Double required =
                    weight.requiredModulus(request, loads, inside, moment, modulus, allowable);
            return new MemberStress(bending, together, required, allowables, dead, steel);
        }
        double concurrent =
                request.concurrentBendingStress() == null ? 0 : request.concurrentBendingStress();
        double utilization = (bending + concurrent) / allowable;
        trace.step(
                "(f + f2)/F",
                "bending stress with that of the other axis, over the allowable",
                Dimension.NONE,
                utilization,
                "linear sum of the stresses about both axes",
                "common practice, no source");
        Double required = concurrent < allowable ? moment / (allowable - concurrent) : null;
        return new MemberStress(bending, utilization, required, allowables, dead, steel);
    }

    static Finding noModulus(String name) {
        return Finding.action(
                "STRESS_NOT_CHECKED",
                "/section/" + name,
                "Bending stress is not checked: the section modulus about this axis was not"
                        + " given.");
    }

    /** Share of the moment that steel takes beside aluminum that bends with it: E I over the sum. */
    private static double share(
            Section section, SectionProperties properties, Reinforcement steel) {
        double aluminum = section.modulusOfElasticity() * properties.inertia();
        return steel.rigidity() / (steel.rigidity() + aluminum);
    }

    private static FramingResult.Steel steel(
            Reinforcement inside, double share, double shared, double moment, Trace trace) {
        double stress = share * shared / inside.sectionModulus();
        trace.step(
                "k",
                "share of the moment that the steel takes",
                Dimension.NONE,
                share,
                "(E I)steel / ((E I)steel + (E I)aluminum)",
                "equal curvature of both, not joined lengthwise");
        trace.step(
                "M,al",
                "greatest moment in the aluminum",
                Dimension.MOMENT,
                moment,
                "the greater of (1 - k) M where the steel is and M beyond its ends",
                "statics");
        trace.step(
                "f,st",
                "bending stress of the steel",
                Dimension.STRESS,
                stress,
                "k M / S,st",
                "beam theory");
        trace.step(
                "F,st",
                "allowable bending stress of the steel",
                Dimension.STRESS,
                inside.allowable(),
                "Fy / 1.67 on the elastic section modulus",
                "AISC 360-16, F1 (from memory)");
        return new FramingResult.Steel(
                share,
                Quantity.of(Dimension.STRESS, stress),
                Quantity.of(Dimension.STRESS, inside.allowable()),
                stress / inside.allowable());
    }

    private static double greatestMoment(BeamSolution beam, double from, double to) {
        return from < to ? Math.abs(beam.greatestMoment(from, to).value()) : 0;
    }

    /**
     * The weight that bends a member together with the wind.
     *
     * @param loads that weight
     * @param moment greatest moment from it, N m
     * @param stress greatest stress from it, Pa, or null without a section modulus
     * @param allowableMoment section modulus times allowable stress about its axis, N m, or null
     */
    private record Weight(
            List<BeamLoad> loads,
            double moment,
            @Nullable Double stress,
            @Nullable Double allowableMoment) {

        private static final int HALVINGS = 100;

        static Weight of(FramingRequest request, Trace trace, List<Finding> unchecked) {
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
                unchecked.add(noModulus("deadLoadSectionModulus"));
                return new Weight(loads, moment, null, null);
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
                            new Trace(TraceLevel.GOVERNING),
                            unchecked);
            if (allowables.isEmpty()) {
                return new Weight(loads, moment, moment / modulus, null);
            }
            double allowable = allowables.get(0).stress().si();
            trace.step(
                    "F2",
                    "allowable bending stress about that axis",
                    Dimension.STRESS,
                    allowable,
                    BendingStrength.origin(section, allowables.get(0).limitState()),
                    BendingStrength.source(allowables.get(0).limitState()));
            return new Weight(loads, moment, moment / modulus, modulus * allowable);
        }

        /**
         * The greatest sum along the member of both moments over their allowable ones, found on the
         * one beam that carries both loads, each over its allowable moment, with equal and with
         * opposite signs: |a| + |b| is the greater of |a + b| and |a - b|. Of one rigidity
         * throughout, a beam's moments do not depend on it; beside steel the greatest of each are
         * added, which is never less.
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

        /** The least section modulus under wind with which both stay within what is allowed. */
        @Nullable Double requiredModulus(
                FramingRequest request,
                List<BeamLoad> wind,
                @Nullable Reinforcement steel,
                double windMoment,
                double modulus,
                double allowable) {
            double high = modulus;
            for (int i = 0;
                    together(request, wind, steel, windMoment, high * allowable) > 1;
                    i++) {
                if (i > 40) {
                    return null;
                }
                high *= 2;
            }
            double low = 0;
            for (int i = 0; i < HALVINGS && high - low > 1e-12 * high; i++) {
                double middle = (low + high) / 2;
                if (together(request, wind, steel, windMoment, middle * allowable) > 1) {
                    low = middle;
                } else {
                    high = middle;
                }
            }
            return high;
        }

        private static BeamSolution solve(FramingRequest request, List<BeamLoad> loads) {
            return Beam.solve(
                    MemberLoads.model(
                            request.length(),
                            request.supports(),
                            request.splices(),
                            1,
                            null,
                            loads));
        }

        private static BeamLoad scaled(BeamLoad load, double factor) {
            if (load instanceof BeamLoad.Distributed spread) {
                return new BeamLoad.Distributed(
                        spread.from(),
                        spread.to(),
                        factor * spread.atFrom(),
                        factor * spread.atTo());
            }
            if (load instanceof BeamLoad.Force force) {
                return new BeamLoad.Force(force.at(), factor * force.force());
            }
            throw new IllegalArgumentException("no member carries " + load);
        }
    }
}
