package org.bayledger.review;

import org.bayledger.check.Measured;
import org.bayledger.check.Measured.Sign;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * How the glass sits in the pocket at the top of each lite.
 *
 * @param edgeClearance from the edge of the glass to the metal, as drawn, m
 * @param bite how far the glass reaches into the pocket, as drawn, m
 */
public record GlazingPocket(
        @Measured(value = Dimension.LENGTH, sign = Sign.POSITIVE, max = 1)
                @Nullable Double edgeClearance,
        @Measured(value = Dimension.LENGTH, sign = Sign.POSITIVE, max = 1) @Nullable Double bite) {}
