package org.bayledger.seals;

import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * How much of a sealant a frame takes. It is bought in cartridges or in sausages.
 *
 * @param use where it is used
 * @param name what the job calls it; null where no name was given
 * @param volume sealant in place
 * @param volumeWithWaste sealant in place with what is wasted
 * @param cartridges whole cartridges that hold it, waste included
 * @param sausages whole sausages that hold it instead, waste included
 */
public record SealantQuantity(
        SealantUse use,
        @Nullable String name,
        Quantity volume,
        Quantity volumeWithWaste,
        long cartridges,
        long sausages) {}
