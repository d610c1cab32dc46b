package org.bayledger.framing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.bayledger.check.AnswerModule;
import org.bayledger.check.Binder;
import org.bayledger.check.FaultsException;
import org.bayledger.check.Finding;
import org.bayledger.check.Remedy;
import org.bayledger.check.Reporting;
import org.bayledger.check.StrictJson;
import org.bayledger.check.TraceLevel;
import org.bayledger.check.TraceStep;
import org.bayledger.check.Verdict;
import org.bayledger.quantity.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.json.JsonMapper;

class FramingCheckTest {

    private static final Reporting US = new Reporting(UnitSystem.US, TraceLevel.ALL);
    private static final double INCH = 0.0254;
    private static final double KSI = 6894757.293168361;
    private static final double LBF = 4.4482216152605;

    private static final String BRIEF =
            """
            {"axis":"WIND","supports":["0 ft","13 ft"],"hinges":[],"length":"13 ft","tributaryWidth":"5 ft",
             "section":{"secondMomentOfArea":"6.5 in4","sectionModulus":"2.6 in3","elasticModulus":"10100 ksi",
                        "allowableBendingStress":"15.2 ksi"},
             "load":{"positive":"30 psf","negative":"-35 psf","basis":"ALLOWABLE_STRESS"},"deflectionLimit":null}""";

    private static FramingRequest read(String json) {
        return Binder.bind(
                StrictJson.read(json.getBytes(StandardCharsets.UTF_8)), FramingRequest.class);
    }

    private static FramingResult run(String json) {
        return FramingCheck.run(read(json), US);
    }

    /**
     * Worked by hand with the AISC table of beams, one span under uniform load (5 w L^4 / 384 E I,
     * w L^2 / 8): w = 35 psf x 5 ft = 175 plf, L = 156 in, M = 175 x 13^2 / 8 = 3696.9 lbf ft, f =
     * 44 362.5 / 2.6 = 17 062 psi, d = 5 x 14.583 x 156^4 / (384 x 10.1e6 x 6.5) = 1.713 in against
     * 156 / 175 = 0.891 in.
     */
    @Test
    void memberOfTheBriefFailsInDeflectionAndStress() {
        FramingResult result = run(BRIEF);
        assertThat(result.outcome().verdict()).isEqualTo(Verdict.EXCEEDED);
        assertThat(codes(result))
                .containsExactlyInAnyOrder(
                        "DEFLECTION_EXCEEDED", "STRESS_EXCEEDED", "BUCKLING_NOT_CHECKED");
        assertThat(result.maxDeflection().si() / INCH).isCloseTo(1.713, within(0.001));
        assertThat(result.deflectionLimit().si() / INCH).isCloseTo(0.8914, within(0.0001));
        assertThat(result.maxMoment().si() / (LBF * INCH)).isCloseTo(44362.5, within(0.5));
        assertThat(result.bendingStress()).isNotNull();
        assertThat(result.bendingStress().si() / KSI).isCloseTo(17.0625, within(0.0001));
        assertThat(result.requiredSecondMomentOfArea().si() / Math.pow(INCH, 4))
                .isCloseTo(6.5 * 1.713 / 0.8914, within(0.01));
        assertThat(result.reactions()).hasSize(2);
        assertThat(result.reactions().get(0).force().si() / LBF).isCloseTo(1137.5, within(0.01));
        assertThat(result.reactions().get(0).underPositive()).isNotNull();
        assertThat(result.reactions().get(0).underPositive().si() / LBF)
                .isCloseTo(975.0, within(0.01));
    }

    /** IBC 2021 table 1604.3, 1604.3.7 and TIR-A11, from memory: the change at 13 ft 6 in. */
    @ParameterizedTest
    @CsvSource({"10, 0.6857", "13.5, 0.9257", "14, 0.95", "20, 1.25"})
    void deflectionLimitFollowsTheSpan(double feet, double inches) {
        FramingResult result = run(BRIEF.replace("\"13 ft\"", "\"" + feet + " ft\""));
        assertThat(result.deflectionLimit().si() / INCH).isCloseTo(inches, within(0.0001));
    }

    /** EN 13830:2015, 4.1, from memory: 3 m and 6 m spans. */
    @ParameterizedTest
    @CsvSource({"3, 15", "6, 25", "8, 32"})
    void europeanLimitFollowsTheSpan(double metres, double millimetres) {
        FramingResult result =
                run(
                        BRIEF.replace("\"13 ft\"", "\"" + metres + " m\"")
                                .replace(
                                        "\"deflectionLimit\":null",
                                        "\"deflectionRule\":\"EN_13830\""));
        assertThat(result.deflectionLimit().si() * 1000).isCloseTo(millimetres, within(1e-9));
    }

    /** An overhang counts with twice its length: 2 x 4 ft / 175 = 0.549 in. */
    @Test
    void overhangCountsTwice() {
        FramingResult result = run(BRIEF.replace("[\"0 ft\",\"13 ft\"]", "[\"0 ft\",\"9 ft\"]"));
        FramingResult.Span overhang =
                result.spans().stream()
                        .filter(FramingResult.Span::overhang)
                        .findFirst()
                        .orElseThrow();
        assertThat(overhang.limit().si() / INCH).isCloseTo(96.0 / 175, within(1e-6));
    }

    /** Dead load: 1/8 in governs over L/360 = 10 ft / 360 = 1/3 in (common practice, no source). */
    @Test
    void deadLoadOnTwoBlocks() {
        FramingResult result =
                run(
                        """
                        {"axis":"DEAD","supports":["0 ft","10 ft"],"length":"10 ft",
                         "section":{"secondMomentOfArea":"3.1 in4","elasticModulus":"10100 ksi"},
                         "pointLoads":[{"at":"2.5 ft","force":"260 lbf"},{"at":"7.5 ft","force":"260 lbf"}]}""");
        // P a (3 L^2 - 4 a^2) / (24 E I) = 260 x 30 x (43200 - 3600) / (24 x 10.1e6 x 3.1)
        assertThat(result.maxDeflection().si() / INCH)
                .isCloseTo(260.0 * 30 * (43200 - 3600) / (24 * 10.1e6 * 3.1), within(1e-6));
        assertThat(result.deflectionLimit().si() / INCH).isCloseTo(0.125, within(1e-9));
        assertThat(result.outcome().verdict()).isEqualTo(Verdict.EXCEEDED);
    }

    /** The wind axis' second moment of area may be many times that of the other axis. */
    @Test
    void deadLoadOnTheWindAxisPropertiesIsNotSatisfied() {
        String given =
                """
                {"axis":"DEAD","supports":["0 ft","10 ft"],"length":"10 ft","lineLoad":"1 lbf/ft",
                 "section":{"secondMomentOfArea":"9 in4","deadLoadSecondMomentOfArea":"3 in4",
                            "deadLoadSectionModulus":"2 in3","allowableBendingStress":"15 ksi",
                            "elasticModulus":"10100 ksi","massPerLength":"2 lb/ft"}}""";
        assertThat(run(given).outcome().verdict()).isEqualTo(Verdict.SATISFIED);
        String missing = given.replace("\"deadLoadSecondMomentOfArea\":\"3 in4\",", "");
        FramingResult open = run(missing);
        assertThat(open.outcome().verdict()).isEqualTo(Verdict.UNDETERMINED);
        assertThat(open.outcome().findings())
                .singleElement()
                .satisfies(
                        finding -> {
                            assertThat(finding.severity()).isEqualTo(Finding.Severity.ACTION);
                            assertThat(finding.pointer())
                                    .isEqualTo("/section/deadLoadSecondMomentOfArea");
                        });
        FramingResult failed = run(missing.replace("1 lbf/ft", "200 lbf/ft"));
        assertThat(failed.outcome().verdict()).isEqualTo(Verdict.EXCEEDED);
        assertThat(failed.outcome().remedies().get(0).changes().get(0).pointer())
                .isEqualTo("/section/deadLoadSecondMomentOfArea");
    }

    /** A demand that leaves a weight out can exceed a limit and never satisfies one. */
    @Test
    void ownWeightThatIsNotKnownLeavesTheVerdictOpen() {
        String light =
                """
                {"axis":"DEAD","supports":["0 ft","5 ft"],"length":"5 ft",
                 "section":{"secondMomentOfArea":"3.1 in4","deadLoadSecondMomentOfArea":"3.1 in4",
                            "deadLoadSectionModulus":"2 in3","allowableBendingStress":"15.2 ksi",
                            "elasticModulus":"10100 ksi"},
                 "pointLoads":[{"at":"2.5 ft","force":"20 lbf"}]}""";
        assertThat(run(light).outcome().verdict()).isEqualTo(Verdict.UNDETERMINED);
        assertThat(codes(run(light))).containsExactly("OWN_WEIGHT_LEFT_OUT");
        FramingResult weighed =
                run(
                        light.replace(
                                "\"elasticModulus\"",
                                "\"massPerLength\":\"2 lb/ft\",\"elasticModulus\""));
        assertThat(weighed.outcome().verdict()).isEqualTo(Verdict.SATISFIED);
    }

    /** A strength load of 35/0.6 is an allowable-stress load of 35: the factor enters once. */
    @Test
    void strengthLoadIsFactoredOnce() {
        FramingResult strength =
                run(
                        BRIEF.replace("ALLOWABLE_STRESS", "STRENGTH")
                                .replace("30 psf", "50 psf")
                                .replace("-35 psf", (-35 / 0.6) + " psf"));
        assertThat(strength.maxDeflection().si())
                .isCloseTo(run(BRIEF).maxDeflection().si(), within(1e-12));
        assertThat(strength.outcome().trace())
                .extracting(TraceStep::formula)
                .contains("0.6 W, applied once where the load enters");
        FramingResult characteristic = run(BRIEF.replace("ALLOWABLE_STRESS", "CHARACTERISTIC"));
        assertThat(characteristic.maxDeflection()).isEqualTo(run(BRIEF).maxDeflection());
    }

    @Test
    void whatIsMissingIsUndeterminedAndSaid() {
        String strong = BRIEF.replace("6.5 in4", "40 in4").replace("2.6 in3", "12 in3");
        assertThat(run(strong).outcome().verdict()).isEqualTo(Verdict.UNDETERMINED);
        assertThat(codes(run(strong))).containsExactly("BUCKLING_NOT_CHECKED");
        String covered = strong.replace("\"15.2 ksi\"", "\"15.2 ksi\",\"bucklingCovered\":true");
        assertThat(run(covered).outcome().verdict()).isEqualTo(Verdict.SATISFIED);
        String oneSign = covered.replace("\"positive\":\"30 psf\",", "");
        assertThat(run(oneSign).outcome().verdict()).isEqualTo(Verdict.UNDETERMINED);
        assertThat(codes(run(oneSign))).containsExactly("POSITIVE_PRESSURE_NOT_CALLED_OUT");
        String broken =
                covered.replace(
                        "\"bucklingCovered\"",
                        "\"construction\":\"THERMALLY_BROKEN\",\"bucklingCovered\"");
        assertThat(codes(run(broken))).containsExactly("COMPOSITE_ACTION_NOT_STATED");
        String noModulus = covered.replace("\"sectionModulus\":\"12 in3\",", "");
        assertThat(codes(run(noModulus))).containsExactly("STRESS_NOT_CHECKED");
        assertThat(run(noModulus).bendingStress()).isNull();
    }

    /** IBC 2021, 2403.3, from memory: the edge of an 8 ft lite between 3 ft and 11 ft. */
    @Test
    void glassEdgeIsHeldToItsOwnChord() {
        FramingResult result =
                run(
                        BRIEF.replace(
                                "\"deflectionLimit\":null",
                                "\"glassEdges\":[{\"from\":\"3 ft\",\"to\":\"11 ft\"}]"));
        FramingResult.Edge edge = result.glassEdges().get(0);
        assertThat(edge.limit().si() / INCH).isCloseTo(96.0 / 175, within(1e-9));
        assertThat(edge.deflection().si()).isLessThan(result.maxDeflection().si());
    }

    @Test
    void stressOfTheOtherAxisIsAdded() {
        FramingResult alone = run(BRIEF);
        FramingResult both =
                run(
                        BRIEF.replace(
                                "\"deflectionLimit\":null",
                                "\"concurrentBendingStress\":\"3.8 ksi\""));
        assertThat(both.stressUtilization())
                .isCloseTo(alone.stressUtilization() + 3.8 / 15.2, within(1e-9));
    }

    @Test
    void mechanismIsRefusedWithItsPlace() {
        assertThatThrownBy(() -> read(BRIEF.replace("\"hinges\":[]", "\"hinges\":[\"6 ft\"]")))
                .isInstanceOfSatisfying(
                        FaultsException.class,
                        e -> {
                            assertThat(e.malformed()).isFalse();
                            assertThat(e.faults().get(0).pointer()).isEqualTo("/hinges");
                        });
        assertThatThrownBy(() -> read(BRIEF.replace("[\"0 ft\",\"13 ft\"]", "[\"0 ft\"]")))
                .isInstanceOfSatisfying(
                        FaultsException.class,
                        e -> assertThat(e.faults().get(0).pointer()).isEqualTo("/supports"));
    }

    /** Every remedy, written into the request as its changes say, passes with its utilization. */
    @Test
    void remediesPass() {
        JsonMapper mapper = JsonMapper.builder().addModule(new AnswerModule()).build();
        FramingResult failed = run(BRIEF);
        assertThat(failed.outcome().remedies()).hasSize(3);
        for (Remedy remedy : failed.outcome().remedies()) {
            Map<String, Object> tree = tree(BRIEF);
            for (Remedy.Change change : remedy.changes()) {
                Object to =
                        StrictJson.read(
                                mapper.writeValueAsString(change.to())
                                        .getBytes(StandardCharsets.UTF_8));
                put(tree, change.pointer(), to);
            }
            FramingResult passed = FramingCheck.run(Binder.bind(tree, FramingRequest.class), US);
            assertThat(passed.outcome().utilization()).isLessThanOrEqualTo(1.0);
            assertThat(passed.outcome().utilization())
                    .isCloseTo(remedy.utilization(), within(1e-5));
        }
    }

    /** Deflection scales with load and with 1/EI; a longer span is never better. */
    @Test
    void physicsHolds() {
        Random random = new Random(20260101);
        for (int i = 0; i < 200; i++) {
            double span = 1 + 5 * random.nextDouble();
            double pressure = 0.2 + 2 * random.nextDouble();
            FramingResult base = FramingCheck.run(member(span, pressure, 1e-6), US);
            FramingResult twice = FramingCheck.run(member(span, 2 * pressure, 1e-6), US);
            FramingResult stiff = FramingCheck.run(member(span, pressure, 2e-6), US);
            FramingResult longer = FramingCheck.run(member(span * 1.1, pressure, 1e-6), US);
            double d = base.maxDeflection().si();
            assertThat(twice.maxDeflection().si()).isCloseTo(2 * d, within(1e-9 * d));
            assertThat(stiff.maxDeflection().si()).isCloseTo(d / 2, within(1e-9 * d));
            assertThat(longer.maxDeflection().si())
                    .isCloseTo(d * Math.pow(1.1, 4), within(1e-6 * d));
            assertThat(longer.deflectionUtilization()).isGreaterThan(base.deflectionUtilization());
        }
    }

    @Test
    void metricInputsGiveTheSameAnswer() {
        FramingResult si =
                run(
                        BRIEF.replace("\"13 ft\"", "\"3.9624 m\"")
                                .replace("\"5 ft\"", "\"1524 mm\"")
                                .replace("-35 psf", "-1.6758090643117546 kPa"));
        assertThat(si.maxDeflection().si())
                .isCloseTo(run(BRIEF).maxDeflection().si(), within(1e-9));
    }

    private static FramingRequest member(double span, double kilopascal, double inertia) {
        return read(
                BRIEF.replace("\"13 ft\"", "\"" + span + " m\"")
                        .replace("-35 psf", -kilopascal + " kPa")
                        .replace("30 psf", "0 psf")
                        .replace("6.5 in4", inertia * 1e8 + " cm4"));
    }

    private static List<String> codes(FramingResult result) {
        return result.outcome().findings().stream().map(Finding::code).toList();
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> tree(String json) {
        return (Map<String, Object>) StrictJson.read(json.getBytes(StandardCharsets.UTF_8));
    }

    @SuppressWarnings("unchecked")
    private static void put(Map<String, Object> tree, String pointer, Object value) {
        String[] path = pointer.substring(1).split("/", -1);
        Map<String, Object> at = tree;
        for (int i = 0; i < path.length - 1; i++) {
            at = (Map<String, Object>) at.computeIfAbsent(path[i], k -> new LinkedHashMap<>());
        }
        at.put(path[path.length - 1], value);
        assertThat(value).isNotInstanceOf(BigDecimal.class);
    }
}
