package org.bayledger.ledger;

import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * A part of a list.
 *
 * @param items the entries, in order
 * @param nextCursor where the list goes on; null at its end
 */
record Page<T>(List<T> items, @Nullable String nextCursor) {

    Page {
        items = List.copyOf(items);
    }

    /** A page of what was read with one entry more than the limit. */
    static <T> Page<T> of(List<T> read, int limit, Function<T, String> position) {
        if (read.size() <= limit) {
            return new Page<>(read, null);
        }
        List<T> items = read.subList(0, limit);
        return new Page<>(items, Cursor.encode(position.apply(items.get(limit - 1))));
    }
}
