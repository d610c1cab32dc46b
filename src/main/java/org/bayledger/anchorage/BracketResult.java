package org.bayledger.anchorage;

import org.bayledger.check.Verdict;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * What the bolts of one bracket carry. Embedment in concrete is not in it.
 *
 * @param overturningMoment of weight and suction about the edge on which the bracket turns
 * @param boltTension greatest tension of one bolt, prying included where its factor was given; null
 *     where it can't be found from what was given
 * @param boltShear greatest shear of one bolt
 * @param tensionUtilization of what one bolt may take in tension; null where either is not known
 * @param shearUtilization of what one bolt may take in shear; null likewise
 * @param interaction sum of both, to stay within 1; null where one is not known
 * @param verdict on the bolts; undetermined where something they need was not given
 */
public record BracketResult(
        Quantity overturningMoment,
        @Nullable Quantity boltTension,
        Quantity boltShear,
        @Nullable Double tensionUtilization,
        @Nullable Double shearUtilization,
        @Nullable Double interaction,
        Verdict verdict) {

    /** The governing of the utilizations that are known, or null where none is. */
    @Nullable Double utilization() {
        if (interaction != null) {
            return interaction;
        }
        if (tensionUtilization == null) {
            return shearUtilization;
        }
        return shearUtilization == null
                ? tensionUtilization
                : (Double) Math.max(tensionUtilization, shearUtilization);
    }
}
