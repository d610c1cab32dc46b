package org.bayledger.blocks;

import org.jspecify.annotations.Nullable;

/**
 * How far a horizontal may bend under dead load.
 *
 * <pre>
 *   on the member's own account   d &lt;= min(L/360, 1/8 in)     common practice, no source
 *   for the bite                  d + u &lt;= 0.25 b             75 % of the bite b is left
 *   for the clearance below       d + u - s &lt;= c - g - r      r is left of the clearance c
 * </pre>
 *
 * <p>u is how far the metal over the glazing below comes down because the horizontal turns, 0 where
 * that is not known; g is what tolerances and thermal growth take of the clearance as drawn.
 *
 * <p>s is how far the glazing below sinks itself; r is 1/8 in over a fixed lite or panel and 1/16
 * in over an operating sash (curtain-wall design guide rule, from memory). If the glazing below
 * sinks by more than the horizontal does, s takes the place of d for the bite. Where nothing stands
 * below, the member's own limit is all.
 *
 * @param span L, m: distance between neighbouring supports
 * @param below the glazing below, or null where it was not given
 */
record DeadLoadLimits(double span, @Nullable GlazingBelow below) {

    private static final double EIGHTH_INCH = 0.125 * 0.0254;
    private static final double BITE_TO_LOSE = 0.25;

    /**
     * The limits of a request.
     *
     * @param span of the member between its outer supports, m
     */
    static DeadLoadLimits of(SettingBlocksRequest request, double span) {
        return new DeadLoadLimits(request.support().clear(span), request.below());
    }

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
        return below.edgeClearance() - below.taken() - below.kind().clearanceToKeep() + sinking();
    }

    /** How far the glazing below sinks itself, as far as that is known, m. */
    private double sinking() {
        Double sinking = below == null ? null : below.memberDeflection();
        return sinking == null ? 0 : sinking;
    }

    /**
     * The least of the limits that are known but for the clearance, m.
     *
     * @param drop u, m
     */
    double limitBesideClearance(double drop) {
        Double bite = biteLimit();
        return bite == null ? ownLimit() : Math.min(ownLimit(), bite - drop);
    }

    /**
     * The least of the limits that are known, m.
     *
     * @param drop u, m
     */
    double limit(double drop) {
        Double clearance = clearanceLimit();
        double rest = limitBesideClearance(drop);
        return clearance == null ? rest : Math.min(rest, clearance - drop);
    }

    /**
     * Clearance left over the glazing below, m, or null where none was given.
     *
     * @param lost how far the metal over it comes down, d + u, m
     */
    @Nullable Double clearanceLeft(double lost) {
        return below == null || below.edgeClearance() == null
                ? null
                : below.edgeClearance() - below.taken() + sinking() - lost;
    }

    /**
     * Bite left, m, or null where none was given.
     *
     * @param lost how far the metal over it comes down, d + u, m
     */
    @Nullable Double biteLeft(double lost) {
        return below == null || below.bite() == null
                ? null
                : below.bite() - Math.max(lost, sinking());
    }

    /** The deflection d over the limit on the member's own account. */
    double ownUse(double deflection) {
        return deflection / ownLimit();
    }

    /** What is lost of the bite over what may be, or null where none was given. */
    @Nullable Double biteUse(double lost) {
        Double bite = biteLimit();
        return bite == null ? null : (Double) (Math.max(lost, sinking()) / bite);
    }

    /**
     * What is lost of the clearance over what may be, or null where none was given.
     *
     * <p>Where a clearance is too small before anything bends, no deflection is allowed and a ratio
     * of deflections says nothing: then it is the clearance needed over the clearance there is.
     */
    @Nullable Double clearanceUse(double lost) {
        Double clearance = clearanceLimit();
        if (clearance == null || below == null || below.edgeClearance() == null) {
            return null;
        }
        double needed = below.kind().clearanceToKeep() + below.taken() + lost;
        double there = below.edgeClearance() + sinking();
        return clearance > 0 ? lost / clearance : needed / there;
    }
}
