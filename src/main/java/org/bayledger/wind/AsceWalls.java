package org.bayledger.wind;

import static org.bayledger.wind.Imperial.FOOT;
import static org.bayledger.wind.Imperial.MPH;
import static org.bayledger.wind.Imperial.PSF;
import static org.bayledger.wind.Imperial.SQUARE_FOOT;

import java.util.List;
import java.util.Objects;
import org.bayledger.check.Load;
import org.bayledger.check.LoadBasis;
import org.bayledger.check.Trace;
import org.bayledger.quantity.Dimension;

/**
 * Components and cladding of walls after ASCE/SEI 7-10, 7-16 and 7-22, chapters 26 and 30 (from
 * memory).
 *
 * <pre>
 * qz = 0.00256 Kz Kzt Kd Ke V^2                 psf, V in mph; 7-10 without Ke; 7-22 without Kd
 * h <= 60 ft:  p = qh (GCp - GCpi)              both signs
 * h >  60 ft:  p = q GCp - qi GCpi              q at the component's top toward the wall, else qh;
 *                                               qi = qh
 * 7-22:        p = Kd times the above
 * </pre>
 *
 * <p>Positive external pressure is taken with negative internal pressure and the reverse. No
 * pressure is less than 16 psf in either direction (30.2.2), at strength level; the
 * allowable-stress level is 0.6 of the result (2.4.1).
 *
 * <p>Valid for regular enclosed, partially enclosed and, from 7-16, partially open buildings. The
 * reduction of the internal pressure of large volumes (Ri) is not taken.
 */
final class AsceWalls implements WallRules {

    /** Wall zone away from the corners. */
    static final String MIDDLE = "4";

    /** Wall zone at outside corners. */
    static final String END = "5";

    /** Velocity pressure in Pa for a speed in m/s: 0.00256 psf per mph squared. */
    static final double VELOCITY_PRESSURE = 0.00256 * PSF / (MPH * MPH);

    /** Directionality factor of components and cladding (Table 26.6-1). */
    static final double DIRECTIONALITY = 0.85;

    /** Least pressure of components and cladding, Pa, strength level (30.2.2). */
    static final double LEAST_PRESSURE = 16 * PSF;

    /** Fall of air density with the elevation of the ground, 1/m: 0.0000362 per ft (26.9). */
    static final double DENSITY_DECAY = 0.0000362 / FOOT;

    /** Height up to which walls follow the low-rise figure, m. */
    static final double LOW_RISE_HEIGHT = 60 * FOOT;

    private static final double TEN_DEGREES = Math.toRadians(10);
    private static final double SEVEN_DEGREES = Math.toRadians(7);

    /** Walls of low-rise roofs of up to 10 degrees have 10 % less (note to the low-rise figure). */
    private static final double FLAT_ROOF_REDUCTION = 0.9;

    private static final AreaLine LOW_POSITIVE = line(10, 1.0, 500, 0.7);
    private static final AreaLine LOW_MIDDLE = line(10, -1.1, 500, -0.8);
    private static final AreaLine LOW_END = line(10, -1.4, 500, -0.8);
    private static final AreaLine HIGH_POSITIVE = line(20, 0.9, 500, 0.6);
    private static final AreaLine HIGH_MIDDLE = line(20, -0.9, 500, -0.7);
    private static final AreaLine HIGH_END = line(20, -1.8, 500, -1.0);

    private final Site site;
    private final AsceEdition edition;
    private final ExposureCategory exposure;
    private final boolean low;
    private final boolean flatRoof;
    private final double internal;

    /** Everything in the velocity pressure but Kz, Pa. */
    private final double reference;

    /** Factor on the pressure that is not yet in the velocity pressure: Kd in 7-22, else 1. */
    private final double onPressure;

    private final double atRoof;
    private final double zoneWidth;

    AsceWalls(Site site) {
        this.site = site;
        edition = AsceEdition.of(site.standard());
        exposure = Objects.requireNonNull(site.exposureCategory());
        internal = Objects.requireNonNull(site.enclosureClassification()).internalCoefficient();
        low =
                Imperial.atMost(site.meanRoofHeight(), LOW_RISE_HEIGHT)
                        || Boolean.TRUE.equals(site.lowRiseAlternative());
        Double slope = site.roofSlope();
        flatRoof = low && slope != null && Imperial.atMost(slope, TEN_DEGREES);
        boolean inPressure = edition.directionalityInVelocityPressure();
        onPressure = inPressure ? 1 : DIRECTIONALITY;
        reference =
                VELOCITY_PRESSURE
                        * site.basicWindSpeed()
                        * site.basicWindSpeed()
                        * site.topography()
                        * groundElevationFactor()
                        * (inPressure ? DIRECTIONALITY : 1);
        atRoof = velocityPressure(site.meanRoofHeight());
        zoneWidth = zoneWidth(edition, site, low);
    }

    /** Ke = exp(-0.0000362 ze), ze in ft; 1 in 7-10, and where no elevation is given (26.9). */
    private double groundElevationFactor() {
        Double elevation = site.groundElevation();
        return edition.hasGroundElevationFactor() && elevation != null
                ? Math.exp(-DENSITY_DECAY * elevation)
                : 1;
    }

    /**
     * Width a of the end zones, m.
     *
     * <p>Above 60 ft: 0.1 of the least horizontal dimension, at least 3 ft. Otherwise the smaller
     * of that and 0.4 h, at least 0.04 of the least horizontal dimension and 3 ft; in 7-16 and 7-22
     * not above 0.8 h for roofs of up to 7 degrees and a least dimension of more than 300 ft. That
     * bound makes end zones narrower and isn't taken in 7-10, where its place in the figure for
     * cladding is in doubt.
     */
    private static double zoneWidth(AsceEdition edition, Site site, boolean low) {
        double least = site.leastHorizontalDimension();
        double h = site.meanRoofHeight();
        if (!low) {
            return Math.max(0.1 * least, 3 * FOOT);
        }
        double a = Math.max(Math.min(0.1 * least, 0.4 * h), Math.max(0.04 * least, 3 * FOOT));
        Double slope = site.roofSlope();
        boolean wide =
                edition != AsceEdition.SEVEN_10
                        && Imperial.lessThan(300 * FOOT, least)
                        && slope != null
                        && Imperial.atMost(slope, SEVEN_DEGREES);
        return wide ? Math.min(a, 0.8 * h) : a;
    }

    /** Velocity pressure at a height, Pa. */
    private double velocityPressure(double z) {
        return reference * edition.kz(exposure, z);
    }

    @Override
    public List<EndZone> endZones() {
        return List.of(new EndZone(END, zoneWidth), new EndZone(MIDDLE, Double.POSITIVE_INFINITY));
    }

    @Override
    public double velocityPressureAtRoof() {
        return atRoof;
    }

    /** The span times the tributary width, which need not be less than a third of it (26.2). */
    @Override
    public double effectiveWindArea(double span, double tributaryWidth) {
        return ZoneScheme.ASCE.effectiveWindArea(span, tributaryWidth);
    }

    /** Velocity pressures toward and away from the wall: q and qh, Pa. */
    private double toward(double height) {
        return low ? away(height) : velocityPressure(height);
    }

    /** qh; what stands above the mean roof height is given its own, greater, velocity pressure. */
    private double away(double height) {
        return height > site.meanRoofHeight() ? velocityPressure(height) : atRoof;
    }

    private AreaLine positiveLine() {
        return low ? LOW_POSITIVE : HIGH_POSITIVE;
    }

    private AreaLine negativeLine(String zone) {
        return switch (zone) {
            case MIDDLE -> low ? LOW_MIDDLE : HIGH_MIDDLE;
            case END -> low ? LOW_END : HIGH_END;
            default -> throw new IllegalArgumentException("no wall zone " + zone);
        };
    }

    private double coefficient(AreaLine line, double area) {
        return line.at(area) * (flatRoof ? FLAT_ROOF_REDUCTION : 1);
    }

    /** The factor that takes a strength-level pressure to the basis asked for. */
    private double basisFactor() {
        return site.basis() == LoadBasis.ALLOWABLE_STRESS ? Load.ALLOWABLE_STRESS_FACTOR : 1;
    }

    @Override
    public ZonePressure pressure(String zone, double area, double height) {
        double away = away(height);
        double fromInside = away * internal;
        double positive =
                onPressure * (toward(height) * coefficient(positiveLine(), area) + fromInside);
        double negative = onPressure * (away * coefficient(negativeLine(zone), area) - fromInside);
        return new ZonePressure(
                zone,
                area,
                height,
                basisFactor() * Math.max(positive, LEAST_PRESSURE),
                basisFactor() * Math.min(negative, -LEAST_PRESSURE),
                site.basis());
    }

    @Override
    public void explain(Trace trace) {
        String velocitySource = edition.velocityPressureSource();
        trace.step(
                "V",
                "basic wind speed, 3 s gust",
                Dimension.SPEED,
                site.basicWindSpeed(),
                "input",
                "input");
        trace.step(
                "Kzt",
                "topographic factor",
                Dimension.NONE,
                site.topography(),
                site.topographicFactor() == null ? "not given: flat ground only" : "input",
                edition.cite("26.8"));
        trace.step(
                "Kd",
                "wind directionality factor of components and cladding",
                Dimension.NONE,
                DIRECTIONALITY,
                "0.85",
                edition.cite("Table 26.6-1"));
        if (edition.hasGroundElevationFactor()) {
            trace.step(
                    "Ke",
                    "ground elevation factor",
                    Dimension.NONE,
                    groundElevationFactor(),
                    site.groundElevation() == null
                            ? "1, permitted in all cases; no ground elevation given"
                            : "exp(-0.0000362 ze), ze in ft",
                    edition.cite("26.9"));
        }
        trace.step(
                "GCpi",
                "internal pressure coefficient, either sign",
                Dimension.NONE,
                internal,
                "+-, of a building " + site.enclosureClassification(),
                edition.internalSource());
        trace.step(
                "h",
                "mean roof height",
                Dimension.DISTANCE,
                site.meanRoofHeight(),
                "input",
                "input");
        trace.step(
                "Kh",
                "velocity pressure exposure coefficient at h",
                Dimension.NONE,
                edition.kz(exposure, site.meanRoofHeight()),
                profile(),
                edition.exposureSource());
        trace.step(
                "qh",
                "velocity pressure at h, strength level",
                Dimension.PRESSURE,
                atRoof,
                velocityFormula("Kh"),
                velocitySource);
        trace.step(
                "a",
                "width of the end zones",
                Dimension.DISTANCE,
                zoneWidth,
                low
                        ? "min(0.1 least horizontal dimension, 0.4 h), at least 0.04 of that"
                                + " dimension and 3 ft; wide low buildings of 7-16 and 7-22 at most"
                                + " 0.8 h"
                        : "0.1 least horizontal dimension, at least 3 ft",
                edition.wallSource(low));
    }

    private String profile() {
        return "%s (z/zg)^(2/%s), zg %d ft, z at least %d ft"
                .formatted(
                        edition == AsceEdition.SEVEN_22 ? "2.41" : "2.01",
                        edition.alpha(exposure),
                        Math.round(edition.gradientHeight(exposure) / FOOT),
                        Math.round(edition.flatBelow(exposure) / FOOT));
    }

    private String velocityFormula(String kz) {
        return "0.00256 "
                + kz
                + " Kzt"
                + (edition.directionalityInVelocityPressure() ? " Kd" : "")
                + (edition.hasGroundElevationFactor() ? " Ke" : "")
                + " V^2 (psf, mph)";
    }

    @Override
    public void explain(Trace trace, String what, List<String> zones, double area, double height) {
        String source = edition.wallSource(low);
        String reduction = flatRoof ? ", 10 % less for a roof slope of at most 10 degrees" : "";
        String kd = edition.directionalityInVelocityPressure() ? "" : "Kd ";
        String limits =
                ", at least 16 psf"
                        + (site.basis() == LoadBasis.ALLOWABLE_STRESS ? "; then 0.6 W" : "");
        trace.step(
                "A",
                what + ": effective wind area",
                Dimension.AREA,
                area,
                "span times max(tributary width, span / 3), or as given",
                edition.cite("26.2"));
        boolean aboveRoof = height > site.meanRoofHeight();
        String qh = aboveRoof ? "q" : "qh";
        if (!low || aboveRoof) {
            trace.step(
                    "Kz",
                    what + ": exposure coefficient at its top",
                    Dimension.NONE,
                    edition.kz(exposure, height),
                    profile(),
                    edition.exposureSource());
            trace.step(
                    "q",
                    what + ": velocity pressure at its top",
                    Dimension.PRESSURE,
                    velocityPressure(height),
                    velocityFormula("Kz"),
                    edition.velocityPressureSource());
        }
        trace.step(
                "GCp+",
                what + ": external coefficient toward the wall",
                Dimension.NONE,
                coefficient(positiveLine(), area),
                "straight on log A" + positiveLine().remark(area) + reduction,
                source);
        trace.step(
                "p+",
                what + ": pressure toward the wall, " + site.basis(),
                Dimension.PRESSURE,
                pressure(MIDDLE, area, height).positive(),
                kd + (low || aboveRoof ? qh + " (GCp + GCpi)" : "(q GCp + qh GCpi)") + limits,
                source + "; 30.2.2; 2.4.1");
        for (String zone : zones) {
            trace.step(
                    "GCp-",
                    what + ": external coefficient in zone " + zone,
                    Dimension.NONE,
                    coefficient(negativeLine(zone), area),
                    "straight on log A" + negativeLine(zone).remark(area) + reduction,
                    source);
            trace.step(
                    "p-",
                    what + ": pressure away from the wall in zone " + zone + ", " + site.basis(),
                    Dimension.PRESSURE,
                    pressure(zone, area, height).negative(),
                    kd + qh + " (GCp - GCpi)" + limits,
                    source + "; 30.2.2; 2.4.1");
        }
    }

    private static AreaLine line(double small, double atSmall, double large, double atLarge) {
        return new AreaLine(small * SQUARE_FOOT, atSmall, large * SQUARE_FOOT, atLarge);
    }
}
