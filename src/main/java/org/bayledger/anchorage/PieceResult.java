package org.bayledger.anchorage;

import java.util.List;
import org.bayledger.check.Verdict;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * How one piece of mullion between two joints is held.
 *
 * @param bottom elevation of the joint at its foot; null where none was given there
 * @param top elevation of the joint at its head; null where none was given there
 * @param deadLoadAnchors ids of the anchors that carry it: exactly one is right
 * @param windLoadAnchors ids of the anchors past which it slides
 * @param lockedInForce greatest force that temperature locks in between two dead-load anchors,
 *     which give as their stiffness says and else not at all; null with fewer than two or without
 *     the section's area
 * @param lockedIn what locks in between each two neighboring dead-load anchors, slabs and columns
 *     included; empty likewise
 * @param verdict exceeded where nothing carries it, undetermined where two anchors do or nothing is
 *     known of it
 */
public record PieceResult(
        @Nullable Quantity bottom,
        @Nullable Quantity top,
        List<String> deadLoadAnchors,
        List<String> windLoadAnchors,
        @Nullable Quantity lockedInForce,
        List<LockedInResult> lockedIn,
        Verdict verdict) {

    public PieceResult {
        deadLoadAnchors = List.copyOf(deadLoadAnchors);
        windLoadAnchors = List.copyOf(windLoadAnchors);
        lockedIn = List.copyOf(lockedIn);
    }
}
