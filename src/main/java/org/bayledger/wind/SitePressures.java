package org.bayledger.wind;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.check.Finding;
import org.bayledger.check.LoadBasis;
import org.bayledger.check.Trace;

/**
 * Design wind pressures on the walls of one building, worked out once from its site and then cheap
 * for any number of components.
 */
public final class SitePressures {

    private final Site site;
    private final WallRules rules;
    private final List<String> zones;

    private SitePressures(Site site) {
        this.site = site;
        rules = site.standard().isAsce() ? new AsceWalls(site) : new EnWalls(site);
        zones = rules.endZones().stream().map(WallRules.EndZone::zone).sorted().toList();
    }

    /** The pressures of a site. */
    public static SitePressures of(Site site) {
        return new SitePressures(site);
    }

    /** Level of every pressure. */
    public LoadBasis basis() {
        return site.basis();
    }

    /**
     * Width of the outermost end zone at an outside corner, m: a in ASCE/SEI 7, e/5 (zone A) in EN
     * 1991-1-4.
     */
    public double zoneWidth() {
        return rules.endZones().get(0).endsAt();
    }

    /** Velocity pressure at the roof, Pa: qh of ASCE/SEI 7 (strength level), qp(h) of EN. */
    public double velocityPressureAtRoof() {
        return rules.velocityPressureAtRoof();
    }

    /** The zones of a wall: 4 and 5 of ASCE/SEI 7; A, B and C of EN 1991-1-4. */
    public List<String> zones() {
        return zones;
    }

    /**
     * Area for which a member's coefficients are read, m2: ASCE/SEI 7, span times the larger of the
     * tributary width and a third of the span (26.2); EN 1991-1-4, the loaded area.
     *
     * @param span span of the member, m
     * @param tributaryWidth width of wall that loads it, m
     */
    public double effectiveWindArea(double span, double tributaryWidth) {
        return rules.effectiveWindArea(span, tributaryWidth);
    }

    /**
     * The zones of an elevation from left to right, seen from outside. Where end zones of the two
     * corners overlap, the one of the nearer corner is the more severe and counts.
     *
     * @param elevationWidth width of the elevation, m
     * @param cornerAtLeft whether an outside corner of the building is at its left edge; without
     *     one there is no end zone
     * @param cornerAtRight likewise at its right edge
     */
    public List<ZoneStrip> strips(
            double elevationWidth, boolean cornerAtLeft, boolean cornerAtRight) {
        List<Double> corners = new ArrayList<>();
        if (cornerAtLeft) {
            corners.add(0.0);
        }
        if (cornerAtRight) {
            corners.add(elevationWidth);
        }
        return cornerZones().strips(0, elevationWidth, corners);
    }

    /** The zones from an outside corner inward, with their widths. */
    public CornerZones cornerZones() {
        List<WallRules.EndZone> zones = rules.endZones();
        return new CornerZones(
                zones.stream().map(WallRules.EndZone::endsAt).toList(),
                zones.stream().map(WallRules.EndZone::zone).toList());
    }

    /** How the standard divides a wall into zones. */
    public ZoneScheme scheme() {
        return ZoneScheme.of(site.standard());
    }

    /**
     * Heights above ground, m, at which a schedule divides a wall into bands; the pressures of a
     * band are those at its top. None where the pressures are the same at every height.
     */
    public List<Double> bandLevels() {
        return HeightBands.of(site);
    }

    /** The greatest height, m, for which the standard defines its profile on this site. */
    public double greatestHeight() {
        return site.greatestHeight();
    }

    /**
     * The design pressures on a component, both signs.
     *
     * @param zone one of {@link #zones()}
     * @param effectiveWindArea area to read the coefficients for, m2
     * @param height height of the component's top above ground, m, at most {@link
     *     #greatestHeight()}
     */
    public ZonePressure pressure(String zone, double effectiveWindArea, double height) {
        if (!(effectiveWindArea > 0) || !(height > 0) || !(height <= site.greatestHeight())) {
            throw new IllegalArgumentException(
                    "no pressure for an area of %s m2 at a height of %s m"
                            .formatted(effectiveWindArea, height));
        }
        return rules.pressure(zone, effectiveWindArea, height);
    }

    /** The governing pressures of a component that touches several zones of the wall. */
    public GoverningPressure governing(
            List<String> touched, double effectiveWindArea, double height) {
        return GoverningPressure.of(
                touched.stream().map(zone -> pressure(zone, effectiveWindArea, height)).toList());
    }

    /** What a reviewer should know of the site, with pointers relative to it. */
    public List<Finding> findings() {
        return SiteFindings.of(site);
    }

    /**
     * What a reviewer should know of a component's height; nothing where it lies on the wall.
     *
     * @param height height of the component's top above ground, m
     * @param pointer pointer to that height
     * @param what the component in words
     */
    public List<Finding> heightFindings(double height, String pointer, String what) {
        return SiteFindings.ofHeight(site, height, pointer, what);
    }

    /** Adds the steps that hold for the whole building. */
    public void explain(Trace trace) {
        rules.explain(trace);
    }

    /**
     * Adds the steps of one component.
     *
     * @param what the component in words
     * @param touched zones that it lies in
     * @param effectiveWindArea area to read the coefficients for, m2
     * @param height height of its top above ground, m
     */
    public void explain(
            Trace trace,
            String what,
            List<String> touched,
            double effectiveWindArea,
            double height) {
        rules.explain(trace, what, touched, effectiveWindArea, height);
    }
}
