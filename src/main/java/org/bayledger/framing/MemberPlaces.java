package org.bayledger.framing;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.bayledger.check.Faults;
import org.bayledger.mechanics.BeamLoad;
import org.jspecify.annotations.Nullable;

/** Refuses what does not lie on a member, and a member that does not stand. */
final class MemberPlaces {

    /** Share of the length by which a place may seem to lie beyond the end through rounding. */
    private static final double SAME_PLACE = 1e-9;

    private static final String BEYOND = "lies beyond the end of the member";

    private final double length;
    private final Faults faults;

    /**
     * Places on a member.
     *
     * @param length of the member, m
     * @param faults receives what lies elsewhere
     */
    MemberPlaces(double length, Faults faults) {
        this.length = length;
        this.faults = faults;
    }

    private boolean isOnMember(double place) {
        return place <= length * (1 + SAME_PLACE);
    }

    <T> void within(@Nullable List<T> items, String list, String name, ToDoubleFunction<T> place) {
        for (int i = 0; items != null && i < items.size(); i++) {
            faults.require(
                    isOnMember(place.applyAsDouble(items.get(i))), list + "/" + i + name, BEYOND);
        }
    }

    void within(@Nullable Reinforcement steel, String pointer) {
        if (steel != null) {
            faults.require(steel.to() == null || isOnMember(steel.to()), pointer + "/to", BEYOND);
            faults.require(
                    steel.start() < length,
                    pointer + "/from",
                    "lies at or beyond the end of the member");
        }
    }

    /** Brace points lie on the member and reach over all of its spans. */
    void braced(@Nullable LateralBuckling lateral, List<Double> supports) {
        List<Double> braces = lateral == null ? null : lateral.bracePoints();
        if (braces == null) {
            return;
        }
        String pointer = "/section/lateralBuckling/bracePoints";
        within(braces, pointer, "", place -> place);
        double slack = length * SAME_PLACE;
        boolean reach =
                supports.isEmpty()
                        || (braces.get(0) <= supports.get(0) + slack
                                && braces.get(braces.size() - 1)
                                        >= supports.get(supports.size() - 1) - slack);
        faults.require(
                reach, pointer, "must reach from the first support or before it to the last");
    }

    /** Refuses a member that is a mechanism or that the beam's solution does not reach. */
    void requireBeam(
            List<Double> supports,
            List<Double> hinges,
            Section section,
            @Nullable Reinforcement steel,
            List<BeamLoad> loads) {
        SectionProperties properties = SectionProperties.of(section, length, supports, hinges);
        try {
            MemberLoads.model(
                    length,
                    supports,
                    hinges,
                    section.modulusOfElasticity() * properties.inertia(),
                    steel,
                    loads);
        } catch (IllegalArgumentException refused) {
            String reason = String.valueOf(refused.getMessage());
            String pointer =
                    reason.contains("hinge") && !reason.contains("rigidit")
                            ? "/hinges"
                            : reason.contains("rigidit")
                                    ? "/section/reinforcement"
                                    : reason.contains("distributed")
                                            ? "/tributaryStrips"
                                            : "/supports";
            faults.outOfRange(pointer, reason);
        }
    }
}
