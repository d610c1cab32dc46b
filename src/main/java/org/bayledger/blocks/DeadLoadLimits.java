package org.bayledger.blocks;

import org.jspecify.annotations.Nullable;

/**
 * How far a horizontal may bend under dead load.
 *
 * <pre>
 *   on the member's own account      d &lt;= min(L/360, 1/8 in)       common practice, no source
 *   for the bite                     d &lt;= 0.25 b                   75 % of the bite b is left
 *   for the clearance below          d - s &lt;= c - r                r is left of the clearance c
 * </pre>
 *
 * <p>s is how far the glazing below sinks itself; r is 1/8 in over a fixed lite or panel and 1/16
 * in over an operating sash (curtain-wall design guide rule, from memory). If the glazing below
 * sinks by more than the horizontal does, s takes the place of d for the bite. Where nothing stands
 * below, the member's own limit is all.
 *
 * @param span L, m
 * @param below the glazing below, or null where it was not given
 */
record DeadLoadLimits(double span, @Nullable GlazingBelow below) {

    private static final double EIGHTH_INCH = 0.125 * 0.0254;
    private static final double BITE_TO_LOSE = 0.25;

    /** Whether everything that the limits rest on was given. */
    boolean known() {
        return below != null
                && (below.kind() == GlazingBelow.Kind.NONE
                        || (below.edgeClearance() != null
                                && (below.bite() != null || !below.kind().hasBite())));
    }

    /** The limit on the member's own account, m. */
    double ownLimit() {
        return Math.min(span / 360, EIGHTH_INCH);
    }

    /** The limit that keeps the bite, m, or null where the bite was not given. */
    @Nullable Double biteLimit() {
        Double bite = below == null ? null : below.bite();
        return bite == null ? null : BITE_TO_LOSE * bite;
    }

    /**
     * The deflection that uses up the clearance, m, or null where it was not given; zero or less
     * where the clearance is too small as drawn.
     */
    @Nullable Double clearanceLimit() {
        if (below == null || below.edgeClearance() == null) {
            return null;
        }
        return below.edgeClearance() - below.kind().clearanceToKeep() + sinking();
    }

    /** The least of the limits that are known but for the clearance, m. */
    double limitBesideClearance() {
        Double bite = biteLimit();
        return bite == null ? ownLimit() : Math.min(ownLimit(), bite);
    }

    /** The least of the limits that are known, m. */
    double limit() {
        Double clearance = clearanceLimit();
        return clearance == null
                ? limitBesideClearance()
                : Math.min(limitBesideClearance(), clearance);
    }

    /** Clearance left over the glazing below at a deflection, m, or null where none was given. */
    @Nullable Double clearanceLeft(double deflection) {
        return below == null || below.edgeClearance() == null
                ? null
                : below.edgeClearance() + sinking() - deflection;
    }

    /** Bite left at a deflection, m, or null where none was given. */
    @Nullable Double biteLeft(double deflection) {
        return below == null || below.bite() == null
                ? null
                : below.bite() - Math.max(deflection, sinking());
    }

    /**
     * The greatest demand over its limit at a deflection, of the limits that are known.
     *
     * <p>Where a clearance is too small before anything bends, no deflection is allowed and a ratio
     * of deflections says nothing: then it is the clearance needed over the clearance there is.
     */
    double utilization(double deflection) {
        double greatest = deflection / ownLimit();
        Double bite = biteLimit();
        if (bite != null) {
            greatest = Math.max(greatest, Math.max(deflection, sinking()) / bite);
        }
        Double clearance = clearanceLimit();
        if (clearance != null && below != null && below.edgeClearance() != null) {
            double needed = below.kind().clearanceToKeep() + deflection;
            double there = below.edgeClearance() + sinking();
            greatest = Math.max(greatest, clearance > 0 ? deflection / clearance : needed / there);
        }
        return greatest;
    }

    private double sinking() {
        Double sinking = below == null ? null : below.memberDeflection();
        return sinking == null ? 0 : sinking;
    }
}
