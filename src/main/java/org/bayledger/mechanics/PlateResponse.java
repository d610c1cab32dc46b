package org.bayledger.mechanics;

/**
 * What a plate does under one uniform pressure.
 *
 * @param centreDeflection deflection of the centre in the direction of the pressure, m
 * @param maxPrincipalStress greatest principal tensile stress anywhere on either face, Pa
 * @param failureIntegral integral over both faces of (c sigma)^7 dA, Pa^7 m^2; see {@link
 *     SurfaceFailure}
 */
public record PlateResponse(
        double centreDeflection, double maxPrincipalStress, double failureIntegral) {}
