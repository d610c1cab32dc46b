package org.bayledger.review;

import java.util.Map;
import org.bayledger.anchorage.Anchor;
import org.bayledger.check.AllowableLoad;
import org.jspecify.annotations.Nullable;

/**
 * One vertical of a bay under wind, and what it puts on what holds it.
 *
 * @param bay the bay
 * @param at distance from the elevation's left edge, m
 * @param line how it is held
 * @param load pressures on it, at allowable-stress level
 * @param width width of wall that it carries, m
 * @param rigidity E I, N m2
 * @param forces on its anchors, by id
 * @param foot on the stack joint in which it stands; null where it stands in none, or where the
 *     force is not known
 * @param wind the wind that it sees, as shown in answers; null where there is none
 */
record VerticalRun(
        Bay bay,
        double at,
        MullionLine line,
        AllowableLoad load,
        double width,
        double rigidity,
        Map<String, Force> forces,
        @Nullable Force foot,
        ReviewItem.@Nullable Wind wind) {

    /**
     * Forces under both signs of wind, N, at allowable-stress level, positive in the pressure's
     * direction.
     */
    record Force(double underPositive, double underNegative) {

        /** The greater of two under each sign, by size. */
        Force orGreater(Force other) {
            return new Force(
                    greater(underPositive, other.underPositive),
                    greater(underNegative, other.underNegative));
        }

        Force plus(Force other) {
            return new Force(
                    underPositive + other.underPositive, underNegative + other.underNegative);
        }

        private static double greater(double one, double other) {
            return Math.abs(one) >= Math.abs(other) ? one : other;
        }
    }

    /** Its anchor at a level above the building datum, or null where none of its piece is there. */
    @Nullable Anchor anchorAt(double elevation) {
        if (bay.anchors() == null) {
            return null;
        }
        return bay.anchors().stream()
                .filter(anchor -> Math.abs(anchor.elevation() - elevation) <= Layout.TOUCH)
                .filter(anchor -> MullionLine.onPiece(bay, anchor))
                .findFirst()
                .orElse(null);
    }

    /**
     * What a shared anchor carries of this vertical and of the one that goes on at it: the sum of
     * both, and, where they may run through, what continuity over the anchor adds.
     *
     * <pre>
     *   M = (m1 k1 + m2 k2) / (k1 + k2)     m = w L^2 / 8,  k = L / (E I)
     *   R = R1 + R2 + M (1/L1 + 1/L2)
     * </pre>
     *
     * <p>Theorem of three moments for two spans that rest freely at their far ends; where they go
     * on there, M is less.
     *
     * @param own on the anchor from this vertical
     * @param beside the other vertical
     * @param theirs on the anchor from the other
     * @param elevation level of the anchor, m
     */
    Force runningThrough(Force own, VerticalRun beside, Force theirs, double elevation) {
        double span = line.spanAt(elevation - bay.sill());
        double other = beside.line.spanAt(elevation - beside.bay.sill());
        double k1 = span / rigidity;
        double k2 = other / beside.rigidity;
        double m1 = width * span * span / 8;
        double m2 = beside.width * other * other / 8;
        double turn = 1 / span + 1 / other;
        double positive =
                (m1 * k1 * orZero(load.positive()) + m2 * k2 * orZero(beside.load.positive()))
                        / (k1 + k2);
        double negative =
                -(m1 * k1 * orZero(load.negative()) + m2 * k2 * orZero(beside.load.negative()))
                        / (k1 + k2);
        return own.plus(theirs).plus(new Force(positive * turn, negative * turn));
    }

    private static double orZero(@Nullable Double pressure) {
        return pressure == null ? 0 : pressure;
    }
}
