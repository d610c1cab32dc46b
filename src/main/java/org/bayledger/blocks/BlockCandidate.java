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
 * @param memberDeflection of the horizontal where it bends most, at mid-span under one lite that is
 *     centered on an unpropped span; null where it was not found
 * @param blockDeflection of the horizontal under each block, rotation included where it is known;
 *     how far the lite itself sinks, at the block that sinks less; null likewise
 * @param clearanceLeft edge clearance left over the glazing below; null likewise
 * @param biteLeft bite left below; null likewise
 * @param requiredSecondMomentOfArea least second moment of area that keeps every limit of the
 *     deflection known with the blocks here; null likewise, and where no stiffness helps
 * @param deflectionPosition where the horizontal bends most, from its left support; null likewise
 * @param rotation greatest rotation of the horizontal about its axis; null where it is not known
 * @param rotationDrop how far that rotation brings down the metal over the glazing below
 * @param endReaction the greater of the forces on the shear blocks at its ends; null where the
 *     horizontal or the weight is not known
 * @param endTorque the greater of the torques on them; null where rotation is not known
 * @param midSupportReaction force on the prop at mid-span; null where there is none
 * @param blockLoad on each block of the lite; null where its weight is not known
 * @param blockPressure bearing pressure on each block; null where weight or width is not known
 * @param glassEdgeStress greatest tension in an edge of the glass as it bends in its plane
 * @param governing the limit of which most is used; null where none is known
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
        @Nullable Quantity deflectionPosition,
        @Nullable Quantity rotation,
        @Nullable Quantity rotationDrop,
        @Nullable Quantity endReaction,
        @Nullable Quantity endTorque,
        @Nullable Quantity midSupportReaction,
        @Nullable Quantity blockLoad,
        @Nullable Quantity blockPressure,
        Quantity glassEdgeStress,
        @Nullable BlockLimit governing,
        @Nullable Double utilization,
        Verdict verdict) {}
