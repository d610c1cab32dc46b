package org.bayledger.wind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.bayledger.check.Fault;
import org.bayledger.check.FaultsException;
import org.bayledger.check.Finding;
import org.bayledger.check.Load;
import org.bayledger.check.LoadBasis;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;

/** Pressures for deflection limits, which are never silent and never loads; bases as types. */
@NullMarked
class ServiceabilityTest {

    private static final String LITE =
            "[{\"id\":\"L\",\"effectiveWindArea\":\"2 m2\",\"height\":\"5 m\"}]";
    private static final String CHOICE = "{\"factor\":0.42,\"reason\":\"agreed\"}";

    /** 0.42 of the strength-level pressure whichever level the design pressures stand at. */
    @Test
    void shareOfTheStrengthLevelPressure() {
        double strength =
                Wind.run(Wind.request(Wind.TALL, LITE))
                        .components()
                        .get(0)
                        .zones()
                        .get(1)
                        .negative()
                        .si();
        for (String basis : List.of("\"STRENGTH\"", "\"ALLOWABLE_STRESS\"")) {
            WindResult result =
                    Wind.run(
                            Wind.request(
                                    Wind.TALL,
                                    LITE,
                                    "designBasis",
                                    basis,
                                    "serviceability",
                                    CHOICE));
            List<WindResult.ServiceabilityZone> zones =
                    result.components().get(0).serviceabilityZones();
            assertThat(zones).isNotNull().hasSize(2);
            assertThat(zones.get(1).negative().si()).isCloseTo(0.42 * strength, within(1e-9));
            assertThat(result.outcome().findings())
                    .extracting(Finding::code)
                    .containsExactly(
                            "SERVICEABILITY_WIND_CHOSEN",
                            "SERVICEABILITY_WIND_NOT_FOR_GLASS_FRAMING");
        }
    }

    /** The design pressures are what they are without the choice. */
    @Test
    void designPressuresAreNotTouched() {
        WindResult without = Wind.run(Wind.request(Wind.TALL, LITE));
        WindResult with = Wind.run(Wind.request(Wind.TALL, LITE, "serviceability", CHOICE));
        assertThat(without.components().get(0).serviceabilityZones()).isNull();
        assertThat(with.components().get(0).zones()).isEqualTo(without.components().get(0).zones());
    }

    /** A stated serviceability wind speed: 76 mph over 120 mph squared is 0.40111. */
    @Test
    void windSpeedOfAnotherRecurrenceInterval() {
        Site site =
                Wind.site(
                        Wind.TALL,
                        "serviceability",
                        "{\"windSpeed\":\"76 mph\",\"reason\":\"10-year\"}");
        assertThat(site.serviceabilityFactor()).isCloseTo(0.401111, within(1e-6));
        WindResult result =
                Wind.run(
                        Wind.request(
                                Wind.TALL,
                                LITE,
                                "serviceability",
                                "{\"factor\":0.6,\"reason\":\"x\"}"));
        assertThat(result.outcome().findings())
                .extracting(Finding::code)
                .containsExactly("SERVICEABILITY_WIND_CHOSEN");
    }

    @Test
    void whatIsNoChoiceIsRefused() {
        assertRefused(Wind.TALL, "{\"reason\":\"x\"}", "/serviceability/factor");
        assertRefused(
                Wind.TALL,
                "{\"factor\":0.42,\"windSpeed\":\"76 mph\",\"reason\":\"x\"}",
                "/serviceability/factor");
        assertRefused(Wind.TALL, "{\"factor\":0.42,\"reason\":\" \"}", "/serviceability/reason");
        assertRefused(Wind.TALL, "{\"factor\":0.42}", "/serviceability/reason");
        assertRefused(Wind.TALL, "{\"factor\":1.1,\"reason\":\"x\"}", "/serviceability/factor");
        assertRefused(
                Wind.TALL,
                "{\"windSpeed\":\"121 mph\",\"reason\":\"x\"}",
                "/serviceability/windSpeed");
        assertRefused(Wind.EN, CHOICE, "/serviceability");
    }

    private static void assertRefused(String site, String choice, String pointer) {
        assertThatThrownBy(() -> Wind.site(site, "serviceability", choice))
                .isInstanceOfSatisfying(
                        FaultsException.class,
                        e ->
                                assertThat(e.faults())
                                        .extracting(Fault::pointer)
                                        .containsExactly(pointer));
    }

    /** The level of a pressure is its type, and that of its load follows from it. */
    @Test
    void levelIsTheType() {
        DesignPressure.Strength strength = new DesignPressure.Strength(100, -200);
        assertThat(strength.load()).isEqualTo(new Load(100.0, -200.0, LoadBasis.STRENGTH));
        assertThat(strength.allowableStress().load())
                .isEqualTo(new Load(60.0, -120.0, LoadBasis.ALLOWABLE_STRESS));
        assertThat(new DesignPressure.Characteristic(1, -1).basis())
                .isEqualTo(LoadBasis.CHARACTERISTIC);
        assertThatIllegalArgumentException().isThrownBy(() -> new DesignPressure.Strength(0, -1));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new DesignPressure.AllowableStress(1, 0));
    }

    /** No way leads from a serviceability pressure to a load or to a design pressure. */
    @Test
    void serviceabilityPressureIsNoLoad() {
        assertThat(DesignPressure.class.isAssignableFrom(ServiceabilityPressure.class)).isFalse();
        assertThat(Arrays.stream(ServiceabilityPressure.class.getDeclaredMethods()))
                .noneMatch(
                        method ->
                                method.getReturnType() == Load.class
                                        || DesignPressure.class.isAssignableFrom(
                                                method.getReturnType()));
    }
}
