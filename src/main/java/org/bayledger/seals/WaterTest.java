package org.bayledger.seals;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import org.bayledger.check.FaultsException;
import org.bayledger.check.Measured;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * The project's rule for the water test. The defaults are curtain-wall specification practice (from
 * memory); the method of the test is ASTM E331 in the laboratory and ASTM E1105 in the field.
 *
 * @param share share of the positive design pressure, over 0 and at most 1; that of the practice
 *     (0.20) where absent
 * @param floor least test pressure, Pa; that of the practice (300 Pa: 6.24 psf, rounded in
 *     practice) where absent
 * @param cap greatest test pressure, Pa; that of the practice (720 Pa: 15 psf) where absent, many
 *     US specifications say 12 psf
 * @param sprayRate water sprayed on each area of wall in each time, m/s; 5 gal/ft2/h where absent
 * @param allowedWater water that a known unsealed joint may let through before it counts as
 *     leakage, m3/s; 15 mL in a test of 15 min where absent
 * @param practice where share, floor and cap come from that are not given; CURTAIN_WALL where
 *     absent
 */
public record WaterTest(
        @DecimalMin(value = "0", inclusive = false, message = "must be greater than 0")
                @DecimalMax(value = "1", message = "must be at most 1")
                @Nullable Double share,
        @Measured(value = Dimension.PRESSURE, sign = Measured.Sign.NOT_NEGATIVE, max = 10_000)
                @Nullable Double floor,
        @Measured(value = Dimension.PRESSURE, sign = Measured.Sign.POSITIVE, max = 10_000)
                @Nullable Double cap,
        @Measured(value = Dimension.SPRAY_RATE, sign = Measured.Sign.POSITIVE, max = 1)
                @Nullable Double sprayRate,
        @Measured(value = Dimension.WATER_RATE, sign = Measured.Sign.POSITIVE, max = 1)
                @Nullable Double allowedWater,
        @Nullable TestPractice practice) {

    private static final double GALLON = 231 * 0.0254 * 0.0254 * 0.0254;
    private static final double SQUARE_FOOT = 0.3048 * 0.3048;

    /** Where nothing but common practice is known. */
    static final WaterTest PRACTICE = new WaterTest(null, null, null, null, null, null);

    public WaterTest {
        TestPractice custom = practice == null ? TestPractice.CURTAIN_WALL : practice;
        if ((floor == null ? custom.floor() : floor) > (cap == null ? custom.cap() : cap)) {
            throw FaultsException.outOfRange(
                    floor == null ? "/cap" : "/floor",
                    "the floor must not exceed the cap (%.0f Pa and %.0f Pa where not given)"
                            .formatted(custom.floor(), custom.cap()));
        }
    }

    double shareOrDefault() {
        return share == null ? practiceOrDefault().share() : share;
    }

    double floorOrDefault() {
        return floor == null ? practiceOrDefault().floor() : floor;
    }

    double capOrDefault() {
        return cap == null ? practiceOrDefault().cap() : cap;
    }

    TestPractice practiceOrDefault() {
        return practice == null ? TestPractice.CURTAIN_WALL : practice;
    }

    double sprayRateOrDefault() {
        return sprayRate == null ? 5 * GALLON / SQUARE_FOOT / 3600 : sprayRate;
    }

    double allowedWaterOrDefault() {
        return allowedWater == null ? 15e-6 / (15 * 60) : allowedWater;
    }
}
