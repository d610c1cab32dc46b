package org.bayledger.ledger;

import org.jspecify.annotations.Nullable;

/**
 * What a verification found.
 *
 * @param intact whether every hash was recomputed to what is recorded, and the held checkpoint (if
 *     one was given) lies on the chain
 * @param size number of the newest revision that is stored
 * @param headHash its hash as stored, or the project's genesis hash
 * @param firstBroken number of the first revision that is not what was recorded; null when intact
 * @param reason what is wrong with it; null when intact
 * @param checkpoint the held checkpoint and whether the chain agrees with it; null without one
 */
record Verification(
        boolean intact,
        int size,
        String headHash,
        @Nullable Integer firstBroken,
        @Nullable String reason,
        @Nullable HeldCheckpoint checkpoint) {

    /**
     * A checkpoint that the caller kept.
     *
     * @param size number of revisions it was taken at
     * @param headHash hash of the head then
     * @param held whether the stored chain had that head at that size
     */
    record HeldCheckpoint(int size, String headHash, boolean held) {}

    /** The first thing found wrong. */
    record Fault(int number, String reason) {}
}
