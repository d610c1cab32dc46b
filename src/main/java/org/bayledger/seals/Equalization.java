package org.bayledger.seals;

import org.bayledger.check.Trace;
import org.bayledger.mechanics.Fluid;
import org.bayledger.mechanics.SeriesOpenings;
import org.bayledger.mechanics.SlotFlow;
import org.bayledger.mechanics.StackEffect;
import org.bayledger.mechanics.StandardAtmosphere;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/** Works out a chamber's share of pressure, its vents and its time ({@link SeriesOpenings}). */
final class Equalization {

    /** Temperature of the air that flows into the chamber, K. */
    private static final double TEMPERATURE = 293.15;

    private static final String TEXTBOOK =
            "two openings in series, fluid mechanics textbooks (from memory)";

    private Equalization() {}

    /**
     * The chamber's answer.
     *
     * @param chamber the chamber
     * @param details limit on air leakage and missed joint
     * @param pressure what drives water, Pa; null where not known
     * @param trace receives the steps
     */
    static PressureEqualization of(
            Chamber chamber, SealDetails details, @Nullable Double pressure, Trace trace) {
        double exponent = chamber.flowExponentOrDefault();
        double leak = leakArea(chamber, details.airLeakageOrDefault(), trace);
        double vent = chamber.ventArea();
        double share = SeriesOpenings.outerShare(vent, leak, exponent);
        trace.step(
                "s1",
                "share of the pressure left on the outer line",
                Dimension.NONE,
                share,
                "1 / (1 + (Av/Al)^(1/n)), n = " + exponent,
                TEXTBOOK);
        MissedJoint missed = details.missedJoint();
        Double worse = null;
        if (missed != null && missed.length() > 0) {
            worse =
                    SeriesOpenings.outerShare(
                            vent, leak + missed.gap() * missed.length(), exponent);
            trace.step(
                    "s1'",
                    "the same with the missed joint open into this chamber",
                    Dimension.NONE,
                    worse,
                    "Al + g L in place of Al",
                    TEXTBOOK);
        }
        Double limit = chamber.outerShareLimit();
        Double ratio = limit == null ? null : (Double) SeriesOpenings.areaRatio(limit, exponent);
        if (ratio != null) {
            trace.step(
                    "Av,req",
                    "vent area that keeps the limit",
                    Dimension.SECTION_AREA,
                    ratio * leak,
                    "Al (1/limit - 1)^n",
                    TEXTBOOK);
        }
        Quantity time = null;
        if (chamber.volume() != null && pressure != null && vent > 0) {
            time = Quantity.of(Dimension.TIME, time(chamber.volume(), vent, pressure, details));
            trace.detail(
                    "te",
                    "time in which the chamber follows a step of that pressure",
                    Dimension.TIME,
                    time.si(),
                    "V sqrt(2 rho p) / (p0 Cd Av), isothermal, Cd 0.61, leaks neglected",
                    "ideal gas and orifice equation");
        }
        return new PressureEqualization(
                Quantity.of(Dimension.SECTION_AREA, vent),
                Quantity.of(Dimension.SECTION_AREA, leak),
                vent / leak,
                share,
                worse,
                pressure == null ? null : Quantity.of(Dimension.PRESSURE, pressure),
                pressure == null
                        ? null
                        : Quantity.of(
                                Dimension.PRESSURE, (worse == null ? share : worse) * pressure),
                ratio == null ? null : Quantity.of(Dimension.SECTION_AREA, ratio * leak),
                ratio,
                time);
    }

    private static double leakArea(Chamber chamber, AirLeakage limit, Trace trace) {
        Double given = chamber.leakArea();
        double served = chamber.chamberArea() == null ? 0 : chamber.chamberArea();
        double leak =
                given == null
                        ? limit.limit()
                                * served
                                / SlotFlow.orifice(
                                        SlotFlow.SHARP_EDGED, 1, limit.pressure(), Fluid.AIR)
                        : given;
        trace.step(
                "Al",
                "leak area of the chamber's inner line",
                Dimension.SECTION_AREA,
                leak,
                given == null
                        ? "limit on air leakage x chamberArea / (Cd sqrt(2 dp / rho))"
                        : "input",
                given == null ? "orifice equation, Cd 0.61, rho 1.204 kg/m3" : "input");
        return leak;
    }

    private static double time(double volume, double vent, double pressure, SealDetails details) {
        AirPressures air = details.waterAndAirOrNone().air();
        double atmosphere = air == null ? StandardAtmosphere.SEA_LEVEL : air.atmosphere();
        return SeriesOpenings.equalizationTime(
                volume,
                SlotFlow.SHARP_EDGED,
                vent,
                pressure,
                atmosphere,
                StackEffect.density(TEMPERATURE, atmosphere));
    }
}
