package org.bayledger.seals;

import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;

/**
 * Between what a quantity is expected to lie.
 *
 * @param low where every assumption is at its favourable end
 * @param high where every assumption is at its unfavourable end
 */
public record QuantityRange(Quantity low, Quantity high) {

    static QuantityRange of(Dimension dimension, double low, double high) {
        return new QuantityRange(Quantity.of(dimension, low), Quantity.of(dimension, high));
    }
}
