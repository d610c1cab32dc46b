package org.bayledger.framing;

import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;

/** The least section modulus that does, where it can't be had by a division. */
final class RequiredModulus {

    private static final int DOUBLINGS = 40;
    private static final int HALVINGS = 100;

    private RequiredModulus() {}

    /**
     * The least section modulus, m3, or null where none would do, as where a member buckles
     * sideways elastically: found by doubling and halving.
     *
     * @param now a section modulus to begin with, m3
     * @param used what a section modulus uses of what is allowed; it never rises with it
     */
    static @Nullable Double least(double now, DoubleUnaryOperator used) {
        double high = now;
        for (int i = 0; used.applyAsDouble(high) > 1; i++) {
            if (i > DOUBLINGS) {
                return null;
            }
            high *= 2;
        }
        double low = 0;
        for (int i = 0; i < HALVINGS && high - low > 1e-12 * high; i++) {
            double middle = (low + high) / 2;
            if (used.applyAsDouble(middle) > 1) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }
}
