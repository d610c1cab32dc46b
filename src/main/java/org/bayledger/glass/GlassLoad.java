package org.bayledger.glass;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import org.bayledger.check.Load;
import org.bayledger.check.Measured;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * The design pressure on a lite and how long it lasts.
 *
 * @param pressure both signs of the pressure and their basis
 * @param duration how long the pressure lasts, s: 3 s for a wind gust; where it is absent the
 *     numbers are those of 3 s, the most favourable duration, and the verdict is UNDETERMINED
 *     unless the lite fails even so
 */
public record GlassLoad(
        @JsonUnwrapped Load pressure,
        @Measured(
                        value = Dimension.TIME,
                        sign = Measured.Sign.POSITIVE,
                        min = LoadDuration.SHORT,
                        max = LoadDuration.LONGEST)
                @Nullable Double duration) {

    /** Duration with which the numbers are found, s. */
    double durationOrShort() {
        return duration == null ? LoadDuration.SHORT : duration;
    }
}
