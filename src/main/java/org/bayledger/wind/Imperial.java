package org.bayledger.wind;

import org.bayledger.quantity.Constants;

/** The units in which ASCE/SEI 7 states its limits, exact in SI. */
final class Imperial {

    /** One foot, m. */
    static final double FOOT = Constants.FOOT;

    /** One square foot, m2. */
    static final double SQUARE_FOOT = FOOT * FOOT;

    /** One pound-force per square foot, Pa. */
    static final double PSF = Constants.PSI / 144;

    /** One mile per hour, m/s. */
    static final double MPH = 0.44704;

    /** Lets a limit that was converted from another unit count as the limit itself. */
    private static final double ROUNDING = 1e-9;

    private Imperial() {}

    /** Whether a value does not exceed a limit, but for the rounding of its unit's conversion. */
    static boolean atMost(double value, double limit) {
        return value <= limit * (1 + ROUNDING);
    }

    /** Whether a value is less than a limit by more than the rounding of a conversion. */
    static boolean lessThan(double value, double limit) {
        return value < limit * (1 - ROUNDING);
    }
}
