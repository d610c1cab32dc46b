package org.bayledger.seals;

import java.util.List;
import org.bayledger.check.Finding;
import org.bayledger.check.Verdict;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * What an observed joint costs and what is to be done about it.
 *
 * @param joint where it is and what was found, in a sentence's words
 * @param type kind of joint
 * @param condition what was found
 * @param verdict on this joint alone: EXCEEDED where it lets through more than counts as no
 *     leakage, UNDETERMINED where that can't be computed or the rest of the seal can't be trusted
 * @param severity ACTION where somebody has to open it, NOTE where it leaks within the limits, INFO
 *     once it has been repaired
 * @param utilization what passes over what may pass, the greater of water and air; null where it
 *     can't be computed
 * @param length length that is taken to be open; null where not known
 * @param lengthAssumed whether that length is the bead of one joint of its kind
 * @param waterRate water that passes at the water test pressure; null where not known
 * @param waterRange between what that is expected to lie
 * @param airRate air that passes at the pressure of the limit on air leakage; null likewise
 * @param airRange between what that is expected to lie
 * @param stormWater water that passes in the storm; null likewise
 * @param consequence all that in words
 * @param step step of the sequence to which the repair goes back
 * @param repair cleaning, sealant and sealing
 * @param toOpen what has to come out to reach it, if it is in place, the outermost first
 * @param opening the same in words, with what else to look at
 * @param othersToInspect joints of its kind in the frame that were not reported; null where the
 *     kind is not counted
 */
public record ObservedFinding(
        String joint,
        JointType type,
        ObservedCondition condition,
        Verdict verdict,
        Finding.Severity severity,
        @Nullable Double utilization,
        @Nullable Quantity length,
        boolean lengthAssumed,
        @Nullable Quantity waterRate,
        @Nullable QuantityRange waterRange,
        @Nullable Quantity airRate,
        @Nullable QuantityRange airRange,
        @Nullable Quantity stormWater,
        String consequence,
        int step,
        String repair,
        List<Obstacle> toOpen,
        String opening,
        @Nullable Integer othersToInspect) {

    public ObservedFinding {
        toOpen = List.copyOf(toOpen);
    }
}
