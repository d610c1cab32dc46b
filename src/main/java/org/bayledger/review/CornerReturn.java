package org.bayledger.review;

import org.bayledger.check.Measured;
import org.bayledger.check.Measured.Sign;
import org.bayledger.quantity.Dimension;

/**
 * What a vertical at an outside corner of the building carries of the wall round the corner.
 *
 * @param side edge of the bay that stands at the corner, seen from outside
 * @param tributaryWidth width of wall round the corner that comes onto the same vertical, m; 0
 *     where another vertical carries it
 */
public record CornerReturn(
        Side side,
        @Measured(value = Dimension.DISTANCE, sign = Sign.NOT_NEGATIVE, max = 20)
                double tributaryWidth) {

    /** An edge of a bay. */
    public enum Side {
        /** Left edge, seen from outside. */
        LEFT,
        /** Right edge, seen from outside. */
        RIGHT
    }
}
