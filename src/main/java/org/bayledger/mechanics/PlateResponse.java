package org.bayledger.mechanics;

/**
 * What a plate does under one uniform pressure.
 *
 * @param centreDeflection deflection of the centre in the direction of the pressure, m
 * @param maxPrincipalStress greatest principal tensile stress anywhere on either face, Pa
 * @param failureIntegral integral over both faces of (c sigma)^7 dA, Pa^7 m^2; see {@link
 *     SurfaceFailure}
 * @param displacedVolume volume between the deflected plate and the plane of its edges, m3
 * @param longEdgePullIn how far the middle of each longer edge moves in, in its plane, m; of a
 *     strip in both this and the next: of its held edges
 * @param shortEdgePullIn the same of each shorter edge, m
 */
public record PlateResponse(
        double centreDeflection,
        double maxPrincipalStress,
        double failureIntegral,
        double displacedVolume,
        double longEdgePullIn,
        double shortEdgePullIn) {

    /** Of a plate without load. */
    static final PlateResponse NONE = new PlateResponse(0.0, 0.0, 0.0, 0.0, 0.0, 0.0);
}
