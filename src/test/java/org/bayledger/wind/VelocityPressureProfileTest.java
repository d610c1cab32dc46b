package org.bayledger.wind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;

/** The profiles against the published tables. */
@NullMarked
class VelocityPressureProfileTest {

    /** ASCE/SEI 7-16 Table 26.10-1 (from memory): height in ft, Kz in exposures B, C and D. */
    private static final double[][] TABLE_26_10_1 = {
        {15, 0.57, 0.85, 1.03},
        {20, 0.62, 0.90, 1.08},
        {25, 0.66, 0.94, 1.12},
        {30, 0.70, 0.98, 1.16},
        {40, 0.76, 1.04, 1.22},
        {50, 0.81, 1.09, 1.27},
        {60, 0.85, 1.13, 1.31},
        {70, 0.89, 1.17, 1.34},
        {80, 0.93, 1.21, 1.38},
        {90, 0.96, 1.24, 1.40},
        {100, 0.99, 1.26, 1.43},
        {120, 1.04, 1.31, 1.48},
        {140, 1.09, 1.36, 1.52},
        {160, 1.13, 1.39, 1.55},
        {180, 1.17, 1.43, 1.58},
        {200, 1.20, 1.46, 1.61},
        {250, 1.28, 1.53, 1.68},
        {300, 1.35, 1.59, 1.73},
        {350, 1.41, 1.64, 1.78},
        {400, 1.47, 1.69, 1.82},
        {450, 1.52, 1.73, 1.86},
        {500, 1.56, 1.77, 1.89},
    };

    /**
     * The table rounds, and here and there downward, against its own formula (1.13 for 1.1366 in
     * exposure C at 60 ft): the formula is at most half a unit below the table and less than one
     * above.
     */
    private static void assertRounds(
            AsceEdition edition, ExposureCategory exposure, double feet, double table) {
        assertThat(edition.kz(exposure, feet * Wind.FOOT))
                .as("%s %s at %s ft", edition, exposure, feet)
                .isBetween(table - 0.005, table + 0.008);
    }

    @Test
    void wholeTableOfKz() {
        for (double[] row : TABLE_26_10_1) {
            assertRounds(AsceEdition.SEVEN_16, ExposureCategory.B, row[0], row[1]);
            assertRounds(AsceEdition.SEVEN_16, ExposureCategory.C, row[0], row[2]);
            assertRounds(AsceEdition.SEVEN_16, ExposureCategory.D, row[0], row[3]);
        }
    }

    /** ASCE/SEI 7-10 Table 30.3-1 (from memory): exposure B starts at 0.70 and stays to 30 ft. */
    @Test
    void claddingTableOf2010() {
        for (double[] row : TABLE_26_10_1) {
            assertRounds(AsceEdition.SEVEN_10, ExposureCategory.B, row[0], Math.max(0.70, row[1]));
            assertRounds(AsceEdition.SEVEN_10, ExposureCategory.C, row[0], row[2]);
            assertRounds(AsceEdition.SEVEN_10, ExposureCategory.D, row[0], row[3]);
        }
    }

    /**
     * ASCE/SEI 7-22 Table 26.10-1: its constants worked out apart from this project and rounded,
     * e.g. exposure B at 100 ft: 2.41 (100/3280)^(2/7.5) = 2.41 x 0.3942 = 0.950; they agree with
     * the table as far as it is remembered.
     */
    private static final double[][] TABLE_OF_2022 = {
        {15, 0.573, 0.851, 1.035},
        {20, 0.619, 0.903, 1.088},
        {25, 0.656, 0.945, 1.131},
        {30, 0.689, 0.980, 1.168},
        {40, 0.744, 1.040, 1.228},
        {50, 0.790, 1.088, 1.276},
        {60, 0.829, 1.129, 1.317},
        {70, 0.864, 1.166, 1.353},
        {80, 0.895, 1.198, 1.385},
        {90, 0.924, 1.227, 1.413},
        {100, 0.950, 1.254, 1.440},
        {120, 0.997, 1.301, 1.486},
        {140, 1.039, 1.343, 1.526},
        {160, 1.077, 1.380, 1.562},
        {180, 1.111, 1.413, 1.595},
        {200, 1.143, 1.444, 1.624},
        {250, 1.213, 1.511, 1.688},
        {300, 1.274, 1.569, 1.743},
        {350, 1.327, 1.619, 1.790},
        {400, 1.375, 1.663, 1.832},
        {450, 1.419, 1.704, 1.870},
        {500, 1.459, 1.741, 1.905},
    };

    @Test
    void wholeTableOf2022() {
        ExposureCategory[] exposures = ExposureCategory.values();
        for (double[] row : TABLE_OF_2022) {
            for (int i = 0; i < 3; i++) {
                assertThat(AsceEdition.SEVEN_22.kz(exposures[i], row[0] * Wind.FOOT))
                        .as("%s at %s ft", exposures[i], row[0])
                        .isCloseTo(row[i + 1], within(0.0006));
            }
        }
    }

    @Test
    void profileIsFlatBelowFifteenFeetAndEndsAtTheGradientHeight() {
        for (AsceEdition edition : AsceEdition.values()) {
            for (ExposureCategory exposure : ExposureCategory.values()) {
                assertThat(edition.kz(exposure, 0.5))
                        .isEqualTo(edition.kz(exposure, 15 * Wind.FOOT));
                double top = edition.gradientHeight(exposure);
                assertThat(edition.kz(exposure, top))
                        .isCloseTo(edition == AsceEdition.SEVEN_22 ? 2.41 : 2.01, within(1e-12));
                assertThatThrownBy(() -> edition.kz(exposure, top * 1.001))
                        .isInstanceOf(IllegalArgumentException.class);
            }
        }
    }

    /** ASCE/SEI 7-16 Table 26.9-1 (from memory): Ke for each 1000 ft above sea level. */
    @Test
    void groundElevationFactor() {
        double sea = Wind.pressures(Wind.TALL).velocityPressureAtRoof();
        double[] table = {1.00, 0.96, 0.93, 0.90, 0.86, 0.83, 0.80};
        for (int i = 0; i < table.length; i++) {
            double q =
                    Wind.pressures(Wind.TALL, "groundElevation", "\"" + i * 1000 + " ft\"")
                            .velocityPressureAtRoof();
            assertThat(q / sea).as("%d000 ft", i).isCloseTo(table[i], within(0.0055));
        }
        assertThat(Wind.pressures(Wind.TALL, "groundElevation", "null").velocityPressureAtRoof())
                .isEqualTo(sea);
    }

    /**
     * EN 1991-1-4 exposure factor ce(z) = qp / qb with c0 = 1 in terrains 0, I, II, III, IV: worked
     * out from 4.3 to 4.5 apart from this project and agreeing with Fig. 4.2 as far as it can be
     * read (at 10 m: 3.0, 2.8, 2.35, 1.7, 1.2). E.g. terrain II at 10 m: cr = 0.19 ln(200) =
     * 1.0067, Iv = 1/ln(200) = 0.1887, ce = (1 + 7 x 0.1887) x 1.0067^2 = 2.352. Below zmin (1, 1,
     * 2, 5, 10 m) it is flat.
     */
    private static final double[][] EXPOSURE_FACTORS = {
        {1, 1.812, 1.540, 1.423, 1.281, 1.176},
        {2, 2.138, 1.878, 1.423, 1.281, 1.176},
        {5, 2.604, 2.367, 1.929, 1.281, 1.176},
        {10, 2.985, 2.769, 2.352, 1.709, 1.176},
        {15, 3.218, 3.016, 2.616, 1.980, 1.444},
        {20, 3.388, 3.198, 2.810, 2.182, 1.644},
        {30, 3.635, 3.462, 3.094, 2.479, 1.943},
        {40, 3.815, 3.655, 3.302, 2.700, 2.165},
        {50, 3.958, 3.809, 3.468, 2.876, 2.344},
        {70, 4.177, 4.045, 3.725, 3.150, 2.624},
        {100, 4.416, 4.302, 4.006, 3.452, 2.935},
        {150, 4.694, 4.604, 4.337, 3.810, 3.305},
        {200, 4.897, 4.824, 4.579, 4.073, 3.578},
    };

    @Test
    void exposureFactorOfEn() {
        for (double[] row : EXPOSURE_FACTORS) {
            String[] terrains = {"ZERO", "I", "II", "III", "IV"};
            for (int i = 0; i < terrains.length; i++) {
                assertExposure(terrains[i], row[0], row[i + 1]);
            }
        }
    }

    private static void assertExposure(String terrain, double z, double factor) {
        double q =
                Wind.pressures(
                                Wind.EN,
                                "terrainCategory",
                                "\"" + terrain + "\"",
                                "meanRoofHeight",
                                "\"" + z + " m\"",
                                "leastHorizontalDimension",
                                "\"60 m\"",
                                "crosswindBreadth",
                                "\"60 m\"")
                        .velocityPressureAtRoof();
        assertThat(q / (0.5 * 1.25 * 26 * 26))
                .as("ce(%s m), terrain %s", z, terrain)
                .isCloseTo(factor, within(0.0006));
    }
}
