package org.bayledger.review;

import org.bayledger.check.Measured;
import org.bayledger.check.Measured.Sign;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * What a vertical at a corner of the building carries of the wall round the corner.
 *
 * @param side edge of the bay that stands at the corner, seen from outside
 * @param tributaryWidth width of wall round the corner, at right angles to this one, that comes
 *     onto the same vertical, m; 0 where another vertical carries it
 * @param heldSideways true where the vertical's anchors, and they alone, hold it parallel to this
 *     elevation as they hold it at right angles to it; without that statement a vertical that
 *     carries both faces is at best UNDETERMINED
 */
public record CornerReturn(
        Side side,
        @Measured(value = Dimension.DISTANCE, sign = Sign.NOT_NEGATIVE, max = 20)
                double tributaryWidth,
        @Nullable Boolean heldSideways) {

    /** An edge of a bay. */
    public enum Side {
        /** Left edge, seen from outside. */
        LEFT,
        /** Right edge, seen from outside. */
        RIGHT
    }
}
