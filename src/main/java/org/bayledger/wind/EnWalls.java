package org.bayledger.wind;

import java.util.List;
import java.util.Objects;
import org.bayledger.check.Trace;

/**
 * Walls of rectangular buildings after EN 1991-1-4:2005 with recommended values (from memory).
 *
 * <pre>
 * w = qp(ze) cpe - qp(zi) cpi                                                          5.2
 * w = qp(h) cp,net, either sign, on a parapet                                          7.4.1
 * </pre>
 *
 * <p>Every place on a face has wind onto it (zone D), from behind (zone E) and along it (zones A,
 * B, C from the upwind corner). A zone A, B or C here is a place: its positive pressure is that of
 * zone D with an internal pressure coefficient of -0.3, its negative pressure the greater of its
 * own and that of zone E with +0.2 (7.2.9(6), where the openings are not known). The breadth b is
 * the building's greatest and the depth d its least horizontal dimension, whatever the wind's
 * direction: both are on the safe side for e = min(b, 2 h), for ze and for h/d.
 *
 * <p>A component that reaches into the parapet, the upper part of h, has the greater of those and
 * the parapet's own: cp,net of Table 7.9 for a solid parapet with return corners no shorter than it
 * is high. Its zones A to 0.3, B to 2, C to 4 times its height and D are read at the near end of
 * the wall's zone, where they are the greatest.
 *
 * <p>Results are characteristic values; partial factors are the caller's. The structural factor cs
 * cd of cladding is 1 (6.2(1)). Valid to a height of 200 m, h/d up to 5, and without a dominant
 * opening.
 */
final class EnWalls implements WallRules {

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

    final Site site;
    final EnProfile profile;
    final double breadth;
    final double e;
    final AreaLine windward;
    final double leeward;
    final double atRoof;

    EnWalls(Site site) {
        this.site = site;
        profile = new EnProfile(site);
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
        atRoof = profile.peakPressure(site.meanRoofHeight());
    }

    /** Ratio h/d, by which Table 7.1 is entered. */
    double slenderness() {
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
        return height > site.meanRoofHeight() ? profile.peakPressure(height) : atRoof;
    }

    static AreaLine side(String zone) {
        return switch (zone) {
            case "A" -> ZONE_A;
            case "B" -> ZONE_B;
            case "C" -> ZONE_C;
            default -> throw new IllegalArgumentException("no wall zone " + zone);
        };
    }

    @Override
    public Parapet parapet(double height) {
        Double parapet = site.parapetHeight();
        double h = site.meanRoofHeight();
        if (!Imperial.atMost(height, h)) {
            return Parapet.NOT_GIVEN;
        }
        return parapet != null && Imperial.lessThan(h - parapet, height)
                ? Parapet.COVERED
                : Parapet.NONE;
    }

    /** Net coefficient cp,net of the parapet beside a zone of the wall, either sign (Table 7.9). */
    double parapetCoefficient(String zone) {
        double near =
                switch (zone) {
                    case "A" -> 0;
                    case "B" -> e / 5;
                    case "C" -> e;
                    default -> throw new IllegalArgumentException("no wall zone " + zone);
                };
        double ratio = near / Objects.requireNonNull(site.parapetHeight());
        if (ratio < 0.3) {
            return 2.1;
        }
        if (ratio < 2) {
            return 1.8;
        }
        return ratio < 4 ? 1.4 : 1.2;
    }

    double wallToward(double area, double height) {
        return profile.peakPressure(referenceHeight(height)) * windward.at(area)
                - besideAndBehind(height) * INTERNAL_SUCTION;
    }

    double wallAway(String zone, double area, double height) {
        return besideAndBehind(height)
                * (Math.min(side(zone).at(area), leeward) - INTERNAL_OVERPRESSURE);
    }

    @Override
    public ZonePressure pressure(String zone, double area, double height) {
        double positive = wallToward(area, height);
        double negative = wallAway(zone, area, height);
        if (parapet(height) == Parapet.COVERED) {
            double net = atRoof * parapetCoefficient(zone);
            positive = Math.max(positive, net);
            negative = Math.min(negative, -net);
        }
        return new ZonePressure(
                zone, area, height, new DesignPressure.Characteristic(positive, negative), null);
    }

    @Override
    public void explain(Trace trace) {
        new EnDerivation(this, trace).ofBuilding();
    }

    @Override
    public void explain(Trace trace, String what, List<String> zones, double area, double height) {
        new EnDerivation(this, trace).ofComponent(what, zones, area, height);
    }
}
