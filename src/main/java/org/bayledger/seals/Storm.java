package org.bayledger.seals;

import org.bayledger.check.Measured;
import org.bayledger.check.Measured.Sign;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * The rain for which the water through an unsealed joint is added up.
 *
 * @param pressure steady pressure during it, Pa; what drives water together with the wind where air
 *     is given, else the water test pressure
 * @param rain water that reaches each area of wall in each time, m/s; the spray of the water test
 *     where absent, which is more than most rain brings
 * @param duration how long it lasts, s, at most 7 d; one hour where absent
 */
public record Storm(
        @Measured(value = Dimension.PRESSURE, sign = Sign.POSITIVE, max = 10_000)
                @Nullable Double pressure,
        @Measured(value = Dimension.SPRAY_RATE, sign = Sign.POSITIVE, max = 1)
                @Nullable Double rain,
        @Measured(value = Dimension.TIME, sign = Sign.POSITIVE, max = 604_800)
                @Nullable Double duration) {

    /** An hour under the pressure and the spray of the water test. */
    static final Storm HOUR = new Storm(null, null, null);

    double durationOrDefault() {
        return duration == null ? 3600 : duration;
    }
}
