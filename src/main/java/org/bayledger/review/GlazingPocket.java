package org.bayledger.review;

import org.bayledger.check.Measured;
import org.bayledger.check.Measured.Sign;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * How the glass sits in the pocket at the top of each lite.
 *
 * @param edgeClearance from the edge of the glass to the metal, as drawn, m
 * @param bite how far the glass reaches into the pocket, as drawn, m; taken for every edge where
 *     the size of the glass is worked out
 * @param tolerance how much of the clearance the tolerances of frame and glass may take, m
 * @param thermalGrowth how much of the clearance the glass takes by growing more than the frame, m
 * @param blockPressureAllowable greatest bearing pressure on its setting blocks, Pa
 */
public record GlazingPocket(
        @Measured(value = Dimension.LENGTH, sign = Sign.POSITIVE, max = 1)
                @Nullable Double edgeClearance,
        @Measured(value = Dimension.LENGTH, sign = Sign.POSITIVE, max = 1) @Nullable Double bite,
        @Measured(value = Dimension.LENGTH, sign = Sign.NOT_NEGATIVE, max = 1)
                @Nullable Double tolerance,
        @Measured(value = Dimension.LENGTH, sign = Sign.NOT_NEGATIVE, max = 1)
                @Nullable Double thermalGrowth,
        @Measured(value = Dimension.STRESS, sign = Sign.POSITIVE)
                @Nullable Double blockPressureAllowable) {

    /**
     * The tighter of two pockets: the least clearance and bite, the most that is taken, nothing in
     * it that is not known of one of them.
     */
    GlazingPocket tighter(GlazingPocket other) {
        return new GlazingPocket(
                either(edgeClearance, other.edgeClearance, false),
                either(bite, other.bite, false),
                either(tolerance, other.tolerance, true),
                either(thermalGrowth, other.thermalGrowth, true),
                null);
    }

    private static @Nullable Double either(
            @Nullable Double one, @Nullable Double other, boolean greater) {
        if (one == null || other == null) {
            return null;
        }
        return greater ? Math.max(one, other) : Math.min(one, other);
    }
}
