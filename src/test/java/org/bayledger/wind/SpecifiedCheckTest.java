package org.bayledger.wind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import org.bayledger.check.Binder;
import org.bayledger.check.FaultsException;
import org.bayledger.check.LoadBasis;
import org.bayledger.check.Reporting;
import org.bayledger.check.StrictJson;
import org.bayledger.check.TraceLevel;
import org.bayledger.check.Verdict;
import org.bayledger.quantity.UnitSystem;
import org.junit.jupiter.api.Test;

/** Specified pressures asked for alone. */
class SpecifiedCheckTest {

    private static final double PSF = 47.88025898033584;

    private static final String COMPONENTS =
            """
            "components":[{"id":"lite","effectiveWindArea":"40 ft2","height":"60 ft"},
                          {"id":"high lite","effectiveWindArea":"40 ft2","height":"61 ft"}],
            """;

    private static final String TABLE =
            """
            "specifiedPressures":{"source":"Sheet S-001","basis":"ALLOWABLE_STRESS","pressures":[
              {"zone":"4","to":"60 ft","positive":"20 psf","negative":"-21 psf"},
              {"zone":"4","from":"60 ft","positive":"24 psf","negative":"-25 psf"},
              {"zone":"5","positive":"24 psf"%s}]}
            """;

    private static WindResult run(String site, String suction) {
        String json = "{" + site + COMPONENTS + TABLE.formatted(suction) + "}";
        return WindCheck.run(
                Binder.bind(
                        StrictJson.read(json.getBytes(StandardCharsets.UTF_8)), WindRequest.class),
                new Reporting(UnitSystem.US, TraceLevel.ALL));
    }

    /** A top at 60 ft still lies in the heights up to 60 ft. */
    @Test
    void withoutSite() {
        WindResult result = run("", ",\"negative\":\"-40 psf\"");
        assertThat(result.outcome().verdict()).isEqualTo(Verdict.SATISFIED);
        assertThat(result.zoneWidth()).isNull();
        WindResult.Zone low = result.components().get(0).zones().get(0);
        assertThat(low.positive().si() / PSF).isCloseTo(20, within(1e-6));
        assertThat(low.basis()).isEqualTo(LoadBasis.ALLOWABLE_STRESS);
        assertThat(result.components().get(1).zones().get(0).negative().si() / PSF)
                .isCloseTo(-25, within(1e-6));
    }

    @Test
    void missingSignIsUndetermined() {
        WindResult result = run("", "");
        assertThat(result.outcome().verdict()).isEqualTo(Verdict.UNDETERMINED);
        assertThat(result.components().get(0).zones().get(1).negative()).isNull();
        assertThat(result.outcome().findings())
                .filteredOn(finding -> finding.code().equals("SPECIFIED_SIGN_MISSING"))
                .singleElement()
                .satisfies(
                        finding ->
                                assertThat(finding.pointer())
                                        .isEqualTo("/specifiedPressures/pressures/2/negative"));
    }

    /** The site's strength pressures are compared at 0.6 of themselves. */
    @Test
    void comparedWithTheSite() {
        String site =
                """
                "standard":"ASCE_7_16","basicWindSpeed":"115 mph","exposureCategory":"B",
                "meanRoofHeight":"98 ft","leastHorizontalDimension":"90 ft","roofSlope":"0 deg",
                "enclosureClassification":"ENCLOSED","groundElevation":"250 ft",
                "topographicFactor":1.0,"designBasis":"STRENGTH",
                """;
        WindResult result = run(site, ",\"negative\":\"-10 psf\"");
        // -1.8 to -1.0 on log A from 20 to 500 ft2, GCpi 0.18, 0.6 W
        double coefficient = 1.8 - 0.8 * Math.log(2) / Math.log(25);
        double qh =
                0.00256
                        * 2.01
                        * Math.pow(98.0 / 1200, 2.0 / 7)
                        * 0.85
                        * Math.exp(-0.0000362 * 250)
                        * 115
                        * 115;
        String computed = "%.2f psf".formatted(-0.6 * qh * (coefficient + 0.18));
        assertThat(result.outcome().findings())
                .filteredOn(finding -> finding.code().equals("SPECIFIED_BELOW_COMPUTED"))
                .hasSize(2)
                .allSatisfy(
                        finding -> {
                            assertThat(finding.text()).contains("-10 psf", computed);
                            assertThat(finding.pointer())
                                    .isEqualTo("/specifiedPressures/pressures/2/negative");
                        });
        assertThat(result.components().get(0).zones().get(1).negative().si() / PSF)
                .isCloseTo(-10, within(1e-6));
    }

    @Test
    void neitherSiteNorPressures() {
        String json = "{" + COMPONENTS.stripTrailing().replaceAll(",$", "") + "}";
        assertThatThrownBy(
                        () ->
                                Binder.bind(
                                        StrictJson.read(json.getBytes(StandardCharsets.UTF_8)),
                                        WindRequest.class))
                .isInstanceOf(FaultsException.class)
                .hasMessageContaining("/standard");
    }
}
