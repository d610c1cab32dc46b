package org.bayledger.framing;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;
import org.bayledger.check.Load;
import org.bayledger.check.Measured;
import org.bayledger.check.Measured.Sign;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * A line of the wind schedule.
 *
 * @param zone name of the zone, with its elevation or height band where there are several
 * @param load pressures with both signs
 * @param memberLength length of all members in this zone together, m; with it masses are totalled
 */
public record SelectionZone(
        @NotBlank @Size(max = 80) String zone,
        Load load,
        @Measured(value = Dimension.DISTANCE, sign = Sign.POSITIVE)
                @Nullable Double memberLength) {}
