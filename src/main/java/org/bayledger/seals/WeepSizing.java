package org.bayledger.seals;

import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * What the weeps can drain.
 *
 * @param area area of one weep
 * @param availableHead height of water that may stand over the middle of a weep
 * @param retainedHead height of water that the weep holds back by surface tension; it stays when
 *     the rain is over
 * @param opposingHead height of water that the pressure left on the outer line holds back; all of
 *     the pressure that drives water, where no chamber is given
 * @param requiredHead height of water at which the weeps, as many as they are, drain the flow; a
 *     head that does not cover them is an estimate
 * @param capacity water that one weep drains under availableHead; zero where the two heads that
 *     hold it back leave nothing
 * @param requiredCount weeps that drain the flow under availableHead; null where no number does
 * @param holdsFilm whether a film of water can span the weep as high as the weep itself
 * @param leastDiameter diameter of a round weep above which none can
 * @param leastSlotHeight height of a long slot above which none can
 */
public record WeepSizing(
        Quantity area,
        Quantity availableHead,
        Quantity retainedHead,
        Quantity opposingHead,
        Quantity requiredHead,
        Quantity capacity,
        @Nullable Integer requiredCount,
        boolean holdsFilm,
        Quantity leastDiameter,
        Quantity leastSlotHeight) {

    double utilization() {
        return requiredHead.si() / availableHead.si();
    }
}
