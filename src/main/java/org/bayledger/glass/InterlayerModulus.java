package org.bayledger.glass;

import org.bayledger.glazing.InterlayerMaterial;

/**
 * Shear modulus of interlayers by temperature and load duration.
 *
 * <p>Values for standard PVB and for stiff ionomer as published by makers and repeated in handbooks
 * of laminated glass, from memory; the interlayer's maker has the figures that count. Between the
 * tabulated points the value at the next higher temperature and the next longer duration is used:
 * the modulus only falls with either. Below the lowest temperature that of the lowest is used.
 * Beyond the highest temperature or the longest duration there is no value.
 */
final class InterlayerModulus {

    /** Temperature taken where none is given: the practice's for wind at 3 s, K (from memory). */
    static final double USUAL_TEMPERATURE = 273.15 + 50;

    /** Longest duration covered: ten years, s. */
    static final double LONGEST = 10 * 365.25 * 86_400;

    private static final double ZERO_CELSIUS = 273.15;
    private static final double ROUNDING = 1e-6;

    /** Columns of the tables: 3 s, 1 min, 1 h, 1 d, 30 d, 10 years. */
    private static final double[] DURATIONS = {3, 60, 3_600, 86_400, LoadDuration.LONG, LONGEST};

    /** Degrees Celsius, then MPa by duration. */
    private static final double[][] PVB = {
        {20, 8.06, 1.64, 0.84, 0.508, 0.372, 0.266},
        {30, 0.971, 0.753, 0.441, 0.281, 0.069, 0.052},
        {40, 0.610, 0.455, 0.234, 0.052, 0.052, 0.052},
        {50, 0.440, 0.290, 0.052, 0.052, 0.052, 0.052},
    };

    /** Degrees Celsius, then MPa by duration. */
    private static final double[][] IONOMER = {
        {20, 211, 195, 169, 146, 112, 86.6},
        {30, 141, 110, 59.9, 49.7, 11.6, 5.31},
        {40, 63.0, 30.7, 9.28, 4.54, 3.29, 2.95},
        {50, 26.4, 11.3, 4.20, 2.82, 2.18, 2.00},
        {60, 8.18, 3.64, 1.70, 1.29, 1.08, 0.97},
    };

    private InterlayerModulus() {}

    /** Highest temperature covered, K. */
    static double hottest(InterlayerMaterial material) {
        double[][] table = table(material);
        return table[table.length - 1][0] + ZERO_CELSIUS;
    }

    /**
     * Shear modulus G, Pa.
     *
     * @param material of the interlayer
     * @param temperature K, at most {@link #hottest}
     * @param duration s, at most {@link #LONGEST}
     */
    static double of(InterlayerMaterial material, double temperature, double duration) {
        for (double[] row : table(material)) {
            if (temperature - ZERO_CELSIUS <= row[0] + ROUNDING) {
                for (int i = 0; i < DURATIONS.length; i++) {
                    if (duration <= DURATIONS[i] * (1 + ROUNDING)) {
                        return row[i + 1] * 1e6;
                    }
                }
            }
        }
        throw new IllegalArgumentException("no shear modulus for that temperature and duration");
    }

    private static double[][] table(InterlayerMaterial material) {
        return material == InterlayerMaterial.PVB ? PVB : IONOMER;
    }
}
