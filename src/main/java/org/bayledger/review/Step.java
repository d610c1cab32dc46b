package org.bayledger.review;

import org.bayledger.check.Measured;
import org.bayledger.check.Measured.Sign;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * A part of an elevation that has one height.
 *
 * @param from distance of its left edge from the elevation's left edge, seen from outside, m
 * @param to distance of its right edge, m
 * @param height height above the elevation's base, m
 * @param meanRoofHeight mean roof height above ground of the part of the building behind it, m; its
 *     pressures and end zones are worked out with it. Absent: the site's
 */
public record Step(
        @Measured(value = Dimension.DISTANCE, sign = Sign.NOT_NEGATIVE, max = 2000) double from,
        @Measured(value = Dimension.DISTANCE, sign = Sign.POSITIVE, max = 2000) double to,
        @Measured(value = Dimension.DISTANCE, sign = Sign.POSITIVE, max = 1000) double height,
        @Measured(value = Dimension.DISTANCE, sign = Sign.POSITIVE)
                @Nullable Double meanRoofHeight) {}
