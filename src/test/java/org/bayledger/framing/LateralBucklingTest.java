package org.bayledger.framing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.bayledger.check.AnswerModule;
import org.bayledger.check.Binder;
import org.bayledger.check.Fault;
import org.bayledger.check.FaultsException;
import org.bayledger.check.Finding;
import org.bayledger.check.Remedy;
import org.bayledger.check.Reporting;
import org.bayledger.check.StrictJson;
import org.bayledger.check.Trace;
import org.bayledger.check.TraceLevel;
import org.bayledger.check.TraceStep;
import org.bayledger.check.Verdict;
import org.bayledger.framing.FramingResult.LimitState;
import org.bayledger.mechanics.Beam;
import org.bayledger.quantity.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.json.JsonMapper;

/** Bracing of members that may buckle sideways. */
class LateralBucklingTest {

    private static final Reporting US = new Reporting(UnitSystem.US, TraceLevel.ALL);
    private static final double KSI = 6894757.293168361;

    private static final String UNIFORM = "\"tributaryWidth\":\"5 ft\"";
    private static final String MIDDLE =
            "\"tributaryStrips\":[{\"from\":\"0 ft\",\"to\":\"12 ft\",\"widthAtFrom\":\"0 ft\",\"widthAtTo\":\"0 ft\"}],"
                    + "\"tributaryAreas\":[{\"at\":\"6 ft\",\"area\":\"20 ft2\"}]";

    private static String member(String width, String supports, String lateral) {
        return """
        {"axis":"WIND","supports":[%s],"length":"12 ft",%s,
         "section":{"secondMomentOfArea":"14 in4","sectionModulus":"4 in3","alloy":"ALUMINUM_6063_T6",
           "walls":[{"width":"1 in","thickness":"0.2 in","supportedEdges":"ONE","stress":"UNIFORM_COMPRESSION"}],
           "lateralBuckling":{"weakAxisSecondMomentOfArea":"1 in4","torsionConstant":"0.03 in4","warpingConstant":"8 in6",%s}},
         "load":{"positive":"30 psf","negative":"-35 psf"}}"""
                .formatted(supports, width, lateral);
    }

    private static final String ENDS = "\"0 ft\",\"12 ft\"";

    private static FramingRequest read(String json) {
        return Binder.bind(
                StrictJson.read(json.getBytes(StandardCharsets.UTF_8)), FramingRequest.class);
    }

    private static FramingResult run(String json) {
        return FramingCheck.run(read(json), US);
    }

    private static String braces(String... feet) {
        return "\"bracePoints\":["
                + String.join(",", List.of(feet).stream().map(at -> "\"" + at + " ft\"").toList())
                + "]";
    }

    private static List<UnbracedStretch> stretches(String json) {
        FramingRequest request = read(json);
        return UnbracedStretch.of(
                request,
                Beam.solve(
                        MemberLoads.model(
                                request,
                                1e-6,
                                MemberLoads.wind(request, 1000, new Trace(TraceLevel.GOVERNING)))));
    }

    /**
     * AISC Steel Construction Manual, table 3-1, values of Cb of simply supported beams (from
     * memory): each row the braces and the factors of the stretches from the end to the middle.
     */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "uniform | 0 12 | 1.14",
                "uniform | 0 6 12 | 1.30",
                "uniform | 0 4 8 12 | 1.45 1.01",
                "uniform | 0 3 6 9 12 | 1.52 1.06",
                "uniform | 0 2.4 4.8 7.2 9.6 12 | 1.56 1.12 1.00",
                "middle | 0 12 | 1.32",
                "middle | 0 6 12 | 1.67"
            })
    void factorsOfThePublishedTable(String load, String places, String factors) {
        List<UnbracedStretch> found =
                stretches(
                        member(
                                load.equals("uniform") ? UNIFORM : MIDDLE,
                                ENDS,
                                braces(places.split(" ", -1))));
        String[] expected = factors.split(" ", -1);
        for (int i = 0; i < expected.length; i++) {
            assertThat(found.get(i).factor())
                    .isCloseTo(Double.parseDouble(expected[i]), within(0.01));
            assertThat(found.get(found.size() - 1 - i).factor())
                    .isCloseTo(found.get(i).factor(), within(1e-9));
        }
    }

    /** A free end, a known length and steel inside have 1. */
    @Test
    void factorIsOneWhereTheMomentsDoNotHelp() {
        assertThat(stretches(member(UNIFORM, ENDS, "\"unbracedLength\":\"6 ft\"")))
                .extracting(UnbracedStretch::factor)
                .containsExactly(1.0);
        List<UnbracedStretch> overhang =
                stretches(member(UNIFORM, "\"0 ft\",\"9 ft\"", braces("0", "9")));
        assertThat(overhang).hasSize(2);
        assertThat(overhang.get(0).factor()).isGreaterThan(1.1);
        assertThat(overhang.get(1).factor()).isEqualTo(1);
        assertThat(overhang.get(1).length() / 0.3048).isCloseTo(3, within(1e-9));
        String steel =
                member(UNIFORM, ENDS, braces("0", "12"))
                        .replace(
                                "\"walls\"",
                                "\"reinforcement\":{\"secondMomentOfArea\":\"1 in4\",\"sectionModulus\":\"1"
                                        + " in3\",\"yieldStrength\":\"36 ksi\"},\"walls\"");
        assertThat(stretches(steel)).extracting(UnbracedStretch::factor).containsExactly(1.0);
    }

    /** M,e = pi2 E / L2 sqrt(Iy (Cw + 0.038 J L2)), lambda = pi sqrt(E S / (Cb M,e)), by hand. */
    @Test
    void strengthByHandAndAsTheTraceHasIt() {
        FramingResult result = run(member(UNIFORM, ENDS, braces("0", "6", "12")));
        double square = 72 * 72;
        double elastic = Math.PI * Math.PI * 10100 / square * Math.sqrt(8 + 0.038 * 0.03 * square);
        double factor = 12.5 / (2.5 + 3 * 0.4375 + 4 * 0.75 + 3 * 0.9375);
        double lambda = Math.PI * Math.sqrt(10100 * 4 / (factor * elastic));
        double limit = 78.38;
        assertThat(lambda).isLessThan(limit);
        double allowable =
                (25 * (1 - lambda / limit)
                                + Math.PI * Math.PI * 10100 * lambda / Math.pow(limit, 3))
                        / 1.65;
        FramingResult.AllowableStress governing = result.allowableStresses().get(0);
        assertThat(governing.limitState()).isEqualTo(LimitState.LATERAL_TORSIONAL_BUCKLING);
        assertThat(governing.stress().si() / KSI).isCloseTo(allowable, within(2e-3));
        assertThat(step(result, "Cb")).isCloseTo(factor, within(1e-9));
        assertThat(step(result, "lambda")).isCloseTo(lambda, within(1e-6));
        assertThat(step(result, "Cc")).isCloseTo(limit, within(0.01));
        assertThat(step(result, "k b/t")).isCloseTo(25, within(1e-9));
        FramingResult uneven = run(member(UNIFORM, ENDS, braces("0", "3", "12")));
        assertThat(step(uneven, "L,b") / 0.3048).isCloseTo(9, within(1e-9));
        assertThat(step(uneven, "lambda")).isGreaterThan(lambda);
    }

    private static double step(FramingResult result, String symbol) {
        return result.outcome().trace().stream()
                .filter(step -> step.symbol().equals(symbol))
                .map(TraceStep::value)
                .findFirst()
                .orElseThrow()
                .si();
    }

    /**
     * A greater modulus lowers the stress at which the member buckles; that is in what is needed.
     */
    @Test
    void requiredModulusIsThatWithWhichItPasses() {
        String json = member(UNIFORM, ENDS, "\"unbracedLength\":\"6 ft\"");
        FramingResult result = run(json);
        double needed = result.requiredSectionModulus().si() / Math.pow(0.0254, 3);
        FramingResult again = run(json.replace("4 in3", needed + " in3"));
        assertThat(again.stressUtilization()).isCloseTo(1, within(1e-6));
        FramingResult slender = run(member(UNIFORM, ENDS, "\"unbracedLength\":\"12 ft\""));
        assertThat(slender.stressUtilization()).isGreaterThan(1);
        assertThat(slender.requiredSectionModulus()).isNull();
        assertThat(slender.outcome().findings())
                .filteredOn(finding -> finding.code().equals("STRESS_EXCEEDED"))
                .extracting(Finding::text)
                .allSatisfy(
                        text ->
                                assertThat(text)
                                        .contains("lateral-torsional buckling", "more closely"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"unbracedLength\":\"12 ft\" | every",
                "\"bracePoints\":[\"0 ft\",\"12 ft\"] | at 0 ft, 6 ft, 12 ft from its start"
            })
    void closerBracingIsOfferedAndPasses(String lateral, String words) {
        for (String inertia : List.of("14 in4", "6 in4")) {
            String json = member(UNIFORM, ENDS, lateral).replace("14 in4", inertia);
            FramingResult failed = run(json);
            assertThat(failed.outcome().verdict()).isEqualTo(Verdict.EXCEEDED);
            Remedy remedy =
                    failed.outcome().remedies().stream()
                            .filter(each -> each.text().contains("sideways"))
                            .findFirst()
                            .orElseThrow();
            assertThat(remedy.text()).contains(words);
            JsonMapper mapper = JsonMapper.builder().addModule(new AnswerModule()).build();
            Map<String, Object> tree = tree(json);
            for (Remedy.Change change : remedy.changes()) {
                put(tree, change.pointer(), mapper.writeValueAsString(change.to()));
            }
            FramingResult passed = FramingCheck.run(Binder.bind(tree, FramingRequest.class), US);
            assertThat(passed.outcome().verdict()).isEqualTo(Verdict.SATISFIED);
            assertThat(passed.outcome().utilization())
                    .isCloseTo(remedy.utilization(), within(1e-4));
        }
    }

    @Test
    void bracesThatAreNotOnTheMemberAreRefused() {
        refused(member(UNIFORM, ENDS, braces("0", "13")), "/section/lateralBuckling/bracePoints/1");
        refused(member(UNIFORM, ENDS, braces("1", "12")), "/section/lateralBuckling/bracePoints");
        refused(
                member(UNIFORM, ENDS, braces("0", "5", "5", "12")),
                "/section/lateralBuckling/bracePoints/2");
        refused(
                member(UNIFORM, ENDS, "\"unbracedLength\":\"6 ft\"," + braces("0", "12")),
                "/section/lateralBuckling/bracePoints");
        refused(
                member(
                        UNIFORM,
                        ENDS,
                        "\"elasticBucklingMoment\":\"9 kip*in\"," + braces("0", "12")),
                "/section/lateralBuckling/bracePoints");
        assertThatThrownBy(
                        () -> read(member(UNIFORM, ENDS, "\"elasticBucklingMoment\":\"9 kip*in\"")))
                .isInstanceOfSatisfying(
                        FaultsException.class,
                        e ->
                                assertThat(e.faults())
                                        .extracting(Fault::pointer)
                                        .contains("/section/lateralBuckling/unbracedLength"));
        assertThatThrownBy(
                        () ->
                                new SpanTableRequest(
                                        read(member(UNIFORM, ENDS, braces("0", "12"))).section(),
                                        List.of(1000.0),
                                        null,
                                        List.of(1.5),
                                        null,
                                        null,
                                        null))
                .isInstanceOf(FaultsException.class);
    }

    private static void refused(String json, String pointer) {
        assertThatThrownBy(() -> read(json))
                .isInstanceOfSatisfying(
                        FaultsException.class,
                        e -> assertThat(e.faults()).extracting(Fault::pointer).contains(pointer));
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> tree(String json) {
        return (Map<String, Object>) StrictJson.read(json.getBytes(StandardCharsets.UTF_8));
    }

    @SuppressWarnings("unchecked")
    private static void put(Map<String, Object> tree, String pointer, String json) {
        String[] path = pointer.substring(1).split("/", -1);
        Map<String, Object> at = tree;
        for (int i = 0; i < path.length - 1; i++) {
            at = (Map<String, Object>) at.get(path[i]);
        }
        at.put(path[path.length - 1], StrictJson.read(json.getBytes(StandardCharsets.UTF_8)));
    }
}
