package org.bayledger.framing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import org.bayledger.check.Binder;
import org.bayledger.check.Fault;
import org.bayledger.check.FaultsException;
import org.bayledger.check.Reporting;
import org.bayledger.check.StrictJson;
import org.bayledger.check.TraceLevel;
import org.bayledger.check.Verdict;
import org.bayledger.quantity.UnitSystem;
import org.junit.jupiter.api.Test;

class RetentionCheckTest {

    private static final Reporting US = new Reporting(UnitSystem.US, TraceLevel.ALL);
    private static final String SCREWS =
            """
            {"retention":{"kind":"PRESSURE_PLATE","fastenerSpacing":"9 in","allowableFastenerTension":"200 lbf"},
             "tributaryWidth":"5 ft","shortSide":"5 ft","load":{"positive":"30 psf","negative":"-40 psf"}}""";
    private static final String SILICONE =
            """
            {"retention":{"kind":"STRUCTURAL_SILICONE","siliconeBite":"0.5 in"},
             "tributaryWidth":"5 ft","shortSide":"5 ft","load":{"positive":"30 psf","negative":"-40 psf"}}""";

    private static RetentionResult run(String json) {
        return RetentionCheck.run(
                Binder.bind(
                        StrictJson.read(json.getBytes(StandardCharsets.UTF_8)),
                        RetentionRequest.class),
                US);
    }

    /** Statics: 40 psf x 5 ft x 0.75 ft = 150 lbf on each screw. */
    @Test
    void screwCarriesTheAreaTributaryToIt() {
        RetentionResult result = run(SCREWS);
        assertThat(result.fastenerTension()).isNotNull();
        assertThat(result.fastenerTension().si() / 4.4482216152605).isCloseTo(150, within(1e-6));
        assertThat(result.outcome().utilization()).isCloseTo(0.75, within(1e-9));
        assertThat(result.outcome().verdict()).isEqualTo(Verdict.SATISFIED);
    }

    @Test
    void plateSaysThatItLevers() {
        assertThat(run(SCREWS).outcome().cautions())
                .anyMatch(text -> text.contains("rying of a plate loaded on one side"));
        assertThat(run(SCREWS).outcome().trace())
                .filteredOn(step -> step.symbol().equals("T"))
                .singleElement()
                .satisfies(step -> assertThat(step.source()).contains("twice the half width"));
        assertThat(run(SILICONE).outcome().cautions()).noneMatch(text -> text.contains("rying"));
    }

    /** ASTM C1401 practice, from memory: 40 psf x 60 in / 2 / 20 psi = 0.4167 in. */
    @Test
    void siliconeBite() {
        RetentionResult result = run(SILICONE);
        assertThat(result.requiredBite()).isNotNull();
        assertThat(result.requiredBite().si() / 0.0254)
                .isCloseTo(40.0 / 144 * 60 / 2 / 20, within(1e-9));
    }

    @Test
    void remediesPass() {
        RetentionResult failed = run(SCREWS.replace("200 lbf", "100 lbf"));
        assertThat(failed.outcome().verdict()).isEqualTo(Verdict.EXCEEDED);
        assertThat(failed.outcome().findings())
                .extracting("code")
                .containsExactly("RETENTION_EXCEEDED");
        assertThat(failed.outcome().remedies().get(0).text()).contains("6 in");
        assertThat(
                        run(SCREWS.replace("200 lbf", "100 lbf").replace("9 in", "6 in"))
                                .outcome()
                                .utilization())
                .isCloseTo(failed.outcome().remedies().get(0).utilization(), within(1e-6));
        RetentionResult narrow = run(SILICONE.replace("0.5 in", "0.375 in"));
        assertThat(narrow.outcome().remedies().get(0).text()).contains("0.42 in");
    }

    @Test
    void suctionThatWasNotCalledOutIsUndetermined() {
        assertThat(run(SCREWS.replace(",\"negative\":\"-40 psf\"", "")).outcome().verdict())
                .isEqualTo(Verdict.UNDETERMINED);
    }

    @Test
    void eachKindTakesItsOwnInput() {
        assertThatThrownBy(
                        () ->
                                run(
                                        SILICONE.replace(
                                                "\"siliconeBite\":\"0.5 in\"",
                                                "\"fastenerSpacing\":\"9 in\"")))
                .isInstanceOfSatisfying(
                        FaultsException.class,
                        e ->
                                assertThat(e.faults())
                                        .extracting(Fault::pointer)
                                        .containsExactly(
                                                "/retention/fastenerSpacing",
                                                "/retention/siliconeBite"));
    }
}
