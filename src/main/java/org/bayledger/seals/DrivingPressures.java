package org.bayledger.seals;

import org.bayledger.check.AllowableLoad;
import org.bayledger.check.Trace;
import org.bayledger.mechanics.Fluid;
import org.bayledger.mechanics.SlotFlow;
import org.bayledger.mechanics.StackEffect;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * Adds up wind, stack effect and fans.
 *
 * <p>Stack effect at a level z, toward the inside: c (rho_o - rho_i) g (zn - z), with the neutral
 * level zn and the draft coefficient c ({@link StackEffect}). It is taken at sill and head of the
 * frame, whichever is worse, since it grows evenly with height.
 */
final class DrivingPressures {

    /** Neutral levels of tall buildings, as shares of their height. */
    private static final double LEAST_NEUTRAL = 0.3;

    private static final double GREATEST_NEUTRAL = 0.7;

    /** Least draft coefficient measured in office buildings. */
    private static final double LEAST_DRAFT = 0.63;

    private static final String ASHRAE =
            "ASHRAE Handbook of Fundamentals, infiltration (from memory)";

    private DrivingPressures() {}

    /** Stack effect over the frame, Pa, positive toward the inside. */
    private record Stack(double inward, double outward, double leastInward) {

        static final Stack NONE = new Stack(0, 0, 0);
    }

    /**
     * The sum.
     *
     * @param air what was given
     * @param load design wind pressure
     * @param testPressure water test pressure, Pa; null where not known
     * @param frameHeight height of the frame, m
     * @param trace receives the steps
     * @return null where stack effect needs a level that was not given
     */
    static @Nullable DrivingPressure of(
            AirPressures air,
            AllowableLoad load,
            @Nullable Double testPressure,
            double frameHeight,
            Trace trace) {
        Double outside = air.outsideTemperature();
        Double inside = air.insideTemperature();
        Stack stack = null;
        if (outside != null && inside != null) {
            if (air.sillLevel() == null) {
                return null;
            }
            stack = stack(air, outside, inside, air.sillLevel(), frameHeight, trace);
        }
        Stack counted = stack == null ? Stack.NONE : stack;
        double fans = air.mechanicalPressureOrNone();
        trace.step(
                "pm",
                "pressure of fans, positive toward the inside",
                Dimension.PRESSURE,
                fans,
                air.mechanicalPressure() == null ? "none given" : "input",
                "input");
        Double positive = load.positive();
        Double negative = load.negative();
        Double rain = air.windWithRain() == null ? testPressure : air.windWithRain();
        double inward = Math.max(0, counted.inward()) + Math.max(0, fans);
        double outward = Math.min(0, counted.outward()) + Math.min(0, fans);
        double least = Math.max(0, counted.leastInward()) + Math.max(0, fans);
        if (rain != null) {
            trace.step(
                    "pd",
                    "pressure that drives water",
                    Dimension.PRESSURE,
                    rain + inward,
                    "wind with rain + max(0, stack effect) + max(0, pm)",
                    air.windWithRain() == null
                            ? "wind with rain taken as the water test pressure"
                            : "windWithRain, input");
        }
        return new DrivingPressure(
                pressure(positive, 0),
                pressure(negative, 0),
                pressure(rain, 0),
                stack == null ? null : Quantity.of(Dimension.PRESSURE, stack.inward()),
                stack == null ? null : Quantity.of(Dimension.PRESSURE, stack.outward()),
                stack == null
                        ? null
                        : QuantityRange.of(Dimension.PRESSURE, stack.leastInward(), stack.inward()),
                Quantity.of(Dimension.PRESSURE, fans),
                pressure(positive, inward),
                pressure(negative, outward),
                pressure(rain, inward),
                rain == null
                        ? null
                        : QuantityRange.of(Dimension.PRESSURE, rain + least, rain + inward),
                rain == null
                        ? null
                        : Quantity.of(
                                Dimension.LENGTH,
                                SlotFlow.head(rain + inward, Fluid.WATER.density())));
    }

    private static @Nullable Quantity pressure(@Nullable Double wind, double added) {
        return wind == null ? null : Quantity.of(Dimension.PRESSURE, wind + added);
    }

    private static Stack stack(
            AirPressures air,
            double outside,
            double inside,
            double sill,
            double frameHeight,
            Trace trace) {
        double atmosphere = air.atmosphere();
        double gradient = StackEffect.gradient(outside, inside, atmosphere);
        double height = air.buildingHeight() == null ? 0 : air.buildingHeight();
        Double given = air.neutralLevel();
        double[] neutrals =
                given == null
                        ? new double[] {LEAST_NEUTRAL * height, GREATEST_NEUTRAL * height}
                        : new double[] {given};
        Double draft = air.draftCoefficient();
        double[] drafts = draft == null ? new double[] {LEAST_DRAFT, 1} : new double[] {draft};
        double inward = Double.NEGATIVE_INFINITY;
        double outward = Double.POSITIVE_INFINITY;
        double least = Double.POSITIVE_INFINITY;
        for (double neutral : neutrals) {
            for (double share : drafts) {
                double atSill = share * gradient * (neutral - sill);
                double atHead = share * gradient * (neutral - sill - frameHeight);
                inward = Math.max(inward, Math.max(atSill, atHead));
                outward = Math.min(outward, Math.min(atSill, atHead));
                least = Math.min(least, Math.max(atSill, atHead));
            }
        }
        trace.detail(
                        "dps/dz",
                        "stack effect of each metre of height",
                        Dimension.PRESSURE,
                        gradient,
                        "(rho_o - rho_i) g, rho = p0 / (R T): %.4f and %.4f kg/m3 at %.0f Pa"
                                .formatted(
                                        StackEffect.density(outside, atmosphere),
                                        StackEffect.density(inside, atmosphere),
                                        atmosphere),
                        "ideal gas, R = 287.05 J/(kg K); hydrostatics")
                .step(
                        "ps",
                        "stack effect toward the inside at sill or head of the frame, the greater",
                        Dimension.PRESSURE,
                        inward,
                        "c dps/dz (zn - z), c = "
                                + (draft == null ? "0.63 to 1, the worse" : draft + " (input)")
                                + ", zn "
                                + (given == null
                                        ? "0.3 to 0.7 of the building's height, the worse"
                                        : "input"),
                        ASHRAE);
        return new Stack(inward, outward, least);
    }
}
