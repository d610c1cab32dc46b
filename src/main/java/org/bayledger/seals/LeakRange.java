package org.bayledger.seals;

import java.util.List;
import org.bayledger.check.Trace;
import org.bayledger.mechanics.Fluid;
import org.bayledger.mechanics.SlotFlow;
import org.bayledger.quantity.Dimension;

/**
 * What passes a gap, in m3/s: the rate that counts and between what it is expected to lie.
 *
 * @param low low end
 * @param governing the rate that is reported and held against limits
 * @param high high end
 */
record LeakRange(double low, double governing, double high) {

    /** Sharp edges, viscous jet: low end for an orifice (textbooks, from memory). */
    private static final double LEAST_COEFFICIENT = 0.5;

    /** Jet that has touched the walls again, for slots a few gaps deep (textbooks, from memory). */
    private static final double GREATEST_COEFFICIENT = 0.8;

    /** Share of the length that is open at the low end; common practice, no source. */
    private static final double LEAST_OPEN = 0.5;

    /** Way through the joint in bead depths at the low end; common practice, no source. */
    private static final double GREATEST_DEPTH = 3;

    static final LeakRange NONE = new LeakRange(0, 0, 0);

    /** What the ends rest on. */
    static final List<String> ASSUMPTIONS =
            List.of(
                    "Reported rate: discharge coefficient 0.61, a way through the joint of one bead"
                            + " depth, the whole length open; the smaller of orifice and slot flow.",
                    "Low end: discharge coefficient 0.5, a way of three bead depths, half of the"
                            + " length open or wetted, friction and exit loss one after the other"
                            + " (coefficient from textbooks, from memory; the rest common practice,"
                            + " no source).",
                    "High end: discharge coefficient 0.8, else as the reported rate (textbooks, from"
                            + " memory).",
                    "The gap is taken as given; slot flow grows with its cube.");

    /**
     * What passes a slot.
     *
     * @param gap m
     * @param length m
     * @param depth way through it, m
     * @param pressure Pa
     * @param fluid what flows
     */
    static LeakRange of(double gap, double length, double depth, double pressure, Fluid fluid) {
        double viscous = SlotFlow.viscous(gap, length, depth, pressure, fluid);
        return new LeakRange(
                SlotFlow.series(
                        LEAST_COEFFICIENT,
                        gap,
                        LEAST_OPEN * length,
                        GREATEST_DEPTH * depth,
                        pressure,
                        fluid),
                SlotFlow.upperBound(gap, length, depth, pressure, fluid),
                Math.min(
                        viscous,
                        SlotFlow.orifice(GREATEST_COEFFICIENT, gap * length, pressure, fluid)));
    }

    /** At most what is supplied, m3/s. */
    LeakRange atMost(double supply) {
        return new LeakRange(
                Math.min(low, supply), Math.min(governing, supply), Math.min(high, supply));
    }

    LeakRange plus(LeakRange other) {
        return new LeakRange(low + other.low, governing + other.governing, high + other.high);
    }

    /** Gives both ends to a trace. */
    void trace(String symbol, String fluid, Dimension dimension, Trace trace) {
        trace.detail(
                        symbol + ",low",
                        "low end of the range of " + fluid,
                        dimension,
                        low,
                        "2 / (1/Qv + sqrt(1/Qv^2 + 4/Qo^2)) with Cd 0.5, L/2 and 3 t",
                        "friction and exit loss in series, textbooks (from memory)")
                .detail(
                        symbol + ",high",
                        "high end of the range of " + fluid,
                        dimension,
                        high,
                        "smaller of Cd A sqrt(2 dp / rho) with Cd 0.8 and L g^3 dp / (12 mu t)",
                        "textbooks (from memory)");
    }

    /** Low and high end as quantities, each times a factor. */
    QuantityRange range(Dimension dimension, double factor) {
        return QuantityRange.of(dimension, low * factor, high * factor);
    }
}
