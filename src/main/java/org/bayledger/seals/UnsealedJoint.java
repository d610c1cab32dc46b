package org.bayledger.seals;

import java.util.List;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * What one unsealed joint lets through: estimates for a straight, even slot as deep as the bead
 * that is missing. The way through a real joint is longer and less even, which lets less through;
 * edges that are not sharp let up to a third more through.
 *
 * @param gap distance between the two metals
 * @param length length that is unsealed
 * @param illustrative whether gap and length are an example, outside the verdict, because no missed
 *     joint was given
 * @param flowDepth the way through the joint: the depth of the bead that is missing
 * @param waterPressure pressure that drives the water: the water test pressure; null where that is
 *     not known
 * @param waterRate water that passes, never zero while anything is unsealed; null where the
 *     pressure is not known
 * @param waterRegime what limits the water
 * @param capillaryThreshold pressure up to which surface tension could hold water back at the inner
 *     edge of the gap
 * @param wettedArea area of wall whose spray can reach the joint
 * @param spraySupply water that the spray brings onto that area, which the water rate cannot exceed
 * @param allowedWater water that counts as no leakage
 * @param airPressure pressure at which the air rate holds: that of the limit on air leakage
 * @param airRate air that passes
 * @param airRegime what limits the air
 * @param allowedAir air that the whole frame may let through at that pressure
 * @param waterRange between what waterRate is expected to lie; null where it is
 * @param airRange between what airRate is expected to lie
 * @param rangeAssumptions what the ends of these ranges rest on
 */
public record UnsealedJoint(
        Quantity gap,
        Quantity length,
        boolean illustrative,
        Quantity flowDepth,
        @Nullable Quantity waterPressure,
        @Nullable Quantity waterRate,
        @Nullable FlowRegime waterRegime,
        Quantity capillaryThreshold,
        Quantity wettedArea,
        Quantity spraySupply,
        Quantity allowedWater,
        Quantity airPressure,
        Quantity airRate,
        FlowRegime airRegime,
        Quantity allowedAir,
        @Nullable QuantityRange waterRange,
        QuantityRange airRange,
        List<String> rangeAssumptions) {

    public UnsealedJoint {
        rangeAssumptions = List.copyOf(rangeAssumptions);
    }

    /** The greater of air and, where it is known, water over what may pass. */
    double utilization() {
        return utilization(waterRate, airRate);
    }

    /** The same at the high ends of the ranges. */
    double greatestUtilization() {
        return utilization(waterRange == null ? null : waterRange.high(), airRange.high());
    }

    private double utilization(@Nullable Quantity water, Quantity air) {
        double ofAir = air.si() / allowedAir.si();
        return water == null ? ofAir : Math.max(ofAir, water.si() / allowedWater.si());
    }
}
