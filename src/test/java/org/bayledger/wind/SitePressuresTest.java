package org.bayledger.wind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.bayledger.check.Load;
import org.bayledger.check.LoadBasis;
import org.bayledger.check.Trace;
import org.bayledger.check.TraceLevel;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;

/** Strips of an elevation, what governs, and properties that hold for every standard. */
@NullMarked
class SitePressuresTest {

    private static final List<String> SITES = List.of(Wind.TALL, Wind.LOW, Wind.EN);

    private static String strips(SitePressures pressures, double width, boolean l, boolean r) {
        StringBuilder text = new StringBuilder();
        for (ZoneStrip strip : pressures.strips(width, l, r)) {
            text.append("%s %.1f-%.1f ".formatted(strip.zone(), strip.from(), strip.to()));
        }
        return text.toString().strip();
    }

    /** Zone 5 is 0.1 x 100 ft = 3.048 m wide. */
    @Test
    void stripsOfAsce() {
        SitePressures pressures = Wind.pressures(Wind.TALL);
        assertThat(strips(pressures, 30, true, true)).isEqualTo("5 0.0-3.0 4 3.0-27.0 5 27.0-30.0");
        assertThat(strips(pressures, 30, true, false)).isEqualTo("5 0.0-3.0 4 3.0-30.0");
        assertThat(strips(pressures, 30, false, true)).isEqualTo("4 0.0-27.0 5 27.0-30.0");
        assertThat(strips(pressures, 30, false, false)).isEqualTo("4 0.0-30.0");
        assertThat(strips(pressures, 5, true, true)).isEqualTo("5 0.0-5.0");
        assertThat(strips(pressures, 5, false, true)).isEqualTo("4 0.0-2.0 5 2.0-5.0");
        assertThat(strips(pressures, 2, true, false)).isEqualTo("5 0.0-2.0");
    }

    /** e = 30 m: A to 6 m, B to 30 m from a corner. */
    @Test
    void stripsOfEn() {
        SitePressures pressures = Wind.pressures(Wind.EN);
        assertThat(strips(pressures, 100, true, true))
                .isEqualTo("A 0.0-6.0 B 6.0-30.0 C 30.0-70.0 B 70.0-94.0 A 94.0-100.0");
        assertThat(strips(pressures, 100, true, false))
                .isEqualTo("A 0.0-6.0 B 6.0-30.0 C 30.0-100.0");
        assertThat(strips(pressures, 50, true, true)).isEqualTo("A 0.0-6.0 B 6.0-44.0 A 44.0-50.0");
        assertThat(strips(pressures, 10, true, true)).isEqualTo("A 0.0-10.0");
        assertThat(strips(pressures, 10, false, false)).isEqualTo("C 0.0-10.0");
    }

    /** Strips tile the elevation, mirror with it, and grow no wider than the elevation. */
    @Test
    void stripsTileAndMirror() {
        Random random = new Random(11);
        for (int i = 0; i < 500; i++) {
            SitePressures pressures = Wind.pressures(SITES.get(random.nextInt(3)));
            double width = 0.5 + 120 * random.nextDouble();
            boolean left = random.nextBoolean();
            boolean right = random.nextBoolean();
            List<ZoneStrip> strips = pressures.strips(width, left, right);
            List<ZoneStrip> mirrored = pressures.strips(width, right, left);
            double at = 0;
            for (int k = 0; k < strips.size(); k++) {
                ZoneStrip strip = strips.get(k);
                assertThat(strip.from()).isEqualTo(at);
                assertThat(strip.to()).isGreaterThan(at);
                at = strip.to();
                ZoneStrip twin = mirrored.get(strips.size() - 1 - k);
                assertThat(twin.zone()).isEqualTo(strip.zone());
                assertThat(twin.from()).isCloseTo(width - strip.to(), within(1e-9));
            }
            assertThat(at).isEqualTo(width);
        }
    }

    @Test
    void anElevationWithoutWidthIsRefused() {
        SitePressures pressures = Wind.pressures(Wind.TALL);
        assertThatIllegalArgumentException().isThrownBy(() -> pressures.strips(0, true, true));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> pressures.strips(Double.NaN, true, true));
    }

    /** Larger areas never see more pressure, in either direction, and nothing jumps. */
    @Test
    void pressureFallsContinuouslyWithArea() {
        for (String json : SITES) {
            SitePressures pressures = Wind.pressures(json, "designBasis", basis(json));
            for (String zone : pressures.zones()) {
                ZonePressure last = pressures.pressure(zone, 0.05, 7);
                for (double area = 0.05; area < 100; area *= 1.01) {
                    ZonePressure next = pressures.pressure(zone, area, 7);
                    assertThat(next.positive())
                            .isLessThanOrEqualTo(last.positive())
                            .isCloseTo(last.positive(), within(0.01 * last.positive()));
                    assertThat(next.negative())
                            .isGreaterThanOrEqualTo(last.negative())
                            .isCloseTo(last.negative(), within(-0.01 * last.negative()));
                    last = next;
                }
            }
        }
    }

    /** Higher components never see less pressure; in ASCE suction is the same at every height. */
    @Test
    void pressureRisesWithHeight() {
        for (String json : SITES) {
            SitePressures pressures = Wind.pressures(json, "designBasis", basis(json));
            String zone = pressures.zones().get(0);
            ZonePressure last = pressures.pressure(zone, 3, 0.1);
            for (double height = 0.1; height < 60; height += 0.1) {
                ZonePressure next = pressures.pressure(zone, 3, height);
                assertThat(next.positive()).isGreaterThanOrEqualTo(last.positive());
                assertThat(next.negative()).isLessThanOrEqualTo(last.negative());
                last = next;
            }
        }
    }

    /** Pressure goes with the square of the speed wherever the least pressure does not govern. */
    @Test
    void pressureScalesWithTheSquareOfTheSpeed() {
        Random random = new Random(5);
        for (String json : SITES) {
            for (int i = 0; i < 50; i++) {
                double speed = 45 + 10 * random.nextDouble();
                double factor = 1 + 0.2 * random.nextDouble();
                ZonePressure one = at(json, speed);
                ZonePressure two = at(json, speed * factor);
                assertThat(two.positive() / one.positive())
                        .isCloseTo(factor * factor, within(1e-9));
                assertThat(two.negative() / one.negative())
                        .isCloseTo(factor * factor, within(1e-9));
            }
        }
    }

    private static ZonePressure at(String json, double speed) {
        SitePressures pressures =
                Wind.pressures(json, "basicWindSpeed", "\"%s m/s\"".formatted(speed));
        return pressures.pressure(pressures.zones().get(0), 3, 7);
    }

    /**
     * Across 60 ft the velocity pressure goes on; the pressures step from one figure to the other,
     * by exactly the ratio of their coefficients, and nowhere else.
     */
    @Test
    void acrossSixtyFeetOnlyTheFigureChanges() {
        String[] strength = {"designBasis", "\"STRENGTH\"", "standard", "\"ASCE_7_16\""};
        double foot = 0.3048;
        SitePressures before = null;
        for (double h = 40; h < 80.005; h += 0.25) {
            SitePressures here =
                    Wind.pressures(
                            Wind.LOW,
                            strength[0],
                            strength[1],
                            strength[2],
                            strength[3],
                            "meanRoofHeight",
                            "\"%s ft\"".formatted(h));
            if (before != null) {
                double q = here.velocityPressureAtRoof() / before.velocityPressureAtRoof();
                assertThat(q).isBetween(1.0, 1.002);
                double step =
                        here.pressure("5", 10 * foot * foot, 12).negative()
                                / before.pressure("5", 10 * foot * foot, 12).negative();
                boolean across = h > 60 && h < 60.3;
                assertThat(step)
                        .isCloseTo(
                                across ? q * (1.8 + 0.18) / (0.9 * 1.4 + 0.18) : q, within(1e-9));
            }
            before = here;
        }
    }

    /** The same building in SI and US units has the same pressures, to nine digits. */
    @Test
    void unitsDoNotMatter() {
        Random random = new Random(29);
        for (int i = 0; i < 100; i++) {
            double v = 90 + 100 * random.nextDouble();
            double h = 15 + 300 * random.nextDouble();
            double least = 100 + 100 * random.nextDouble();
            double hill = 60 + 200 * random.nextDouble();
            String text =
                    """
                    {"feature":"RIDGE","height":"%s","halfLength":"%s","crestDistance":"%s",
                     "side":"UPWIND"}""";
            SitePressures us =
                    Wind.pressures(
                            Wind.TALL,
                            "basicWindSpeed",
                            "\"" + v + " mph\"",
                            "meanRoofHeight",
                            "\"" + h + " ft\"",
                            "leastHorizontalDimension",
                            "\"" + least + " ft\"",
                            "topographicFactor",
                            "null",
                            "topography",
                            text.formatted(hill + " ft", 3 * hill + " ft", hill / 2 + " ft"));
            SitePressures si =
                    Wind.pressures(
                            Wind.TALL,
                            "basicWindSpeed",
                            "\"" + v * 0.44704 + " m/s\"",
                            "meanRoofHeight",
                            "\"" + h * 304.8 + " mm\"",
                            "leastHorizontalDimension",
                            "\"" + least * 0.3048 + " m\"",
                            "topographicFactor",
                            "null",
                            "topography",
                            text.formatted(
                                    hill * 0.3048 + " m",
                                    hill * 91.44 + " cm",
                                    hill * 0.1524 + " m"));
            for (String zone : us.zones()) {
                ZonePressure one = us.pressure(zone, 3, 4);
                ZonePressure two = si.pressure(zone, 3, 4);
                assertThat(two.positive() / one.positive()).isCloseTo(1, within(1e-9));
                assertThat(two.negative() / one.negative()).isCloseTo(1, within(1e-9));
            }
        }
    }

    /** A zone nearer the corner is never milder; each zone has both signs. */
    @Test
    void cornersAreWorse() {
        Random random = new Random(3);
        for (String json : SITES) {
            SitePressures pressures = Wind.pressures(json);
            boolean asce = pressures.basis() != LoadBasis.CHARACTERISTIC;
            for (int i = 0; i < 200; i++) {
                double area = Math.exp(5 * random.nextDouble() - 2);
                double height = 7 * random.nextDouble() + 0.01;
                List<String> zones = pressures.zones();
                for (int k = 1; k < zones.size(); k++) {
                    ZonePressure before = pressures.pressure(zones.get(k - 1), area, height);
                    ZonePressure after = pressures.pressure(zones.get(k), area, height);
                    assertThat(before.positive()).isEqualTo(after.positive()).isPositive();
                    if (asce) {
                        assertThat(after.negative()).isLessThanOrEqualTo(before.negative());
                    } else {
                        assertThat(after.negative()).isGreaterThanOrEqualTo(before.negative());
                    }
                    assertThat(after.negative()).isNegative();
                }
            }
        }
    }

    /** Allowable-stress pressures are 0.6 of strength pressures, and a load takes 0.6 once. */
    @Test
    void basisIsCarriedAndAppliedOnce() {
        ZonePressure strength = Wind.pressures(Wind.TALL).pressure("5", 3, 20);
        ZonePressure allowable =
                Wind.pressures(Wind.TALL, "designBasis", "\"ALLOWABLE_STRESS\"")
                        .pressure("5", 3, 20);
        assertThat(allowable.negative()).isCloseTo(0.6 * strength.negative(), within(1e-9));
        Trace trace = new Trace(TraceLevel.ALL);
        assertThat(strength.load().allowable(trace).negative())
                .isEqualTo(allowable.load().allowable(trace).negative());
        ZonePressure characteristic = Wind.pressures(Wind.EN).pressure("A", 3, 20);
        assertThat(characteristic.load().allowable(trace).negative())
                .isEqualTo(characteristic.negative());
    }

    @Test
    void whatGovernsSeveralZones() {
        SitePressures pressures = Wind.pressures(Wind.TALL);
        GoverningPressure governing = pressures.governing(List.of("4", "5"), 3, 20);
        assertThat(governing.negative()).isEqualTo(pressures.pressure("5", 3, 20));
        assertThat(governing.positive().zone()).isEqualTo("5");
        ZonePressure high = pressures.pressure("4", 3, 45);
        GoverningPressure mixed =
                GoverningPressure.of(List.of(high, pressures.pressure("5", 3, 20)));
        assertThat(mixed.positive()).isEqualTo(high);
        assertThat(mixed.negative().zone()).isEqualTo("5");
        assertThat(mixed.load())
                .isEqualTo(
                        new Load(high.positive(), mixed.negative().negative(), LoadBasis.STRENGTH));
    }

    @Test
    void basesAreNotMixed() {
        ZonePressure strength = Wind.pressures(Wind.TALL).pressure("5", 3, 20);
        ZonePressure allowable =
                Wind.pressures(Wind.TALL, "designBasis", "\"ALLOWABLE_STRESS\"")
                        .pressure("5", 3, 20);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> GoverningPressure.of(List.of(strength, allowable)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new GoverningPressure(strength, allowable));
        assertThatIllegalArgumentException().isThrownBy(() -> GoverningPressure.of(List.of()));
    }

    @Test
    void impossibleComponentsAreRefused() {
        SitePressures pressures = Wind.pressures(Wind.TALL);
        assertThatIllegalArgumentException().isThrownBy(() -> pressures.pressure("5", 0, 20));
        assertThatIllegalArgumentException().isThrownBy(() -> pressures.pressure("5", 3, 0));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> pressures.pressure("5", 3, Double.NaN));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> pressures.pressure("5", 3, pressures.greatestHeight() + 0.001));
        assertThatIllegalArgumentException().isThrownBy(() -> pressures.pressure("A", 3, 20));
    }

    private static String basis(String json) {
        return json.equals(Wind.EN) ? "null" : "\"STRENGTH\"";
    }
}
