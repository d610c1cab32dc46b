package org.bayledger.blocks;

import org.jspecify.annotations.Nullable;

/**
 * What blocks as they were found ask of the horizontal.
 *
 * @param member what they ask, or, with bound, the most that the loads could make it
 * @param at where the horizontal bends most, from the left glass corner, m
 * @param bound whether the loads are not known but for bounds
 * @param drawn what two blocks where they are drawn ask of it, or null where that place is not
 *     known
 */
record FoundSag(
        BlockDemand.OfMember member,
        double at,
        boolean bound,
        BlockDemand.@Nullable OfMember drawn) {

    /**
     * What the blocks ask of the horizontal, or null where it or the weight is not known.
     *
     * @param loads on the blocks, N, or null where they are not determined
     * @param drawnAt where blocks are drawn, from each glass corner, m, or null
     */
    static @Nullable FoundSag of(
            SettingBlocksRequest request,
            @Nullable FoundLoads lite,
            @Nullable FoundMember on,
            double @Nullable [] loads,
            @Nullable Double drawnAt) {
        if (on == null || lite == null) {
            return null;
        }
        BlockDemand.OfMember most = null;
        for (double[] one : lite.cases(loads)) {
            BlockDemand.OfMember here = on.under(lite.places(), one);
            if (most == null || lost(here) > lost(most)) {
                most = here;
            }
        }
        if (most == null) {
            return null;
        }
        double half = lite.weight() / 2;
        BlockDemand.OfMember drawn =
                drawnAt == null
                        ? null
                        : on.under(
                                new double[] {drawnAt, request.width() - drawnAt},
                                new double[] {half, half});
        double at = on.fromCorner(most.deflection().at());
        return new FoundSag(most, at, loads == null, drawn);
    }

    /** Greatest deflection, m. */
    double greatest() {
        return member.deflection().value();
    }

    /** How far the metal over the glazing below comes down, rotation included, m. */
    double lost() {
        return lost(member);
    }

    static double lost(BlockDemand.OfMember member) {
        return member.deflection().value() + member.drop();
    }

    /** Greatest deflection as drawn, m, or null where that is not known. */
    @Nullable Double asDrawn() {
        return drawn == null ? null : (Double) drawn.deflection().value();
    }

    /** Whether the limits on the deflection that are known would be kept as drawn. */
    boolean drawnKeeps(DeadLoadLimits limits) {
        if (drawn == null) {
            return false;
        }
        double bent = drawn.deflection().value();
        Double bite = limits.biteUse(lost(drawn));
        Double clearance = limits.clearanceUse(lost(drawn));
        return limits.ownUse(bent) <= 1
                && (bite == null || bite <= 1)
                && (clearance == null || clearance <= 1);
    }
}
