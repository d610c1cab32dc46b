package org.bayledger.framing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.bayledger.check.Finding;
import org.bayledger.check.Trace;
import org.bayledger.framing.FramingResult.AllowableStress;
import org.bayledger.framing.FramingResult.LimitState;
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
 *     modulus would do, all else of the section as it is
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
        List<UnbracedStretch> stretches =
                wind ? UnbracedStretch.of(request, beam) : List.<UnbracedStretch>of();
        List<Finding> buckling = new ArrayList<>();
        List<AllowableStress> allowables =
                BendingStrength.of(section, wind, modulus, stretches, trace, buckling);
        ConcurrentWeight weight =
                request.deadLoad() == null ? null : ConcurrentWeight.of(request, trace, unchecked);
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
        boolean sideways =
                allowables.stream()
                        .anyMatch(
                                each -> each.limitState() == LimitState.LATERAL_TORSIONAL_BUCKLING);
        DoubleUnaryOperator allowableWith =
                sideways
                        ? other -> BendingStrength.least(section, other, stretches)
                        : other -> allowable;
        double most = moment;
        trace.step(
                "F",
                "allowable bending stress",
                Dimension.STRESS,
                allowable,
                BendingStrength.origin(section, allowables.get(0).limitState()),
                BendingStrength.source(allowables.get(0).limitState()));
        if (weight != null && weight.allowableMoment() != null) {
            ConcurrentWeight.Together both = weight.with(request, loads, inside, moment);
            double together = both.over(modulus * allowable);
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
                    RequiredModulus.least(
                            modulus,
                            other -> both.over(other * allowableWith.applyAsDouble(other)));
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
        Double required;
        if (sideways) {
            required =
                    RequiredModulus.least(
                            modulus,
                            other ->
                                    (most / other + concurrent)
                                            / allowableWith.applyAsDouble(other));
        } else {
            required = concurrent < allowable ? (Double) (most / (allowable - concurrent)) : null;
        }
        return new MemberStress(bending, utilization, required, allowables, dead, steel);
    }

    static Finding noModulus(String name) {
        return Finding.action(
                "STRESS_NOT_CHECKED",
                "/section/" + name,
                "Bending stress is not checked: the section modulus about this axis was not"
                        + " given.");
    }

    /**
     * Share of the moment that steel takes beside aluminum that bends with it: E I over the sum.
     */
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
}
