package org.bayledger.blocks;

import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * What comes of one block as it was found on site.
 *
 * @param position from the left glass corner to the block's center
 * @param endDistance from the nearer glass corner to the block's near end, below zero where it
 *     reaches beyond; null where its length was not given
 * @param load weight on it; null where it is not determined
 * @param leastLoad least weight that it may carry; null where nothing is known of the loads
 * @param greatestLoad greatest weight that it may carry; null likewise
 * @param requiredLength least length of a block that carries this load: the rule's length for half
 *     of the lite in proportion, never under 4 in; null where the load is not determined
 * @param bearingPressure the load over its length and the thickness of the panes on it; null where
 *     one of them is not known or it is not under all panes
 * @param compression how far it is pressed together; null where its stiffness or load is not known
 * @param memberDeflection of the horizontal under it; null where it is not known
 * @param weepOverlap length of weep that it covers, zero where it is clear of them; null where
 *     weeps or lengths were not given
 */
public record AsFoundBlock(
        Quantity position,
        @Nullable Quantity endDistance,
        @Nullable Quantity load,
        @Nullable Quantity leastLoad,
        @Nullable Quantity greatestLoad,
        @Nullable Quantity requiredLength,
        @Nullable Quantity bearingPressure,
        @Nullable Quantity compression,
        @Nullable Quantity memberDeflection,
        @Nullable Quantity weepOverlap) {}
