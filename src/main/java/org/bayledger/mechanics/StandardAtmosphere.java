package org.bayledger.mechanics;

/**
 * Pressure of the air at rest by height, in the lowest layer of the standard atmosphere.
 *
 * <pre>
 * p = 101 325 Pa (1 - 2.25577e-5 h)^5.25588      h height above sea level, m
 * </pre>
 *
 * Source: ISO 2533:1975 (from memory). Limits: -500 m to 11 000 m. The weather moves the pressure
 * of a day by some 3 % about it.
 */
public final class StandardAtmosphere {

    /** At sea level, Pa. */
    public static final double SEA_LEVEL = 101_325.0;

    private static final double LAPSE = 2.25577e-5;
    private static final double EXPONENT = 5.25588;
    private static final double LOWEST = -500.0;
    private static final double HIGHEST = 11_000.0;

    private StandardAtmosphere() {}

    /**
     * Pressure, Pa.
     *
     * @param height above sea level, m
     * @throws IllegalArgumentException outside the layer
     */
    public static double pressure(double height) {
        if (!(height >= LOWEST && height <= HIGHEST)) {
            throw new IllegalArgumentException("height must be from -500 m to 11 000 m: " + height);
        }
        return SEA_LEVEL * Math.pow(1.0 - LAPSE * height, EXPONENT);
    }
}
