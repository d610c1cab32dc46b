package org.bayledger.seals;

import org.bayledger.check.Measured;
import org.bayledger.quantity.Dimension;

/**
 * A joint that is known to be unsealed.
 *
 * @param gap distance between the two metals, m, at most 25 mm
 * @param length length that is still unsealed, m; zero once it has been sealed
 */
public record MissedJoint(
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.POSITIVE, max = 0.025) double gap,
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.NOT_NEGATIVE, max = 100)
                double length) {}
