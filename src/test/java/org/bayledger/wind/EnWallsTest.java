package org.bayledger.wind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.bayledger.check.LoadBasis;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;

/** Hand-worked example and table values of EN 1991-1-4 walls, from memory. */
@NullMarked
class EnWallsTest {

    /**
     * Hand-worked: vb 26 m/s, terrain III, h 40 m, b 30 m, d 20 m, 3 m2 with its top at 25 m.
     *
     * <ol>
     *   <li>kr = 0.19 (0.3/0.05)^0.07 = 0.21539; cr(40) = 0.21539 ln(133.33) = 1.05387; vm =
     *       27.4006 m/s; Iv = 1/4.89285 = 0.20438; qp(40) = (1 + 1.43066) x 0.625 x 27.4006^2 =
     *       1140.6 Pa
     *   <li>b &lt; h &lt;= 2 b and 25 m &lt;= b: ze = 30 m; ln(100) = 4.60517; vm = 25.7895 m/s;
     *       qp(30) = (1 + 7/4.60517) x 0.625 x 25.7895^2 = 1047.5 Pa
     *   <li>h/d = 2: zone D 1.0 (1 m2) and 0.8 (10 m2), zone E -0.5 - 0.2/4 = -0.55
     *   <li>log 3 = 0.47712: D 0.90458; A -1.4 + 0.2 x 0.47712 = -1.30458; B -1.1 + 0.3 x 0.47712 =
     *       -0.95686; C -0.5, less than E
     *   <li>toward: 1047.5 x 0.90458 + 0.3 x 1140.6 = 1289.8 Pa
     *   <li>away: A -1140.6 x 1.50458 = -1716.1; B -1140.6 x 1.15686 = -1319.5; C, from E, -1140.6
     *       x 0.75 = -855.4 Pa
     *   <li>e = min(30, 80) = 30 m: zone A is 6 m wide
     * </ol>
     */
    @Test
    void workedExample() {
        SitePressures pressures = Wind.pressures(Wind.EN);
        assertThat(pressures.velocityPressureAtRoof()).isCloseTo(1140.57, within(0.05));
        assertThat(pressures.zoneWidth()).isCloseTo(6, within(1e-12));
        assertThat(pressures.zones()).containsExactly("A", "B", "C");
        assertThat(pressures.effectiveWindArea(3, 0.5)).isEqualTo(1.5);
        assertPressure(pressures, "A", 1289.75, -1716.08);
        assertPressure(pressures, "B", 1289.75, -1319.49);
        assertPressure(pressures, "C", 1289.75, -855.43);
        assertThat(pressures.basis()).isEqualTo(LoadBasis.CHARACTERISTIC);
    }

    /**
     * Published worked example SX016 of the Access Steel series (portal frame; from memory): vb 26
     * m/s, terrain II, h 7.30 m: cr 0.947, vm 24.6 m/s, Iv 0.201, qp 0.911 kN/m2; h/d 0.24: +0.7 in
     * zone D, -0.3 in zone E, internally +0.2 and -0.3.
     */
    @Test
    void publishedPortalFrame() {
        SitePressures pressures =
                Wind.pressures(
                        Wind.EN,
                        "terrainCategory",
                        "\"II\"",
                        "meanRoofHeight",
                        "\"7.30 m\"",
                        "leastHorizontalDimension",
                        "\"30 m\"",
                        "crosswindBreadth",
                        "\"72 m\"");
        assertThat(pressures.velocityPressureAtRoof()).isCloseTo(911, within(0.5));
        ZonePressure p = pressures.pressure("C", 10, 7);
        assertThat(p.positive() / pressures.velocityPressureAtRoof())
                .isCloseTo(0.7 + 0.3, within(1e-9));
        assertThat(pressures.zoneWidth()).isCloseTo(2 * 7.30 / 5, within(1e-9));
    }

    private static void assertPressure(
            SitePressures pressures, String zone, double positive, double negative) {
        ZonePressure p = pressures.pressure(zone, 3, 25);
        assertThat(p.positive()).isCloseTo(positive, within(0.1));
        assertThat(p.negative()).isCloseTo(negative, within(0.1));
        assertThat(p.basis()).isEqualTo(LoadBasis.CHARACTERISTIC);
    }

    /** Table 7.1: cpe,10 and cpe,1 at h/d of 0.25, 1 and 5, and half way between its rows. */
    @Test
    void tableOfCoefficients() {
        // h/d, area, A, B, C or E, D
        double[][] table = {
            {0.2, 10, -1.2, -0.8, -0.5, 0.7},
            {0.25, 10, -1.2, -0.8, -0.5, 0.7},
            {0.25, 1, -1.4, -1.1, -0.5, 1.0},
            {0.625, 10, -1.2, -0.8, -0.5, 0.75},
            {1, 10, -1.2, -0.8, -0.5, 0.8},
            {1, 1, -1.4, -1.1, -0.5, 1.0},
            {3, 10, -1.2, -0.8, -0.6, 0.8},
            {5, 10, -1.2, -0.8, -0.7, 0.8},
            {5, 1, -1.4, -1.1, -0.7, 1.0},
            {5, 0.1, -1.4, -1.1, -0.7, 1.0},
            {5, 100, -1.2, -0.8, -0.7, 0.8},
        };
        for (double[] row : table) {
            String depth = "\"%s m\"".formatted(40 / row[0]);
            SitePressures pressures =
                    Wind.pressures(
                            Wind.EN,
                            "leastHorizontalDimension",
                            depth,
                            "crosswindBreadth",
                            "\"250 m\"");
            double q = pressures.velocityPressureAtRoof();
            for (int i = 0; i < 3; i++) {
                ZonePressure p = pressures.pressure(pressures.zones().get(i), row[1], 10);
                assertThat(p.negative() / q + 0.2)
                        .as("zone %s, h/d %s, %s m2", p.zone(), row[0], row[1])
                        .isCloseTo(row[2 + i], within(1e-9));
                assertThat(p.positive() / q - 0.3)
                        .as("zone D, h/d %s, %s m2", row[0], row[1])
                        .isCloseTo(row[5], within(1e-9));
            }
        }
    }

    /** Fig. 7.4: up to b, up to 2 b, and taller. */
    @Test
    void referenceHeights() {
        assertReferenceHeight(30, 30, 10, 30);
        assertReferenceHeight(40, 30, 10, 30);
        assertReferenceHeight(40, 30, 30, 30);
        assertReferenceHeight(40, 30, 31, 40);
        assertReferenceHeight(100, 30, 10, 30);
        assertReferenceHeight(100, 30, 50, 50);
        assertReferenceHeight(100, 30, 70, 70);
        assertReferenceHeight(100, 30, 71, 100);
        assertReferenceHeight(100, 30, 103, 103);
    }

    private static void assertReferenceHeight(double h, double b, double top, double expected) {
        Site site =
                Wind.site(
                        Wind.EN,
                        "meanRoofHeight",
                        "\"" + h + " m\"",
                        "crosswindBreadth",
                        "\"" + b + " m\"");
        assertThat(new EnWalls(site).referenceHeight(top)).isEqualTo(expected);
    }

    /** c0 multiplies the mean speed and divides the turbulence. */
    @Test
    void orography() {
        double flat = Wind.pressures(Wind.EN).velocityPressureAtRoof();
        double hill = Wind.pressures(Wind.EN, "topographicFactor", "1.2").velocityPressureAtRoof();
        double iv = 1 / Math.log(40 / 0.3);
        assertThat(hill / flat).isCloseTo(1.44 * (1 + 7 * iv / 1.2) / (1 + 7 * iv), within(1e-9));
    }

    @Test
    void onlyPlacesOnTheWallAreZones() {
        SitePressures pressures = Wind.pressures(Wind.EN);
        assertThatIllegalArgumentException().isThrownBy(() -> pressures.pressure("D", 3, 25));
    }
}
