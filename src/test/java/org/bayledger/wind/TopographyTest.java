package org.bayledger.wind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.bayledger.check.Fault;
import org.bayledger.check.FaultsException;
import org.bayledger.check.Finding;
import org.bayledger.check.TraceStep;
import org.bayledger.wind.Topography.CrestSide;
import org.bayledger.wind.Topography.Feature;
import org.jspecify.annotations.NullMarked;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Hills, ridges and escarpments against the published tables and by hand. */
@NullMarked
class TopographyTest {

    /** In the order of the figure's columns. */
    private static final List<Feature> KINDS =
            List.of(Feature.RIDGE, Feature.ESCARPMENT, Feature.AXISYMMETRIC_HILL);

    private static final List<ExposureCategory> EXPOSURES =
            List.of(ExposureCategory.B, ExposureCategory.C, ExposureCategory.D);

    private static final String LITE =
            "[{\"id\":\"L\",\"effectiveWindArea\":\"20 ft2\",\"height\":\"100 ft\"}]";

    private static Topography feature(
            Feature feature, double height, double halfLength, double x, CrestSide side) {
        return new Topography(feature, height, halfLength, null, null, x, side, true);
    }

    private static String json(String more) {
        return "{\"feature\":\"ESCARPMENT\",\"height\":\"100 ft\",\"halfLength\":\"200 ft\","
                + "\"crestDistance\":\"100 ft\",\"side\":\"DOWNWIND\""
                + more
                + "}";
    }

    /**
     * ASCE/SEI 7-10 and 7-16 Fig. 26.8-1 (from memory), K1 in exposure C: H/Lh, ridge, escarpment,
     * hill.
     */
    @Test
    void tableOfK1() {
        double[][] table = {
            {0.20, 0.29, 0.17, 0.21},
            {0.25, 0.36, 0.21, 0.26},
            {0.30, 0.43, 0.26, 0.32},
            {0.35, 0.51, 0.30, 0.37},
            {0.40, 0.58, 0.34, 0.42},
            {0.45, 0.65, 0.38, 0.47},
            {0.50, 0.72, 0.43, 0.53},
            {0.80, 0.72, 0.43, 0.53},
        };
        for (double[] row : table) {
            for (Feature kind : KINDS) {
                Topography hill = feature(kind, 100 * row[0], 100, 0, CrestSide.UPWIND);
                assertThat(new AsceHill(hill, ExposureCategory.C).k1())
                        .as("%s at H/Lh %s", kind, row[0])
                        .isCloseTo(row[1 + KINDS.indexOf(kind)], within(0.0055));
            }
        }
    }

    /** The same figure: K1/(H/Lh) in exposures B, C, D of ridge, escarpment, hill. */
    @Test
    void multipliersOfK1() {
        double[][] table = {{1.30, 1.45, 1.55}, {0.75, 0.85, 0.95}, {0.95, 1.05, 1.15}};
        for (Feature kind : KINDS) {
            for (ExposureCategory exposure : EXPOSURES) {
                Topography hill = feature(kind, 30, 100, 0, CrestSide.UPWIND);
                assertThat(new AsceHill(hill, exposure).k1() / 0.3)
                        .isCloseTo(
                                table[KINDS.indexOf(kind)][EXPOSURES.indexOf(exposure)],
                                within(1e-9));
            }
        }
    }

    /** The same figure: x/Lh, K2 beyond an escarpment, and in all other cases. */
    @Test
    void tableOfK2() {
        double[][] table = {
            {0.0, 1.00, 1.00},
            {0.5, 0.88, 0.67},
            {1.0, 0.75, 0.33},
            {1.5, 0.63, 0.00},
            {2.0, 0.50, 0.00},
            {2.5, 0.38, 0.00},
            {3.0, 0.25, 0.00},
            {3.5, 0.13, 0.00},
            {4.0, 0.00, 0.00},
            {5.0, 0.00, 0.00},
        };
        for (double[] row : table) {
            double x = 100 * row[0];
            assertK2(Feature.ESCARPMENT, x, CrestSide.DOWNWIND, row[1]);
            assertK2(Feature.ESCARPMENT, x, CrestSide.UPWIND, row[2]);
            assertK2(Feature.RIDGE, x, CrestSide.DOWNWIND, row[2]);
            assertK2(Feature.AXISYMMETRIC_HILL, x, CrestSide.UPWIND, row[2]);
        }
    }

    private static void assertK2(Feature kind, double x, CrestSide side, double expected) {
        assertThat(new AsceHill(feature(kind, 30, 100, x, side), ExposureCategory.C).k2())
                .as("%s %s at %s m", kind, side, x)
                .isCloseTo(expected, within(0.0051));
    }

    /** The same figure: z/Lh, K3 of ridge, escarpment, hill. */
    @Test
    void tableOfK3() {
        double[][] table = {
            {0.00, 1.00, 1.00, 1.00},
            {0.10, 0.74, 0.78, 0.67},
            {0.20, 0.55, 0.61, 0.45},
            {0.30, 0.41, 0.47, 0.30},
            {0.40, 0.30, 0.37, 0.20},
            {0.50, 0.22, 0.29, 0.14},
            {0.60, 0.17, 0.22, 0.09},
            {0.70, 0.12, 0.17, 0.06},
            {0.80, 0.09, 0.14, 0.04},
            {0.90, 0.07, 0.11, 0.03},
            {1.00, 0.05, 0.08, 0.02},
            {1.50, 0.01, 0.02, 0.00},
            {2.00, 0.00, 0.00, 0.00},
        };
        for (double[] row : table) {
            for (Feature kind : KINDS) {
                Topography hill = feature(kind, 30, 100, 0, CrestSide.UPWIND);
                assertThat(new AsceHill(hill, ExposureCategory.C).k3(100 * row[0]))
                        .as("%s at z/Lh %s", kind, row[0])
                        .isCloseTo(row[1 + KINDS.indexOf(kind)], within(0.007));
            }
        }
    }

    /**
     * Hand-worked from 26.8.2 and Fig. 26.8-1: escarpment H 100 ft, Lh 200 ft, exposure B, 100 ft
     * beyond the crest, h 160 ft, V 120 mph (7-16).
     *
     * <ol>
     *   <li>H/Lh = 0.5; K1 = 0.75 x 0.5 = 0.375; K2 = 1 - 100/(4 x 200) = 0.875
     *   <li>at h: K3 = exp(-2.5 x 160/200) = 0.13534; Kzt = (1 + 0.044408)^2 = 1.09079
     *   <li>at 100 ft: K3 = exp(-1.25) = 0.28650; Kzt = (1 + 0.094010)^2 = 1.19686
     *   <li>qh = 35.416 x 1.09079 = 38.632 psf (35.416: AsceWallsTest); Kz(100) = 0.98822, q =
     *       0.00256 x 0.98822 x 1.19686 x 0.85 x 14400 = 37.061 psf
     *   <li>20 ft2: p+ = 37.061 x 0.9 + 38.632 x 0.18 = 40.309 psf; zone 5: -38.632 x 1.98 =
     *       -76.491 psf
     * </ol>
     */
    @Test
    void escarpmentByHand() {
        SitePressures pressures =
                Wind.pressures(Wind.TALL, "topographicFactor", "null", "topography", json(""));
        assertThat(pressures.velocityPressureAtRoof() / Wind.PSF).isCloseTo(38.632, within(0.002));
        ZonePressure p = pressures.pressure("5", 20 * Wind.FOOT * Wind.FOOT, 100 * Wind.FOOT);
        assertThat(p.positive() / Wind.PSF).isCloseTo(40.309, within(0.003));
        assertThat(p.negative() / Wind.PSF).isCloseTo(-76.491, within(0.003));
    }

    /** With the trace the topographic factor can be redone at every height that it is read for. */
    @Test
    void traceOfTheHillCanBeRedoneByHand() {
        WindResult result =
                Wind.run(
                        Wind.request(
                                Wind.TALL,
                                LITE,
                                "topographicFactor",
                                "null",
                                "topography",
                                json("")));
        List<TraceStep> steps = result.outcome().trace();
        assertThat(steps).extracting(TraceStep::symbol).contains("H", "Lh", "x", "K1", "K2", "z");
        List<Double> kzt = values(steps, "Kzt");
        double k = values(steps, "K1").get(0) * values(steps, "K2").get(0);
        double length = values(steps, "Lh").get(0);
        double[] heights = {values(steps, "h").get(0), values(steps, "z").get(0)};
        assertThat(kzt).hasSize(2);
        for (int i = 0; i < 2; i++) {
            double root = 1 + k * Math.exp(-2.5 * heights[i] / length);
            assertThat(kzt.get(i)).isCloseTo(root * root, within(1e-9));
        }
        assertThat(result.outcome().findings())
                .extracting(Finding::code)
                .containsExactly("TAKEN_AS_ISOLATED");
    }

    private static List<Double> values(List<TraceStep> steps, String symbol) {
        return steps.stream()
                .filter(s -> s.symbol().equals(symbol))
                .map(s -> s.value().si())
                .toList();
    }

    /** 26.8.1: too low, too flat or not alone; each is said. At the limits it counts. */
    @Test
    void whatDoesNotCountIsFlatAndSaidSo() {
        assertCounts(true, "B", "60 ft", "300 ft", "true");
        assertCounts(false, "B", "59.9 ft", "200 ft", "true");
        assertCounts(true, "C", "15 ft", "75 ft", "true");
        assertCounts(false, "C", "14.9 ft", "40 ft", "true");
        assertCounts(false, "D", "60 ft", "301 ft", "true");
        assertCounts(false, "B", "100 ft", "300 ft", "false");
    }

    private static void assertCounts(
            boolean counts, String exposure, String height, String half, String isolated) {
        WindResult result =
                Wind.run(
                        Wind.request(
                                Wind.TALL,
                                LITE,
                                "exposureCategory",
                                "\"" + exposure + "\"",
                                "topographicFactor",
                                "null",
                                "topography",
                                """
                                {"feature":"RIDGE","height":"%s","halfLength":"%s",
                                 "crestDistance":"0 ft","isolated":%s}"""
                                        .formatted(height, half, isolated)));
        assertThat(result.outcome().findings())
                .extracting(Finding::code)
                .isEqualTo(counts ? List.of() : List.of("TOPOGRAPHY_DOES_NOT_COUNT"));
        double flat =
                Wind.pressures(Wind.TALL, "exposureCategory", "\"" + exposure + "\"")
                        .velocityPressureAtRoof();
        assertThat(result.velocityPressureAtRoof().si() > flat * 1.000001).isEqualTo(counts);
    }

    /** On a small steep hill the wind is stronger at a component's foot than at its top. */
    @Test
    void theStrongerOfTopAndFootCounts() {
        String ridge =
                """
                {"feature":"RIDGE","height":"20 ft","halfLength":"40 ft","crestDistance":"0 ft",
                 "isolated":true}""";
        SitePressures pressures =
                Wind.pressures(
                        Wind.TALL,
                        "exposureCategory",
                        "\"D\"",
                        "topographicFactor",
                        "null",
                        "topography",
                        ridge);
        double area = 75 * Wind.FOOT * Wind.FOOT;
        AsceVelocity velocity =
                new AsceVelocity(
                        Wind.site(
                                Wind.TALL,
                                "exposureCategory",
                                "\"D\"",
                                "topographicFactor",
                                "null",
                                "topography",
                                ridge));
        double top = 30 * Wind.FOOT;
        double foot = 15 * Wind.FOOT;
        assertThat(velocity.at(foot)).isGreaterThan(1.1 * velocity.at(top));
        assertThat(velocity.governingHeight(top, area)).isCloseTo(foot, within(1e-9));
        double gcp = 0.9 - 0.3 * Math.log(75.0 / 20) / Math.log(25);
        assertThat(pressures.pressure("4", area, top).positive())
                .isCloseTo(
                        velocity.at(foot) * gcp + 0.18 * pressures.velocityPressureAtRoof(),
                        within(1e-6));
    }

    /**
     * EN 1991-1-4 Fig. A.2 and A.3 (from memory), factor s at z/Le 0.1, 0.5 and 1: worked out apart
     * from this project from the polynomials, and agreeing with the figures as far as they can be
     * read.
     */
    @Test
    void placesOnAHillOfEn() {
        double[][] upwind = {{0, 0.8385, 0.4125, 0.2119}, {50, 0.2351, 0.1369, 0.0802}};
        double[][] cliff = {
            {5, 0.8473, 0.4180, 0.2045},
            {10, 0.8561, 0.4234, 0.1971},
            {100, 0.3550, 0.3498, 0.1606},
            {350, 0.0654, 0.0949, 0.0743},
        };
        double[][] ridge = {{50, 0.3648, 0.2122, 0.1255}, {200, 0.0300, 0.0289, 0.0260}};
        assertPlaces(Feature.ESCARPMENT, CrestSide.UPWIND, upwind);
        assertPlaces(Feature.RIDGE, CrestSide.UPWIND, upwind);
        assertPlaces(Feature.ESCARPMENT, CrestSide.DOWNWIND, cliff);
        assertPlaces(Feature.RIDGE, CrestSide.DOWNWIND, ridge);
        assertPlaces(Feature.AXISYMMETRIC_HILL, CrestSide.DOWNWIND, ridge);
        assertThat(place(Feature.RIDGE, CrestSide.UPWIND, 151, 10)).isZero();
        assertThat(place(Feature.RIDGE, CrestSide.DOWNWIND, 201, 10)).isZero();
        assertThat(place(Feature.ESCARPMENT, CrestSide.DOWNWIND, 351, 10)).isZero();
        assertThat(place(Feature.RIDGE, CrestSide.UPWIND, 0, 201)).isZero();
    }

    private static void assertPlaces(Feature kind, CrestSide side, double[][] rows) {
        double[] heights = {10, 50, 100};
        for (double[] row : rows) {
            for (int i = 0; i < 3; i++) {
                assertThat(place(kind, side, row[0], heights[i]))
                        .as("%s %s at %s m, %s m up", kind, side, row[0], heights[i])
                        .isCloseTo(row[1 + i], within(0.0001));
            }
        }
    }

    private static double place(Feature kind, CrestSide side, double x, double z) {
        return new EnOrography(en(kind, 30, 100, x, side)).location(z);
    }

    private static Topography en(
            Feature kind, double height, double upwind, double x, @Nullable CrestSide side) {
        return new Topography(kind, height, null, upwind, 100.0, x, side, null);
    }

    /** c0 is 1 on gentle slopes and the same from either side of the steep limit, 0.3. */
    @Test
    void orographyOfEnOverTheSlope() {
        assertThat(new EnOrography(en(Feature.RIDGE, 4.9, 100, 0, null)).c0(1)).isEqualTo(1);
        double gentle = new EnOrography(en(Feature.RIDGE, 30, 100.0001, 0, null)).c0(20);
        double steep = new EnOrography(en(Feature.RIDGE, 30, 99.9999, 0, null)).c0(20);
        assertThat(steep).isCloseTo(gentle, within(1e-5));
        // by hand: z/Le 0.2: s = 0.1552x0.0016 - 0.8575x0.008 + 1.8133x0.04 - 1.9115x0.2 + 1.0124
        assertThat(gentle).isCloseTo(1 + 0.6 * 0.69602, within(1e-4));
    }

    /** The orography factor multiplies the mean speed and divides the turbulence at each height. */
    @Test
    void hillOfEnInThePressure() {
        String ridge =
                """
                {"feature":"RIDGE","height":"30 m","upwindLength":"200 m","crestDistance":"0 m"}""";
        double flat = Wind.pressures(Wind.EN).velocityPressureAtRoof();
        SitePressures hill =
                Wind.pressures(Wind.EN, "topographicFactor", "null", "topography", ridge);
        double c0 = new EnOrography(en(Feature.RIDGE, 30, 200, 0, null)).c0(40);
        // z/Le 0.2, phi 0.15
        assertThat(c0).isCloseTo(1 + 2 * 0.15 * 0.69602, within(1e-4));
        double iv = 1 / Math.log(40 / 0.3);
        assertThat(hill.velocityPressureAtRoof() / flat)
                .isCloseTo(c0 * c0 * (1 + 7 * iv / c0) / (1 + 7 * iv), within(1e-9));
    }

    /** Nothing jumps along the ground or with height, and the crest is the worst place. */
    @Test
    void speedUpFadesContinuously() {
        for (Feature kind : KINDS) {
            for (CrestSide side : CrestSide.values()) {
                double crest =
                        new AsceHill(feature(kind, 30, 60, 0, side), ExposureCategory.C).kzt(10);
                double before = crest;
                for (double x = 0; x < 300; x += 0.5) {
                    AsceHill hill =
                            new AsceHill(feature(kind, 30, 60, x, side), ExposureCategory.C);
                    assertThat(hill.kzt(10)).isBetween(before - 0.03, before);
                    assertThat(hill.kzt(12)).isLessThanOrEqualTo(hill.kzt(10));
                    before = hill.kzt(10);
                }
                assertThat(before).isEqualTo(1);
                for (double x = 0; x < 149; x += 0.5) {
                    double here = new EnOrography(en(kind, 30, 100, x, side)).c0(20);
                    double next = new EnOrography(en(kind, 30, 100, x + 0.5, side)).c0(20);
                    assertThat(next).isCloseTo(here, within(0.01));
                }
            }
        }
    }

    @Test
    void whatTheStandardDoesNotTakeIsRefused() {
        assertRefused(Wind.TALL, "1.0", json(""), "/topography");
        assertRefused(
                Wind.TALL,
                "null",
                json(",\"upwindLength\":\"400 ft\",\"downwindLength\":\"400 ft\""),
                "/topography/upwindLength",
                "/topography/downwindLength");
        assertRefused(
                Wind.TALL,
                "null",
                "{\"feature\":\"RIDGE\",\"height\":\"9 m\",\"crestDistance\":\"0 m\"}",
                "/topography/halfLength");
        assertRefused(
                Wind.TALL,
                "null",
                """
                {"feature":"RIDGE","height":"9 m","halfLength":"30 m","crestDistance":"1 m"}""",
                "/topography/side");
        assertRefused(
                Wind.EN,
                "null",
                """
                {"feature":"RIDGE","height":"9 m","halfLength":"30 m","crestDistance":"1 m",
                 "side":"DOWNWIND","isolated":true}""",
                "/topography/halfLength",
                "/topography/upwindLength",
                "/topography/downwindLength",
                "/topography/isolated");
    }

    private static void assertRefused(
            String site, String factor, String topography, String... pointers) {
        assertThatThrownBy(
                        () ->
                                Wind.site(
                                        site,
                                        "topographicFactor",
                                        factor,
                                        "topography",
                                        topography))
                .isInstanceOfSatisfying(
                        FaultsException.class,
                        e ->
                                assertThat(e.faults())
                                        .extracting(Fault::pointer)
                                        .containsExactlyInAnyOrder(pointers));
    }

    /** A steep ridge counts with the slope 0.3 (EN 1991-1-4, A.3: 1 + 0.6 s), by a script's sum. */
    @Test
    void steepRidgeCountsWithTheSlopeThatIsTheMost() {
        assertThat(new EnOrography(en(Feature.RIDGE, 60, 100, 0, null)).c0(40))
                .isCloseTo(1.41761, within(1e-5));
    }
}
