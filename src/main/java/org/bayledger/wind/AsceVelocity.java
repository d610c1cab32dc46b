package org.bayledger.wind;

import static org.bayledger.wind.Imperial.FOOT;
import static org.bayledger.wind.Imperial.MPH;
import static org.bayledger.wind.Imperial.PSF;

import java.util.Objects;
import org.bayledger.check.Trace;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * Velocity pressure of ASCE/SEI 7-10, 7-16 and 7-22 on one site (chapter 26; 7-10 30.3; from
 * memory).
 *
 * <pre>
 * qz = 0.00256 Kz Kzt Kd Ke V^2                 psf, V in mph; 7-10 without Ke; 7-22 without Kd
 * </pre>
 */
final class AsceVelocity {

    /** Velocity pressure in Pa for a speed in m/s: 0.00256 psf per mph squared. */
    static final double VELOCITY_PRESSURE = 0.00256 * PSF / (MPH * MPH);

    /** Directionality factor of components and cladding (Table 26.6-1). */
    static final double DIRECTIONALITY = 0.85;

    /** Fall of air density with the elevation of the ground, 1/m: 0.0000362 per ft (26.9). */
    static final double DENSITY_DECAY = 0.0000362 / FOOT;

    private final Site site;
    private final AsceEdition edition;
    private final ExposureCategory exposure;
    private final @Nullable AsceHill hill;

    /** Everything in the velocity pressure but Kz and Kzt, Pa. */
    private final double reference;

    AsceVelocity(Site site) {
        this.site = site;
        edition = AsceEdition.of(site.standard());
        exposure = Objects.requireNonNull(site.exposureCategory());
        hill = site.topography() == null ? null : new AsceHill(site.topography(), exposure);
        reference =
                VELOCITY_PRESSURE
                        * site.basicWindSpeed()
                        * site.basicWindSpeed()
                        * groundElevationFactor()
                        * (edition.directionalityInVelocityPressure() ? DIRECTIONALITY : 1);
    }

    /** Factor on the pressure that is not yet in the velocity pressure: Kd in 7-22, else 1. */
    double onPressure() {
        return edition.directionalityInVelocityPressure() ? 1 : DIRECTIONALITY;
    }

    /** Ke = exp(-0.0000362 ze), ze in ft; 1 in 7-10, and where no elevation is given (26.9). */
    private double groundElevationFactor() {
        Double elevation = site.groundElevation();
        return edition.hasGroundElevationFactor() && elevation != null
                ? Math.exp(-DENSITY_DECAY * elevation)
                : 1;
    }

    /** Topographic factor at a height, m; that of flat ground where nothing was said. */
    double kzt(double z) {
        return hill == null ? site.flatFactor() : hill.kzt(z);
    }

    /** Velocity pressure at a height from the ground up, Pa. */
    double at(double z) {
        return reference * kzt(z) * edition.kz(exposure, Math.max(z, edition.flatBelow(exposure)));
    }

    /**
     * Height whose velocity pressure a component has toward the wall, m: its top; on a hill its
     * foot where the speed-up makes the wind stronger there. The foot is not known but lies no
     * deeper than sqrt(3 A), since an effective wind area A is at least a third of the span squared
     * (26.2).
     */
    double governingHeight(double top, double area) {
        if (hill == null) {
            return top;
        }
        double foot = Math.max(0, top - Math.sqrt(3 * area));
        return at(foot) > at(top) ? foot : top;
    }

    void explain(Trace trace) {
        RiskCategory category = site.riskCategory();
        trace.step(
                "V",
                "basic wind speed, 3 s gust"
                        + (category == null ? "" : ", of Risk Category " + category),
                Dimension.SPEED,
                site.basicWindSpeed(),
                "input",
                "input");
        if (hill == null) {
            trace.step(
                    "Kzt",
                    "topographic factor",
                    Dimension.NONE,
                    site.flatFactor(),
                    site.topographicFactor() == null ? "not given: flat ground only" : "input",
                    edition.cite("26.8"));
        } else {
            hill.explain(trace, edition.cite("26.8 and Fig. 26.8-1"));
        }
        trace.step(
                "Kd",
                "wind directionality factor of components and cladding",
                Dimension.NONE,
                DIRECTIONALITY,
                "0.85",
                edition.cite("Table 26.6-1"));
        if (edition.hasGroundElevationFactor()) {
            Double elevation = site.groundElevation();
            if (elevation != null) {
                trace.step(
                        "ze",
                        "elevation of the ground above sea level",
                        Dimension.DISTANCE,
                        elevation,
                        "input",
                        "input");
            }
            trace.step(
                    "Ke",
                    "ground elevation factor",
                    Dimension.NONE,
                    groundElevationFactor(),
                    elevation == null
                            ? "1, permitted in all cases; no ground elevation given"
                            : "exp(-0.0000362 ze), ze in ft",
                    edition.cite("26.9"));
        }
    }

    /**
     * Adds the velocity pressure at one height with its factors.
     *
     * @param k symbol of the exposure coefficient
     * @param q symbol of the velocity pressure
     * @param prefix what stands before the meaning
     * @param where the height in words
     */
    void explainAt(Trace trace, String k, String q, String prefix, String where, double z) {
        if (hill != null) {
            trace.step(
                    "Kzt",
                    prefix + "topographic factor at " + where,
                    Dimension.NONE,
                    kzt(z),
                    hill.formula(),
                    edition.cite("26.8 and Fig. 26.8-1"));
        }
        trace.step(
                k,
                prefix + "velocity pressure exposure coefficient at " + where,
                Dimension.NONE,
                edition.kz(exposure, Math.max(z, edition.flatBelow(exposure))),
                "%s (z/zg)^(2/%s), zg %d ft, z at least %d ft"
                        .formatted(
                                edition == AsceEdition.SEVEN_22 ? "2.41" : "2.01",
                                edition.alpha(exposure),
                                Math.round(edition.gradientHeight(exposure) / FOOT),
                                Math.round(edition.flatBelow(exposure) / FOOT)),
                edition.exposureSource());
        trace.step(
                q,
                prefix + "velocity pressure at " + where + ", strength level",
                Dimension.PRESSURE,
                at(z),
                "0.00256 "
                        + k
                        + " Kzt"
                        + (edition.directionalityInVelocityPressure() ? " Kd" : "")
                        + (edition.hasGroundElevationFactor() ? " Ke" : "")
                        + " V^2 (psf, mph)",
                edition.velocityPressureSource());
    }
}
