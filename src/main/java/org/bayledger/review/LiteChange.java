package org.bayledger.review;

import jakarta.validation.constraints.Min;
import org.bayledger.blocks.Installed;
import org.bayledger.check.Measured;
import org.bayledger.check.Measured.Sign;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * A lite that differs from the others of its bay.
 *
 * @param column its column, from 1 at the left seen from outside
 * @param row its row, from 1 at the sill
 * @param glassType its glass type, or null where it is that of the bay
 * @param fabricatorApproval whether the glass fabricator has agreed in writing to setting blocks
 *     beyond the eighth points
 * @param blockDistance from each glass corner to the center of its setting block, m, where that is
 *     already chosen
 * @param leastBlockDistance least distance from the glass corner to the center of a block that the
 *     glass fabricator has agreed to in writing, m
 * @param installed its setting blocks as they were found on site
 */
public record LiteChange(
        @Min(1) int column,
        @Min(1) int row,
        @Nullable String glassType,
        @Nullable Boolean fabricatorApproval,
        @Measured(value = Dimension.DISTANCE, sign = Sign.POSITIVE) @Nullable Double blockDistance,
        @Measured(value = Dimension.DISTANCE, sign = Sign.POSITIVE)
                @Nullable Double leastBlockDistance,
        @Nullable Installed installed) {}
