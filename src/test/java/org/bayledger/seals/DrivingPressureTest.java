package org.bayledger.seals;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.bayledger.seals.Frames.codes;
import static org.bayledger.seals.Frames.run;
import static org.bayledger.seals.Frames.tree;
import static org.bayledger.seals.Frames.two;
import static org.bayledger.seals.Frames.with;

import java.util.Map;
import org.bayledger.check.Binder;
import org.bayledger.check.FaultsException;
import org.bayledger.check.Verdict;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.NullMarked;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/**
 * Wind, stack effect and fans together. The frame is 13 ft (3.9624 m) high; its water test pressure
 * is 300 Pa.
 */
@NullMarked
class DrivingPressureTest {

    private static final double PSF = 4.4482216152605 / (0.3048 * 0.3048);
    private static final double HEIGHT = 13 * 0.3048;

    /** BS 5925:1991 (from memory) at 20 degC inside and -20 degC outside, Pa/m: 1.867. */
    private static final double WINTER = 3463 * (1 / 253.15 - 1 / 293.15);

    private static Map<String, @Nullable Object> air(String json) {
        return with(two(), "air", tree(json));
    }

    private static DrivingPressure driving(String json) {
        DrivingPressure driving = run(air(json)).waterAndAir().drivingPressure();
        assertThat(driving).isNotNull();
        if (driving == null) {
            throw new AssertionError();
        }
        return driving;
    }

    private static double si(@Nullable Quantity quantity) {
        assertThat(quantity).isNotNull();
        return quantity == null ? Double.NaN : quantity.si();
    }

    /**
     * Winter, sill at 10 m, neutral level at 60 m: the sill is pulled inward by 50 m of stack, 93.3
     * Pa; with fans that hold the building 15 Pa under suction water is driven by 300 + 93.3 + 15 =
     * 408.3 Pa, 41.7 mm of water, above end dams of 1.5 in.
     */
    @Test
    void allThreeAddUpAtTheFootInWinter() {
        String winter =
                """
                {"outsideTemperature":"-20 degC","insideTemperature":"20 degC","neutralLevel":"60 m",
                 "sillLevel":"10 m","draftCoefficient":1,"mechanicalPressure":"15 Pa"}""";
        DrivingPressure driving = driving(winter);
        assertThat(si(driving.stackEffectInward())).isCloseTo(50 * WINTER, within(0.1));
        assertThat(si(driving.stackEffectOutward())).isCloseTo((50 - HEIGHT) * WINTER, within(0.1));
        assertThat(si(driving.withRain())).isCloseTo(300 + 50 * WINTER + 15, within(0.1));
        assertThat(si(driving.inward())).isCloseTo(30 * PSF + 50 * WINTER + 15, within(0.1));
        // what acts inward is not counted against the outward wind
        assertThat(si(driving.outward())).isCloseTo(-35 * PSF, within(1e-6));
        assertThat(si(driving.waterHead())).isCloseTo(0.0417, within(5e-5));
        SealsResult result = run(air(winter));
        assertThat(result.outcome().verdict()).isEqualTo(Verdict.EXCEEDED);
        assertThat(result.outcome().utilization()).isCloseTo(0.0417 / 0.0381, within(0.002));
        assertThat(codes(result))
                .contains("DRIVING_HEAD_ABOVE_END_DAM", "DRIVING_PRESSURE_ABOVE_TEST")
                .doesNotContain("NEUTRAL_LEVEL_ASSUMED", "OUTWARD_PART_NOT_COUNTED");
        // the storm is that pressure's, the test of the missed joint stays the test's
        StormWater storm = result.waterAndAir().stormWater();
        assertThat(storm).isNotNull();
        assertThat(si(storm == null ? null : storm.pressure())).isEqualTo(si(driving.withRain()));
        assertThat(si(result.unsealedJoint().waterPressure())).isEqualTo(300);
    }

    /** Above the neutral level in winter, and fans that press: nothing is taken off the rain. */
    @Test
    void whatActsOutwardIsNotCountedAgainstTheRain() {
        String json =
                """
                {"outsideTemperature":"-20 degC","insideTemperature":"20 degC","neutralLevel":"60 m",
                 "sillLevel":"110 m","draftCoefficient":0.8,"mechanicalPressure":"-12 Pa"}""";
        DrivingPressure driving = driving(json);
        assertThat(si(driving.stackEffectInward())).isCloseTo(-0.8 * 50 * WINTER, within(0.1));
        assertThat(si(driving.stackEffectOutward()))
                .isCloseTo(-0.8 * (50 + HEIGHT) * WINTER, within(0.1));
        assertThat(si(driving.withRain())).isEqualTo(300);
        assertThat(si(driving.inward())).isCloseTo(30 * PSF, within(1e-6));
        assertThat(si(driving.outward()))
                .isCloseTo(-35 * PSF - 0.8 * (50 + HEIGHT) * WINTER - 12, within(0.1));
        assertThat(codes(run(air(json))))
                .contains("OUTWARD_PART_NOT_COUNTED")
                .doesNotContain("DRIVING_PRESSURE_ABOVE_TEST");
    }

    /** In summer the head of the frame is pulled inward; swapped temperatures mirror the winter. */
    @Test
    void summerPullsAtTheTop() {
        DrivingPressure summer =
                driving(
                        """
                        {"outsideTemperature":"35 degC","insideTemperature":"22 degC",
                         "neutralLevel":"60 m","sillLevel":"110 m","draftCoefficient":1}""");
        double gradient = 3463 * (1 / 308.15 - 1 / 295.15);
        assertThat(si(summer.stackEffectInward()))
                .isCloseTo(-gradient * (50 + HEIGHT), within(0.05));
        assertThat(si(summer.withRain())).isCloseTo(300 - gradient * (50 + HEIGHT), within(0.05));
    }

    /** Neutral level 0.3 to 0.7 of 100 m, draft coefficient 0.63 to 1: both ends and the worst. */
    @Test
    void whatWasNotGivenIsARange() {
        String open =
                """
                {"outsideTemperature":"-20 degC","insideTemperature":"20 degC",
                 "buildingHeight":"100 m","sillLevel":"10 m"}""";
        DrivingPressure driving = driving(open);
        QuantityRange range = driving.stackEffectInwardRange();
        assertThat(range).isNotNull();
        if (range != null) {
            assertThat(range.high().si()).isCloseTo(60 * WINTER, within(0.1));
            assertThat(range.low().si()).isCloseTo(0.63 * 20 * WINTER, within(0.1));
        }
        assertThat(si(driving.stackEffectInward())).isCloseTo(60 * WINTER, within(0.1));
        assertThat(codes(run(air(open)))).contains("NEUTRAL_LEVEL_ASSUMED");
        // thin air: 1500 m up the stack effect is about 0.835 of that at the sea
        DrivingPressure high = driving(open.replace("}", ",\"siteElevation\":\"1500 m\"}"));
        assertThat(si(high.stackEffectInward()) / (60 * WINTER)).isCloseTo(0.8346, within(0.001));
    }

    @Test
    void withoutTheLevelOfTheSillItIsOpen() {
        SealsResult result =
                run(
                        air(
                                """
                                {"outsideTemperature":"-20 degC","insideTemperature":"20 degC",
                                 "neutralLevel":"60 m"}"""));
        assertThat(result.outcome().verdict()).isEqualTo(Verdict.UNDETERMINED);
        assertThat(codes(result)).contains("SILL_LEVEL_NOT_GIVEN");
        assertThat(result.waterAndAir().drivingPressure()).isNull();
        // wind with rain of its own, no temperatures: only the sum of two
        DrivingPressure fans =
                driving("{\"mechanicalPressure\":\"30 Pa\",\"windWithRain\":\"150 Pa\"}");
        assertThat(si(fans.withRain())).isCloseTo(180, within(1e-9));
        assertThat(fans.stackEffectInward()).isNull();
        // no positive wind: no sum with it
        SealsResult noWind =
                run(
                        with(
                                air("{\"mechanicalPressure\":\"30 Pa\"}"),
                                "load",
                                Map.of("negative", "-30 psf")));
        DrivingPressure part = noWind.waterAndAir().drivingPressure();
        assertThat(part).isNotNull();
        assertThat(part == null ? null : part.withRain()).isNull();
        assertThat(noWind.waterAndAir().stormWater()).isNull();
    }

    /** A remedy for dams that only the driving pressure overtops. */
    @Test
    void higherDamsPass() {
        SealsResult result =
                run(air("{\"mechanicalPressure\":\"200 Pa\",\"windWithRain\":\"300 Pa\"}"));
        assertThat(result.outcome().verdict()).isEqualTo(Verdict.EXCEEDED);
        // 500 Pa / (998.2 x 9.80665) = 51.08 mm
        assertThat(result.outcome().remedies())
                .singleElement()
                .satisfies(remedy -> assertThat(remedy.text()).contains("52 mm"));
    }

    @Test
    void refusesHalfAQuestion() {
        assertFault("{\"outsideTemperature\":\"0 degC\"}", "/air/insideTemperature");
        assertFault("{\"insideTemperature\":\"0 degC\"}", "/air/outsideTemperature");
        assertFault(
                "{\"outsideTemperature\":\"0 degC\",\"insideTemperature\":\"20 degC\"}",
                "/air/neutralLevel");
        assertFault(
                "{\"buildingHeight\":\"50 m\",\"sillLevel\":\"51 m\",\"neutralLevel\":\"60 m\"}",
                "/air/sillLevel",
                "/air/neutralLevel");
        assertFault("{\"draftCoefficient\":1.2}", "/air/draftCoefficient");
    }

    private static void assertFault(String json, String... pointers) {
        assertThatThrownBy(() -> Binder.bind(air(json), SealsRequest.class))
                .isInstanceOfSatisfying(
                        FaultsException.class,
                        e ->
                                assertThat(e.faults())
                                        .extracting("pointer")
                                        .containsExactlyInAnyOrder((Object[]) pointers));
    }

    /** By whose custom: 15 % from 2.9 psf for windows, a cap of 12 psf, and inputs over both. */
    @Test
    void testPressureByPractice() {
        assertThat(si(practice("30 psf", "{\"practice\":\"WINDOW\"}")))
                .isCloseTo(4.5 * PSF, within(1e-9));
        assertThat(si(practice("10 psf", "{\"practice\":\"WINDOW\"}")))
                .isCloseTo(2.9 * PSF, within(1e-9));
        assertThat(si(practice("90 psf", "{\"practice\":\"CURTAIN_WALL_CAP_12_PSF\"}")))
                .isCloseTo(12 * PSF, within(1e-9));
        assertThat(
                        si(
                                practice(
                                        "90 psf",
                                        "{\"practice\":\"WINDOW\",\"share\":0.2,\"cap\":\"15 psf\"}")))
                .isCloseTo(15 * PSF, within(1e-9));
        assertThat(si(practice("90 psf", "{\"practice\":\"CURTAIN_WALL\"}"))).isEqualTo(720);
    }

    private static @Nullable Quantity practice(String positive, String rule) {
        Map<String, @Nullable Object> frame =
                with(two(), "load", Map.of("positive", positive, "negative", "-35 psf"));
        return run(with(frame, "waterTest", tree(rule))).waterTestPressure();
    }
}
