package org.bayledger.review;

import jakarta.validation.constraints.Min;
import org.jspecify.annotations.Nullable;

/**
 * A lite that differs from the others of its bay.
 *
 * @param column its column, from 1 at the left seen from outside
 * @param row its row, from 1 at the sill
 * @param glassType its glass type, or null where it is that of the bay
 * @param fabricatorApproval whether the glass fabricator has agreed in writing to setting blocks
 *     beyond the eighth points
 */
public record LiteChange(
        @Min(1) int column,
        @Min(1) int row,
        @Nullable String glassType,
        @Nullable Boolean fabricatorApproval) {}
