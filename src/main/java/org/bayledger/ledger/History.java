package org.bayledger.ledger;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What became of a bay, or of one item of it, from revision to revision. The answers beside the
 * list are over the whole history, whatever part of it the list shows; of a given check they are of
 * that check.
 *
 * @param bay the bay
 * @param item the item; null for all items of the bay
 * @param firstExceeded where a check first exceeded a limit, who recorded it and why; null where
 *     none ever did
 * @param lastGlassChange where the glass last became another one, who recorded it and why; null
 *     where it is as it was first recorded, or where there is none
 * @param exceeded revisions in which a check exceeded a limit, from and to, check by check
 * @param items each revision in which inputs or results of a check changed, first one first
 * @param nextCursor where the list goes on; null at its end
 */
record History(
        String bay,
        @Nullable String item,
        @Nullable Entry firstExceeded,
        @Nullable Entry lastGlassChange,
        List<Range> exceeded,
        List<Entry> items,
        @Nullable String nextCursor) {

    History {
        exceeded = List.copyOf(exceeded);
        items = List.copyOf(items);
    }

    /**
     * A check of an item that came out otherwise, or of other inputs, than in the revision before.
     *
     * @param number number of the revision
     * @param hash hash of the revision
     * @param recordedAt when it was recorded
     * @param author as claimed in the request
     * @param recordedBy as authenticated
     * @param reason why it was recorded
     * @param engineVersion what computed the results
     * @param item the item's identifier
     * @param check the check
     * @param verdict the verdict; null where the item is no longer checked
     * @param utilization demand over limit; null where there is none
     * @param verdictBefore the verdict before; null where the item was not checked
     * @param utilizationBefore demand over limit before; null where there was none
     * @param verdictChanged whether the verdict is another one than before
     * @param inputsChanged what changed in what was checked; none where the item came or went
     */
    record Entry(
            int number,
            String hash,
            String recordedAt,
            String author,
            String recordedBy,
            String reason,
            String engineVersion,
            String item,
            String check,
            @Nullable String verdict,
            @Nullable BigDecimal utilization,
            @Nullable String verdictBefore,
            @Nullable BigDecimal utilizationBefore,
            boolean verdictChanged,
            List<CheckedInput> inputsChanged) {

        Entry {
            inputsChanged = List.copyOf(inputsChanged);
        }
    }

    /**
     * An input of a check that changed.
     *
     * @param pointer where in the check's request, which the results show as inputs
     * @param from what it was; null where it was absent
     * @param to what it is; null where it is absent
     */
    record CheckedInput(String pointer, @Nullable Object from, @Nullable Object to) {}

    /**
     * Revisions one after the other in which a check exceeded a limit.
     *
     * @param item the item's identifier
     * @param check the check
     * @param from number of the first
     * @param to number of the last; null where it is still so in the newest revision
     */
    record Range(String item, String check, int from, @Nullable Integer to) {}
}
