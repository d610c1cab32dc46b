package org.bayledger.blocks;

import org.bayledger.check.Measured;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * A weep in the horizontal under the lite.
 *
 * @param position from the left glass corner to the weep's center, seen from outside, m
 * @param length of the weep along the horizontal, m; without it only its center is looked at
 */
public record Weep(
        @Measured(value = Dimension.DISTANCE, sign = Measured.Sign.NOT_NEGATIVE) double position,
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.POSITIVE, max = 1)
                @Nullable Double length) {}
