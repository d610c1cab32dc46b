package org.bayledger.mechanics;

/**
 * A fluid at a temperature.
 *
 * @param density rho, kg/m3
 * @param viscosity dynamic viscosity mu, Pa s
 */
public record Fluid(double density, double viscosity) {

    /**
     * Water at 20 degC and atmospheric pressure: 998.2 kg/m3, 1.002e-3 Pa s (textbook tables, from
     * memory).
     */
    public static final Fluid WATER = new Fluid(998.2, 1.002e-3);

    /**
     * Dry air at 20 degC and 101 325 Pa: 1.204 kg/m3, 1.813e-5 Pa s (textbook tables, from memory).
     */
    public static final Fluid AIR = new Fluid(1.204, 1.813e-5);

    /** Surface tension of water against air at 20 degC, N/m (textbook tables, from memory). */
    public static final double WATER_SURFACE_TENSION = 0.0728;

    public Fluid {
        if (!(density > 0 && viscosity > 0)) {
            throw new IllegalArgumentException("density and viscosity must be greater than zero");
        }
    }
}
