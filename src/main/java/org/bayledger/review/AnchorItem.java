package org.bayledger.review;

import org.bayledger.anchorage.Anchor;
import org.bayledger.anchorage.AnchorForceResult;
import org.bayledger.anchorage.SlotResult;
import org.jspecify.annotations.Nullable;

/**
 * One anchor of a bay.
 *
 * @param role what it does for the verticals
 * @param force what it carries against what it may; null where neither is known
 * @param slot the room that the verticals need at it; null for a dead-load anchor
 */
public record AnchorItem(
        Anchor.Role role, @Nullable AnchorForceResult force, @Nullable SlotResult slot) {}
