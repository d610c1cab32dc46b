package org.bayledger.framing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

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

class RetentionBiteTest {

    private static final String GASKET =
            """
            {"retention":{"kind":"PRESSURE_PLATE","fastenerSpacing":"9 in","allowableFastenerTension":"400 lbf",
                          "gasketBite":"0.5 in","biteLoss":"%s","minimumGasketBite":"0.25 in"},
             "tributaryWidth":"5 ft","shortSide":"5 ft","load":{"positive":"30 psf","negative":"-40 psf"}}""";

    private static RetentionResult run(String json) {
        return RetentionCheck.run(
                Binder.bind(
                        StrictJson.read(json.getBytes(StandardCharsets.UTF_8)),
                        RetentionRequest.class),
                new Reporting(UnitSystem.US, TraceLevel.ALL));
    }

    /**
     * 1/2 in of bite less 0.2 in leaves 0.3 in; less 0.3 in it leaves 0.2 in where 1/4 is needed.
     */
    @Test
    void gasketsKeepTheirLeastBite() {
        RetentionResult kept = run(GASKET.formatted("0.2 in"));
        assertThat(kept.outcome().verdict()).isEqualTo(Verdict.SATISFIED);
        assertThat(kept.outcome().utilization()).isCloseTo(0.45 / 0.5, within(1e-9));
        RetentionResult lost = run(GASKET.formatted("0.3 in"));
        assertThat(lost.outcome().verdict()).isEqualTo(Verdict.EXCEEDED);
        assertThat(lost.outcome().findings())
                .extracting(Finding::code)
                .containsExactly("GASKET_BITE_TOO_SMALL");
        assertThat(lost.outcome().remedies()).isEmpty();
    }

    /** Screws at 1.5 times what they may, bite at 0.9: closer screws pass, and the bite governs. */
    @Test
    void screwsAndBiteAreToldApart() {
        RetentionResult failed =
                run(GASKET.formatted("0.2 in").replace("\"400 lbf\"", "\"100 lbf\""));
        assertThat(failed.outcome().utilization()).isCloseTo(1.5, within(1e-9));
        assertThat(failed.outcome().findings())
                .extracting(Finding::code)
                .containsExactly("RETENTION_EXCEEDED");
        assertThat(failed.outcome().remedies().get(0).utilization()).isCloseTo(1, within(1e-9));
        RetentionResult both =
                run(GASKET.formatted("0.6 in").replace("\"400 lbf\"", "\"100 lbf\""));
        assertThat(both.outcome().utilization()).isCloseTo(0.85 / 0.5, within(1e-9));
        assertThat(both.outcome().findings())
                .filteredOn(finding -> finding.code().equals("RETENTION_EXCEEDED"))
                .extracting(Finding::text)
                .allSatisfy(text -> assertThat(text).contains("1.5 times"));
    }

    @Test
    void biteGoesWithItsLeastValue() {
        assertThatThrownBy(
                        () ->
                                run(
                                        GASKET.formatted("0.2 in")
                                                .replace(",\"minimumGasketBite\":\"0.25 in\"", "")))
                .isInstanceOfSatisfying(
                        FaultsException.class,
                        e ->
                                assertThat(e.faults().get(0).pointer())
                                        .isEqualTo("/retention/minimumGasketBite"));
    }
}
