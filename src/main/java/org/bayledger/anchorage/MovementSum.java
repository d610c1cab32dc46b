package org.bayledger.anchorage;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.bayledger.anchorage.MovementPart.Cause;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/** What moves in one direction, added as a plain sum; what is not known is not in it. */
final class MovementSum {

    private final Map<Cause, Double> parts = new LinkedHashMap<>();

    /** Adds a movement, m, that counts as nothing where it is not known. */
    MovementSum with(Cause cause, @Nullable Double metres) {
        parts.put(cause, metres == null ? 0 : metres);
        return this;
    }

    /** Adds a movement, m, that is left out where it was not given. */
    MovementSum withOptional(Cause cause, @Nullable Double metres) {
        return metres == null ? this : with(cause, metres);
    }

    /** Amount of one cause, m. */
    double of(Cause cause) {
        return parts.getOrDefault(cause, 0.0);
    }

    /** What was added, in the order in which it was. */
    List<Cause> causes() {
        return List.copyOf(parts.keySet());
    }

    /** Sum of the movements, m. */
    double total() {
        double total = 0;
        for (double part : parts.values()) {
            total += part;
        }
        return total;
    }

    /**
     * Each part with its percentage of the sum of all of them and of the tolerances.
     *
     * @param tolerance t, m
     */
    List<MovementShare> shares(double tolerance) {
        double total = total() + tolerance;
        List<MovementShare> shares = new ArrayList<>();
        parts.forEach((cause, part) -> shares.add(share(cause, part, total)));
        shares.add(share(Cause.TOLERANCES, tolerance, total));
        return List.copyOf(shares);
    }

    private static MovementShare share(Cause cause, double part, double total) {
        return new MovementShare(
                cause, Quantity.of(Dimension.LENGTH, part), total == 0 ? 0 : 100 * part / total);
    }
}
