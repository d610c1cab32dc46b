package org.bayledger.seals;

import static org.bayledger.quantity.Constants.INCH;

import org.bayledger.check.Trace;
import org.bayledger.mechanics.Fluid;
import org.bayledger.mechanics.SlotFlow;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * Water and air through one unsealed joint, taken for a slot of the joint's gap and length and as
 * deep as the bead that is missing.
 *
 * <p>The flow is the smaller of orifice and viscous slot flow ({@link SlotFlow}); that of water is
 * never more than the spray supplies on the wetted area. Below the capillary threshold the same
 * formula stands for a gap that wicking has wetted on both sides: there is then no curved surface
 * left to hold the water back, so the flow falls with the cube of the gap but is never zero.
 */
final class UnsealedFlow {

    /** 1/32 in: a gap that the eye hardly sees; an example, without source. */
    static final double ILLUSTRATIVE_GAP = INCH / 32;

    private static final String FLOW = "smaller of Cd A sqrt(2 dp / rho) and L g^3 dp / (12 mu t)";
    private static final String TEXTBOOK = "fluid mechanics textbooks (from memory)";

    private UnsealedFlow() {}

    /**
     * What passes.
     *
     * @param request the frame
     * @param testPressure water test pressure, Pa; null where not known
     * @param trace receives the steps
     */
    static UnsealedJoint of(SealsRequest request, @Nullable Double testPressure, Trace trace) {
        SealDetails details = request.details();
        boolean illustrative = details.missedJoint() == null;
        MissedJoint joint =
                details.missedJoint() == null
                        ? new MissedJoint(
                                ILLUSTRATIVE_GAP,
                                details.beadLengthsOrDefault().of(JointType.HORIZONTAL_TO_VERTICAL))
                        : details.missedJoint();
        double depth = details.bead().depth();
        WaterTest rule = details.waterTestOrDefault();
        double wetted = details.wettedArea() == null ? request.area() : details.wettedArea();
        double supply = rule.sprayRateOrDefault() * wetted;
        AirLeakage air = details.airLeakageOrDefault();
        double threshold = SlotFlow.capillaryThreshold(joint.gap(), Fluid.WATER_SURFACE_TENSION);

        String origin =
                illustrative ? "illustrative example, outside the verdict" : "input, missedJoint";
        trace.step("g", "gap of the unsealed joint", Dimension.LENGTH, joint.gap(), origin, origin)
                .step("L", "its length", Dimension.LENGTH, joint.length(), origin, origin)
                .step("t", "way through it", Dimension.LENGTH, depth, "bead depth", "assumption")
                .detail(
                        "pc",
                        "capillary threshold",
                        Dimension.PRESSURE,
                        threshold,
                        "2 gamma / g, gamma = 0.0728 N/m",
                        TEXTBOOK)
                .detail(
                        "Qs",
                        "water that the spray supplies",
                        Dimension.WATER_RATE,
                        supply,
                        details.wettedArea() == null
                                ? "spray rate x area of the whole frame"
                                : "spray rate x wettedArea",
                        "spray of ASTM E331 and E1105, 5 gal/ft2/h unless given (from memory)");
        Quantity water = null;
        FlowRegime waterRegime = null;
        if (testPressure != null) {
            double flow =
                    SlotFlow.upperBound(
                            joint.gap(), joint.length(), depth, testPressure, Fluid.WATER);
            waterRegime =
                    flow > supply
                            ? FlowRegime.SPRAY_SUPPLY
                            : testPressure < threshold && flow > 0
                                    ? FlowRegime.WICKING
                                    : regime(joint, depth, testPressure, Fluid.WATER);
            water = Quantity.of(Dimension.WATER_RATE, Math.min(flow, supply));
            trace.step(
                    "Qw",
                    "water through the unsealed joint at the water test pressure",
                    Dimension.WATER_RATE,
                    water.si(),
                    FLOW
                            + ", at most the spray's supply; Cd 0.61, rho 998.2 kg/m3, mu 1.002e-3"
                            + " Pa s",
                    TEXTBOOK);
        }
        double airFlow =
                SlotFlow.upperBound(joint.gap(), joint.length(), depth, air.pressure(), Fluid.AIR);
        double allowedAir = air.limit() * request.area();
        trace.step(
                        "Qa",
                        "air through the unsealed joint at the pressure of the air-leakage limit",
                        Dimension.AIR_RATE,
                        airFlow,
                        FLOW + "; Cd 0.61, rho 1.204 kg/m3, mu 1.813e-5 Pa s",
                        TEXTBOOK)
                .detail(
                        "Qa,lim",
                        "air that the whole frame may let through",
                        Dimension.AIR_RATE,
                        allowedAir,
                        "limit on air leakage x area of the frame",
                        "specification practice unless given; method ASTM E283 (from memory)");
        LeakRange waterRange =
                testPressure == null
                        ? null
                        : LeakRange.of(
                                        joint.gap(),
                                        joint.length(),
                                        depth,
                                        testPressure,
                                        Fluid.WATER)
                                .atMost(supply);
        if (waterRange != null) {
            waterRange.trace("Qw", "water", Dimension.WATER_RATE, trace);
        }
        LeakRange airRange =
                LeakRange.of(joint.gap(), joint.length(), depth, air.pressure(), Fluid.AIR);
        airRange.trace("Qa", "air", Dimension.AIR_RATE, trace);
        return new UnsealedJoint(
                Quantity.of(Dimension.LENGTH, joint.gap()),
                Quantity.of(Dimension.LENGTH, joint.length()),
                illustrative,
                Quantity.of(Dimension.LENGTH, depth),
                testPressure == null ? null : Quantity.of(Dimension.PRESSURE, testPressure),
                water,
                waterRegime,
                Quantity.of(Dimension.PRESSURE, threshold),
                Quantity.of(Dimension.AREA, wetted),
                Quantity.of(Dimension.WATER_RATE, supply),
                Quantity.of(Dimension.WATER_RATE, rule.allowedWaterOrDefault()),
                Quantity.of(Dimension.PRESSURE, air.pressure()),
                Quantity.of(Dimension.AIR_RATE, airFlow),
                regime(joint, depth, air.pressure(), Fluid.AIR),
                Quantity.of(Dimension.AIR_RATE, allowedAir),
                waterRange == null ? null : waterRange.range(Dimension.WATER_RATE, 1),
                airRange.range(Dimension.AIR_RATE, 1),
                LeakRange.ASSUMPTIONS);
    }

    private static FlowRegime regime(MissedJoint joint, double depth, double dp, Fluid fluid) {
        if (joint.length() == 0) {
            return FlowRegime.SEALED;
        }
        double orifice =
                SlotFlow.orifice(SlotFlow.SHARP_EDGED, joint.gap() * joint.length(), dp, fluid);
        double viscous = SlotFlow.viscous(joint.gap(), joint.length(), depth, dp, fluid);
        return orifice < viscous ? FlowRegime.ORIFICE : FlowRegime.VISCOUS_SLOT;
    }
}
