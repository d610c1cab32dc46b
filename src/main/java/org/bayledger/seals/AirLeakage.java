package org.bayledger.seals;

import org.bayledger.check.Measured;
import org.bayledger.quantity.Dimension;

/**
 * How much air a wall may let through: a limit means something only at its pressure. The method of
 * the test is ASTM E283.
 *
 * @param limit flow of air for each area of wall, m/s
 * @param pressure difference of pressure at which the limit holds, Pa, at most 2 kPa
 */
public record AirLeakage(
        @Measured(value = Dimension.AIR_LEAKAGE, sign = Measured.Sign.POSITIVE, max = 1)
                double limit,
        @Measured(value = Dimension.PRESSURE, sign = Measured.Sign.POSITIVE, max = 2000)
                double pressure) {

    /** 0.06 cfm/ft2 at 300 Pa: curtain-wall specification practice, from memory. */
    static final AirLeakage PRACTICE = new AirLeakage(0.06 * 0.3048 / 60, 300);
}
