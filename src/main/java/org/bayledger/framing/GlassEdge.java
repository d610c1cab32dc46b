package org.bayledger.framing;

import org.bayledger.check.FaultsException;
import org.bayledger.check.Measured;
import org.bayledger.quantity.Dimension;

/**
 * The stretch of a member along which one edge of a lite is held.
 *
 * @param from where the edge begins, m from the member's start
 * @param to where it ends, m
 */
public record GlassEdge(
        @Measured(value = Dimension.DISTANCE, sign = Measured.Sign.NOT_NEGATIVE) double from,
        @Measured(value = Dimension.DISTANCE, sign = Measured.Sign.POSITIVE) double to) {

    public GlassEdge {
        if (to <= from) {
            throw FaultsException.outOfRange("/to", "must lie beyond from");
        }
    }
}
