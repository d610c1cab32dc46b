package org.bayledger.blocks;

import java.util.List;
import org.bayledger.check.Verdict;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * What comes of the setting blocks as they were found on site. The findings stand with those of the
 * check.
 *
 * @param verdict on what was found, the drawn blocks aside
 * @param utilization greatest demand over its limit of what was found; null where no limit could be
 *     held against it
 * @param loadBasis how the loads on the blocks were found; null where the weight of the lite is not
 *     known or the lite is not held up
 * @param blocks the blocks, in the order of the request
 * @param drawnDistance where they are held to belong, from each glass corner to the block's center;
 *     null where that is not known
 * @param memberDeflection greatest deflection of the horizontal; with a loadBasis of BOUNDS the
 *     greatest that it may have; null where it is not known
 * @param memberDeflectionAt where the horizontal bends most, from the left glass corner; null
 *     likewise
 * @param drawnDeflection greatest deflection with two blocks where they are drawn; null likewise
 * @param clearanceLeft edge clearance left over the glazing below, below zero where it is run into;
 *     null where it is not known
 * @param biteLeft bite left below; null likewise
 * @param touchesBelow whether the horizontal comes down on the glazing below; null where that is
 *     not known, with a loadBasis of BOUNDS also where it may
 * @param leftCornerSinks how far the left bottom corner of the lite sinks, from the level of the
 *     lowest block top; below zero where a higher block lifts it; null where it is not known
 * @param rightCornerSinks the same of the right one
 * @param rotation greatest rotation of the horizontal about its axis; null where it is not known
 * @param endReaction the greater of the forces on the shear blocks at its ends; null where the
 *     horizontal is not known
 * @param glassEdgeStress greatest tension in an edge of the glass as it bends in its plane over
 *     these blocks; null where the loads are not known
 */
public record AsFound(
        Verdict verdict,
        @Nullable Double utilization,
        @Nullable LoadBasis loadBasis,
        List<AsFoundBlock> blocks,
        @Nullable Quantity drawnDistance,
        @Nullable Quantity memberDeflection,
        @Nullable Quantity memberDeflectionAt,
        @Nullable Quantity drawnDeflection,
        @Nullable Quantity clearanceLeft,
        @Nullable Quantity biteLeft,
        @Nullable Boolean touchesBelow,
        @Nullable Quantity leftCornerSinks,
        @Nullable Quantity rightCornerSinks,
        @Nullable Quantity rotation,
        @Nullable Quantity endReaction,
        @Nullable Quantity glassEdgeStress) {

    public AsFound {
        blocks = List.copyOf(blocks);
    }

    /** How the loads on the blocks were found. */
    public enum LoadBasis {
        /** Two blocks: balance alone. */
        STATICS,
        /**
         * Three blocks or more: a rigid lite on blocks that yield, which push and never pull, on
         * the horizontal that bends.
         */
        YIELDING_BLOCKS,
        /**
         * Three blocks or more of which a height or a stiffness is not known: between the least and
         * the greatest that balance allows.
         */
        BOUNDS
    }
}
