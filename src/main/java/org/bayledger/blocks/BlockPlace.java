package org.bayledger.blocks;

import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * Where the blocks are to stand.
 *
 * @param point the place
 * @param fraction distance from the glass corner to the block's center over the glass width
 * @param distanceFromCorner from the glass corner to the block's center
 * @param memberDeflection of the horizontal where it bends most, under the lite's weight on its two
 *     blocks and the member's own weight where its mass was given; null on a shimmed sill
 */
public record BlockPlace(
        BlockPoint point,
        double fraction,
        Quantity distanceFromCorner,
        @Nullable Quantity memberDeflection) {

    /** Whether that is where the field expects blocks. */
    boolean atQuarterPoints() {
        return Math.abs(fraction - 0.25) < 1e-6;
    }

    /** Whether that is further out than the trade goes without the fabricator's word. */
    boolean beyondEighthPoints() {
        return fraction < 0.125 - 1e-6;
    }
}
