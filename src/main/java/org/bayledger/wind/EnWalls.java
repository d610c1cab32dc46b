package org.bayledger.wind;

import java.util.List;
import java.util.Objects;
import org.bayledger.check.Trace;
import org.bayledger.quantity.Dimension;

/**
 * Walls of rectangular buildings after EN 1991-1-4:2005 with recommended values (from memory).
 *
 * <pre>
 * kr = 0.19 (z0 / 0.05 m)^0.07            cr(z) = kr ln(z / z0), z at least zmin       4.3.2
 * vm(z) = cr(z) c0 vb                                                                  4.3.1
 * Iv(z) = kI / (c0 ln(z / z0)), kI = 1                                                 4.4
 * qp(z) = (1 + 7 Iv(z)) rho vm(z)^2 / 2, rho = 1.25 kg/m3                              4.5
 * w = qp(ze) cpe - qp(zi) cpi                                                          5.2
 * </pre>
 *
 * <p>Every place on a face has wind onto it (zone D), from behind (zone E) and along it (zones A,
 * B, C from the upwind corner). A zone A, B or C here is a place: its positive pressure is that of
 * zone D with an internal pressure coefficient of -0.3, its negative pressure the greater of its
 * own and that of zone E with +0.2 (7.2.9(6), where the openings are not known). The breadth b is
 * the building's greatest and the depth d its least horizontal dimension, whatever the wind's
 * direction: both are on the safe side for e = min(b, 2 h), for ze and for h/d.
 *
 * <p>Results are characteristic values; partial factors are the caller's. The structural factor cs
 * cd of cladding is 1 (6.2(1)). Valid to a height of 200 m, h/d up to 5, and without a dominant
 * opening.
 */
final class EnWalls implements WallRules {

    /** Air density, kg/m3 (4.5(1)). */
    static final double AIR_DENSITY = 1.25;

    /** Roughness length of terrain II, m, that the terrain factor refers to. */
    private static final double REFERENCE_ROUGHNESS = 0.05;

    /** Internal pressure coefficient where the openings are not known (7.2.9(6)). */
    private static final double INTERNAL_OVERPRESSURE = 0.2;

    /** Likewise, internal suction. */
    private static final double INTERNAL_SUCTION = -0.3;

    /** Ratios h/d of Table 7.1. */
    private static final double[] SLENDERNESS = {0.25, 1, 5};

    private static final double[] WINDWARD_10 = {0.7, 0.8, 0.8};
    private static final double[] WINDWARD_1 = {1.0, 1.0, 1.0};
    private static final double[] LEEWARD = {-0.3, -0.5, -0.7};

    private static final AreaLine ZONE_A = new AreaLine(1, -1.4, 10, -1.2);
    private static final AreaLine ZONE_B = new AreaLine(1, -1.1, 10, -0.8);
    private static final AreaLine ZONE_C = new AreaLine(1, -0.5, 10, -0.5);

    private static final String PRESSURE_CLAUSE = "EN 1991-1-4:2005, Table 7.1 (from memory)";
    private static final String PROFILE_CLAUSE = "EN 1991-1-4:2005, 4.3 to 4.5 (from memory)";

    private final Site site;
    private final TerrainCategory terrain;
    private final double breadth;
    private final double e;
    private final AreaLine windward;
    private final double leeward;
    private final double atRoof;

    EnWalls(Site site) {
        this.site = site;
        terrain = Objects.requireNonNull(site.terrainCategory());
        breadth = Objects.requireNonNull(site.crosswindBreadth());
        e = Math.min(breadth, 2 * site.meanRoofHeight());
        double slenderness = slenderness();
        windward =
                new AreaLine(
                        1,
                        interpolate(WINDWARD_1, slenderness),
                        10,
                        interpolate(WINDWARD_10, slenderness));
        leeward = interpolate(LEEWARD, slenderness);
        atRoof = peakPressure(site.meanRoofHeight());
    }

    /** Ratio h/d, by which Table 7.1 is entered. */
    private double slenderness() {
        return site.meanRoofHeight() / site.leastHorizontalDimension();
    }

    /** Straight between the rows of Table 7.1, flat below its first. */
    private static double interpolate(double[] values, double slenderness) {
        if (slenderness <= SLENDERNESS[0]) {
            return values[0];
        }
        int row = slenderness <= SLENDERNESS[1] ? 0 : 1;
        double share = (slenderness - SLENDERNESS[row]) / (SLENDERNESS[row + 1] - SLENDERNESS[row]);
        return values[row] + Math.min(share, 1) * (values[row + 1] - values[row]);
    }

    /** Natural logarithm of the height over the roughness length, from zmin up. */
    private double logarithm(double z) {
        return Math.log(Math.max(z, terrain.minimumHeight()) / terrain.roughnessLength());
    }

    /** Roughness factor cr(z) at a height, m. */
    private double roughness(double z) {
        return terrainFactor() * logarithm(z);
    }

    /** Terrain factor kr. */
    private double terrainFactor() {
        return 0.19 * Math.pow(terrain.roughnessLength() / REFERENCE_ROUGHNESS, 0.07);
    }

    /** Mean wind velocity vm(z), m/s. */
    private double meanSpeed(double z) {
        return roughness(z) * site.topography() * site.basicWindSpeed();
    }

    /** Turbulence intensity Iv(z). */
    private double turbulence(double z) {
        return 1 / (site.topography() * logarithm(z));
    }

    /** Peak velocity pressure qp(z), Pa. */
    double peakPressure(double z) {
        double mean = meanSpeed(z);
        return (1 + 7 * turbulence(z)) * AIR_DENSITY / 2 * mean * mean;
    }

    /**
     * Reference height ze of the face with wind onto it, m (Fig. 7.4): b for the part up to b, h
     * for the part of the same size below the top, the component's own top between them; h
     * throughout where h is at most b.
     */
    double referenceHeight(double height) {
        double h = site.meanRoofHeight();
        if (height > h) {
            return height;
        }
        boolean inTopPart = height > h - breadth && height > breadth;
        if (h <= breadth || inTopPart) {
            return h;
        }
        return Math.max(height, breadth);
    }

    @Override
    public List<EndZone> endZones() {
        return List.of(
                new EndZone("A", e / 5),
                new EndZone("B", e),
                new EndZone("C", Double.POSITIVE_INFINITY));
    }

    @Override
    public double velocityPressureAtRoof() {
        return atRoof;
    }

    /** The loaded area itself; the third of the span is a rule of ASCE/SEI 7. */
    @Override
    public double effectiveWindArea(double span, double tributaryWidth) {
        return ZoneScheme.EN.effectiveWindArea(span, tributaryWidth);
    }

    /** qp at the top of the building, or of a component that stands higher. */
    private double besideAndBehind(double height) {
        return height > site.meanRoofHeight() ? peakPressure(height) : atRoof;
    }

    private static AreaLine side(String zone) {
        return switch (zone) {
            case "A" -> ZONE_A;
            case "B" -> ZONE_B;
            case "C" -> ZONE_C;
            default -> throw new IllegalArgumentException("no wall zone " + zone);
        };
    }

    @Override
    public ZonePressure pressure(String zone, double area, double height) {
        double q = besideAndBehind(height);
        return new ZonePressure(
                zone,
                area,
                height,
                peakPressure(referenceHeight(height)) * windward.at(area) - q * INTERNAL_SUCTION,
                q * (Math.min(side(zone).at(area), leeward) - INTERNAL_OVERPRESSURE),
                site.basis());
    }

    @Override
    public void explain(Trace trace) {
        double h = site.meanRoofHeight();
        trace.step(
                "vb",
                "basic wind velocity, 10 min mean",
                Dimension.SPEED,
                site.basicWindSpeed(),
                "input",
                "input");
        trace.step(
                "c0",
                "orography factor",
                Dimension.NONE,
                site.topography(),
                site.topographicFactor() == null ? "not given: flat ground only" : "input",
                PROFILE_CLAUSE);
        trace.step(
                "z0",
                "roughness length of terrain " + terrain,
                Dimension.DISTANCE,
                terrain.roughnessLength(),
                "Table 4.1",
                PROFILE_CLAUSE);
        trace.step(
                "kr",
                "terrain factor",
                Dimension.NONE,
                terrainFactor(),
                "0.19 (z0 / 0.05 m)^0.07",
                PROFILE_CLAUSE);
        trace.step("h", "height of the building", Dimension.DISTANCE, h, "input", "input");
        trace.step(
                "vm(h)",
                "mean wind velocity at h",
                Dimension.SPEED,
                meanSpeed(h),
                "kr ln(h / z0) c0 vb, h at least zmin",
                PROFILE_CLAUSE);
        trace.step(
                "Iv(h)",
                "turbulence intensity at h",
                Dimension.NONE,
                turbulence(h),
                "1 / (c0 ln(h / z0))",
                PROFILE_CLAUSE);
        trace.step(
                "qp(h)",
                "peak velocity pressure at h",
                Dimension.PRESSURE,
                atRoof,
                "(1 + 7 Iv) 0.5 (1.25 kg/m3) vm^2",
                PROFILE_CLAUSE);
        trace.step(
                "h/d",
                "height over depth",
                Dimension.NONE,
                slenderness(),
                "depth d taken as the least horizontal dimension",
                PRESSURE_CLAUSE);
        trace.step(
                "e",
                "measure of the end zones: A to e/5, B to e",
                Dimension.DISTANCE,
                e,
                "min(b, 2 h), breadth b taken as the greatest horizontal dimension",
                "EN 1991-1-4:2005, Fig. 7.5 (from memory)");
        trace.step(
                "cpe,E",
                "external coefficient with wind from behind (zone E)",
                Dimension.NONE,
                leeward,
                "straight on h/d",
                PRESSURE_CLAUSE);
    }

    @Override
    public void explain(Trace trace, String what, List<String> zones, double area, double height) {
        double ze = referenceHeight(height);
        String beside = height > site.meanRoofHeight() ? "qp(ze)" : "qp(h)";
        trace.step(
                "A",
                what + ": loaded area",
                Dimension.AREA,
                area,
                "span times tributary width, or as given",
                "EN 1991-1-4:2005, 7.2.1 (from memory)");
        trace.step(
                "ze",
                what + ": reference height with wind onto the face",
                Dimension.DISTANCE,
                ze,
                "b up to b, h below the top, the component's top between and above the roof; h"
                        + " where h <= b",
                "EN 1991-1-4:2005, Fig. 7.4 (from memory)");
        trace.step(
                "qp(ze)",
                what + ": peak velocity pressure at ze",
                Dimension.PRESSURE,
                peakPressure(ze),
                "(1 + 7 Iv) 0.5 (1.25 kg/m3) vm^2",
                PROFILE_CLAUSE);
        trace.step(
                "cpe,D",
                what + ": external coefficient with wind onto the face (zone D)",
                Dimension.NONE,
                windward.at(area),
                "straight on log A between 1 and 10 m2 and on h/d" + windward.remark(area),
                PRESSURE_CLAUSE);
        trace.step(
                "w+",
                what + ": pressure toward the wall, characteristic",
                Dimension.PRESSURE,
                pressure("C", area, height).positive(),
                "qp(ze) cpe,D + 0.3 " + beside,
                "EN 1991-1-4:2005, 5.2 and 7.2.9(6) (from memory)");
        for (String zone : zones) {
            trace.step(
                    "cpe," + zone,
                    what + ": external coefficient in zone " + zone,
                    Dimension.NONE,
                    side(zone).at(area),
                    "straight on log A between 1 and 10 m2" + side(zone).remark(area),
                    PRESSURE_CLAUSE);
            trace.step(
                    "w-",
                    what + ": pressure away from the wall in zone " + zone + ", characteristic",
                    Dimension.PRESSURE,
                    pressure(zone, area, height).negative(),
                    beside + " (min(cpe," + zone + "; cpe,E) - 0.2)",
                    "EN 1991-1-4:2005, 5.2 and 7.2.9(6) (from memory)");
        }
    }
}
