package org.bayledger.glass;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;
import java.util.Collections;
import java.util.List;
import org.bayledger.check.Faults;
import org.bayledger.check.Measured;
import org.bayledger.check.Pointer;
import org.bayledger.glazing.GlassBuildUp;
import org.bayledger.glazing.HeatTreatment;
import org.bayledger.mechanics.StandardAtmosphere;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * How an insulating unit was sealed and in what climates it will stand.
 *
 * @param sealed the air when the cavities were closed
 * @param service climates in service, such as a cold winter day under high pressure and a hot
 *     summer day under low pressure
 */
public record SealedUnit(
        SealedUnit.Sealing sealed, @Size(min = 1, max = 10) List<SealedUnit.Climate> service) {

    private static final double LOWEST = -500;
    private static final double HIGHEST = 6000;
    private static final double LEAST_PRESSURE = 40e3;
    private static final double GREATEST_PRESSURE = 115e3;
    private static final double COLDEST = 213.15;
    private static final double HOTTEST = 373.15;

    public SealedUnit {
        service = List.copyOf(service);
    }

    /**
     * The air when the cavities were closed.
     *
     * @param altitude height above sea level, m, for the pressure of the standard atmosphere there;
     *     this or pressure
     * @param pressure absolute pressure, Pa; this or altitude
     * @param temperature of the gas in the cavities, K
     */
    public record Sealing(
            @Measured(value = Dimension.DISTANCE, min = LOWEST, max = HIGHEST)
                    @Nullable Double altitude,
            @Measured(
                            value = Dimension.PRESSURE,
                            sign = Measured.Sign.POSITIVE,
                            min = LEAST_PRESSURE,
                            max = GREATEST_PRESSURE)
                    @Nullable Double pressure,
            @Measured(value = Dimension.TEMPERATURE, min = COLDEST, max = HOTTEST)
                    double temperature) {

        public Sealing {
            requireOne(altitude, pressure);
        }

        double absolutePressure() {
            return absolute(altitude, pressure);
        }
    }

    /**
     * A climate in service.
     *
     * @param name what to call it in the answer
     * @param altitude height of the building's lite above sea level, m, for the pressure of the
     *     standard atmosphere there; this or pressure
     * @param pressure absolute barometric pressure there, Pa; this or altitude
     * @param cavityTemperatures temperature of the gas in each cavity, outermost first, K; one for
     *     all, or one for each
     * @param duration how long the climate lasts, s; with heat-treated glass at most 30 d
     */
    public record Climate(
            @NotBlank @Size(max = 80) String name,
            @Measured(value = Dimension.DISTANCE, min = LOWEST, max = HIGHEST)
                    @Nullable Double altitude,
            @Measured(
                            value = Dimension.PRESSURE,
                            sign = Measured.Sign.POSITIVE,
                            min = LEAST_PRESSURE,
                            max = GREATEST_PRESSURE)
                    @Nullable Double pressure,
            @Measured(value = Dimension.TEMPERATURE, min = COLDEST, max = HOTTEST)
                    @Size(min = 1, max = 2)
                    List<Double> cavityTemperatures,
            @Measured(
                            value = Dimension.TIME,
                            sign = Measured.Sign.POSITIVE,
                            min = LoadDuration.SHORT,
                            max = LoadDuration.LONGEST)
                    double duration) {

        public Climate {
            cavityTemperatures = List.copyOf(cavityTemperatures);
            requireOne(altitude, pressure);
        }

        double absolutePressure() {
            return absolute(altitude, pressure);
        }

        /** Temperature of each of so many cavities, K. */
        List<Double> temperatures(int cavities) {
            return cavityTemperatures.size() == cavities
                    ? cavityTemperatures
                    : Collections.nCopies(cavities, cavityTemperatures.get(0));
        }
    }

    private static void requireOne(@Nullable Double altitude, @Nullable Double pressure) {
        Faults faults = new Faults();
        faults.require(
                (altitude == null) != (pressure == null),
                "/altitude",
                "give either altitude or pressure, one of the two");
        faults.throwIfAny();
    }

    private static double absolute(@Nullable Double altitude, @Nullable Double pressure) {
        if (pressure != null) {
            return pressure;
        }
        return StandardAtmosphere.pressure(altitude == null ? 0 : altitude);
    }

    /**
     * Collects what does not fit the glass.
     *
     * @param pointer to this unit
     */
    public void fits(GlassBuildUp glass, String pointer, Faults faults) {
        int cavities = glass.panes().size() - 1;
        faults.require(cavities > 0, pointer, "belongs to glass with a sealed cavity");
        boolean treated =
                glass.panes().stream()
                        .anyMatch(pane -> pane.heatTreatment() != HeatTreatment.ANNEALED);
        boolean laminated = glass.panes().stream().anyMatch(pane -> pane.isLaminated());
        for (int i = 0; i < service.size(); i++) {
            Climate climate = service.get(i);
            String at = Pointer.child(pointer + "/service", i);
            int given = climate.cavityTemperatures().size();
            faults.require(
                    cavities <= 0 || given == 1 || given == cavities,
                    at + "/cavityTemperatures",
                    "must be one for all cavities, or one for each");
            faults.require(
                    !treated || climate.duration() <= LoadDuration.LONG * (1 + 1e-9),
                    at + "/duration",
                    "must be at most 30 d where a pane is heat-treated: the practice has no longer"
                            + " duration for it");
            faults.require(
                    !laminated || climate.duration() <= InterlayerModulus.LONGEST,
                    at + "/duration",
                    "must be at most 10 years with laminated glass: no shear modulus is on record"
                            + " beyond");
        }
    }
}
