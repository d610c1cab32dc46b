package org.bayledger.ledger;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * Where a project's chain ends.
 *
 * @param size number of revisions
 * @param hash hash of the last one, or the project's genesis hash
 * @param recordedAt when the last one was recorded; null before the first
 */
record Head(int size, String hash, @Nullable Instant recordedAt) {

    /** The strong entity tag that a writer sends back as If-Match. */
    String entityTag() {
        return "\"" + hash + "\"";
    }
}
