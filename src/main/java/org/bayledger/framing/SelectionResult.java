package org.bayledger.framing;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.util.List;
import org.bayledger.check.Finding;
import org.bayledger.check.Outcome;
import org.bayledger.check.Verdict;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * Which sections serve where.
 *
 * @param outcome verdict over the zones: SATISFIED where each has a section that passes; its
 *     utilization is the greatest of the zones', each with its lightest section that passes or,
 *     where none does, with its least loaded one
 * @param zones each zone with the sections that pass, the lightest first, and those that do not
 * @param servesAllZones names of the sections that pass in every zone, the lightest first
 * @param reinforced what reinforcement in some zones would save against the lightest section that
 *     serves all of them, the lightest first; empty where no reinforcement was given or none helps
 */
public record SelectionResult(
        @JsonUnwrapped Outcome outcome,
        List<SelectionResult.Zone> zones,
        List<String> servesAllZones,
        List<SelectionResult.Reinforced> reinforced) {

    public SelectionResult {
        zones = List.copyOf(zones);
        servesAllZones = List.copyOf(servesAllZones);
        reinforced = List.copyOf(reinforced);
    }

    /**
     * One zone.
     *
     * @param zone its name
     * @param passing sections that pass, the lightest first
     * @param others sections that do not, the least loaded first
     */
    public record Zone(
            String zone,
            List<SelectionResult.Choice> passing,
            List<SelectionResult.Choice> others) {

        public Zone {
            passing = List.copyOf(passing);
            others = List.copyOf(others);
        }
    }

    /** What governs a member. */
    public enum Limit {
        /** Deflection. */
        DEFLECTION,
        /** Bending stress. */
        STRESS
    }

    /**
     * One section in one zone, by its most loaded member there.
     *
     * @param id name of the section
     * @param massPerLength its mass; null where it was not given
     * @param depth its depth; null where it was not given
     * @param verdict over its members
     * @param utilization greatest of its members': above 1 by how much it fails; null where a sign
     *     of the pressure is missing altogether
     * @param member name of the member that governs
     * @param governs which limit governs that member
     * @param requiredSecondMomentOfArea least second moment of area that keeps the deflection
     *     limits of all members
     * @param requiredSectionModulus least section modulus that keeps the allowable stress of all
     *     members; null where stress was not checked
     * @param reasons why it does not pass; empty where it does
     */
    public record Choice(
            String id,
            @Nullable Quantity massPerLength,
            @Nullable Quantity depth,
            Verdict verdict,
            @Nullable Double utilization,
            String member,
            SelectionResult.Limit governs,
            Quantity requiredSecondMomentOfArea,
            @Nullable Quantity requiredSectionModulus,
            List<Finding> reasons) {

        public Choice {
            reasons = List.copyOf(reasons);
        }

        boolean passes() {
            return verdict == Verdict.SATISFIED;
        }
    }

    /**
     * A lighter section, with steel in the zones where it fails alone.
     *
     * @param id name of the section
     * @param zones names of the zones that get the steel
     * @param utilization greatest over all zones, with the steel where it is
     * @param massWithout mass per length without the steel; null where it was not given
     * @param massWith mass per length with it; null likewise
     * @param savedPerLength mass per length saved, in the zones without steel, against the lightest
     *     section that serves all zones; null where there is none or a mass was not given
     * @param addedPerLength mass per length added in the zones with steel, against the same;
     *     negative where the steel is lighter even there
     * @param saved total mass saved; null where a length of members was not given
     */
    public record Reinforced(
            String id,
            List<String> zones,
            double utilization,
            @Nullable Quantity massWithout,
            @Nullable Quantity massWith,
            @Nullable Quantity savedPerLength,
            @Nullable Quantity addedPerLength,
            @Nullable Quantity saved) {

        public Reinforced {
            zones = List.copyOf(zones);
        }
    }
}
