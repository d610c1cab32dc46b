package org.bayledger.blocks;

import org.bayledger.check.Verdict;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * One place for the two setting blocks and what comes of it.
 *
 * @param point the place
 * @param fraction distance from the glass corner to the block's center over the glass width
 * @param distanceFromCorner from the glass corner to the block's center
 * @param endDistance from the glass corner to the block's near end
 * @param eligible whether the blocks may be put there
 * @param reason why not, or null
 * @param memberDeflection of the horizontal at mid-span, where it bends most; null where it was not
 *     found
 * @param blockDeflection of the horizontal under each block; how far the lite itself sinks; null
 *     likewise
 * @param clearanceLeft edge clearance left over the glazing below; null likewise
 * @param biteLeft bite left below; null likewise
 * @param requiredSecondMomentOfArea least second moment of area that keeps every limit known with
 *     the blocks here; null likewise, and where no stiffness helps
 * @param utilization greatest demand over its limit, of the limits known; null likewise
 * @param verdict on the limits, whether eligible or not
 */
public record BlockCandidate(
        BlockPoint point,
        double fraction,
        Quantity distanceFromCorner,
        Quantity endDistance,
        boolean eligible,
        @Nullable String reason,
        @Nullable Quantity memberDeflection,
        @Nullable Quantity blockDeflection,
        @Nullable Quantity clearanceLeft,
        @Nullable Quantity biteLeft,
        @Nullable Quantity requiredSecondMomentOfArea,
        @Nullable Double utilization,
        Verdict verdict) {}
