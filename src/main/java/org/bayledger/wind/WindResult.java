package org.bayledger.wind;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.util.List;
import org.bayledger.check.LoadBasis;
import org.bayledger.check.Outcome;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * Design wind pressures on the walls of a building.
 *
 * @param outcome verdict, findings, trace and cautions; a pressure has no limit, so the utilization
 *     is null
 * @param zoneWidth width of the outermost end zone at outside corners: a of ASCE/SEI 7, e/5 of EN
 *     1991-1-4; null where it was neither specified nor a site given
 * @param velocityPressureAtRoof velocity pressure at the roof: qh of ASCE/SEI 7, strength level and
 *     in 7-22 without the directionality factor; qp(h) of EN 1991-1-4; null without a site
 * @param components the pressures, in the order of the request
 */
public record WindResult(
        @JsonUnwrapped Outcome outcome,
        @Nullable Quantity zoneWidth,
        @Nullable Quantity velocityPressureAtRoof,
        List<ComponentPressures> components) {

    public WindResult {
        components = List.copyOf(components);
    }

    /**
     * The pressures on one component in every zone of the wall.
     *
     * @param id the caller's name of the component
     * @param effectiveWindArea area that the coefficients were read for
     * @param height height of its top above ground
     * @param zones the pressures in each zone
     */
    public record ComponentPressures(
            String id, Quantity effectiveWindArea, Quantity height, List<Zone> zones) {

        public ComponentPressures {
            zones = List.copyOf(zones);
        }
    }

    /**
     * Both pressures in one zone with their level; without the zone's name this is a load as other
     * checks take it.
     *
     * @param zone zone of the wall: ASCE/SEI 7, 4 in the middle and 5 at outside corners; EN
     *     1991-1-4, A, B and C from an outside corner inward, each with the pressures of zones D
     *     and E, which the same face has when the wind blows onto it and from behind
     * @param positive pressure toward the wall; null where none is specified
     * @param negative pressure away from the wall, below zero; null likewise
     * @param basis level of both pressures
     */
    public record Zone(
            String zone,
            @Nullable Quantity positive,
            @Nullable Quantity negative,
            LoadBasis basis) {}
}
