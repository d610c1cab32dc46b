package org.bayledger.mechanics;

/**
 * The stretch between an end support and the free end beyond it.
 *
 * @param support position of the support, m from the beam's start
 * @param tip position of the free end, m from the beam's start
 * @param tipDeflection deflection of the free end from the undeflected line, m
 * @param deflection greatest deflection in absolute value anywhere on the overhang, m; usually that
 *     of the tip
 */
public record BeamOverhang(
        double support, double tip, double tipDeflection, BeamExtreme deflection) {

    /** How far it stands out beyond its support, m. */
    public double length() {
        return Math.abs(tip - support);
    }
}
