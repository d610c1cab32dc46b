package org.bayledger.anchorage;

import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * The force that locks into a piece between two neighboring dead-load anchors.
 *
 * @param lower id of the lower anchor
 * @param upper id of the upper anchor
 * @param thermal from temperature alone, the greater of warming and cooling
 * @param compression greatest compression: warming, the slabs and columns bringing the two anchors
 *     together; null where the live-load deflection of a slab or the shortening of the columns is
 *     not known
 * @param tension greatest tension: cooling, the slabs drawing the two anchors apart; null where the
 *     live-load deflection of a slab is not known
 */
public record LockedInResult(
        String lower,
        String upper,
        Quantity thermal,
        @Nullable Quantity compression,
        @Nullable Quantity tension) {}
