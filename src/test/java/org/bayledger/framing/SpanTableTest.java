package org.bayledger.framing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.nio.charset.StandardCharsets;
import org.bayledger.check.Binder;
import org.bayledger.check.FaultsException;
import org.bayledger.check.Finding;
import org.bayledger.check.Reporting;
import org.bayledger.check.StrictJson;
import org.bayledger.check.TraceLevel;
import org.bayledger.check.Verdict;
import org.bayledger.quantity.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpanTableTest {

    private static final double FOOT = 0.3048;

    private static final String TABLE =
            """
            {"section":{"secondMomentOfArea":"6.5 in4","sectionModulus":"%s","elasticModulus":"10100 ksi",
                        "allowableBendingStress":"15.2 ksi"%s},
             "pressures":["20 psf","30 psf","40 psf"],"spacings":["4 ft","5 ft","6 ft"]%s}""";

    private static SpanTableResult run(String modulus, String more, String request) {
        return SpanTable.run(
                Binder.bind(
                        StrictJson.read(
                                TABLE.formatted(modulus, more, request)
                                        .getBytes(StandardCharsets.UTF_8)),
                        SpanTableRequest.class),
                new Reporting(UnitSystem.US, TraceLevel.ALL));
    }

    private static final String COVERED = ",\"bucklingCovered\":true";

    /**
     * Deflection governs with a large section modulus: 5 w L^4/(384 E I) = L/175, L = cbrt(384 E
     * I/(875 w)), w = p b in lb/in (AISC table of beams; IBC 1604.3.7).
     */
    @ParameterizedTest
    @CsvSource({"0, 1, 20, 5", "1, 1, 30, 5", "2, 2, 40, 6", "2, 0, 40, 4"})
    void singleSpansByHand(int row, int column, double pressure, double spacing) {
        SpanTableResult result = run("9 in3", COVERED, "");
        double w = pressure * spacing / 12;
        double inches = Math.cbrt(384 * 10.1e6 * 6.5 / (875 * w));
        SpanTableResult.Cell cell = result.rows().get(row).cells().get(column);
        assertThat(cell.span().si() / 0.0254).isCloseTo(inches, withinPercentage(0.1));
        assertThat(cell.span().si() / 0.0254).isLessThanOrEqualTo(inches);
        assertThat(cell.limit()).isEqualTo(SpanTableResult.Limit.DEFLECTION);
        assertThat(result.outcome().verdict()).isEqualTo(Verdict.SATISFIED);
        assertThat(result.outcome().utilization()).isNull();
    }

    /** Stress governs with a small one: w L^2/8 = 15 200 psi S. */
    @Test
    void stressGovernsAWeakSection() {
        SpanTableResult.Cell cell = run("0.9 in3", COVERED, "").rows().get(2).cells().get(2);
        double inches = Math.sqrt(8 * 15_200 * 0.9 / (40 * 6 / 12.0));
        assertThat(cell.span().si() / 0.0254).isCloseTo(inches, withinPercentage(0.1));
        assertThat(cell.limit()).isEqualTo(SpanTableResult.Limit.STRESS);
    }

    /**
     * Two equal spans: greatest deflection w L^4/(185 E I), moment w L^2/8 (AISC table of
     * continuous beams, from memory).
     */
    @Test
    void twoEqualSpansAreContinuous() {
        SpanTableResult.Cell cell =
                run("9 in3", COVERED, ",\"arrangement\":\"TWO_EQUAL\"")
                        .rows()
                        .get(2)
                        .cells()
                        .get(2);
        double inches = Math.cbrt(184.6 * 10.1e6 * 6.5 / (175 * 40 * 6 / 12.0));
        assertThat(cell.span().si() / 0.0254).isCloseTo(inches, withinPercentage(0.4));
    }

    @Test
    void spansFallWithPressureAndSpacing() {
        SpanTableResult result = run("2.6 in3", COVERED, "");
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                double span = result.rows().get(i).cells().get(j).span().si();
                if (i > 0) {
                    assertThat(span)
                            .isLessThan(result.rows().get(i - 1).cells().get(j).span().si());
                }
                if (j > 0) {
                    assertThat(span)
                            .isLessThan(result.rows().get(i).cells().get(j - 1).span().si());
                }
            }
        }
    }

    /** A strength-level pressure counts 0.6 times, once. */
    @Test
    void strengthLevelIsBroughtDownOnce() {
        SpanTableResult strength = run("9 in3", COVERED, ",\"basis\":\"STRENGTH\"");
        double w = 0.6 * 30 * 5 / 12;
        double inches = Math.cbrt(384 * 10.1e6 * 6.5 / (875 * w));
        double span = strength.rows().get(1).cells().get(1).span().si() / 0.0254;
        if (inches <= 162) {
            assertThat(span).isCloseTo(inches, withinPercentage(0.1));
        } else {
            double limit = span / 240 + 0.25;
            assertThat(5 * w * Math.pow(span, 4) / (384 * 10.1e6 * 6.5))
                    .isCloseTo(limit, withinPercentage(0.5));
        }
    }

    @Test
    void endsWhereItIsToldToEnd() {
        SpanTableResult.Cell cell =
                run("9 in3", COVERED, ",\"greatestSpan\":\"6 ft\"").rows().get(0).cells().get(0);
        assertThat(cell.limit()).isEqualTo(SpanTableResult.Limit.GREATEST_SPAN);
        assertThat(cell.span().si()).isCloseTo(6 * FOOT, within(1e-12));
    }

    @Test
    void whatIsNotKnownMakesTheTableUndetermined() {
        SpanTableResult result = run("2.6 in3", "", "");
        assertThat(result.outcome().verdict()).isEqualTo(Verdict.UNDETERMINED);
        assertThat(result.outcome().findings())
                .extracting(Finding::code)
                .containsOnlyOnce("BUCKLING_NOT_CHECKED")
                .doesNotContain("DEFLECTION_EXCEEDED");
    }

    @Test
    void steelThatEndsHasNoTable() {
        assertThatThrownBy(
                        () ->
                                run(
                                        "2.6 in3",
                                        COVERED
                                                + ",\"reinforcement\":{\"secondMomentOfArea\":\"2"
                                                + " in4\",\"sectionModulus\":\"1"
                                                + " in3\",\"yieldStrength\":\"36 ksi\",\"from\":\"1"
                                                + " ft\"}",
                                        ""))
                .isInstanceOf(FaultsException.class);
    }
}
