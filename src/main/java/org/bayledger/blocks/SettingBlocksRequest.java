package org.bayledger.blocks;

import org.bayledger.check.Measured;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * A lite, what carries it and what stands below.
 *
 * @param width of the glass, m
 * @param height of the glass, m
 * @param glassWeight mass of the lite, kg; without it the deflection of a member is undetermined
 * @param support what the blocks rest on
 * @param below what stands under the horizontal and loses clearance; without it the clearance is
 *     undetermined
 * @param fabricatorApproval whether the glass fabricator has agreed in writing to blocks further
 *     out than the eighth points; not given is taken as not agreed
 */
public record SettingBlocksRequest(
        @Measured(value = Dimension.DISTANCE, min = LEAST_WIDTH, max = GREATEST_SIZE) double width,
        @Measured(value = Dimension.DISTANCE, sign = Measured.Sign.POSITIVE, max = GREATEST_SIZE)
                double height,
        @Measured(value = Dimension.MASS, sign = Measured.Sign.POSITIVE)
                @Nullable Double glassWeight,
        BlockSupport support,
        @Nullable GlazingBelow below,
        @Nullable Boolean fabricatorApproval) {

    /** Width of a lite under which two blocks of the least length fit, m: 8 in. */
    static final double LEAST_WIDTH = 0.2032;

    /** Sizes beyond this, m, are not made in one lite. */
    static final double GREATEST_SIZE = 18;
}
