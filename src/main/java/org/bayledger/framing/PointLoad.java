package org.bayledger.framing;

import org.bayledger.check.Measured;
import org.bayledger.quantity.Dimension;

/**
 * A force on a member at one place.
 *
 * @param at position from the member's start, m
 * @param force force in the direction of the load, N
 */
public record PointLoad(
        @Measured(value = Dimension.DISTANCE, sign = Measured.Sign.NOT_NEGATIVE) double at,
        @Measured(Dimension.FORCE) double force) {}
