package org.bayledger.wind;

import static org.bayledger.wind.Imperial.FOOT;
import static org.bayledger.wind.Imperial.SQUARE_FOOT;

import org.jspecify.annotations.Nullable;

/**
 * External pressure coefficients GCp of the walls of one building, and those of its roof's edge
 * that act on a parapet (7-10 Fig. 30.4-1, 30.4-2A, 30.6-1; 7-16 Fig. 30.3-1, 30.3-2A, 30.5-1; 7-22
 * Fig. 30.3-1, 30.3-2A, 30.4-1; from memory).
 */
final class AsceFigures {

    /** Wall zone away from the corners. */
    static final String MIDDLE = "4";

    /** Wall zone at outside corners. */
    static final String END = "5";

    private static final double SEVEN_DEGREES = Math.toRadians(7);
    private static final double TEN_DEGREES = Math.toRadians(10);

    /** Walls of low-rise roofs of up to 10 degrees have 10 % less (note to the low-rise figure). */
    private static final double FLAT_ROOF_REDUCTION = 0.9;

    /** From this height a parapet spares the roof its worst corners (notes to the figures). */
    private static final double SHELTERING_PARAPET = 3 * FOOT;

    private static final AreaLine LOW_POSITIVE = line(10, 1.0, 500, 0.7);
    private static final AreaLine LOW_MIDDLE = line(10, -1.1, 500, -0.8);
    private static final AreaLine LOW_END = line(10, -1.4, 500, -0.8);
    private static final AreaLine HIGH_POSITIVE = line(20, 0.9, 500, 0.6);
    private static final AreaLine HIGH_MIDDLE = line(20, -0.9, 500, -0.7);
    private static final AreaLine HIGH_END = line(20, -1.8, 500, -1.0);

    private static final AreaLine ROOF_EDGE_OF_2010 = line(10, -1.8, 100, -1.1);
    private static final AreaLine ROOF_CORNER_OF_2010 = line(10, -2.8, 100, -1.1);
    private static final AreaLine ROOF_EDGE = line(10, -2.3, 500, -1.4);
    private static final AreaLine ROOF_CORNER = line(10, -3.2, 500, -1.4);
    private static final AreaLine HIGH_ROOF_EDGE = line(10, -2.3, 500, -1.6);
    private static final AreaLine HIGH_ROOF_CORNER = line(10, -3.2, 500, -2.3);

    private final AsceEdition edition;
    private final boolean low;
    private final @Nullable Double roofSlope;
    private final double parapetHeight;

    AsceFigures(Site site, boolean low) {
        this.low = low;
        edition = AsceEdition.of(site.standard());
        roofSlope = site.roofSlope();
        parapetHeight = site.parapetHeight() == null ? 0 : site.parapetHeight();
    }

    private boolean slopesAtMost(double limit) {
        return roofSlope != null && Imperial.atMost(roofSlope, limit);
    }

    /** Whether the walls have 10 % less. */
    boolean reduced() {
        return low && slopesAtMost(TEN_DEGREES);
    }

    /** Whether the roof is flat enough for the figures of a flat roof, which a parapet needs. */
    boolean flatRoof() {
        return slopesAtMost(low ? SEVEN_DEGREES : TEN_DEGREES);
    }

    /** The line of the coefficient toward the wall. */
    AreaLine towardLine() {
        return low ? LOW_POSITIVE : HIGH_POSITIVE;
    }

    /** The line of the coefficient away from the wall. */
    AreaLine awayLine(String zone) {
        return switch (zone) {
            case MIDDLE -> low ? LOW_MIDDLE : HIGH_MIDDLE;
            case END -> low ? LOW_END : HIGH_END;
            default -> throw new IllegalArgumentException("no wall zone " + zone);
        };
    }

    double toward(double area) {
        return towardLine().at(area) * reduction();
    }

    double away(String zone, double area) {
        return awayLine(zone).at(area) * reduction();
    }

    private double reduction() {
        return reduced() ? FLAT_ROOF_REDUCTION : 1;
    }

    /**
     * The suction on the roof side of a parapet: that of the roof's corners (zone 3) along the
     * whole parapet, since they reach further than a wall's end zone, and of its edges (zone 2)
     * where a parapet of 3 ft or more runs around the roof.
     */
    AreaLine roofLine() {
        boolean edge = Imperial.atMost(SHELTERING_PARAPET, parapetHeight);
        if (!low) {
            return edge ? HIGH_ROOF_EDGE : HIGH_ROOF_CORNER;
        }
        if (edition == AsceEdition.SEVEN_10) {
            return edge ? ROOF_EDGE_OF_2010 : ROOF_CORNER_OF_2010;
        }
        return edge ? ROOF_EDGE : ROOF_CORNER;
    }

    /**
     * Width a of the end zones, m.
     *
     * <p>Above 60 ft: 0.1 of the least horizontal dimension, at least 3 ft. Otherwise the smaller
     * of that and 0.4 h, at least 0.04 of the least horizontal dimension and 3 ft; in 7-16 and 7-22
     * not above 0.8 h for roofs of up to 7 degrees and a least dimension of more than 300 ft. That
     * bound makes end zones narrower and isn't taken in 7-10, where its place in the figure for
     * cladding is in doubt.
     *
     * @param least least horizontal dimension, m
     * @param h mean roof height, m
     */
    double zoneWidth(double least, double h) {
        if (!low) {
            return Math.max(0.1 * least, 3 * FOOT);
        }
        double a = Math.max(Math.min(0.1 * least, 0.4 * h), Math.max(0.04 * least, 3 * FOOT));
        boolean wide =
                edition != AsceEdition.SEVEN_10
                        && Imperial.lessThan(300 * FOOT, least)
                        && slopesAtMost(SEVEN_DEGREES);
        return wide ? Math.min(a, 0.8 * h) : a;
    }

    private static AreaLine line(double small, double atSmall, double large, double atLarge) {
        return new AreaLine(small * SQUARE_FOOT, atSmall, large * SQUARE_FOOT, atLarge);
    }
}
