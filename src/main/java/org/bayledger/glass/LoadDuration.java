package org.bayledger.glass;

/**
 * How long a load lasts and what that does to the strength of glass.
 *
 * <p>Static fatigue: the load that annealed glass carries falls with the 1/16 power of its
 * duration. The practice tabulates it to two decimals, from 1.00 at 3 s through 0.83 at 1 min and
 * 0.43 at 30 d to 0.36 at one year (ASTM E1300-16, appendix on load duration factors, from memory).
 */
final class LoadDuration {

    /** The practice's short duration, a wind gust: 3 s. */
    static final double SHORT = 3;

    /** The practice's long duration: 30 days, in s. */
    static final double LONG = 30 * 86_400.0;

    /** Longest duration for which the law is used: 50 years, in s. */
    static final double LONGEST = 50 * 365.25 * 86_400;

    private static final double EXPONENT = 1.0 / 16;

    private LoadDuration() {}

    static boolean isShort(double seconds) {
        return Math.abs(seconds - SHORT) <= 1e-9 * SHORT;
    }

    static boolean isLong(double seconds) {
        return Math.abs(seconds - LONG) <= 1e-9 * LONG;
    }

    /**
     * Load that annealed glass carries for a duration over that for 3 s, to two decimals as the
     * practice prints it: (3 s / td)^(1/16).
     *
     * @param seconds duration td, s, from 3 s to 50 years
     */
    static double annealedFactor(double seconds) {
        return round(Math.pow(SHORT / seconds, EXPONENT));
    }

    /** A factor to the two decimals of the practice's tables. */
    static double round(double factor) {
        return Math.rint(factor * 100) / 100;
    }

    /** The same, never above the factor. */
    static double roundDown(double factor) {
        return Math.floor(factor * 100 + 1e-9) / 100;
    }
}
