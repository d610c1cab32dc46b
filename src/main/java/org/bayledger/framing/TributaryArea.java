package org.bayledger.framing;

import org.bayledger.check.Measured;
import org.bayledger.check.Measured.Sign;
import org.bayledger.quantity.Dimension;

/**
 * An area of wall whose wind comes onto the member at one place, as where another member ends on
 * it.
 *
 * @param at position, m from the member's start
 * @param area m2
 */
public record TributaryArea(
        @Measured(value = Dimension.DISTANCE, sign = Sign.NOT_NEGATIVE) double at,
        @Measured(value = Dimension.AREA, sign = Sign.POSITIVE) double area) {}
