package org.bayledger.review;

import org.bayledger.check.Measured;
import org.bayledger.check.Measured.Sign;
import org.bayledger.quantity.Dimension;

/**
 * A vertical edge at which an elevation, laid out flat, turns.
 *
 * @param at distance from the elevation's left edge, seen from outside, m
 * @param kind which way the building turns there
 */
public record Corner(
        @Measured(value = Dimension.DISTANCE, sign = Sign.NOT_NEGATIVE, max = 2000) double at,
        Kind kind) {

    /** Which way the building turns at a corner. */
    public enum Kind {
        /** The building's edge points outward: end zones lie on both sides of it. */
        OUTSIDE,
        /** The walls fold inward: no end zone of its own (common practice, no source). */
        REENTRANT
    }
}
