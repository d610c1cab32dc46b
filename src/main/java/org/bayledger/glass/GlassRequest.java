package org.bayledger.glass;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import java.util.List;
import org.bayledger.check.Faults;
import org.bayledger.check.Measured;
import org.bayledger.check.Pointer;
import org.bayledger.glazing.GlassBuildUp;
import org.bayledger.glazing.HeatTreatment;
import org.bayledger.glazing.Interlayer;
import org.bayledger.glazing.Pane;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * One lite of glass and the wind on it.
 *
 * @param practice the practice by which its resistance is found
 * @param width width between the lines where the edges are held, m
 * @param height height between the lines where the edges are held, m
 * @param supportedEdges how many edges are held: FOUR, or TWO opposite ones; THREE and ONE are
 *     refused with 422
 * @param spanDirection which way a lite on two edges spans; absent: the longer side is taken as the
 *     span, which is the worse, with a finding; not given with four edges
 * @param glass what the lite is made of
 * @param load the design pressure, both signs, and its duration
 * @param breakageProbability probability of breakage at the load resistance; absent: 0.008, the
 *     practice's for vertical glass; other values for annealed glass only
 * @param centerDeflectionLimit greatest deflection of the middle of any pane that the caller
 *     accepts, m; absent: none
 * @param sealedUnit how an insulating unit was sealed and where it stands, for the sealed-cavity
 *     model beside the practice; absent: the model is not run
 * @param bite depth by which the framing covers the edge of the glass, m; absent: what deflection
 *     leaves of it is not checked
 * @param minimumBite least bite that must be left while the glass is deflected, m; needs bite
 * @param edgeSupport how far the framing under each held edge bends; absent: not checked, with a
 *     finding
 */
public record GlassRequest(
        Practice practice,
        @Measured(
                        value = Dimension.LENGTH,
                        sign = Measured.Sign.POSITIVE,
                        min = GlassRequest.MIN_SIDE,
                        max = GlassRequest.MAX_SIDE)
                double width,
        @Measured(
                        value = Dimension.LENGTH,
                        sign = Measured.Sign.POSITIVE,
                        min = GlassRequest.MIN_SIDE,
                        max = GlassRequest.MAX_SIDE)
                double height,
        SupportedEdges supportedEdges,
        @Nullable SpanDirection spanDirection,
        GlassBuildUp glass,
        GlassLoad load,
        @DecimalMin(value = "0.0001", message = "must be at least 0.0001")
                @DecimalMax(value = "0.1", message = "must be at most 0.1")
                @Nullable Double breakageProbability,
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.POSITIVE)
                @Nullable Double centerDeflectionLimit,
        @Nullable SealedUnit sealedUnit,
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.POSITIVE) @Nullable Double bite,
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.NOT_NEGATIVE)
                @Nullable Double minimumBite,
        @Nullable EdgeSupport edgeSupport) {

    /** Smallest side accepted, m. */
    static final double MIN_SIDE = 0.1;

    /** Largest side accepted, m: beyond any sheet that is made. */
    static final double MAX_SIDE = 20;

    private static final double ROUNDING = 1e-6; // K

    /** Refuses durations, probabilities and temperatures for which there is no rule. */
    public GlassRequest {
        Faults faults = new Faults();
        double duration = load.durationOrShort();
        boolean treated =
                glass.panes().stream()
                        .anyMatch(pane -> pane.heatTreatment() != HeatTreatment.ANNEALED);
        if (treated) {
            faults.require(
                    LoadDuration.isShort(duration) || LoadDuration.isLong(duration),
                    "/load/duration",
                    "must be 3 s or 30 d where a pane is heat-treated: the duration law holds for"
                            + " annealed glass only");
            faults.require(
                    breakageProbability == null || breakageProbability == GlassModel.PROBABILITY,
                    "/breakageProbability",
                    "must be 0.008 where a pane is heat-treated: other probabilities can be found"
                            + " for annealed glass only");
        }
        faults.require(
                supportedEdges == SupportedEdges.FOUR || supportedEdges == SupportedEdges.TWO,
                "/supportedEdges",
                "must be FOUR, or TWO for two opposite edges: for glass on "
                        + (supportedEdges == SupportedEdges.ONE ? "one edge" : "three edges")
                        + " the practice has charts of its own, and this check has no plate"
                        + " solution; it needs an analysis of its own");
        faults.require(
                spanDirection == null || supportedEdges == SupportedEdges.TWO,
                "/spanDirection",
                "belongs to a lite on two edges");
        faults.require(
                minimumBite == null || bite != null,
                "/bite",
                "is needed where minimumBite is given");
        if (sealedUnit != null) {
            faults.require(
                    supportedEdges == SupportedEdges.FOUR,
                    "/sealedUnit",
                    "needs four held edges: along a free edge the spacer couples the panes, which"
                            + " the sealed-cavity model does not have");
            sealedUnit.fits(glass, "/sealedUnit", faults);
        }
        edges(supportedEdges, spanDirection, edgeSupport, faults);
        List<Pane> panes = glass.panes();
        for (int i = 0; i < panes.size(); i++) {
            Interlayer interlayer = panes.get(i).interlayer();
            if (interlayer != null) {
                if (interlayer.shearModulus() != null && sealedUnit != null) {
                    faults.require(
                            sealedUnit.service().stream()
                                    .allMatch(climate -> climate.duration() == duration),
                            panePointer(i) + "/interlayer/shearModulus",
                            "is the film's for the duration of the design load, and the climates of"
                                    + " sealedUnit last otherwise; leave it out, so that the table"
                                    + " is used for each duration, or leave sealedUnit out");
                }
                interlayer(interlayer, duration, panePointer(i) + "/interlayer", faults);
            }
        }
        faults.throwIfAny();
    }

    /** Pointer to a pane. */
    static String panePointer(int index) {
        return Pointer.child("/glass/panes", index);
    }

    private static void interlayer(
            Interlayer interlayer, double duration, String pointer, Faults faults) {
        if (interlayer.shearModulus() != null) {
            return;
        }
        double coldest = InterlayerModulus.coldest(interlayer.material());
        double hottest = InterlayerModulus.hottest(interlayer.material());
        faults.require(
                temperature(interlayer) <= hottest + ROUNDING,
                pointer + "/temperature",
                ("has no shear modulus on record for %s above %.0f degC; give its maker's as"
                                + " shearModulus")
                        .formatted(interlayer.material(), hottest - 273.15));
        faults.require(
                temperature(interlayer) >= coldest - ROUNDING,
                pointer + "/temperature",
                ("has no shear modulus on record for %1$s below %2$.0f degC; give %2$.0f degC, at"
                                + " which it is softer and the answer on the safe side, or its"
                                + " maker's as shearModulus")
                        .formatted(interlayer.material(), coldest - 273.15));
        faults.require(
                duration <= InterlayerModulus.LONGEST,
                "/load/duration",
                "must be at most 10 years with laminated glass: no shear modulus is on record"
                        + " beyond; give the maker's as shearModulus");
    }

    private static void edges(
            SupportedEdges edges,
            @Nullable SpanDirection direction,
            @Nullable EdgeSupport support,
            Faults faults) {
        if (support == null || edges != SupportedEdges.TWO) {
            return;
        }
        faults.require(
                direction != null,
                "/spanDirection",
                "must be given where edgeSupport is: it says which two edges are held");
        for (LiteEdge edge : LiteEdge.values()) {
            faults.require(
                    direction == null || support.of(edge) == null || isHeld(edge, direction),
                    EdgeSupport.pointer(edge),
                    "belongs to an edge that is free: the lite spans "
                            + (direction == SpanDirection.VERTICAL
                                    ? "from head to sill"
                                    : "from jamb to jamb"));
        }
    }

    /** Whether an edge is one of the two between which a lite spans in a direction. */
    private static boolean isHeld(LiteEdge edge, SpanDirection direction) {
        return edge.isHorizontal() == (direction == SpanDirection.VERTICAL);
    }

    /** Whether an edge is held. */
    boolean isHeld(LiteEdge edge) {
        return supportedEdges == SupportedEdges.FOUR || isHeld(edge, spanning());
    }

    /** Temperature of an interlayer, K: as given, or the practice's. */
    static double temperature(Interlayer interlayer) {
        Double given = interlayer.temperature();
        return given == null ? InterlayerModulus.USUAL_TEMPERATURE : given;
    }

    /** Probability of breakage at the load resistance. */
    double probability() {
        return breakageProbability == null ? GlassModel.PROBABILITY : breakageProbability;
    }

    /** Which way a lite on two edges spans: as given, or the longer way. */
    private SpanDirection spanning() {
        if (spanDirection != null) {
            return spanDirection;
        }
        return height >= width ? SpanDirection.VERTICAL : SpanDirection.HORIZONTAL;
    }

    /** Span of a lite on two edges, m. */
    double span() {
        return spanning() == SpanDirection.VERTICAL ? height : width;
    }

    GlassRequest withGlass(GlassBuildUp other) {
        return new GlassRequest(
                practice,
                width,
                height,
                supportedEdges,
                spanDirection,
                other,
                load,
                breakageProbability,
                centerDeflectionLimit,
                sealedUnit,
                bite,
                minimumBite,
                edgeSupport);
    }

    GlassRequest withSize(double otherWidth, double otherHeight) {
        return new GlassRequest(
                practice,
                otherWidth,
                otherHeight,
                supportedEdges,
                spanDirection,
                glass,
                load,
                breakageProbability,
                centerDeflectionLimit,
                sealedUnit,
                bite,
                minimumBite,
                edgeSupport);
    }

    GlassRequest withBite(double otherBite) {
        return new GlassRequest(
                practice,
                width,
                height,
                supportedEdges,
                spanDirection,
                glass,
                load,
                breakageProbability,
                centerDeflectionLimit,
                sealedUnit,
                otherBite,
                minimumBite,
                edgeSupport);
    }
}
