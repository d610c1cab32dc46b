package org.bayledger.wind;

import static org.bayledger.wind.Imperial.FOOT;
import static org.bayledger.wind.Imperial.PSF;

import java.util.List;
import java.util.Objects;
import org.bayledger.check.LoadBasis;
import org.bayledger.check.Trace;

/**
 * Components and cladding of walls after ASCE/SEI 7-10, 7-16 and 7-22, chapters 26 and 30 (from
 * memory).
 *
 * <pre>
 * h <= 60 ft:  p = qh (GCp - GCpi)              both signs
 * h >  60 ft:  p = q GCp - qi GCpi              q at the component's top toward the wall, else qh;
 *                                               qi = qh
 * parapet:     p = qp (GCp,wall+ - GCp,roof-)   windward, toward the wall (load case A)
 *              p = qp (GCp,wall- - GCp,wall+)   leeward, away from the wall (load case B)
 * 7-22:        p = Kd times the above
 * </pre>
 *
 * <p>Positive external pressure is taken with negative internal pressure and the reverse. On a
 * parapet, with the velocity pressure qp at its top, the pressures of both faces add up and that
 * inside cancels out, as on a wall with wind on both faces; a component that reaches above the roof
 * has the greater of those and the wall's own. No pressure is less than 16 psf in either direction
 * (30.2.2), at strength level; the allowable-stress level is 0.6 of the result (2.4.1).
 *
 * <p>Valid for regular enclosed, partially enclosed and, from 7-16, partially open buildings. The
 * reduction of the internal pressure of large volumes (Ri) is not taken.
 */
final class AsceWalls implements WallRules {

    /** Least pressure of components and cladding, Pa, strength level (30.2.2). */
    static final double LEAST_PRESSURE = 16 * PSF;

    /** Height up to which walls follow the low-rise figure, m. */
    static final double LOW_RISE_HEIGHT = 60 * FOOT;

    final Site site;
    final AsceEdition edition;
    final AsceVelocity velocity;
    final AsceFigures figures;
    final boolean low;
    final double internal;
    final double atRoof;

    AsceWalls(Site site) {
        this.site = site;
        edition = AsceEdition.of(site.standard());
        internal = Objects.requireNonNull(site.enclosureClassification()).internalCoefficient();
        low =
                Imperial.atMost(site.meanRoofHeight(), LOW_RISE_HEIGHT)
                        || Boolean.TRUE.equals(site.lowRiseAlternative());
        velocity = new AsceVelocity(site);
        figures = new AsceFigures(site, low);
        atRoof = velocity.at(site.meanRoofHeight());
    }

    double zoneWidth() {
        return figures.zoneWidth(site.leastHorizontalDimension(), site.meanRoofHeight());
    }

    @Override
    public List<EndZone> endZones() {
        return List.of(
                new EndZone(AsceFigures.END, zoneWidth()),
                new EndZone(AsceFigures.MIDDLE, Double.POSITIVE_INFINITY));
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

    boolean aboveRoof(double height) {
        return !Imperial.atMost(height, site.meanRoofHeight());
    }

    /** Whether a component's top stands in a parapet whose load cases are covered. */
    boolean inParapet(double height) {
        return aboveRoof(height) && parapet(height) == Parapet.COVERED;
    }

    @Override
    public Parapet parapet(double height) {
        Double parapet = site.parapetHeight();
        if (!aboveRoof(height)) {
            return Parapet.NONE;
        }
        if (parapet == null || !Imperial.atMost(height, site.meanRoofHeight() + parapet)) {
            return Parapet.NOT_GIVEN;
        }
        return figures.flatRoof() ? Parapet.COVERED : Parapet.NOT_COVERED;
    }

    /** Height whose velocity pressure the trace shows for a component, m. */
    double shownHeight(double height, double area) {
        return low || aboveRoof(height) ? height : velocity.governingHeight(height, area);
    }

    /** qh; what stands above the mean roof height has at least that of its own height, Pa. */
    double away(double height) {
        return aboveRoof(height) ? Math.max(velocity.at(height), atRoof) : atRoof;
    }

    /** Velocity pressure toward the wall, Pa. */
    private double toward(double height, double area) {
        return low || aboveRoof(height)
                ? away(height)
                : velocity.at(velocity.governingHeight(height, area));
    }

    /** Velocity pressure at the top of the parapet, Pa. */
    double atParapetTop() {
        Double parapet = site.parapetHeight();
        return velocity.at(site.meanRoofHeight() + (parapet == null ? 0 : parapet));
    }

    /** Windward parapet, toward the wall, before the least pressure, Pa (load case A). */
    double windwardParapet(double area) {
        return velocity.onPressure()
                * atParapetTop()
                * (figures.toward(area) - figures.roofLine().at(area));
    }

    /** Leeward parapet, away from the wall, before the least pressure, Pa (load case B). */
    double leewardParapet(String zone, double area) {
        return velocity.onPressure()
                * atParapetTop()
                * (figures.away(zone, area) - figures.toward(area));
    }

    private DesignPressure.Strength strength(String zone, double area, double height) {
        double away = away(height);
        double fromInside = away * internal;
        double positive =
                velocity.onPressure() * (toward(height, area) * figures.toward(area) + fromInside);
        double negative = velocity.onPressure() * (away * figures.away(zone, area) - fromInside);
        if (inParapet(height)) {
            positive = Math.max(positive, windwardParapet(area));
            negative = Math.min(negative, leewardParapet(zone, area));
        }
        return new DesignPressure.Strength(
                Math.max(positive, LEAST_PRESSURE), Math.min(negative, -LEAST_PRESSURE));
    }

    @Override
    public ZonePressure pressure(String zone, double area, double height) {
        DesignPressure.Strength strength = strength(zone, area, height);
        Double factor = site.serviceabilityFactor();
        return new ZonePressure(
                zone,
                area,
                height,
                site.basis() == LoadBasis.ALLOWABLE_STRESS ? strength.allowableStress() : strength,
                factor == null ? null : strength.serviceability(factor));
    }

    @Override
    public void explain(Trace trace) {
        new AsceDerivation(this, trace).ofBuilding();
    }

    @Override
    public void explain(Trace trace, String what, List<String> zones, double area, double height) {
        new AsceDerivation(this, trace).ofComponent(what, zones, area, height);
    }
}
