package org.bayledger.wind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Objects;
import org.bayledger.check.Answer;
import org.bayledger.check.AnswerModule;
import org.bayledger.check.Binder;
import org.bayledger.check.Fault;
import org.bayledger.check.FaultsException;
import org.bayledger.check.Finding;
import org.bayledger.check.LoadBasis;
import org.bayledger.check.Reporting;
import org.bayledger.check.StrictJson;
import org.bayledger.check.TraceLevel;
import org.bayledger.check.TraceStep;
import org.bayledger.check.Verdict;
import org.bayledger.quantity.UnitSystem;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.json.JsonMapper;

/** The check as a caller meets it. */
@NullMarked
class WindCheckTest {

    private static final String LITE =
            "[{\"id\":\"L\",\"effectiveWindArea\":\"2 m2\",\"height\":\"5 m\"}]";

    private static List<String> codes(WindResult result) {
        return result.outcome().findings().stream().map(Finding::code).toList();
    }

    /** The hand-worked numbers of the tall building (see AsceWallsTest), end to end. */
    @Test
    void contractExample() throws IOException {
        WindRequest request;
        try (InputStream example =
                Objects.requireNonNull(
                        getClass()
                                .getResourceAsStream("/contract/checkWindPressure.request.json"))) {
            request = Binder.bind(StrictJson.read(example.readAllBytes()), WindRequest.class);
        }
        WindResult result = Wind.run(request);
        assertThat(result.outcome().verdict()).isEqualTo(Verdict.SATISFIED);
        assertThat(result.outcome().utilization()).isNull();
        assertThat(result.outcome().findings()).isEmpty();
        assertThat(result.outcome().remedies()).isEmpty();
        assertThat(result.zoneWidth().text(UnitSystem.US)).isEqualTo("10 ft");
        assertThat(result.velocityPressureAtRoof().text(UnitSystem.US)).isEqualTo("35.42 psf");
        WindResult.ComponentPressures mullion = result.components().get(0);
        assertThat(mullion.id()).isEqualTo("N-03 mullion");
        assertThat(mullion.effectiveWindArea().text(UnitSystem.US)).isEqualTo("65 ft2");
        assertThat(mullion.zones()).extracting(WindResult.Zone::zone).containsExactly("4", "5");
        WindResult.Zone end = mullion.zones().get(1);
        assertThat(end.positive().text(UnitSystem.US)).isEqualTo("34.11 psf");
        assertThat(end.negative().text(UnitSystem.US)).isEqualTo("-59.75 psf");
        assertThat(end.basis()).isEqualTo(LoadBasis.STRENGTH);
        assertThat(result.components().get(1).zones().get(1).negative().text(UnitSystem.US))
                .isEqualTo("-70.12 psf");
    }

    @Test
    void answerIsWrittenWithTheBasisBesideEachPressure() {
        JsonMapper mapper =
                JsonMapper.builder()
                        .addModule(new AnswerModule())
                        .disable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
                        .build();
        WindResult result =
                Wind.run(
                        Wind.request(
                                Wind.TALL,
                                """
                                [{"id":"M","effectiveWindArea":"65 ft2","height":"155 ft"}]"""));
        assertThat(mapper.writeValueAsString(new Answer<>(UnitSystem.US, result)))
                .startsWith("{\"verdict\":\"SATISFIED\",\"utilization\":null,\"findings\":[]")
                .endsWith(
                        """
                        "zoneWidth":{"value":10,"unit":"ft"},"velocityPressureAtRoof":{"value":35.416,"unit":"psf"},\
                        "components":[{"id":"M","effectiveWindArea":{"value":65,"unit":"ft2"},"height":{"value":155,"unit":"ft"},\
                        "zones":[{"zone":"4","positive":{"value":34.1061,"unit":"psf"},"negative":{"value":-35.6557,"unit":"psf"},"basis":"STRENGTH"},\
                        {"zone":"5","positive":{"value":34.1061,"unit":"psf"},"negative":{"value":-59.7491,"unit":"psf"},"basis":"STRENGTH"}],"serviceabilityZones":null}]}""");
    }

    /** The same building in metres gives the same pressures. */
    @Test
    void unitsOfTheRequestDoNotMatter() {
        WindResult us =
                Wind.run(
                        Wind.request(
                                Wind.TALL,
                                """
                                [{"id":"M","span":"13'-0\\"","tributaryWidth":"5 ft","height":"155 ft"}]"""));
        WindResult si =
                Wind.run(
                        Wind.request(
                                Wind.TALL,
                                """
                                [{"id":"M","span":"3962.4 mm","tributaryWidth":"1.524 m","height":"47.244 m"}]""",
                                "basicWindSpeed",
                                "\"53.6448 m/s\"",
                                "meanRoofHeight",
                                "\"48.768 m\"",
                                "leastHorizontalDimension",
                                "{\"value\":30.48,\"unit\":\"m\"}"));
        for (int i = 0; i < 2; i++) {
            double expected = us.components().get(0).zones().get(i).negative().si();
            assertThat(si.components().get(0).zones().get(i).negative().si())
                    .isCloseTo(expected, within(1e-9));
            expected = us.components().get(0).zones().get(i).positive().si();
            assertThat(si.components().get(0).zones().get(i).positive().si())
                    .isCloseTo(expected, within(1e-9));
        }
    }

    @Test
    void effectiveAreaIsAtLeastAThirdOfTheSpanWide() {
        WindResult result =
                Wind.run(
                        Wind.request(
                                Wind.TALL,
                                """
                                [{"id":"M","span":"15 ft","tributaryWidth":"2 ft","height":"50 ft"}]"""));
        assertThat(result.components().get(0).effectiveWindArea().text(UnitSystem.US))
                .isEqualTo("75 ft2");
    }

    private static double step(WindResult result, String symbol) {
        return result.outcome().trace().stream()
                .filter(s -> s.symbol().equals(symbol))
                .findFirst()
                .orElseThrow()
                .value()
                .si();
    }

    /** With the trace the sum can be redone: p- from qh, GCp and GCpi as they are printed. */
    @Test
    void traceCanBeRedoneByHand() {
        WindResult result = Wind.run(Wind.request(Wind.TALL, LITE));
        double qh = step(result, "qh");
        double gcpi = step(result, "GCpi");
        List<TraceStep> steps = result.outcome().trace();
        List<TraceStep> coefficients =
                steps.stream().filter(s -> s.symbol().equals("GCp-")).toList();
        List<TraceStep> pressures = steps.stream().filter(s -> s.symbol().equals("p-")).toList();
        assertThat(coefficients).hasSize(2);
        for (int i = 0; i < 2; i++) {
            assertThat(pressures.get(i).value().si())
                    .isCloseTo(qh * (coefficients.get(i).value().si() - gcpi), within(1e-9));
        }
        assertThat(step(result, "p+"))
                .isCloseTo(step(result, "q") * step(result, "GCp+") + qh * gcpi, within(1e-9));
        assertThat(steps).allSatisfy(s -> assertThat(s.source()).isNotBlank());
    }

    @Test
    void traceOfEnCanBeRedoneByHand() {
        WindResult result = Wind.run(Wind.request(Wind.EN, LITE));
        double q = step(result, "qp(h)");
        assertThat(step(result, "w+"))
                .isCloseTo(step(result, "qp(ze)") * step(result, "cpe,D") + 0.3 * q, within(1e-9));
        assertThat(result.components().get(0).zones().get(0).negative().si())
                .isCloseTo(q * (step(result, "cpe,A") - 0.2), within(1e-9));
        assertThat(codes(result)).containsExactly("RECOMMENDED_VALUES");
        assertThat(result.outcome().verdict()).isEqualTo(Verdict.SATISFIED);
    }

    /**
     * Above the roof the velocity pressure is that of the part's own top, and the trace says so.
     */
    @Test
    void traceAboveTheRoofCanBeRedoneByHand() {
        String parapet = "[{\"id\":\"P\",\"effectiveWindArea\":\"20 ft2\",\"height\":\"163 ft\"}]";
        WindResult tall = Wind.run(Wind.request(Wind.TALL, parapet));
        double q = step(tall, "q");
        double gcpi = step(tall, "GCpi");
        assertThat(q).isGreaterThan(step(tall, "qh"));
        assertThat(step(tall, "p+")).isCloseTo(q * (step(tall, "GCp+") + gcpi), within(1e-9));
        assertThat(step(tall, "p-")).isCloseTo(q * (step(tall, "GCp-") - gcpi), within(1e-9));
        assertThat(formula(tall, "p+")).startsWith("q (GCp + GCpi)");
        assertThat(formula(tall, "p-")).startsWith("q (GCp - GCpi)");
        WindResult low = Wind.run(Wind.request(Wind.LOW, parapet.replace("163", "28")));
        assertThat(formula(low, "p+")).startsWith("q (GCp + GCpi)");
        assertThat(formula(low, "p-")).startsWith("q (GCp - GCpi)");

        WindResult en = Wind.run(Wind.request(Wind.EN, parapet.replace("163 ft", "42 m")));
        double top = step(en, "qp(ze)");
        assertThat(top).isGreaterThan(step(en, "qp(h)"));
        assertThat(step(en, "w+")).isCloseTo(top * (step(en, "cpe,D") + 0.3), within(1e-9));
        assertThat(formula(en, "w+")).isEqualTo("qp(ze) cpe,D + 0.3 qp(ze)");
        assertThat(formula(en, "w-")).startsWith("qp(ze) (min(cpe,A; cpe,E)");
    }

    private static String formula(WindResult result, String symbol) {
        return result.outcome().trace().stream()
                .filter(s -> s.symbol().equals(symbol))
                .findFirst()
                .orElseThrow()
                .formula();
    }

    /** An area outside the figure is read on its flat end, and the trace says so. */
    @Test
    void flatEndsAreSaid() {
        WindResult result =
                Wind.run(
                        Wind.request(
                                Wind.TALL,
                                """
                                [{"id":"S","effectiveWindArea":"1 ft2","height":"50 ft"},
                                 {"id":"L","effectiveWindArea":"900 ft2","height":"50 ft"},
                                 {"id":"M","effectiveWindArea":"90 ft2","height":"50 ft"}]"""));
        assertThat(result.outcome().trace())
                .filteredOn(s -> s.symbol().equals("GCp+"))
                .extracting(TraceStep::formula)
                .satisfiesExactly(
                        f -> assertThat(f).contains("flat end for small areas"),
                        f -> assertThat(f).contains("flat end for large areas"),
                        f -> assertThat(f).doesNotContain("flat end"));
    }

    @Test
    void governingTraceHoldsOnlyTheWorstComponent() {
        WindRequest request =
                Wind.request(
                        Wind.TALL,
                        """
                        [{"id":"M","effectiveWindArea":"90 ft2","height":"50 ft"},
                         {"id":"S","effectiveWindArea":"10 ft2","height":"50 ft"}]""");
        WindResult result =
                WindCheck.run(request, new Reporting(UnitSystem.SI, TraceLevel.GOVERNING));
        assertThat(result.outcome().trace())
                .filteredOn(s -> s.symbol().equals("p-"))
                .hasSize(2)
                .allSatisfy(s -> assertThat(s.meaning()).startsWith("S: "));
        assertThat(result.components()).isEqualTo(Wind.run(request).components());
    }

    @Test
    void whatSomebodyHasToDecideLeavesTheVerdictOpen() {
        assertOpen("TOPOGRAPHY_NOT_STATED", Wind.TALL, "topographicFactor", "null");
        assertOpen("WIND_TUNNEL", Wind.TALL, "meanRoofHeight", "\"401 ft\"");
        assertOpen("DEBRIS_REGION_NOT_STATED", Wind.TALL, "basicWindSpeed", "\"130 mph\"");
        assertOpen("WIND_BORNE_DEBRIS", Wind.TALL, "windborneDebrisRegion", "true");
        assertOpen("UNUSUAL_SHAPE", Wind.TALL, "unusualShape", "true");
        assertOpen("UNUSUAL_SHAPE", Wind.EN, "unusualShape", "true");
        assertOpen("TOPOGRAPHY_NOT_STATED", Wind.EN, "topographicFactor", "null");
        WindResult parapet =
                Wind.run(
                        Wind.request(
                                Wind.TALL,
                                """
                                [{"id":"P","effectiveWindArea":"20 ft2","height":"163 ft"}]"""));
        assertThat(parapet.outcome().verdict()).isEqualTo(Verdict.UNDETERMINED);
        assertThat(parapet.outcome().findings())
                .singleElement()
                .satisfies(
                        f -> {
                            assertThat(f.code()).isEqualTo("ABOVE_ROOF");
                            assertThat(f.pointer()).isEqualTo("/components/0/height");
                        });
    }

    private static void assertOpen(String code, String json, String... changes) {
        WindResult result = Wind.run(Wind.request(json, LITE, changes));
        assertThat(result.outcome().verdict()).isEqualTo(Verdict.UNDETERMINED);
        assertThat(codes(result)).contains(code);
    }

    @Test
    void whatIsGoodToKnowDoesNot() {
        assertNoted(
                "DEBRIS_REGION_NOT_STATED",
                false,
                "windborneDebrisRegion",
                "false",
                "basicWindSpeed",
                "\"140 mph\"");
        assertNoted("GROUND_ELEVATION_FACTOR_1", true, "groundElevation", "null");
        assertNoted("TORNADO_LOADS_NOT_COVERED", false, "standard", "\"ASCE_7_22\"");
        assertNoted(
                "TORNADO_LOADS_NOT_COVERED",
                true,
                "standard",
                "\"ASCE_7_22\"",
                "riskCategory",
                "\"III\"");
        assertNoted(
                "TORNADO_LOADS_NOT_COVERED",
                true,
                "standard",
                "\"ASCE_7_22\"",
                "riskCategory",
                "null");
        assertNoted("RISK_CATEGORY_NOT_STATED", true, "riskCategory", "null");
        assertNoted("RISK_CATEGORY_NOT_STATED", false, "riskCategory", "\"IV\"");
        assertNoted("INPUT_NOT_USED", true, "standard", "\"ASCE_7_10\"");
        assertNoted("BASIC_WIND_SPEED_UNUSUAL", true, "basicWindSpeed", "\"80 mph\"");
    }

    private static void assertNoted(String code, boolean noted, String... changes) {
        WindResult result = Wind.run(Wind.request(Wind.TALL, LITE, changes));
        assertThat(result.outcome().verdict()).isEqualTo(Verdict.SATISFIED);
        assertThat(codes(result).contains(code)).isEqualTo(noted);
    }

    @Test
    void unusualInputsOfEnAreNoted() {
        WindResult result =
                Wind.run(
                        Wind.request(
                                Wind.EN,
                                LITE,
                                "basicWindSpeed",
                                "\"50 m/s\"",
                                "roofSlope",
                                "\"3 deg\"",
                                "groundElevation",
                                "\"300 m\""));
        assertThat(codes(result))
                .containsExactly(
                        "BASIC_WIND_SPEED_UNUSUAL",
                        "INPUT_NOT_USED",
                        "INPUT_NOT_USED",
                        "RECOMMENDED_VALUES");
    }

    @Test
    void whatAStandardNeedsIsAskedForAtOnce() {
        assertFaults(
                true,
                List.of(
                        "/exposureCategory",
                        "/enclosureClassification",
                        "/designBasis",
                        "/roofSlope"),
                Wind.LOW,
                "exposureCategory",
                "null",
                "enclosureClassification",
                "null",
                "designBasis",
                "null",
                "roofSlope",
                "null");
        assertFaults(
                true,
                List.of("/terrainCategory", "/crosswindBreadth"),
                Wind.EN,
                "terrainCategory",
                "null",
                "crosswindBreadth",
                "null");
    }

    @Test
    void whatAStandardDoesNotCoverIsRefused() {
        assertRefused("/designBasis", Wind.TALL, "designBasis", "\"CHARACTERISTIC\"");
        assertRefused("/designBasis", Wind.EN, "designBasis", "\"STRENGTH\"");
        assertRefused("/designBasis", Wind.EN, "designBasis", "\"ALLOWABLE_STRESS\"");
        assertRefused("/terrainCategory", Wind.TALL, "terrainCategory", "\"II\"");
        assertRefused("/crosswindBreadth", Wind.TALL, "crosswindBreadth", "\"50 m\"");
        assertRefused("/exposureCategory", Wind.EN, "exposureCategory", "\"B\"");
        assertRefused("/lowRiseAlternative", Wind.EN, "lowRiseAlternative", "false");
        assertRefused("/windborneDebrisRegion", Wind.EN, "windborneDebrisRegion", "false");
        assertRefused(
                "/enclosureClassification",
                Wind.LOW,
                "enclosureClassification",
                "\"PARTIALLY_OPEN\"");
        assertRefused(
                "/enclosureClassification",
                Wind.EN,
                "enclosureClassification",
                "\"PARTIALLY_ENCLOSED\"");
        assertRefused("/meanRoofHeight", Wind.TALL, "meanRoofHeight", "\"1201 ft\"");
        assertRefused("/meanRoofHeight", Wind.EN, "meanRoofHeight", "\"101 m\"");
        assertRefused(
                "/meanRoofHeight",
                Wind.EN,
                "meanRoofHeight",
                "\"201 m\"",
                "leastHorizontalDimension",
                "\"60 m\"",
                "crosswindBreadth",
                "\"60 m\"");
        assertRefused("/crosswindBreadth", Wind.EN, "crosswindBreadth", "\"19 m\"");
        assertRefused("/topographicFactor", Wind.TALL, "topographicFactor", "0.9");
        assertRefused("/topographicFactor", Wind.EN, "topographicFactor", "2.1");
        assertRefused("/roofSlope", Wind.LOW, "roofSlope", "\"46 deg\"");
        assertRefused("/basicWindSpeed", Wind.LOW, "basicWindSpeed", "\"301 mph\"");
    }

    /** The edges of those ranges are inside them. */
    @Test
    void edgesAreAccepted() {
        assertThat(Wind.site(Wind.LOW, "roofSlope", "\"45 deg\"").roofSlope()).isNotNull();
        assertThat(Wind.site(Wind.TALL, "meanRoofHeight", "\"1200 ft\"").meanRoofHeight())
                .isPositive();
        assertThat(Wind.site(Wind.TALL, "basicWindSpeed", "\"300 mph\"").basicWindSpeed())
                .isPositive();
        assertThat(Wind.site(Wind.EN, "meanRoofHeight", "\"100 m\"").meanRoofHeight())
                .isEqualTo(100);
    }

    private static void assertRefused(String pointer, String json, String... changes) {
        assertFaults(false, List.of(pointer), json, changes);
    }

    private static void assertFaults(
            boolean malformed, List<String> pointers, String json, String... changes) {
        assertThatThrownBy(() -> Wind.request(json, LITE, changes))
                .isInstanceOfSatisfying(
                        FaultsException.class,
                        e -> {
                            assertThat(e.malformed()).isEqualTo(malformed);
                            assertThat(e.faults())
                                    .extracting(Fault::pointer)
                                    .containsExactlyInAnyOrderElementsOf(pointers);
                        });
    }

    @Test
    void faultsOfComponents() {
        assertThatThrownBy(
                        () ->
                                Wind.request(
                                        Wind.TALL,
                                        """
                                        [{"id":"A","span":"3 m","height":"5 m"},
                                         {"id":"B","height":"5 m"},
                                         {"id":"C","span":"3 m","effectiveWindArea":"1 m2","height":"5 m"},
                                         {"id":"","effectiveWindArea":"1 m2","height":"0 m"}]"""))
                .isInstanceOfSatisfying(
                        FaultsException.class,
                        e ->
                                assertThat(e.faults())
                                        .extracting(Fault::pointer)
                                        .containsExactlyInAnyOrder(
                                                "/components/0/tributaryWidth",
                                                "/components/1/span",
                                                "/components/1/tributaryWidth",
                                                "/components/2/effectiveWindArea",
                                                "/components/3/id",
                                                "/components/3/height"));
        assertThatThrownBy(
                        () ->
                                Wind.request(
                                        Wind.TALL,
                                        """
                                        [{"id":"A","effectiveWindArea":"1 m2","height":"5 m"},
                                         {"id":"A","effectiveWindArea":"1 m2","height":"400 m"}]"""))
                .isInstanceOfSatisfying(
                        FaultsException.class,
                        e ->
                                assertThat(e.faults())
                                        .extracting(Fault::pointer)
                                        .containsExactly(
                                                "/components/1/id", "/components/1/height"));
    }
}
