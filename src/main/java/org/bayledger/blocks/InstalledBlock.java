package org.bayledger.blocks;

import org.bayledger.check.Measured;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * A setting block as it was found on site. What is left out is undetermined where it matters, never
 * assumed.
 *
 * @param position from the left glass corner to the block's center, seen from outside, m
 * @param length of the block along the glass, m
 * @param width of the block across the glass, m
 * @param height of the block itself, unloaded, m
 * @param packing height of what lies between the block and the horizontal, m; none where not given
 * @param material what it is made of
 * @param hardness in degrees Shore A
 * @param restsOn what it rests on
 * @param carries which panes it is under; without it the width says whether it reaches under all
 */
public record InstalledBlock(
        @Measured(value = Dimension.DISTANCE, sign = Measured.Sign.NOT_NEGATIVE) double position,
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.POSITIVE, max = 3)
                @Nullable Double length,
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.POSITIVE, max = 0.5)
                @Nullable Double width,
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.POSITIVE, max = 0.2)
                @Nullable Double height,
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.NOT_NEGATIVE, max = 0.2)
                @Nullable Double packing,
        @Nullable BlockMaterial material,
        @Measured(value = Dimension.NONE, sign = Measured.Sign.POSITIVE, max = 100)
                @Nullable Double hardness,
        @Nullable BlockSeat restsOn,
        @Nullable PanesCarried carries) {

    /** Where its unloaded top stands over the horizontal, m, or null where that is not known. */
    @Nullable Double top() {
        return height == null ? null : (Double) (height + (packing == null ? 0 : packing));
    }

    /** The same block in another place. */
    InstalledBlock at(double other) {
        return new InstalledBlock(
                other, length, width, height, packing, material, hardness, restsOn, carries);
    }
}
