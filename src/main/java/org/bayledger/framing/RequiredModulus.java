package org.bayledger.framing;

import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;

/** The least section modulus that does, where it can't be had by a division. */
final class RequiredModulus {

    private static final int DOUBLINGS = 40;
    private static final int MOST_STEPS = 200;
    private static final int HALVING_EVERY = 6;

    /** The least that one step leaves of a section modulus of which nothing is used. */
    private static final double SMALLEST_SHARE = 1e-3;

    /** Share of the section modulus to which it is found. */
    private static final double TOLERANCE = 1e-12;

    /** Less than this share of a section modulus is none: the member carries nothing. */
    private static final double NOTHING = 1e-12;

    private RequiredModulus() {}

    /**
     * The least section modulus, m3, or null where none would do, as where a member buckles
     * sideways elastically: doubled until it does, then closed in from both sides.
     *
     * <p>A stress falls as 1/S, so that the next section modulus is where a straight line over 1/S
     * between both sides reaches 1 (false position; the side that stays twice counts half, which is
     * called the Illinois rule). Every sixth step halves instead, should the allowable stress bend
     * that line. Where no load takes part, it is 0.
     *
     * @param now a section modulus to begin with, m3
     * @param used what a section modulus uses of what is allowed; it never rises with it
     */
    static @Nullable Double least(double now, DoubleUnaryOperator used) {
        double high = now;
        double over = used.applyAsDouble(high) - 1;
        double low = 0;
        double beyond = Double.POSITIVE_INFINITY;
        for (int i = 0; over > 0; i++) {
            if (i > DOUBLINGS) {
                return null;
            }
            low = high;
            beyond = over;
            high *= 2;
            over = used.applyAsDouble(high) - 1;
        }
        double nothing = NOTHING * high;
        int side = 0;
        for (int i = 1; i < MOST_STEPS && high - low > TOLERANCE * high; i++) {
            double next;
            if (low == 0) {
                if (high < nothing) {
                    return 0.0;
                }
                next = high / 2 * Math.max(1 + over, SMALLEST_SHARE);
            } else if (i % HALVING_EVERY == 0) {
                next = (low + high) / 2;
            } else {
                double least = TOLERANCE * high / 2;
                double crossing = (beyond - over) / (beyond / high - over / low);
                next = Math.min(Math.max(crossing, low + least), high - least);
            }
            double at = used.applyAsDouble(next) - 1;
            if (at > 0) {
                low = next;
                beyond = at;
                over = side > 0 ? over / 2 : over;
                side = 1;
            } else {
                high = next;
                over = at;
                beyond = side < 0 ? beyond / 2 : beyond;
                side = -1;
            }
        }
        return high;
    }
}
