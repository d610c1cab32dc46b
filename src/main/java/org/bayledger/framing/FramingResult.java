package org.bayledger.framing;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.util.List;
import org.bayledger.check.Outcome;
import org.bayledger.check.Remedy;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * How a member answers its load.
 *
 * @param outcome verdict, utilization, findings, remedies, trace, cautions
 * @param maxDeflection greatest deflection in absolute value anywhere on the member, under the load
 *     for deflections
 * @param deflectionLimit limit of the span or overhang with the greatest ratio of deflection to
 *     limit
 * @param deflectionUtilization that greatest ratio
 * @param maxMoment greatest bending moment in absolute value
 * @param maxMomentAt where it acts, from the member's start
 * @param bendingStress greatest bending stress about this axis; null without a section modulus
 * @param stressUtilization bending stress, with the concurrent one, over the allowable; null where
 *     it was not checked
 * @param reactions what each support carries
 * @param spans each span and overhang with its own limit
 * @param glassEdges each edge of glass with its own limit
 * @param requiredSecondMomentOfArea least second moment of area that keeps every deflection limit
 * @param requiredSectionModulus least section modulus that keeps the allowable stress; null where
 *     it was not checked or where the concurrent stress alone exceeds it
 * @param maxDeflectionAt where the greatest deflection is, from the member's start
 * @param maxShear greatest shear force in absolute value
 * @param maxShearAt where it acts, from the member's start
 * @param allowableStresses allowable bending stress of each limit state that was checked, the
 *     governing one first
 * @param deadLoadBendingStress greatest bending stress from the weight that acts together with the
 *     wind; null without deadLoad or a section modulus for it
 * @param reinforcement how the steel inside the member is stressed; null where there is none
 * @param thermalBreakShear greatest shear per length in the thermal break; null where its data were
 *     not given
 * @param sectionProperties properties computed from the outline; null where there is none
 * @param along shear, moment and deflection at the stations asked for
 */
public record FramingResult(
        @JsonUnwrapped Outcome outcome,
        Quantity maxDeflection,
        Quantity deflectionLimit,
        double deflectionUtilization,
        Quantity maxMoment,
        Quantity maxMomentAt,
        @Nullable Quantity bendingStress,
        @Nullable Double stressUtilization,
        List<Reaction> reactions,
        List<Span> spans,
        List<Edge> glassEdges,
        Quantity requiredSecondMomentOfArea,
        @Nullable Quantity requiredSectionModulus,
        Quantity maxDeflectionAt,
        Quantity maxShear,
        Quantity maxShearAt,
        List<AllowableStress> allowableStresses,
        @Nullable Quantity deadLoadBendingStress,
        @Nullable Steel reinforcement,
        @Nullable Quantity thermalBreakShear,
        @Nullable Computed sectionProperties,
        List<Station> along) {

    FramingResult withRemedies(List<Remedy> remedies) {
        return new FramingResult(
                new Outcome(
                        outcome.verdict(),
                        outcome.utilization(),
                        outcome.findings(),
                        remedies,
                        outcome.trace(),
                        outcome.cautions()),
                maxDeflection,
                deflectionLimit,
                deflectionUtilization,
                maxMoment,
                maxMomentAt,
                bendingStress,
                stressUtilization,
                reactions,
                spans,
                glassEdges,
                requiredSecondMomentOfArea,
                requiredSectionModulus,
                maxDeflectionAt,
                maxShear,
                maxShearAt,
                allowableStresses,
                deadLoadBendingStress,
                reinforcement,
                thermalBreakShear,
                sectionProperties,
                along);
    }

    /** What limits a bending stress. */
    public enum LimitState {
        /** The allowable stress that the request gave. */
        GIVEN,
        /** Yielding. */
        YIELDING,
        /** Rupture in tension. */
        RUPTURE,
        /** Buckling of the section's walls. */
        LOCAL_BUCKLING,
        /** Buckling of the member sideways with twisting. */
        LATERAL_TORSIONAL_BUCKLING
    }

    /**
     * The allowable bending stress of one limit state.
     *
     * @param limitState what limits it
     * @param stress allowable stress
     */
    public record AllowableStress(LimitState limitState, Quantity stress) {

        static AllowableStress of(LimitState limitState, double si) {
            return new AllowableStress(limitState, Quantity.of(Dimension.STRESS, si));
        }
    }

    /**
     * Steel inside the member.
     *
     * @param stiffnessShare its share of the bending moment where it is
     * @param bendingStress its greatest bending stress
     * @param allowableBendingStress its allowable one
     * @param utilization the one over the other
     */
    public record Steel(
            double stiffnessShare,
            Quantity bendingStress,
            Quantity allowableBendingStress,
            double utilization) {}

    /**
     * Properties computed from the outline; x along the wall, y at right angles to it.
     *
     * @param area area of metal
     * @param centroidX centroid along the wall
     * @param centroidY centroid along the depth
     * @param secondMomentOfAreaX about the axis along the wall, about which wind bends the section
     * @param secondMomentOfAreaY about the axis at right angles to the wall, about which weight
     *     bends a horizontal
     * @param productOfInertia integral of x y dA
     * @param windSecondMomentOfArea what counts under wind; less than secondMomentOfAreaX where the
     *     section bends askew
     * @param windSectionModulus what counts under wind
     * @param deadLoadSecondMomentOfArea what counts under dead load
     * @param deadLoadSectionModulus what counts under dead load
     */
    public record Computed(
            Quantity area,
            Quantity centroidX,
            Quantity centroidY,
            Quantity secondMomentOfAreaX,
            Quantity secondMomentOfAreaY,
            Quantity productOfInertia,
            Quantity windSecondMomentOfArea,
            Quantity windSectionModulus,
            Quantity deadLoadSecondMomentOfArea,
            Quantity deadLoadSectionModulus) {}

    /**
     * One place along the member under the greatest load; deflection and moment are positive where
     * the load bends it its own way, shear is the derivative of the moment.
     *
     * @param at position from the member's start
     * @param shear shear force
     * @param moment bending moment
     * @param deflection deflection
     */
    public record Station(Quantity at, Quantity shear, Quantity moment, Quantity deflection) {}

    /**
     * What a support carries; positive where the member presses on it in the load's direction.
     *
     * @param at position from the member's start
     * @param force under the greatest load
     * @param underPositive under the pressure toward the wall; null where there is none
     * @param underNegative under the pressure away from the wall, positive outward; null where
     *     there is none
     */
    public record Reaction(
            Quantity at,
            Quantity force,
            @Nullable Quantity underPositive,
            @Nullable Quantity underNegative) {}

    /**
     * A span between two supports, or an overhang beyond the last.
     *
     * @param from where it begins, from the member's start
     * @param to where it ends
     * @param overhang whether it is an overhang
     * @param deflection greatest deflection in absolute value from the chord of the span
     * @param limit its limit
     * @param utilization deflection over limit
     * @param deflectionAt where the greatest deflection is, from the member's start
     * @param maxMoment greatest bending moment in absolute value, those at its supports included
     * @param maxMomentAt where it acts, from the member's start
     * @param maxShear greatest shear force in absolute value
     * @param maxShearAt where it acts, from the member's start
     */
    public record Span(
            Quantity from,
            Quantity to,
            boolean overhang,
            Quantity deflection,
            Quantity limit,
            double utilization,
            Quantity deflectionAt,
            Quantity maxMoment,
            Quantity maxMomentAt,
            Quantity maxShear,
            Quantity maxShearAt) {}

    /**
     * An edge of glass that the member holds.
     *
     * @param from where it begins, from the member's start
     * @param to where it ends
     * @param deflection greatest deflection in absolute value from the chord of the edge
     * @param limit the smaller of L/175 and 3/4 in
     * @param utilization deflection over limit
     */
    public record Edge(
            Quantity from, Quantity to, Quantity deflection, Quantity limit, double utilization) {}
}
