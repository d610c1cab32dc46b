package org.bayledger.seals;

import org.bayledger.check.Faults;
import org.bayledger.check.Measured;
import org.bayledger.check.Measured.Sign;
import org.bayledger.mechanics.StandardAtmosphere;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * What drives air and water through the wall beside the wind. Levels are all above one datum, the
 * foot of the building. Pressures are positive toward the wall and negative away from it.
 *
 * @param outsideTemperature temperature of the air outside, K; with insideTemperature
 * @param insideTemperature temperature of the air inside, K; with outsideTemperature
 * @param buildingHeight height over which the air inside is connected, m
 * @param neutralLevel level at which stack effect is nil, m; 0.3 to 0.7 of buildingHeight,
 *     whichever is worse, where absent (ASHRAE Handbook of Fundamentals, from memory)
 * @param sillLevel level of the frame's sill, m; in a review that of the bay where absent
 * @param draftCoefficient share of the stack effect that falls across the outer wall, the rest
 *     being taken by floors and shafts, over 0 and at most 1; 1 where absent
 * @param mechanicalPressure difference of pressure that fans make across the wall, Pa: positive
 *     where the building is held under suction, negative where it is pressurized; none where absent
 * @param windWithRain pressure of the wind that comes with driving rain, Pa; the water test
 *     pressure where absent
 * @param siteElevation height of the site above sea level, m; sea level, the denser air, where
 *     absent
 */
public record AirPressures(
        @Measured(value = Dimension.TEMPERATURE, min = 213.15, max = 333.15)
                @Nullable Double outsideTemperature,
        @Measured(value = Dimension.TEMPERATURE, min = 213.15, max = 333.15)
                @Nullable Double insideTemperature,
        @Measured(value = Dimension.DISTANCE, sign = Sign.POSITIVE, max = 1000)
                @Nullable Double buildingHeight,
        @Measured(value = Dimension.DISTANCE, sign = Sign.NOT_NEGATIVE, max = 1000)
                @Nullable Double neutralLevel,
        @Measured(value = Dimension.DISTANCE, sign = Sign.NOT_NEGATIVE, max = 1000)
                @Nullable Double sillLevel,
        @Measured(value = Dimension.NONE, sign = Sign.POSITIVE, max = 1)
                @Nullable Double draftCoefficient,
        @Measured(value = Dimension.PRESSURE, min = -500, max = 500)
                @Nullable Double mechanicalPressure,
        @Measured(value = Dimension.PRESSURE, sign = Sign.NOT_NEGATIVE, max = 10_000)
                @Nullable Double windWithRain,
        @Measured(value = Dimension.DISTANCE, min = -500, max = 6000)
                @Nullable Double siteElevation) {

    public AirPressures {
        Faults faults = new Faults();
        faults.require(
                (outsideTemperature == null) == (insideTemperature == null),
                outsideTemperature == null ? "/outsideTemperature" : "/insideTemperature",
                "is needed with the other one: stack effect follows from both temperatures");
        faults.require(
                outsideTemperature == null
                        || insideTemperature == null
                        || neutralLevel != null
                        || buildingHeight != null,
                "/neutralLevel",
                "is needed for stack effect; or give buildingHeight, from which the level is taken"
                        + " as 0.3 to 0.7");
        above(faults, "/neutralLevel", neutralLevel, buildingHeight);
        above(faults, "/sillLevel", sillLevel, buildingHeight);
        faults.throwIfAny();
    }

    private static void above(
            Faults faults, String pointer, @Nullable Double level, @Nullable Double height) {
        faults.require(
                level == null || height == null || level <= height,
                pointer,
                "must not lie above buildingHeight");
    }

    double mechanicalPressureOrNone() {
        return mechanicalPressure == null ? 0 : mechanicalPressure;
    }

    /** Pressure of the air at the site, Pa. */
    double atmosphere() {
        return StandardAtmosphere.pressure(siteElevation == null ? 0 : siteElevation);
    }

    AirPressures withSillLevel(double level) {
        return new AirPressures(
                outsideTemperature,
                insideTemperature,
                buildingHeight,
                neutralLevel,
                level,
                draftCoefficient,
                mechanicalPressure,
                windWithRain,
                siteElevation);
    }
}
