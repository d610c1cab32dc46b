package org.bayledger.seals;

import static org.bayledger.quantity.Constants.STANDARD_GRAVITY;

import org.bayledger.check.Trace;
import org.bayledger.mechanics.Fluid;
import org.bayledger.mechanics.SlotFlow;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * Water through weeps.
 *
 * <pre>
 * hc = gamma P / (rho g A)                held back by surface tension (round: 4 gamma / (rho g d))
 * ho = p_outer / (rho g)                  held back by the pressure left on the outer line
 * Q1 = Cd A sqrt(2 g (H - hc - ho))       one weep under the head H
 * H  = hc + ho + (Q / (n Cd A))^2 / (2 g) n weeps that drain Q
 * </pre>
 *
 * Source: hydrostatics, Torricelli, Young and Laplace (textbooks, from memory). Limits: water that
 * covers the weeps, best weeps much smaller than the head; Cd 0.5, the low end, since less is then
 * drained.
 */
final class WeepFlow {

    private static final double COEFFICIENT = 0.5;

    /** What a number of weeps may exceed a whole number by and still be it. */
    private static final double ROUNDING = 1e-9;

    private static final String TEXTBOOK = "textbooks of fluid mechanics (from memory)";

    private WeepFlow() {}

    /**
     * The weeps' answer.
     *
     * @param weeps the weeps
     * @param available head that may stand over them, m
     * @param outerPressure pressure left on the outer line, Pa
     * @param trace receives the steps
     */
    static WeepSizing of(Weeps weeps, double available, double outerPressure, Trace trace) {
        double weight = Fluid.WATER.density() * STANDARD_GRAVITY;
        double tension = Fluid.WATER_SURFACE_TENSION;
        double area = weeps.area();
        double retained = SlotFlow.rimThreshold(weeps.perimeter(), area, tension) / weight;
        double opposing = outerPressure / weight;
        double speed = weeps.flow() / (weeps.count() * COEFFICIENT * area);
        double required = retained + opposing + speed * speed / (2 * STANDARD_GRAVITY);
        double net = Math.max(0, available - retained - opposing);
        double capacity = COEFFICIENT * area * Math.sqrt(2 * STANDARD_GRAVITY * net);
        trace.detail(
                        "hc",
                        "head that a weep holds back by surface tension",
                        Dimension.LENGTH,
                        retained,
                        "gamma P / (rho g A), gamma = 0.0728 N/m",
                        TEXTBOOK)
                .detail(
                        "ho",
                        "head that the pressure left on the outer line holds back",
                        Dimension.LENGTH,
                        opposing,
                        "p_outer / (rho g)",
                        "hydrostatics")
                .step(
                        "Q1",
                        "water that one weep drains",
                        Dimension.WATER_RATE,
                        capacity,
                        "Cd A sqrt(2 g (H - hc - ho)), Cd 0.5",
                        TEXTBOOK)
                .step(
                        "Hreq",
                        "head at which the weeps drain the flow",
                        Dimension.LENGTH,
                        required,
                        "hc + ho + (Q / (n Cd A))^2 / (2 g)",
                        TEXTBOOK);
        return new WeepSizing(
                Quantity.of(Dimension.SECTION_AREA, area),
                Quantity.of(Dimension.LENGTH, available),
                Quantity.of(Dimension.LENGTH, retained),
                Quantity.of(Dimension.LENGTH, opposing),
                Quantity.of(Dimension.LENGTH, required),
                Quantity.of(Dimension.WATER_RATE, capacity),
                count(weeps.flow(), capacity),
                retained >= weeps.across(),
                Quantity.of(Dimension.LENGTH, Math.sqrt(4 * tension / weight)),
                Quantity.of(Dimension.LENGTH, Math.sqrt(2 * tension / weight)));
    }

    private static @Nullable Integer count(double flow, double capacity) {
        double count = Math.ceil(flow / capacity * (1 - ROUNDING));
        return count <= Weeps.MOST ? (Integer) (int) count : null;
    }
}
