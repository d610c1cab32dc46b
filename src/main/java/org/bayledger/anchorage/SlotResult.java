package org.bayledger.anchorage;

import java.util.List;
import org.bayledger.check.Verdict;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * The room that the mullion needs at a wind-load anchor, from the installed position, bolt diameter
 * not included. What is not known is not in the sums, and the verdict is then at best undetermined.
 *
 * @param anchor id of the wind-load anchor
 * @param relativeTo id of the dead-load anchor from which the mullion moves; null where there is
 *     none
 * @param up how far the mullion must be free to move up past the anchor; null likewise
 * @param down how far it must be free to move down past the anchor; null likewise
 * @param slotLength length of the slot from end to end: bolt diameter and the room both ways; null
 *     without the bolt's diameter
 * @param upShares what moves it up, tolerances included, each with its percentage; empty where
 *     nothing is known to hold the mullion
 * @param downShares what moves it down, likewise
 * @param utilization of the room that the slot leaves; null where that was not given
 * @param verdict on this slot; on the room where that was given
 */
public record SlotResult(
        String anchor,
        @Nullable String relativeTo,
        @Nullable Quantity up,
        @Nullable Quantity down,
        @Nullable Quantity slotLength,
        List<MovementShare> upShares,
        List<MovementShare> downShares,
        @Nullable Double utilization,
        Verdict verdict) {

    public SlotResult {
        upShares = List.copyOf(upShares);
        downShares = List.copyOf(downShares);
    }
}
