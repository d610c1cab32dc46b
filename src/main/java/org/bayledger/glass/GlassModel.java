package org.bayledger.glass;

import org.bayledger.mechanics.Plate;
import org.bayledger.mechanics.PlateResponse;
import org.bayledger.mechanics.PlateStrip;
import org.bayledger.mechanics.PlateTable;
import org.bayledger.mechanics.SurfaceFailure;

/**
 * A sheet of glass on its held edges under uniform pressure, and the chance that it breaks.
 *
 * <pre>
 * Pb = 1 - exp(-B),  B = k (td / 60 s)^(7/16) Integral (c sigma)^7 dA
 * </pre>
 *
 * On four edges a plate at large deflection, edges held flat, free to turn and to slide in the
 * plane; on two a strip. Source: ASTM E1300-16, appendix on the glass failure prediction model
 * (values from memory).
 *
 * @param width width of the lite, m
 * @param height height of the lite, m
 * @param span distance between the held edges of a lite on two edges, m; 0 where all four are held
 */
record GlassModel(double width, double height, double span) {

    /** Young's modulus of glass, Pa (ASTM E1300-16, from memory). */
    static final double ELASTIC_MODULUS = 71.7e9;

    /** Poisson's ratio of glass (ASTM E1300-16, from memory). */
    static final double POISSON_RATIO = 0.22;

    /** Surface flaw parameter k for 60 s, N^-7 m^12 (ASTM E1300-16, from memory). */
    static final double FLAW_PARAMETER = 2.86e-53;

    /** The practice's probability of breakage of vertical glass: 8 lites of 1000. */
    static final double PROBABILITY = 0.008;

    /** Least ratio of span to thickness of a thin plate (common practice, no source). */
    private static final double SMALLEST_SLENDERNESS = 10;

    static GlassModel of(GlassRequest request) {
        return switch (request.supportedEdges()) {
            case FOUR -> new GlassModel(request.width(), request.height(), 0);
            case TWO -> new GlassModel(request.width(), request.height(), request.span());
            case THREE, ONE -> throw new IllegalStateException("refused by the request");
        };
    }

    /** The length that bending spans, m: the shorter side, or the span on two edges. */
    double bendingLength() {
        return span > 0 ? span : Math.min(width, height);
    }

    /** Longer over shorter side. */
    double aspectRatio() {
        return Math.max(width, height) / Math.min(width, height);
    }

    /**
     * What a sheet does under a pressure.
     *
     * @param thickness m
     * @param pressure Pa, not negative
     * @throws IllegalArgumentException where the plate is outside what is tabulated
     */
    PlateResponse respond(double thickness, double pressure) {
        return span > 0
                ? PlateStrip.respond(span, heldEdge(), thickness, ELASTIC_MODULUS, pressure)
                : PlateTable.standard().respond(plate(thickness), pressure);
    }

    /**
     * The greatest pressure, Pa, that is tabulated for a sheet on four edges.
     *
     * @param thickness m
     */
    double greatestPressure(double thickness) {
        return PlateTable.standard().greatestPressure(plate(thickness));
    }

    /**
     * What bending draws out of the bite of the worst edge, m: at a jamb the pull-in of the
     * vertical edge, at the head that of both horizontal ones, since the weight of the lite keeps
     * the sill edge on its setting blocks. Geometry; the lite stands in the middle of its opening.
     */
    double biteLoss(PlateResponse response) {
        if (span > 0) {
            return span < height ? response.longEdgePullIn() : 2 * response.longEdgePullIn();
        }
        boolean upright = height >= width;
        double vertical = upright ? response.longEdgePullIn() : response.shortEdgePullIn();
        double horizontal = upright ? response.shortEdgePullIn() : response.longEdgePullIn();
        return Math.max(vertical, 2 * horizontal);
    }

    /**
     * The pressure, Pa, at which annealed glass breaks with a probability.
     *
     * @param thickness m
     * @param probability above 0, below 1
     * @param duration s
     * @throws IllegalArgumentException where the plate is outside what is tabulated
     */
    double resistance(double thickness, double probability, double duration) {
        double integral = SurfaceFailure.failureIntegralFor(probability, FLAW_PARAMETER, duration);
        return span > 0
                ? PlateStrip.pressureForFailureIntegral(
                        span, heldEdge(), thickness, ELASTIC_MODULUS, integral)
                : PlateTable.standard().pressureForFailureIntegral(plate(thickness), integral);
    }

    /** The probability that annealed glass breaks under a response that lasts a duration, s. */
    static double probability(PlateResponse response, double duration) {
        return SurfaceFailure.probability(response.failureIntegral(), FLAW_PARAMETER, duration);
    }

    /** Why a sheet of a thickness, m, is outside what is tabulated. */
    String refusal(double thickness) {
        if (bendingLength() < SMALLEST_SLENDERNESS * thickness) {
            return "is thicker than a tenth of the length it spans: not a thin plate, and outside"
                    + " what the glass model covers";
        }
        if (aspectRatio() > PlateTable.MAX_ASPECT_RATIO) {
            return "is outside what the plate solution covers: the longer side is more than %.0f"
                            .formatted(PlateTable.MAX_ASPECT_RATIO)
                    + " times the shorter";
        }
        return "is outside what the plate solution covers: a pane so thin for its size would"
                + " buckle along its edges before it reaches its strength; use thicker glass";
    }

    private Plate plate(double thickness) {
        return Plate.of(width, height, thickness, ELASTIC_MODULUS, POISSON_RATIO);
    }

    private double heldEdge() {
        return width * height / span;
    }
}
