package org.bayledger.blocks;

import org.bayledger.check.FaultsException;
import org.bayledger.check.Measured;
import org.bayledger.glazing.GlassBuildUp;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * A lite, what carries it and what stands below.
 *
 * @param width of the glass, m
 * @param height of the glass, m
 * @param glass build-up of the lite, from which its weight follows
 * @param glassWeight mass of the lite, kg, in place of the build-up; without either the deflection
 *     of a member is undetermined
 * @param support what the blocks rest on
 * @param below what stands under the horizontal and loses clearance, NONE where nothing does;
 *     without it the clearance is undetermined
 * @param fabricatorApproval whether the glass fabricator has agreed in writing to blocks further
 *     out than the eighth points; not given is taken as not agreed
 */
public record SettingBlocksRequest(
        @Measured(value = Dimension.DISTANCE, min = LEAST_WIDTH, max = GREATEST_SIZE) double width,
        @Measured(value = Dimension.DISTANCE, sign = Measured.Sign.POSITIVE, max = GREATEST_SIZE)
                double height,
        @Nullable GlassBuildUp glass,
        @Measured(value = Dimension.MASS, sign = Measured.Sign.POSITIVE)
                @Nullable Double glassWeight,
        BlockSupport support,
        @Nullable GlazingBelow below,
        @Nullable Boolean fabricatorApproval) {

    /** Width of a lite under which two blocks of the least length fit, m: 8 in. */
    static final double LEAST_WIDTH = 0.2032;

    /** Sizes beyond this, m, are not made in one lite. */
    static final double GREATEST_SIZE = 18;

    public SettingBlocksRequest {
        if (glass != null && glassWeight != null) {
            throw FaultsException.outOfRange(
                    "/glassWeight", "must be absent where the glass is given: one or the other");
        }
    }

    /** Mass of the lite, kg, spacers not included, or null where it is not known. */
    @Nullable Double mass() {
        return glass == null ? glassWeight : (Double) (glass.areaMass() * width * height);
    }
}
