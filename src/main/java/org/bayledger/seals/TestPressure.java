package org.bayledger.seals;

import org.bayledger.check.Trace;
import org.bayledger.mechanics.Fluid;
import org.bayledger.mechanics.SlotFlow;
import org.bayledger.quantity.Dimension;

/**
 * The pressure of the water test and the height of water that it holds.
 *
 * <p>A share of the positive design pressure at allowable-stress level, not below the floor and not
 * above the cap (curtain-wall specification practice, from memory; ASTM E331 is the method in the
 * laboratory, E1105 on site). Tests on site are run at two thirds of it (practice, from memory).
 *
 * @param laboratory pressure of the laboratory test, Pa
 * @param field pressure of a test on site, Pa
 * @param head height of water that the laboratory pressure holds, m
 * @param capped whether the cap governs
 */
record TestPressure(double laboratory, double field, double head, boolean capped) {

    /**
     * The pressure for a design pressure.
     *
     * @param positive positive design pressure at allowable-stress level, Pa
     * @param rule share, floor and cap
     * @param trace receives the steps
     */
    static TestPressure of(double positive, WaterTest rule, Trace trace) {
        String practice = rule.practiceOrDefault().source();
        double share = rule.shareOrDefault() * positive;
        double floor = rule.floorOrDefault();
        double cap = rule.capOrDefault();
        double laboratory = Math.min(cap, Math.max(floor, share));
        double field = laboratory * 2 / 3;
        double head = SlotFlow.head(laboratory, Fluid.WATER.density());
        trace.detail(
                        "s",
                        "share of the positive design pressure",
                        Dimension.NONE,
                        rule.shareOrDefault(),
                        rule.share() == null ? "default" : "input",
                        practice)
                .detail(
                        "pmin",
                        "floor of the test pressure",
                        Dimension.PRESSURE,
                        floor,
                        rule.floor() == null ? "default" : "input",
                        practice)
                .detail(
                        "pmax",
                        "cap of the test pressure",
                        Dimension.PRESSURE,
                        cap,
                        rule.cap() == null ? "default" : "input",
                        practice)
                .step(
                        "pt",
                        "water test pressure",
                        Dimension.PRESSURE,
                        laboratory,
                        "min(pmax, max(pmin, s p+))",
                        practice)
                .detail(
                        "pf",
                        "water test pressure on site",
                        Dimension.PRESSURE,
                        field,
                        "2/3 pt",
                        practice)
                .step(
                        "h",
                        "height of water that pt holds",
                        Dimension.LENGTH,
                        head,
                        "pt / (rho g), rho = 998.2 kg/m3, g = 9.80665 m/s2",
                        "hydrostatics");
        return new TestPressure(laboratory, field, head, share > cap);
    }
}
