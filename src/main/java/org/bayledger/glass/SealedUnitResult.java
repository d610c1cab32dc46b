package org.bayledger.glass;

import java.util.List;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * What the sealed-cavity model says of an insulating unit. It stands beside the practice's load
 * sharing and glass type factors, which give the verdict and allow for the sealed cavity in
 * general. Where this model shows a pane beyond its resistance although the practice is satisfied,
 * the verdict is UNDETERMINED with a finding.
 *
 * @param cases every climate without wind and with the wind of each sign, and the wind alone on the
 *     unit as it was sealed
 * @param utilization greatest of the cases'; null where one of them has none
 */
public record SealedUnitResult(List<SealedUnitResult.Case> cases, @Nullable Double utilization) {

    public SealedUnitResult {
        cases = List.copyOf(cases);
    }

    /**
     * One climate with one wind.
     *
     * @param climate name of the climate; null for the air in which the unit was sealed
     * @param wind sign of the wind; null without wind
     * @param cavities what happens in each cavity, outermost first
     * @param panes what each pane carries, outermost first
     * @param utilization greatest of the panes'; null where the panes touch or a pane is beyond
     *     what the plate solution covers
     */
    public record Case(
            @Nullable String climate,
            @Nullable PressureSign wind,
            List<SealedUnitResult.CavityState> cavities,
            List<SealedUnitResult.PaneState> panes,
            @Nullable Double utilization) {

        public Case {
            cavities = List.copyOf(cavities);
            panes = List.copyOf(panes);
        }

        boolean touches() {
            return cavities.stream().anyMatch(CavityState::panesTouch);
        }
    }

    /**
     * A cavity.
     *
     * @param pressureDifference pressure in it over that of the air about the unit
     * @param gapAtCenter distance left between the middles of its panes; null where a pane is
     *     beyond what the plate solution covers
     * @param panesTouch whether none is left
     */
    public record CavityState(
            Quantity pressureDifference, @Nullable Quantity gapAtCenter, boolean panesTouch) {}

    /**
     * A pane.
     *
     * @param pressure net pressure on it, positive inward
     * @param centerDeflection of its middle, positive inward; null beyond the plate solution
     * @param maxPrincipalStress greatest tension anywhere on it; null likewise
     * @param utilization its pressures over its resistance to each, added up for loads of different
     *     durations; null likewise
     */
    public record PaneState(
            Quantity pressure,
            @Nullable Quantity centerDeflection,
            @Nullable Quantity maxPrincipalStress,
            @Nullable Double utilization) {}
}
