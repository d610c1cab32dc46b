package org.bayledger.wind;

import java.util.Objects;
import org.bayledger.check.Trace;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * Peak velocity pressure of EN 1991-1-4:2005 with recommended values (from memory).
 *
 * <pre>
 * kr = 0.19 (z0 / 0.05 m)^0.07            cr(z) = kr ln(z / z0), z at least zmin       4.3.2
 * vm(z) = cr(z) c0(z) vb                                                               4.3.1
 * Iv(z) = kI / (c0(z) ln(z / z0)), kI = 1                                              4.4
 * qp(z) = (1 + 7 Iv(z)) rho vm(z)^2 / 2, rho = 1.25 kg/m3                              4.5
 * </pre>
 */
final class EnProfile {

    /** Air density, kg/m3 (4.5(1)). */
    static final double AIR_DENSITY = 1.25;

    /** Roughness length of terrain II, m, that the terrain factor refers to. */
    private static final double REFERENCE_ROUGHNESS = 0.05;

    private static final String CLAUSE = "EN 1991-1-4:2005, 4.3 to 4.5 (from memory)";
    private static final String HILL_CLAUSE = "EN 1991-1-4:2005, 4.3.3 and A.3 (from memory)";

    private final Site site;
    private final TerrainCategory terrain;
    private final @Nullable EnOrography hill;

    EnProfile(Site site) {
        this.site = site;
        terrain = Objects.requireNonNull(site.terrainCategory());
        hill = site.topography() == null ? null : new EnOrography(site.topography());
    }

    /** Orography factor c0 at a height, m; that of flat ground where nothing was said. */
    double orography(double z) {
        return hill == null ? site.flatFactor() : hill.c0(z);
    }

    /** Natural logarithm of the height over the roughness length, from zmin up. */
    private double logarithm(double z) {
        return Math.log(Math.max(z, terrain.minimumHeight()) / terrain.roughnessLength());
    }

    /** Terrain factor kr. */
    private double terrainFactor() {
        return 0.19 * Math.pow(terrain.roughnessLength() / REFERENCE_ROUGHNESS, 0.07);
    }

    /** Mean wind velocity vm(z), m/s. */
    private double meanSpeed(double z) {
        return terrainFactor() * logarithm(z) * orography(z) * site.basicWindSpeed();
    }

    /** Turbulence intensity Iv(z). */
    private double turbulence(double z) {
        return 1 / (orography(z) * logarithm(z));
    }

    /** Peak velocity pressure qp(z), Pa. */
    double peakPressure(double z) {
        double mean = meanSpeed(z);
        return (1 + 7 * turbulence(z)) * AIR_DENSITY / 2 * mean * mean;
    }

    void explain(Trace trace) {
        double h = site.meanRoofHeight();
        trace.step(
                "vb",
                "basic wind velocity, 10 min mean",
                Dimension.SPEED,
                site.basicWindSpeed(),
                "input",
                "input");
        trace.step(
                "z0",
                "roughness length of terrain " + terrain,
                Dimension.DISTANCE,
                terrain.roughnessLength(),
                "Table 4.1",
                CLAUSE);
        trace.step(
                "zmin",
                "height below which the wind is that at it, terrain " + terrain,
                Dimension.DISTANCE,
                terrain.minimumHeight(),
                "Table 4.1",
                CLAUSE);
        trace.step(
                "kr",
                "terrain factor",
                Dimension.NONE,
                terrainFactor(),
                "0.19 (z0 / 0.05 m)^0.07",
                CLAUSE);
        trace.step("h", "height of the building", Dimension.DISTANCE, h, "input", "input");
        if (hill == null) {
            trace.step(
                    "c0",
                    "orography factor",
                    Dimension.NONE,
                    site.flatFactor(),
                    site.topographicFactor() == null ? "not given: flat ground only" : "input",
                    CLAUSE);
        } else {
            hill.explain(trace, h, HILL_CLAUSE);
        }
        explainAt(trace, "h", "", h);
    }

    /**
     * Adds the peak velocity pressure at one height with its factors.
     *
     * @param symbol symbol of the height
     * @param prefix what stands before the meaning
     */
    void explainAt(Trace trace, String symbol, String prefix, double z) {
        if (hill != null) {
            trace.step(
                    "c0(" + symbol + ")",
                    prefix + "orography factor at " + symbol,
                    Dimension.NONE,
                    orography(z),
                    hill.formula(),
                    HILL_CLAUSE);
        }
        trace.step(
                "vm(" + symbol + ")",
                prefix + "mean wind velocity at " + symbol,
                Dimension.SPEED,
                meanSpeed(z),
                "kr ln(z / z0) c0 vb, z at least zmin",
                CLAUSE);
        trace.step(
                "Iv(" + symbol + ")",
                prefix + "turbulence intensity at " + symbol,
                Dimension.NONE,
                turbulence(z),
                "1 / (c0 ln(z / z0)), z at least zmin",
                CLAUSE);
        trace.step(
                "qp(" + symbol + ")",
                prefix + "peak velocity pressure at " + symbol,
                Dimension.PRESSURE,
                peakPressure(z),
                "(1 + 7 Iv) 0.5 (1.25 kg/m3) vm^2",
                CLAUSE);
    }
}
