package org.bayledger.framing;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.util.List;
import org.bayledger.check.Outcome;
import org.bayledger.check.Remedy;
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
        @Nullable Quantity requiredSectionModulus) {

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
                requiredSectionModulus);
    }

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
     */
    public record Span(
            Quantity from,
            Quantity to,
            boolean overhang,
            Quantity deflection,
            Quantity limit,
            double utilization) {}

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
