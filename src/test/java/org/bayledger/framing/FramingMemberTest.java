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
import org.bayledger.check.TraceLevel;
import org.bayledger.check.Verdict;
import org.bayledger.quantity.UnitSystem;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.json.JsonMapper;

/** Members whose section, load or steel is more than a few numbers. */
class FramingMemberTest {

    private static final Reporting US = new Reporting(UnitSystem.US, TraceLevel.ALL);
    private static final double INCH = 0.0254;
    private static final double KSI = 6894757.293168361;
    private static final double LBF = 4.4482216152605;

    private static String member(String section, String more) {
        return """
        {"axis":"WIND","supports":["0 ft","12 ft"],"length":"12 ft",%s
         "section":{%s},"load":{"positive":"30 psf","negative":"-40 psf"}}"""
                .formatted(more, section);
    }

    private static final String WIDTH = "\"tributaryWidth\":\"5 ft\",";
    private static final String PLAIN =
            "\"secondMomentOfArea\":\"8 in4\",\"sectionModulus\":\"3 in3\",\"alloy\":\"ALUMINUM_6063_T6\"";

    private static FramingRequest read(String json) {
        return Binder.bind(tree(json), FramingRequest.class);
    }

    private static FramingResult run(String json) {
        return FramingCheck.run(read(json), US);
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> tree(String json) {
        return (Map<String, Object>) StrictJson.read(json.getBytes(StandardCharsets.UTF_8));
    }

    private static List<String> codes(FramingResult result) {
        return result.outcome().findings().stream().map(Finding::code).toList();
    }

    private static void refused(String json, String pointer) {
        assertThatThrownBy(() -> read(json))
                .isInstanceOfSatisfying(
                        FaultsException.class,
                        e -> {
                            assertThat(e.malformed()).isFalse();
                            assertThat(e.faults()).extracting(Fault::pointer).contains(pointer);
                        });
    }

    /** w = 200 plf over 12 ft: M = 200 x 144 / 8 x 12 = 43 200 lbf in; Fy 25 / 1.65 = 15.15 ksi. */
    @Test
    void strengthComesFromAlloyAndTemper() {
        FramingResult result = run(member(PLAIN, WIDTH));
        assertThat(result.bendingStress().si() / KSI).isCloseTo(14.4, within(1e-6));
        assertThat(result.stressUtilization()).isCloseTo(14.4 / (25 / 1.65), within(1e-9));
        assertThat(result.allowableStresses().get(0).limitState())
                .isEqualTo(FramingResult.LimitState.YIELDING);
        assertThat(codes(result)).contains("BUCKLING_NOT_CHECKED");
        FramingResult t61 = run(member(PLAIN.replace("6063_T6", "6061_T6"), WIDTH));
        assertThat(t61.allowableStresses().get(0).limitState())
                .isEqualTo(FramingResult.LimitState.RUPTURE);
        FramingResult lesser = run(member(PLAIN + ",\"allowableBendingStress\":\"12 ksi\"", WIDTH));
        assertThat(lesser.stressUtilization()).isCloseTo(1.2, within(1e-9));
    }

    @Test
    void bucklingIsComputedWhereItsDataAreGiven() {
        String walls =
                ",\"walls\":[{\"width\":\"2 in\",\"thickness\":\"0.1 in\",\"supportedEdges\":\"BOTH\","
                        + "\"stress\":\"UNIFORM_COMPRESSION\"}]";
        String lateral =
                ",\"deadLoadSecondMomentOfArea\":\"1 in4\",\"lateralBuckling\":{\"unbracedLength\":\"12 ft\","
                        + "\"torsionConstant\":\"%s\",\"warpingConstant\":\"0 in6\"}";
        assertThat(codes(run(member(PLAIN + walls, WIDTH))))
                .contains("LATERAL_TORSIONAL_BUCKLING_NOT_CHECKED")
                .doesNotContain("BUCKLING_NOT_CHECKED");
        String tube = lateral.formatted("2 in4");
        assertThat(codes(run(member(PLAIN + tube, WIDTH)))).contains("LOCAL_BUCKLING_NOT_CHECKED");
        FramingResult closed = run(member(PLAIN + walls + tube, WIDTH));
        assertThat(codes(closed)).noneMatch(code -> code.contains("BUCKLING"));
        FramingResult open = run(member(PLAIN + walls + lateral.formatted("0.01 in4"), WIDTH));
        assertThat(open.allowableStresses().get(0).limitState())
                .isEqualTo(FramingResult.LimitState.LATERAL_TORSIONAL_BUCKLING);
        // M,e = pi2 E / L2 sqrt(Iy 0.038 J) L by hand: 99.68e6 / 144 x sqrt(1 x 0.038 x 0.01)
        double moment = Math.PI * Math.PI * 10.1e6 / 144 * Math.sqrt(0.038 * 0.01);
        double lambda = Math.PI * Math.sqrt(10.1e6 * 3 / moment);
        assertThat(lambda).isGreaterThan(78);
        assertThat(open.allowableStresses().get(0).stress().si() / KSI)
                .isCloseTo(moment / 3 / 1.65 / 1000, within(0.001));
        assertThat(open.stressUtilization()).isGreaterThan(closed.stressUtilization());
        refused(
                member(
                        PLAIN.replace(
                                        ",\"alloy\":\"ALUMINUM_6063_T6\"",
                                        ",\"elasticModulus\":\"10100 ksi\"")
                                + walls,
                        WIDTH),
                "/section/walls");
        refused(member(PLAIN + ",\"bucklingCovered\":true", WIDTH), "/section/bucklingCovered");
    }

    /** Tube of 2.5 x 6 x 1/8 in by its outline is the tube by its properties. */
    @Test
    void outlineGivesBothAxes() {
        String outline =
                "\"alloy\":\"ALUMINUM_6063_T6\",\"outline\":[{\"points\":[{\"x\":\"0 in\",\"y\":\"0 in\"},{\"x\":\"2.5 in\",\"y\":\"0 in\"},"
                        + "{\"x\":\"2.5 in\",\"y\":\"6 in\"},{\"x\":\"0 in\",\"y\":\"6 in\"}]},"
                        + "{\"hole\":true,\"points\":[{\"x\":\"0.125 in\",\"y\":\"0.125 in\"},{\"x\":\"2.375 in\",\"y\":\"0.125 in\"},"
                        + "{\"x\":\"2.375 in\",\"y\":\"5.875 in\"},{\"x\":\"0.125 in\",\"y\":\"5.875 in\"}]}]";
        FramingResult result = run(member(outline, WIDTH));
        double inertia = (2.5 * 216 - 2.25 * Math.pow(5.75, 3)) / 12;
        assertThat(result.bendingStress().si() / KSI).isCloseTo(43.2 / (inertia / 3), within(1e-6));
        assertThat(result.maxDeflection().si() / INCH)
                .isCloseTo(
                        5 * (200.0 / 12) * Math.pow(144, 4) / (384 * 10.1e6 * inertia),
                        within(1e-6));
        assertThat(result.sectionProperties().area().si() / (INCH * INCH))
                .isCloseTo(2.5 * 6 - 2.25 * 5.75, within(1e-9));
        refused(
                member(outline + ",\"secondMomentOfArea\":\"8 in4\"", WIDTH),
                "/section/secondMomentOfArea");
        remediesPass(member(outline, WIDTH.replace("5 ft", "9 ft")), 1);
    }

    /** Both halves bend alike: I 5 + 3, the first carries 5/8 of M on S 1.6. */
    @Test
    void halvesShareByStiffness() {
        String halves =
                "\"alloy\":\"ALUMINUM_6063_T6\",\"construction\":\"SPLIT\",\"halves\":["
                        + "{\"secondMomentOfArea\":\"5 in4\",\"sectionModulus\":\"1.6 in3\"},"
                        + "{\"secondMomentOfArea\":\"3 in4\",\"sectionModulus\":\"1.4 in3\"}]";
        FramingResult result = run(member(halves, WIDTH));
        assertThat(result.bendingStress().si() / KSI).isCloseTo(43.2 * 5 / 8 / 1.6, within(1e-6));
        assertThat(codes(result)).doesNotContain("COMPOSITE_ACTION_NOT_STATED");
        refused(member(halves.replace("SPLIT", "SINGLE"), WIDTH), "/section/halves");
        remediesPass(member(halves, WIDTH.replace("5 ft", "9 ft")), 1);
    }

    /**
     * The gamma method of EN 1995-1-1, annex B, for two parts joined in shear: I,ef = I1 + I2 + A1
     * A2 / (A1 + A2) a2 / (1 + pi2 E A1 A2 / (A1 + A2) / (c L2)), the same theory written
     * otherwise; rigid and loose joints are its bounds.
     */
    @Test
    void thermalBreakWorksPartly() {
        String parts =
                "\"alloy\":\"ALUMINUM_6063_T6\",\"construction\":\"THERMALLY_BROKEN\",\"thermalBreak\":{"
                        + "\"outerArea\":\"300 mm2\",\"outerSecondMomentOfArea\":\"2 cm4\",\"outerSectionModulus\":\"1500 mm3\","
                        + "\"innerArea\":\"700 mm2\",\"innerSecondMomentOfArea\":\"90 cm4\",\"innerSectionModulus\":\"16000 mm3\","
                        + "\"centroidDistance\":\"80 mm\",\"shearStiffness\":\"%s MPa\"}";
        double e = 10100 * KSI;
        double length = 12 * 0.3048;
        double reduced = 300e-6 * 700e-6 / 1000e-6;
        for (double c : new double[] {0, 5, 40, 1e7}) {
            double joined =
                    c == 0
                            ? 0
                            : reduced
                                    * 0.0064
                                    / (1
                                            + Math.PI
                                                    * Math.PI
                                                    * e
                                                    * reduced
                                                    / (c * 1e6 * length * length));
            double inertia = 92e-8 + joined;
            FramingResult result = run(member(parts.formatted(c), WIDTH));
            double w = 200 * LBF / 0.3048;
            assertThat(result.maxDeflection().si())
                    .isCloseTo(5 * w * Math.pow(length, 4) / (384 * e * inertia), within(1e-9));
            double moment = w * length * length / 8;
            double force = moment * joined / inertia / 0.08;
            double inner = force / 700e-6 + moment * 90e-8 / inertia / 16000e-9;
            double outer = force / 300e-6 + moment * 2e-8 / inertia / 1500e-9;
            assertThat(result.bendingStress().si()).isCloseTo(Math.max(inner, outer), within(1.0));
            assertThat(codes(result)).contains("BREAK_SHEAR_NOT_CHECKED");
        }
        // rigidly joined, shear flow V Q / I
        FramingResult rigid = run(member(parts.formatted(1e7), WIDTH));
        assertThat(rigid.thermalBreakShear().si())
                .isCloseTo(1200 * LBF * reduced * 0.08 / (92e-8 + reduced * 0.0064), within(5.0));
    }

    /**
     * Transformed section: n = 29 000 / 10 100, I = Ia + n Is about the same axis, steel's stress n
     * times that of aluminum at the same distance.
     */
    @Test
    void steelSharesByStiffness() {
        String steel =
                ",\"reinforcement\":{\"secondMomentOfArea\":\"2 in4\",\"sectionModulus\":\"1 in3\",\"yieldStrength\":\"36 ksi\"%s}";
        FramingResult whole = run(member(PLAIN + steel.formatted(""), WIDTH));
        double n = 29000.0 / 10100;
        double transformed = 8 + n * 2;
        assertThat(whole.maxDeflection().si() / INCH)
                .isCloseTo(
                        5 * (200.0 / 12) * Math.pow(144, 4) / (384 * 10.1e6 * transformed),
                        within(1e-6));
        double distance = 8.0 / 3;
        assertThat(whole.bendingStress().si() / KSI)
                .isCloseTo(43.2 * distance / transformed, within(1e-6));
        assertThat(whole.reinforcement().bendingStress().si() / KSI)
                .isCloseTo(n * 43.2 * 2 / transformed, within(1e-6));
        assertThat(whole.reinforcement().allowableBendingStress().si() / KSI)
                .isCloseTo(36 / 1.67, within(1e-6));
        // middle half only: unit-load integral; aluminum alone at the steel's end
        FramingResult part =
                run(member(PLAIN + steel.formatted(",\"from\":\"3 ft\",\"to\":\"9 ft\""), WIDTH));
        double w = 200.0 / 12;
        double deflection = 0;
        int steps = 40_000;
        for (int i = 0; i < steps; i++) {
            double x = 72.0 * (i + 0.5) / steps;
            double inertia = x < 36 ? 8 : transformed;
            deflection += 2 * (w * x * (144 - x) / 2) * (x / 2) / (10.1e6 * inertia) * 72 / steps;
        }
        assertThat(part.maxDeflection().si() / INCH).isCloseTo(deflection, within(1e-6));
        double atEnd = w * 36 * 108 / 2 / 3 / 1000;
        assertThat(part.bendingStress().si() / KSI)
                .isCloseTo(Math.max(atEnd, 43.2 * distance / transformed), within(1e-6));
        assertThat(part.bendingStress().si() / KSI).isCloseTo(atEnd, within(1e-6));
        // alone below it or above it only
        for (String end : List.of(",\"from\":\"3 ft\"", ",\"to\":\"9 ft\"")) {
            FramingResult once = run(member(PLAIN + steel.formatted(end), WIDTH));
            assertThat(once.bendingStress().si() / KSI).isCloseTo(atEnd, within(1e-6));
        }
        // the second moment of area needed beside the steel just keeps the limit
        double needed = part.requiredSecondMomentOfArea().si() / Math.pow(INCH, 4);
        FramingResult again =
                run(
                        member(
                                PLAIN.replace("8 in4", needed + " in4")
                                        + steel.formatted(",\"from\":\"3 ft\",\"to\":\"9 ft\""),
                                WIDTH));
        assertThat(again.deflectionUtilization()).isCloseTo(1, within(1e-6));
    }

    /** Span tables: triangle w L2/12 and w L4/(120 E I); trapezoid w (3 L2 - 4 a2)/24. */
    @Test
    void twoWayLoadIsTriangleOrTrapezoid() {
        FramingResult triangle =
                run(
                        member(
                                PLAIN,
                                "\"tributaryLites\":[{\"from\":\"0 ft\",\"to\":\"12 ft\",\"across\":\"14 ft\"}],"));
        double peak = 40 * 6;
        assertThat(triangle.maxMoment().si() / (LBF * 0.3048))
                .isCloseTo(peak * 144 / 12, within(1e-6));
        assertThat(triangle.maxDeflection().si() / INCH)
                .isCloseTo(peak / 12 * Math.pow(144, 4) / (120 * 10.1e6 * 8), within(1e-6));
        FramingResult trapezoid =
                run(
                        member(
                                PLAIN,
                                "\"tributaryLites\":[{\"from\":\"0 ft\",\"to\":\"12 ft\",\"across\":\"5 ft\"}],"));
        assertThat(trapezoid.maxMoment().si() / (LBF * 0.3048))
                .isCloseTo(40 * 2.5 * (3 * 144 - 4 * 6.25) / 24, within(1e-6));
        assertThat(trapezoid.reactions().get(0).force().si() / LBF)
                .isCloseTo(40 * 2.5 * (12 - 2.5) / 2, within(1e-6));
        FramingResult point =
                run(
                        member(
                                PLAIN,
                                "\"tributaryStrips\":[{\"from\":\"0 ft\",\"to\":\"12 ft\",\"widthAtFrom\":\"0 ft\",\"widthAtTo\":\"0 ft\"}],"
                                        + "\"tributaryAreas\":[{\"at\":\"6 ft\",\"area\":\"20 ft2\"}],\"stations\":13,"));
        assertThat(point.maxMoment().si() / (LBF * 0.3048)).isCloseTo(800 * 12.0 / 4, within(1e-6));
        assertThat(point.maxShear().si() / LBF).isCloseTo(400, within(1e-6));
        assertThat(point.along()).hasSize(13);
        assertThat(point.along().get(6).moment().si() / (LBF * 0.3048))
                .isCloseTo(2400, within(1e-6));
        refused(
                member(
                        PLAIN,
                        WIDTH
                                + "\"tributaryLites\":[{\"from\":\"0 ft\",\"to\":\"12 ft\",\"across\":\"5 ft\"}],"),
                "/tributaryWidth");
        refused(
                member(
                        PLAIN,
                        "\"tributaryLites\":[{\"from\":\"0 ft\",\"to\":\"13 ft\",\"across\":\"5 ft\"}],"),
                "/tributaryLites/0/to");
    }

    private static final String BOTH_AXES =
            PLAIN
                    + ",\"deadLoadSecondMomentOfArea\":\"4 in4\",\"deadLoadSectionModulus\":\"2 in3\",\"massPerLength\":\"0 lb/ft\"";

    /** Wind 14.4 ksi; 150 lbf at each quarter point: M = 150 x 36 in, f2 = 2.7 ksi. */
    @Test
    void windAndWeightTogether() {
        FramingResult both =
                run(
                        member(
                                BOTH_AXES,
                                WIDTH
                                        + "\"deadLoad\":{\"pointLoads\":[{\"at\":\"3 ft\",\"force\":\"150 lbf\"},{\"at\":\"9 ft\",\"force\":\"150 lbf\"}]},"));
        double allowable = 25 / 1.65;
        assertThat(both.deadLoadBendingStress().si() / KSI).isCloseTo(2.7, within(1e-6));
        assertThat(both.stressUtilization())
                .isCloseTo(14.4 / allowable + 2.7 / allowable, within(1e-9));
        assertThat(both.outcome().verdict()).isEqualTo(Verdict.EXCEEDED);
        assertThat(both.requiredSectionModulus().si() / Math.pow(INCH, 3))
                .isCloseTo(43.2 / (allowable - 2.7), within(1e-6));
    }

    /** Stresses add up by size: a force that lifts the member is no relief from wind. */
    @Test
    void whatLiftsIsAddedAsWell() {
        String more =
                WIDTH
                        + "\"deadLoad\":{\"pointLoads\":[{\"at\":\"3 ft\",\"force\":\"%1$s150 lbf\"},{\"at\":\"9 ft\",\"force\":\"%1$s150 lbf\"}]},";
        FramingResult down = run(member(BOTH_AXES, more.formatted("")));
        FramingResult up = run(member(BOTH_AXES, more.formatted("-")));
        assertThat(up.stressUtilization()).isCloseTo(down.stressUtilization(), within(1e-12));
        assertThat(up.stressUtilization()).isCloseTo(17.1 / (25 / 1.65), within(1e-9));
    }

    /** A weight off the middle peaks elsewhere than the wind: the sum is taken place by place. */
    @Test
    void stressesAreSummedAtTheSamePlace() {
        FramingResult both =
                run(
                        member(
                                BOTH_AXES,
                                WIDTH
                                        + "\"deadLoad\":{\"pointLoads\":[{\"at\":\"2 ft\",\"force\":\"400 lbf\"}]},"));
        double allowable = 25 / 1.65;
        double greatest = 0;
        for (int i = 0; i <= 144_000; i++) {
            double x = i / 1000.0;
            double wind = 200.0 / 12 * x * (144 - x) / 2 / 3;
            double dead = (x < 24 ? 400 * x * 120 / 144 : 400 * 24 * (144 - x) / 144) / 2;
            greatest = Math.max(greatest, (wind + dead) / 1000 / allowable);
        }
        assertThat(both.stressUtilization()).isCloseTo(greatest, within(1e-8));
        double peaks = (14.4 + both.deadLoadBendingStress().si() / KSI) / allowable;
        assertThat(both.stressUtilization()).isLessThan(peaks - 0.05);
        assertThat(codes(run(member(PLAIN, WIDTH + "\"deadLoad\":{},"))))
                .contains("OWN_WEIGHT_LEFT_OUT", "STRESS_NOT_CHECKED");
    }

    private static final String STEEL =
            "{\"secondMomentOfArea\":\"5 in4\",\"sectionModulus\":\"2.5 in3\",\"yieldStrength\":\"36 ksi\"}";

    /** The steel offered passes as it is and fails an inch shorter on both sides. */
    @Test
    void leastLengthOfSteelIsFound() {
        String json =
                member(
                        PLAIN,
                        WIDTH.replace("5 ft", "6.5 ft")
                                + "\"availableReinforcement\":"
                                + STEEL
                                + ",");
        Remedy remedy =
                remediesPass(json, 3).stream()
                        .filter(r -> r.text().contains("steel"))
                        .findFirst()
                        .orElseThrow();
        Reinforcement steel = (Reinforcement) remedy.changes().get(0).to();
        assertThat(steel.to() - steel.from()).isLessThan(12 * 0.3048);
        FramingRequest request = read(json);
        Section shorter =
                request.section()
                        .withReinforcement(steel.between(steel.from() + INCH, steel.to() - INCH));
        assertThat(FramingCheck.run(request.withSection(shorter), US).outcome().verdict())
                .isEqualTo(Verdict.EXCEEDED);
    }

    /** Two spans with the splice in mid-span: near the zero of moment the member passes. */
    @Test
    void spliceIsMovedToWhereLittleBends() {
        String json =
                """
                {"axis":"WIND","supports":["0 ft","12 ft","24 ft"],"hinges":["18 ft"],"length":"24 ft","tributaryWidth":"5 ft",
                 "section":{"secondMomentOfArea":"8 in4","sectionModulus":"3 in3","alloy":"ALUMINUM_6063_T6"},
                 "load":{"positive":"30 psf","negative":"-40 psf"}}""";
        Remedy remedy =
                remediesPass(json, 2).stream()
                        .filter(r -> r.text().contains("splice"))
                        .findFirst()
                        .orElseThrow();
        assertThat(remedy.text()).contains("Move the splice at 18 ft");
        assertThat(remedy.utilization()).isLessThan(run(json).outcome().utilization());
    }

    private static List<Remedy> remediesPass(String json, int atLeast) {
        JsonMapper mapper = JsonMapper.builder().addModule(new AnswerModule()).build();
        FramingResult failed = run(json);
        assertThat(failed.outcome().verdict()).isEqualTo(Verdict.EXCEEDED);
        assertThat(failed.outcome().remedies()).hasSizeGreaterThanOrEqualTo(atLeast);
        for (Remedy remedy : failed.outcome().remedies()) {
            Map<String, Object> tree = tree(json);
            for (Remedy.Change change : remedy.changes()) {
                put(tree, change.pointer(), mapper.writeValueAsString(change.to()));
            }
            FramingResult passed = FramingCheck.run(Binder.bind(tree, FramingRequest.class), US);
            assertThat(passed.outcome().utilization()).as(remedy.text()).isLessThanOrEqualTo(1.0);
            assertThat(passed.outcome().utilization())
                    .isCloseTo(remedy.utilization(), within(1e-4));
        }
        return failed.outcome().remedies();
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
