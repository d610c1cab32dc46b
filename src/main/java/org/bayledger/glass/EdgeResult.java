package org.bayledger.glass;

import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * One held edge of the lite and how firmly it has to be supported.
 *
 * @param edge which edge
 * @param length its length
 * @param deflectionLimit deflection of its support across the glass up to which the resistance
 *     holds: the smaller of L/175 and 3/4 in
 * @param deflection deflection of its support as the request gives it; null where it does not
 * @param utilization deflection over limit; null likewise
 */
public record EdgeResult(
        LiteEdge edge,
        Quantity length,
        Quantity deflectionLimit,
        @Nullable Quantity deflection,
        @Nullable Double utilization) {}
