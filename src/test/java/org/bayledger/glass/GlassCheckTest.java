package org.bayledger.glass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.bayledger.glass.GlassRequests.GUST;
import static org.bayledger.glass.GlassRequests.after;
import static org.bayledger.glass.GlassRequests.bind;
import static org.bayledger.glass.GlassRequests.codes;
import static org.bayledger.glass.GlassRequests.laminate;
import static org.bayledger.glass.GlassRequests.lite;
import static org.bayledger.glass.GlassRequests.pane;
import static org.bayledger.glass.GlassRequests.run;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.bayledger.check.FaultsException;
import org.bayledger.check.Finding;
import org.bayledger.check.Remedy;
import org.bayledger.check.Reporting;
import org.bayledger.check.TraceLevel;
import org.bayledger.check.Verdict;
import org.bayledger.quantity.UnitSystem;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@NullMarked
class GlassCheckTest {

    private static final String SIX = pane("6 mm", "ANNEALED");
    private static final String PVB = "{\"material\":\"PVB\",\"thickness\":\"0.76 mm\"}";
    private static final String EXAMPLE = lite("1200 mm", "1500 mm", SIX);

    private static String load(String positive, String negative, String more) {
        return "{\"positive\":\"%s\",\"negative\":\"%s\"%s}".formatted(positive, negative, more);
    }

    private static String gust(String both) {
        return load(both, "-" + both, ",\"duration\":\"3 s\"");
    }

    /**
     * ASTM E1300, first worked example: 1200 x 1500 x 6 mm annealed, 3 s: 2.5 kPa (from memory).
     */
    @Test
    void answersThePublishedExample() {
        GlassResult result = run(EXAMPLE);
        assertThat(result.outcome().verdict()).isEqualTo(Verdict.SATISFIED);
        assertThat(result.loadResistance().si()).isCloseTo(2500, within(60.0));
        PaneResult pane = result.panes().get(0);
        assertThat(pane.minimumThickness().si()).isEqualTo(0.00556);
        assertThat(pane.glassTypeFactor()).isEqualTo(1);
        assertThat(pane.loadShareFactor()).isEqualTo(1);
        assertThat(pane.nonFactoredLoad().si()).isEqualTo(result.loadResistance().si());
        assertThat(result.outcome().utilization())
                .isCloseTo(1800 / result.loadResistance().si(), within(1e-9));
        assertThat(result.weight().si()).isCloseTo(27, within(1e-9));
        assertThat(result.aspectRatio()).isCloseTo(1.25, within(1e-9));
        assertThat(pane.breakageProbability()).isBetween(0.0, 0.008);
        assertThat(result.governingSign()).isEqualTo(PressureSign.POSITIVE);
    }

    /** At the load resistance itself the probability of breakage is the one asked for. */
    @Test
    void breaksWithTheStatedProbabilityAtItsResistance() {
        double resistance = run(EXAMPLE).loadResistance().si();
        GlassResult at =
                run(lite("1200 mm", "1500 mm", List.of(SIX), gust(resistance + " Pa"), ""));
        assertThat(at.panes().get(0).breakageProbability()).isCloseTo(0.008, within(1e-5));
        assertThat(at.outcome().utilization()).isCloseTo(1, within(1e-9));
    }

    private static double millimetres(PaneResult pane) {
        return pane.centerDeflection() == null ? Double.NaN : pane.centerDeflection().si() * 1000;
    }

    @Test
    void multipliesTheFactorsOfEachPaneAndTakesTheLeast() {
        GlassResult unit =
                run(
                        lite(
                                "1500 mm",
                                "2000 mm",
                                List.of(
                                        pane("6 mm", "HEAT_STRENGTHENED"),
                                        pane("8 mm", "ANNEALED")),
                                GUST,
                                ""));
        double six = Math.pow(5.56, 3);
        double eight = Math.pow(7.42, 3);
        PaneResult outer = unit.panes().get(0);
        PaneResult inner = unit.panes().get(1);
        assertThat(outer.loadShareFactor()).isCloseTo((six + eight) / six, within(1e-9));
        assertThat(inner.loadShareFactor()).isCloseTo((six + eight) / eight, within(1e-9));
        assertThat(outer.glassTypeFactor()).isEqualTo(1.9);
        assertThat(inner.glassTypeFactor()).isEqualTo(1.0);
        for (PaneResult pane : unit.panes()) {
            assertThat(pane.loadResistance().si())
                    .isCloseTo(
                            pane.nonFactoredLoad().si()
                                    * pane.probabilityFactor()
                                    * pane.glassTypeFactor()
                                    * pane.loadShareFactor(),
                            within(1e-9));
        }
        assertThat(unit.loadResistance().si())
                .isEqualTo(Math.min(outer.loadResistance().si(), inner.loadResistance().si()));
        assertThat(outer.breakageProbability()).isNull();
        assertThat(codes(unit)).contains("CAVITY_PRESSURE_NOT_CHECKED");
    }

    @Test
    void equalAnnealedPairCarriesNineTenthsOfTwice() {
        double single = run(EXAMPLE).loadResistance().si();
        GlassResult pair = run(lite("1200 mm", "1500 mm", List.of(SIX, SIX), GUST, ""));
        assertThat(pair.loadResistance().si()).isCloseTo(1.8 * single, within(1e-6));
        GlassResult triple = run(lite("1200 mm", "1500 mm", List.of(SIX, SIX, SIX), GUST, ""));
        assertThat(triple.loadResistance().si()).isCloseTo(3 * 0.81 * single, within(1e-6));
        assertThat(codes(triple)).contains("TRIPLE_FACTORS_FROM_MEMORY");
    }

    /** Strength loads are brought to the level of glass once: 0.6. */
    @Test
    void takesStrengthLoadsOnceByThreeFifths() {
        GlassResult result =
                run(
                        lite(
                                "1200 mm",
                                "1500 mm",
                                List.of(SIX),
                                load(
                                        "3 kPa",
                                        "-4 kPa",
                                        ",\"basis\":\"STRENGTH\",\"duration\":\"3 s\""),
                                ""));
        assertThat(result.designPressure()).isNotNull();
        assertThat(result.outcome().utilization())
                .isCloseTo(0.6 * 4000 / result.loadResistance().si(), within(1e-9));
        assertThat(result.governingSign()).isEqualTo(PressureSign.NEGATIVE);
    }

    @Test
    void missingSignIsUndeterminedAndNeverAssumed() {
        GlassResult one =
                run(
                        lite(
                                "1200 mm",
                                "1500 mm",
                                List.of(SIX),
                                "{\"positive\":\"1.8 kPa\",\"duration\":\"3 s\"}",
                                ""));
        assertThat(one.outcome().verdict()).isEqualTo(Verdict.UNDETERMINED);
        assertThat(codes(one)).contains("NEGATIVE_PRESSURE_NOT_CALLED_OUT");
        GlassResult none =
                run(lite("1200 mm", "1500 mm", List.of(SIX), "{\"duration\":\"3 s\"}", ""));
        assertThat(none.outcome().verdict()).isEqualTo(Verdict.UNDETERMINED);
        assertThat(none.outcome().utilization()).isNull();
        assertThat(none.designPressure()).isNull();
        assertThat(none.governingSign()).isNull();
        assertThat(none.panes().get(0).centerDeflection()).isNull();
        assertThat(none.loadResistance().si()).isGreaterThan(2400);
    }

    @Test
    void missingDurationIsUndeterminedUnlessItFailsEvenAtTheShortest() {
        GlassResult passes =
                run(lite("1200 mm", "1500 mm", List.of(SIX), load("1.8 kPa", "-1.8 kPa", ""), ""));
        assertThat(passes.outcome().verdict()).isEqualTo(Verdict.UNDETERMINED);
        assertThat(codes(passes)).contains("LOAD_DURATION_NOT_GIVEN");
        GlassResult fails =
                run(lite("1200 mm", "1500 mm", List.of(SIX), load("4 kPa", "-4 kPa", ""), ""));
        assertThat(fails.outcome().verdict()).isEqualTo(Verdict.EXCEEDED);
    }

    @Test
    void followsTheDurationLawForAnnealedGlassOnly() {
        double gust = run(EXAMPLE).loadResistance().si();
        GlassResult month =
                run(
                        lite(
                                "1200 mm",
                                "1500 mm",
                                List.of(SIX),
                                load("0.5 kPa", "-0.5 kPa", ",\"duration\":\"30 d\""),
                                ""));
        assertThat(month.loadResistance().si()).isCloseTo(0.43 * gust, within(1e-6));
        assertRefused(
                lite(
                        "1200 mm",
                        "1500 mm",
                        List.of(pane("6 mm", "FULLY_TEMPERED")),
                        load("1 kPa", "-1 kPa", ",\"duration\":\"1 h\""),
                        ""),
                "/load/duration");
        assertRefused(
                lite(
                        "1200 mm",
                        "1500 mm",
                        List.of(SIX),
                        load("1 kPa", "-1 kPa", ",\"duration\":\"1 s\""),
                        ""),
                "/load/duration");
        assertRefused(
                lite(
                        "1200 mm",
                        "1500 mm",
                        List.of(SIX),
                        load("1 kPa", "-1 kPa", ",\"duration\":\"18300 d\""),
                        ""),
                "/load/duration");
    }

    @Test
    void knowsOtherProbabilitiesForAnnealedGlassOnly() {
        GlassResult rare =
                run(
                        lite(
                                "1200 mm",
                                "1500 mm",
                                List.of(SIX),
                                GUST,
                                ",\"breakageProbability\":0.001"));
        PaneResult pane = rare.panes().get(0);
        // between (1/8)^(1/7) of linear plates and the greater fall of membrane action
        assertThat(pane.probabilityFactor()).isBetween(0.55, Math.pow(0.125, 1.0 / 7) + 0.01);
        assertThat(pane.nonFactoredLoad().si())
                .isEqualTo(run(EXAMPLE).panes().get(0).nonFactoredLoad().si());
        double resistance = rare.loadResistance().si();
        GlassResult at =
                run(lite("1200 mm", "1500 mm", List.of(SIX), gust(resistance + " Pa"), ""));
        assertThat(at.panes().get(0).breakageProbability()).isCloseTo(0.001, within(2e-6));
        assertRefused(
                lite(
                        "1200 mm",
                        "1500 mm",
                        List.of(pane("6 mm", "HEAT_STRENGTHENED")),
                        GUST,
                        ",\"breakageProbability\":0.001"),
                "/breakageProbability");
        assertRefused(
                lite("1200 mm", "1500 mm", List.of(SIX), GUST, ",\"breakageProbability\":0"),
                "/breakageProbability");
        assertThatThrownBy(
                        () ->
                                bind(
                                        lite(
                                                "1 m",
                                                "1 m",
                                                List.of(SIX),
                                                GUST,
                                                ",\"breakageProbability\":0.2")))
                .hasMessageContaining("must be at most 0.1");
    }

    @Test
    void laminatedUnderLongDurationIsNotMonolithic() {
        String three = laminate("3 mm", "3 mm", PVB, "ANNEALED");
        String month = load("0.4 kPa", "-0.4 kPa", ",\"duration\":\"30 d\"");
        double monolithic =
                run(lite("1200 mm", "1500 mm", List.of(SIX), month, "")).loadResistance().si();
        GlassResult laminated = run(lite("1200 mm", "1500 mm", List.of(three), month, ""));
        assertThat(laminated.loadResistance().si()).isLessThan(0.9 * monolithic);
        GlassResult gust = run(lite("1200 mm", "1500 mm", three));
        assertThat(gust.loadResistance().si())
                .isGreaterThan(0.75 * run(EXAMPLE).loadResistance().si());
        assertThat(codes(gust)).contains("INTERLAYER_TEMPERATURE_NOT_GIVEN");
        GlassResult cool =
                run(
                        lite(
                                "1200 mm",
                                "1500 mm",
                                laminate(
                                        "3 mm",
                                        "3 mm",
                                        "{\"material\":\"IONOMER\",\"thickness\":\"0.89 mm\",\"temperature\":\"68 degF\"}",
                                        "ANNEALED")));
        assertThat(cool.loadResistance().si()).isGreaterThan(gust.loadResistance().si());
        assertRefused(
                lite(
                        "1200 mm",
                        "1500 mm",
                        laminate(
                                "3 mm",
                                "3 mm",
                                "{\"material\":\"PVB\",\"thickness\":\"0.76 mm\",\"temperature\":\"60 degC\"}",
                                "ANNEALED")),
                "/glass/panes/0/interlayer/temperature");
        assertRefused(
                lite(
                        "1200 mm",
                        "1500 mm",
                        List.of(three),
                        load("0.4 kPa", "-0.4 kPa", ",\"duration\":\"7300 d\""),
                        ""),
                "/load/duration");
    }

    /** Where membrane action carries the load, the law on loads and the model on stresses part. */
    @Test
    void saysWhereTheModelDoubtsTheDurationFactor() {
        String thin = pane("3 mm", "ANNEALED");
        String month = load("0.5 kPa", "-0.5 kPa", ",\"duration\":\"30 d\"");
        double resistance =
                run(lite("1500 mm", "2000 mm", List.of(thin), month, "")).loadResistance().si();
        GlassResult near =
                run(
                        lite(
                                "1500 mm",
                                "2000 mm",
                                List.of(thin),
                                load(
                                        0.99 * resistance + " Pa",
                                        "-0.1 kPa",
                                        ",\"duration\":\"30 d\""),
                                ""));
        assertThat(near.panes().get(0).breakageProbability()).isGreaterThan(0.02);
        assertThat(near.outcome().verdict()).isEqualTo(Verdict.UNDETERMINED);
        assertThat(codes(near)).contains("FAILURE_MODEL_DISAGREES");
    }

    @Test
    void heedsTheCallersDeflectionLimit() {
        GlassResult result =
                run(
                        lite(
                                "1200 mm",
                                "1500 mm",
                                List.of(SIX),
                                GUST,
                                ",\"centerDeflectionLimit\":\"5 mm\""));
        assertThat(result.outcome().verdict()).isEqualTo(Verdict.EXCEEDED);
        assertThat(result.outcome().utilization())
                .isCloseTo(millimetres(result.panes().get(0)) / 5, within(1e-9));
        assertThat(codes(result)).contains("CENTER_DEFLECTION_EXCEEDED");
        assertThat(result.outcome().remedies())
                .isNotEmpty()
                .allSatisfy(
                        remedy ->
                                assertThat(remedy.changes())
                                        .noneMatch(
                                                change ->
                                                        change.pointer()
                                                                .endsWith("heatTreatment")));
    }

    /** On two edges: sigma = 3 q s^2 / (4 t^2) and w = 5 q s^4 / (32 E t^3), beam theory. */
    @Test
    void spansBetweenTwoEdges() {
        String base = lite("1000 mm", "2000 mm", List.of(pane("12 mm", "ANNEALED")), GUST, "");
        String two = base.replace("FOUR", "TWO");
        GlassResult unsaid = run(two);
        GlassResult tall =
                run(two.replace("\"glass\"", "\"spanDirection\":\"VERTICAL\",\"glass\""));
        GlassResult wide =
                run(two.replace("\"glass\"", "\"spanDirection\":\"HORIZONTAL\",\"glass\""));
        double deflection = 5 * 1800 * 1.0 / (32 * 71.7e9 * Math.pow(0.01191, 3)) * 1000;
        assertThat(millimetres(wide.panes().get(0))).isCloseTo(deflection, within(1e-6));
        assertThat(millimetres(tall.panes().get(0))).isCloseTo(16 * deflection, within(1e-6));
        assertThat(unsaid.loadResistance()).isEqualTo(tall.loadResistance());
        assertThat(codes(unsaid)).contains("SPAN_DIRECTION_NOT_GIVEN");
        assertThat(codes(tall)).doesNotContain("SPAN_DIRECTION_NOT_GIVEN");
        // same glass area, four times the stress
        assertThat(wide.loadResistance().si())
                .isCloseTo(4 * tall.loadResistance().si(), within(1e-6));
        assertThat(run(base).loadResistance().si()).isGreaterThan(wide.loadResistance().si());
        assertRefused(
                base.replace("\"glass\"", "\"spanDirection\":\"VERTICAL\",\"glass\""),
                "/spanDirection");
    }

    @ParameterizedTest
    @CsvSource({"ONE, one edge", "THREE, three edges"})
    void refusesOtherEdgesAndSaysWhatItAccepts(String edges, String words) {
        String asked = EXAMPLE.replace("FOUR", edges);
        assertRefused(asked, "/supportedEdges");
        assertThatThrownBy(() -> bind(asked))
                .hasMessageContaining("must be FOUR, or TWO for two opposite edges")
                .hasMessageContaining("glass on " + words)
                .hasMessageContaining("no plate solution");
    }

    @Test
    void refusesWhatThePlateSolutionDoesNotCover() {
        assertThatThrownBy(() -> run(lite("300 mm", "3.6 m", SIX)))
                .isInstanceOf(FaultsException.class)
                .hasMessageContaining("/glass/panes/0")
                .hasMessageContaining("more than 10 times");
        assertThatThrownBy(() -> run(lite("150 mm", "300 mm", pane("19 mm", "ANNEALED"))))
                .isInstanceOf(FaultsException.class)
                .hasMessageContaining("thin plate");
        assertThatThrownBy(() -> run(lite("15 m", "15 m", pane("2.5 mm", "ANNEALED"))))
                .isInstanceOf(FaultsException.class)
                .hasMessageContaining("buckle");
        assertRefused(lite("-1 m", "1 m", SIX), "/width");
    }

    @Test
    void flagsLoadsBeyondThePractice() {
        String thick = pane("22 mm", "FULLY_TEMPERED");
        GlassResult eleven = run(lite("1 m", "1.5 m", List.of(thick), gust("11 kPa"), ""));
        assertThat(eleven.outcome().verdict()).isEqualTo(Verdict.UNDETERMINED);
        assertThat(codes(eleven)).contains("LOAD_BEYOND_PRACTICE");
        GlassResult nine = run(lite("1 m", "1.5 m", List.of(thick), gust("9 kPa"), ""));
        assertThat(nine.outcome().verdict()).isEqualTo(Verdict.SATISFIED);
        GlassResult long6 = run(lite("1 m", "6 m", List.of(thick), gust("1 kPa"), ""));
        assertThat(codes(long6)).contains("SIZE_BEYOND_CHARTS");
    }

    /** Under a pressure far beyond its strength the deflection is not guessed. */
    @Test
    void leavesOutDeflectionsBeyondTheSolution() {
        GlassResult result =
                run(lite("3 m", "3 m", List.of(pane("3 mm", "FULLY_TEMPERED")), gust("9 kPa"), ""));
        assertThat(result.panes().get(0).centerDeflection()).isNull();
        assertThat(codes(result)).contains("DEFLECTION_BEYOND_SOLUTION");
        assertThat(result.outcome().verdict()).isNotEqualTo(Verdict.SATISFIED);
    }

    /** Strong but slack glass on two edges slips out of its pockets long before it breaks. */
    @Test
    void doesNotPassGlassOnTwoEdgesThatSagsBeyondTheSolution() {
        String slack =
                lite(
                                "1200 mm",
                                "3000 mm",
                                List.of(pane("3 mm", "FULLY_TEMPERED")),
                                gust("0.1 kPa"),
                                ",\"spanDirection\":\"VERTICAL\"")
                        .replace("FOUR", "TWO");
        GlassResult result = run(slack);
        assertThat(result.outcome().utilization()).isLessThan(1);
        assertThat(result.panes().get(0).centerDeflection()).isNull();
        assertThat(codes(result)).contains("DEFLECTION_BEYOND_SOLUTION");
        assertThat(result.outcome().verdict()).isEqualTo(Verdict.UNDETERMINED);
    }

    static final List<List<String>> FAILING =
            List.of(
                    List.of(SIX),
                    List.of(pane("1/4 in", "ANNEALED")),
                    List.of(laminate("3 mm", "4 mm", PVB, "ANNEALED")),
                    List.of(SIX, SIX),
                    List.of(pane("4 mm", "ANNEALED"), laminate("3 mm", "3 mm", PVB, "ANNEALED")),
                    List.of(pane("4 mm", "ANNEALED"), pane("4 mm", "ANNEALED"), SIX));

    @Test
    void offersRemediesThatPassWhenTheyAreApplied() {
        for (List<String> panes : FAILING) {
            String json = lite("1800 mm", "2600 mm", panes, gust("3 kPa"), "");
            GlassResult failed = run(json);
            assertThat(failed.outcome().verdict()).as(json).isEqualTo(Verdict.EXCEEDED);
            List<Remedy> remedies = failed.outcome().remedies();
            assertThat(remedies).as(json).anyMatch(remedy -> remedy.text().startsWith("Thicker"));
            for (Remedy remedy : remedies) {
                GlassResult after = after(json, remedy);
                assertThat(after.outcome().verdict())
                        .as(remedy.text())
                        .isEqualTo(Verdict.SATISFIED);
                assertThat(after.outcome().utilization())
                        .isCloseTo(remedy.utilization(), within(1e-9));
            }
        }
    }

    @Test
    void offersTheNextTreatmentAndASmallerLiteToo() {
        String json = lite("1200 mm", "1500 mm", List.of(SIX), gust("3.5 kPa"), "");
        GlassResult failed = run(json);
        List<Remedy> smaller =
                failed.outcome().remedies().stream()
                        .filter(remedy -> remedy.text().startsWith("Smaller"))
                        .toList();
        assertThat(smaller)
                .extracting(remedy -> remedy.changes().get(0).pointer())
                .containsExactly("/width", "/height");
        for (Remedy remedy : smaller) {
            GlassResult after = after(json, remedy);
            assertThat(after.outcome().verdict()).isEqualTo(Verdict.SATISFIED);
            assertThat(after.outcome().utilization()).isBetween(0.95, 1.0);
        }
        assertThat(failed.outcome().remedies())
                .anySatisfy(
                        remedy ->
                                assertThat(remedy.changes())
                                        .containsExactly(
                                                new Remedy.Change(
                                                        "/glass/panes/0/heatTreatment",
                                                        "HEAT_STRENGTHENED")));
    }

    @Test
    void saysTheSameInBothSystemsOfUnits() {
        GlassRequest metric = bind(EXAMPLE);
        GlassRequest customary =
                bind(
                        lite(
                                "47.24409448818898 in",
                                "4.921259842519685 ft",
                                List.of(pane("1/4 in", "ANNEALED")),
                                gust("37.59378 psf"),
                                ""));
        GlassResult si = GlassCheck.run(metric, GlassRequests.SI);
        GlassResult us =
                GlassCheck.run(customary, new Reporting(UnitSystem.US, TraceLevel.GOVERNING));
        assertThat(us.loadResistance().si())
                .isCloseTo(si.loadResistance().si(), within(1e-6 * si.loadResistance().si()));
        assertThat(us.outcome().utilization()).isCloseTo(0.73, within(0.02));
        assertThat(us.outcome().findings())
                .extracting(Finding::text)
                .anyMatch(text -> text.contains("psf"));
    }

    @Test
    void tracesTheGoverningPaneAndAllOnRequest() {
        String unit = lite("1500 mm", "2000 mm", List.of(SIX, pane("8 mm", "ANNEALED")), GUST, "");
        GlassRequest request = bind(unit);
        GlassResult all = GlassCheck.run(request, GlassRequests.SI);
        GlassResult brief =
                GlassCheck.run(request, new Reporting(UnitSystem.SI, TraceLevel.GOVERNING));
        assertThat(all.outcome().trace()).extracting("symbol").contains("NFL1", "NFL2", "LR");
        String governing = "NFL" + (brief.governingPane() + 1);
        String other = "NFL" + (2 - brief.governingPane());
        assertThat(brief.outcome().trace())
                .extracting("symbol")
                .contains(governing, "LR")
                .doesNotContain(other);
        assertThat(brief.loadResistance()).isEqualTo(all.loadResistance());
    }

    /** The governing trace alone is enough to redo the share of each pane. */
    @Test
    void governingTraceRedoesTheLoadShare() {
        String unit =
                lite(
                        "1500 mm",
                        "2000 mm",
                        List.of(
                                pane("10 mm", "ANNEALED"),
                                laminate("3 mm", "3 mm", PVB, "ANNEALED")),
                        GUST,
                        "");
        GlassResult result =
                GlassCheck.run(bind(unit), new Reporting(UnitSystem.SI, TraceLevel.GOVERNING));
        Map<String, Double> steps = new HashMap<>();
        result.outcome().trace().forEach(step -> steps.put(step.symbol(), step.value().si()));
        int own = result.governingPane() + 1;
        double mono = Math.pow(steps.get("t1"), 3);
        double soft = Math.pow(steps.get("hefw2"), 3);
        double rigid = Math.pow(steps.get("hrigid2"), 3);
        double share =
                own == 1
                        ? Math.min(1 + soft / mono, 1 + rigid / mono)
                        : Math.min(1 + mono / soft, 1 + mono / rigid);
        assertThat(steps.get("LS" + own)).isCloseTo(share, within(1e-9));
        assertThat(steps).doesNotContainKey("NFL" + (3 - own));
    }

    /**
     * A laminated pane is stressed by its thickness for stress and bends by that for deflection.
     */
    @Test
    void laminatedPanesTakeEachThicknessInItsPlace() {
        GlassRequest request =
                bind(lite("1200 mm", "1800 mm", laminate("3 mm", "5 mm", PVB, "ANNEALED")));
        PaneResult pane = GlassCheck.run(request, GlassRequests.SI).panes().get(0);
        double bends = pane.deflectionEffectiveThickness().si();
        double stressed = pane.stressEffectiveThickness().si();
        assertThat(stressed).isGreaterThan(1.01 * bends);
        GlassModel model = GlassModel.of(request);
        assertThat(pane.nonFactoredLoad().si())
                .isCloseTo(model.resistance(stressed, 0.008, 3), within(1e-6));
        assertThat(millimetres(pane))
                .isCloseTo(1000 * model.respond(bends, 1800).centreDeflection(), within(1e-9));
    }

    /** What the trace says of three plies is what was done: loose plies, the thickest governs. */
    @Test
    void traceOfThreePliesIsTheirOwn() {
        String three =
                laminate("4 mm", "6 mm", PVB, "ANNEALED")
                        .replace(
                                "{\"nominalThickness\":\"4 mm\"}",
                                "{\"nominalThickness\":\"4 mm\"},{\"nominalThickness\":\"4 mm\"}");
        GlassResult result = run(lite("1200 mm", "1500 mm", three));
        double cubes = 2 * Math.pow(3.78, 3) + Math.pow(5.56, 3);
        assertThat(result.panes().get(0).stressEffectiveThickness().si())
                .isCloseTo(Math.sqrt(cubes / 5.56) / 1000, within(1e-9));
        assertThat(result.outcome().trace())
                .filteredOn(step -> step.symbol().equals("hefs1"))
                .extracting("formula")
                .containsExactly("sqrt(sum h^3 / h), h the thickest ply");
    }

    @Test
    void answersTheExampleOfTheContract() throws IOException {
        try (InputStream in =
                GlassCheckTest.class.getResourceAsStream("/contract/checkGlass.request.json")) {
            assertThat(in).isNotNull();
            String json = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            GlassResult result =
                    new GlassEndpoint().check(bind(json), UnitSystem.US, TraceLevel.ALL).body();
            assertThat(result.outcome().verdict()).isEqualTo(Verdict.SATISFIED);
            assertThat(result.panes()).hasSize(2);
        }
    }

    private static void assertRefused(String json, String pointer) {
        assertThatThrownBy(() -> bind(json))
                .isInstanceOfSatisfying(
                        FaultsException.class,
                        refused -> {
                            assertThat(refused.malformed()).isFalse();
                            assertThat(refused.faults())
                                    .extracting(fault -> fault.pointer())
                                    .contains(pointer);
                        });
    }
}
