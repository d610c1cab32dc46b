package org.bayledger.glass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.bayledger.glass.GlassRequests.codes;
import static org.bayledger.glass.GlassRequests.laminate;
import static org.bayledger.glass.GlassRequests.lite;
import static org.bayledger.glass.GlassRequests.pane;
import static org.bayledger.glass.GlassRequests.run;

import java.util.List;
import org.bayledger.check.FaultsException;
import org.bayledger.check.Verdict;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;

/** The sealed-cavity model and the bite in the glass check. */
@NullMarked
class SealedUnitTest {

    private static final String GUST =
            "{\"positive\":\"1.2 kPa\",\"negative\":\"-1.5 kPa\",\"duration\":\"3 s\"}";
    private static final String SEALED =
            "\"sealedUnit\":{\"sealed\":{\"altitude\":\"100 m\",\"temperature\":\"20 degC\"},"
                    + "\"service\":[%s]}";

    private static String climate(String name, String air, String temperatures, String duration) {
        return "{\"name\":\"%s\",%s,\"cavityTemperatures\":[%s],\"duration\":\"%s\"}"
                .formatted(name, air, temperatures, duration);
    }

    private static final String WINTER =
            climate("winter", "\"pressure\":\"103 kPa\"", "\"-5 degC\"", "30 d");

    private static GlassResult unit(List<String> panes, String service) {
        return run(lite("1200 mm", "1800 mm", panes, GUST, "," + SEALED.formatted(service)));
    }

    @Test
    void standsBesideThePracticeAndSaysSo() {
        List<String> panes = List.of(pane("6 mm", "ANNEALED"), pane("6 mm", "ANNEALED"));
        GlassResult with = unit(panes, WINTER);
        GlassResult without = run(lite("1200 mm", "1800 mm", panes, GUST, ""));
        assertThat(with.outcome().verdict()).isEqualTo(Verdict.SATISFIED);
        assertThat(with.outcome().utilization()).isEqualTo(without.outcome().utilization());
        assertThat(codes(with))
                .contains("SEALED_CAVITY_STANDS_BESIDE")
                .doesNotContain("CAVITY_PRESSURE_NOT_CHECKED");
        assertThat(codes(without)).contains("CAVITY_PRESSURE_NOT_CHECKED");
        SealedUnitResult sealed = with.sealedUnit();
        assertThat(sealed).isNotNull();
        assertThat(sealed.cases()).hasSize(5);
        assertThat(sealed.utilization()).isBetween(0.1, 1.0);
        for (SealedUnitResult.Case each : sealed.cases()) {
            double sum = each.panes().stream().mapToDouble(p -> p.pressure().si()).sum();
            double wind =
                    each.wind() == null ? 0 : each.wind() == PressureSign.POSITIVE ? 1200 : -1500;
            assertThat(sum).isCloseTo(wind, within(1e-3));
        }
        SealedUnitResult.Case still = sealed.cases().get(2);
        assertThat(still.climate()).isEqualTo("winter");
        assertThat(still.wind()).isNull();
        assertThat(still.cavities().get(0).pressureDifference().si()).isNegative();
        assertThat(still.cavities().get(0).gapAtCenter().si()).isLessThan(0.012);
    }

    /**
     * Without wind: 5.56 mm annealed resists NFL x 0.39 for 30 d, and uses |q| over that. The GTF
     * of a like pair at 30 d is 0.39 (ASTM E1300-16, from memory).
     */
    @Test
    void climateAloneIsHeldAgainstTheLongDuration() {
        GlassResult result =
                unit(List.of(pane("6 mm", "ANNEALED"), pane("6 mm", "ANNEALED")), WINTER);
        SealedUnitResult.PaneState pane = result.sealedUnit().cases().get(2).panes().get(0);
        double resistance = result.panes().get(0).nonFactoredLoad().si() * 0.39;
        assertThat(pane.utilization())
                .isCloseTo(Math.abs(pane.pressure().si()) / resistance, within(1e-9));
    }

    /** q = qc + qw, each over the resistance for its duration. */
    @Test
    void windAndClimateAddUpByDuration() {
        GlassResult result =
                unit(List.of(pane("6 mm", "ANNEALED"), pane("6 mm", "ANNEALED")), WINTER);
        List<SealedUnitResult.Case> cases = result.sealedUnit().cases();
        double constant = cases.get(2).panes().get(0).pressure().si();
        double whole = cases.get(3).panes().get(0).pressure().si();
        double resistance = result.panes().get(0).nonFactoredLoad().si();
        assertThat(constant).isPositive();
        assertThat(cases.get(3).panes().get(0).utilization())
                .isCloseTo(
                        constant / (0.39 * resistance) + (whole - constant) / (0.9 * resistance),
                        within(1e-9));
    }

    @Test
    void aBrittleUnitIsLeftToAPerson() {
        GlassResult result =
                run(
                        lite(
                                "350 mm",
                                "900 mm",
                                List.of(pane("3 mm", "ANNEALED"), pane("10 mm", "ANNEALED")),
                                GUST,
                                ","
                                        + SEALED.formatted(
                                                climate(
                                                        "mountain summer",
                                                        "\"altitude\":\"2500 m\"",
                                                        "\"55 degC\"",
                                                        "30 d"))));
        assertThat(result.outcome().utilization()).isLessThan(1);
        assertThat(result.outcome().verdict()).isEqualTo(Verdict.UNDETERMINED);
        assertThat(codes(result)).contains("SEALED_CAVITY_EXCEEDS_RESISTANCE");
    }

    @Test
    void panesThatTouchAreSaid() {
        GlassResult result =
                run(
                        "{\"practice\":\"ASTM_E1300\",\"width\":\"1500 mm\",\"height\":\"2500"
                                + " mm\",\"supportedEdges\":\"FOUR\",\"glass\":{\"panes\":["
                                + pane("4 mm", "FULLY_TEMPERED")
                                + ","
                                + pane("4 mm", "FULLY_TEMPERED")
                                + "],\"cavities\":[{\"width\":\"6 mm\"}]},\"load\":"
                                + GUST
                                + ","
                                + SEALED.replace("100 m", "2500 m")
                                        .replace("20 degC", "45 degC")
                                        .formatted(
                                                climate(
                                                        "deep cold at sea",
                                                        "\"pressure\":\"104 kPa\"",
                                                        "\"-40 degC\"",
                                                        "1 d"))
                                + "}");
        assertThat(codes(result)).contains("PANES_TOUCH");
        assertThat(result.outcome().verdict()).isEqualTo(Verdict.UNDETERMINED);
        assertThat(result.sealedUnit().utilization()).isNull();
    }

    @Test
    void tripleAndLaminatedUnitsAreModelled() {
        GlassResult result =
                unit(
                        List.of(
                                pane("6 mm", "HEAT_STRENGTHENED"),
                                pane("4 mm", "ANNEALED"),
                                laminate(
                                        "4 mm",
                                        "4 mm",
                                        "{\"material\":\"PVB\",\"thickness\":\"0.76 mm\"}",
                                        "ANNEALED")),
                        climate(
                                "summer",
                                "\"altitude\":\"900 m\"",
                                "\"45 degC\",\"35 degC\"",
                                "1 d"));
        SealedUnitResult sealed = result.sealedUnit();
        assertThat(sealed.cases().get(2).cavities()).hasSize(2);
        assertThat(sealed.cases().get(2).panes()).hasSize(3);
        assertThat(sealed.utilization()).isPositive();
        assertThat(sealed.cases().get(2).panes().get(0).pressure().si()).isNegative();
    }

    @Test
    void refusesWhatDoesNotFitAllAtOnce() {
        String request =
                lite(
                        "1200 mm",
                        "1800 mm",
                        List.of(pane("6 mm", "HEAT_STRENGTHENED"), pane("6 mm", "ANNEALED")),
                        GUST,
                        ",\"minimumBite\":\"6 mm\","
                                + SEALED.formatted(
                                        climate(
                                                "w",
                                                "\"altitude\":\"0 m\"",
                                                "\"0 degC\",\"5 degC\"",
                                                "90 d")));
        assertThatThrownBy(() -> run(request))
                .isInstanceOfSatisfying(
                        FaultsException.class,
                        refused ->
                                assertThat(refused.faults())
                                        .extracting(fault -> fault.pointer())
                                        .contains(
                                                "/bite",
                                                "/sealedUnit/service/0/cavityTemperatures",
                                                "/sealedUnit/service/0/duration"));
        assertThatThrownBy(
                        () ->
                                run(
                                        lite(
                                                "1200 mm",
                                                "1800 mm",
                                                List.of(pane("6 mm", "ANNEALED")),
                                                GUST,
                                                "," + SEALED.formatted(WINTER))))
                .isInstanceOf(FaultsException.class);
    }
}
