package org.bayledger.blocks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.bayledger.check.Binder;
import org.bayledger.check.Fault;
import org.bayledger.check.FaultsException;
import org.bayledger.check.Finding;
import org.bayledger.check.Reporting;
import org.bayledger.check.StrictJson;
import org.bayledger.check.TraceLevel;
import org.bayledger.check.Verdict;
import org.bayledger.quantity.Quantity;
import org.bayledger.quantity.UnitSystem;
import org.jspecify.annotations.NullMarked;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

@NullMarked
class SettingBlocksCheckTest {

    private static final Reporting US = new Reporting(UnitSystem.US, TraceLevel.ALL);
    private static final Reporting SI = new Reporting(UnitSystem.SI, TraceLevel.GOVERNING);
    private static final double INCH = 0.0254;

    /**
     * 10 ft x 8 ft, 520 lb, on a 10 ft span over a fixed lite; the stiffness is to be filled in.
     */
    private static final String LITE =
            """
            {"width":"10 ft","height":"8 ft","glassWeight":"520 lb",
             "support":{"kind":"MEMBER","span":"10 ft","secondMomentOfArea":"%s in4",
                        "elasticModulus":"10100 ksi"},
             "below":{"kind":"FIXED_LITE","edgeClearance":"0.25 in","bite":"0.5 in"}%s}""";

    private static SettingBlocksRequest bind(String json) {
        return Binder.bind(
                StrictJson.read(json.getBytes(StandardCharsets.UTF_8)), SettingBlocksRequest.class);
    }

    private static SettingBlocksResult run(String json) {
        return SettingBlocksCheck.run(bind(json), US);
    }

    private static SettingBlocksResult lite(double secondMoment, String more) {
        return run(LITE.formatted(secondMoment, more));
    }

    private static double inches(@Nullable Quantity quantity) {
        return Objects.requireNonNull(quantity).si() / INCH;
    }

    private static BlockPlace recommended(SettingBlocksResult result) {
        return Objects.requireNonNull(result.recommended());
    }

    private static List<String> codes(SettingBlocksResult result) {
        return result.outcome().findings().stream().map(Finding::code).toList();
    }

    private static double utilization(SettingBlocksResult result) {
        return Objects.requireNonNull(result.outcome().utilization());
    }

    /**
     * By hand, P = 260 lbf, L = 120 in, E I = 10100 ksi x 12 in4: quarter points a = 30 in, d = 260
     * x 30 x (43200 - 3600) / (24 x 121.2e6) = 0.1062 in, within 1/8 in (L/360 would be 1/3 in).
     */
    @Test
    void keepsTheQuarterPointsWhereTheHorizontalIsStiffEnough() {
        SettingBlocksResult result = lite(12, "");
        assertThat(result.outcome().verdict()).isEqualTo(Verdict.SATISFIED);
        assertThat(recommended(result).point()).isEqualTo(BlockPoint.QUARTER);
        assertThat(inches(recommended(result).memberDeflection())).isCloseTo(0.1062, offset(5e-5));
        assertThat(inches(recommended(result).distanceFromCorner())).isCloseTo(30, offset(1e-9));
        assertThat(inches(result.deflectionLimit())).isCloseTo(0.125, offset(1e-9));
        assertThat(utilization(result)).isCloseTo(0.1062 / 0.125, offset(5e-4));
        assertThat(result.shopDrawingNote().required()).isFalse();
        assertThat(result.shimNote()).isNull();
        assertThat(result.blockCount()).isEqualTo(2);
        assertThat(inches(result.blockLength())).isCloseTo(8, offset(1e-9));
        assertThat(inches(result.candidates().get(0).clearanceLeft()))
                .isCloseTo(0.25 - 0.1062, offset(5e-5));
        assertThat(inches(result.candidates().get(0).biteLeft()))
                .isCloseTo(0.5 - 0.1062, offset(5e-5));
    }

    /** 0.1062 x 12 / 6.2 = 0.2055 in at the quarter points, 0.534 of it = 0.1098 at the eighth. */
    @Test
    void movesToTheEighthPointsAndSaysSoOnTheShopDrawings() {
        SettingBlocksResult result = lite(6.2, "");
        assertThat(result.outcome().verdict()).isEqualTo(Verdict.SATISFIED);
        assertThat(recommended(result).point()).isEqualTo(BlockPoint.EIGHTH);
        assertThat(inches(recommended(result).memberDeflection())).isCloseTo(0.1098, offset(1e-4));
        assertThat(result.candidates().get(0).verdict()).isEqualTo(Verdict.EXCEEDED);
        assertThat(result.shopDrawingNote())
                .isEqualTo(
                        new ShopDrawingNote(
                                true,
                                "*",
                                "Set two setting blocks, each 8\" long, with the center of each"
                                        + " 1'-3\" from its glass corner (eighth points), not at"
                                        + " the quarter points."));
        assertThat(codes(result)).contains("BLOCKS_RELOCATED");
        assertThat(
                        SettingBlocksCheck.run(bind(LITE.formatted(6.2, "")), SI)
                                .shopDrawingNote()
                                .text())
                .contains("each 203 mm long")
                .contains("381 mm");
    }

    @Test
    void asksForTheFabricatorsWordBeforeTheTenthPoints() {
        for (String word : List.of("", ",\"fabricatorApproval\":false")) {
            SettingBlocksResult open = lite(5.2, word);
            assertThat(open.outcome().verdict()).isEqualTo(Verdict.UNDETERMINED);
            assertThat(recommended(open).point()).isEqualTo(BlockPoint.TENTH);
            assertThat(open.candidates().get(2).eligible()).isFalse();
            assertThat(open.shopDrawingNote().text()).startsWith("HOLD until");
            assertThat(open.outcome().findings())
                    .anySatisfy(
                            finding -> {
                                assertThat(finding.code()).isEqualTo("FABRICATOR_APPROVAL_NEEDED");
                                assertThat(finding.severity()).isEqualTo(Finding.Severity.ACTION);
                            });
        }
        SettingBlocksResult agreed = lite(5.2, ",\"fabricatorApproval\":true");
        assertThat(agreed.outcome().verdict()).isEqualTo(Verdict.SATISFIED);
        assertThat(recommended(agreed).point()).isEqualTo(BlockPoint.TENTH);
        assertThat(agreed.candidates().get(2).eligible()).isTrue();
        assertThat(agreed.shopDrawingNote().text()).startsWith("Set two").contains("agreed");
    }

    @Test
    void saysWhatStiffnessWouldDoWhereNoPlacePasses() {
        SettingBlocksResult result = lite(3.1, "");
        assertThat(result.outcome().verdict()).isEqualTo(Verdict.EXCEEDED);
        assertThat(result.recommended()).isNull();
        assertThat(result.shopDrawingNote().required()).isFalse();
        assertThat(codes(result)).contains("NO_BLOCK_POSITION_PASSES");
        assertThat(utilization(result)).isCloseTo(0.431 * 0.4110 / 0.125, offset(2e-3));
        assertThat(result.outcome().remedies())
                .extracting(remedy -> remedy.changes().get(0).to())
                .startsWith("10.2 in4", "5.45 in4");
    }

    /** Two panes of 6 mm: 2 x 0.006 x 2500 = 30 kg/m2, on 80 ft2 = 7.4322 m2 223 kg by hand. */
    @Test
    void weighsTheGlassItself() {
        String glass =
                """
                "glass":{"panes":[{"nominalThickness":"6 mm","heatTreatment":"ANNEALED"},
                                  {"nominalThickness":"6 mm","heatTreatment":"ANNEALED"}],
                         "cavities":[{"width":"12 mm"}]}""";
        String weighed = LITE.formatted(12, "").replace("\"glassWeight\":\"520 lb\"", glass);
        SettingBlocksResult result = run(weighed);
        assertThat(Objects.requireNonNull(result.glassWeight()).si())
                .isCloseTo(222.97, offset(0.01));
        assertThat(inches(recommended(result).memberDeflection()))
                .isCloseTo(0.1062 * 222.97 / (520 * 0.45359237), offset(5e-5));
        assertThatThrownBy(
                        () ->
                                bind(
                                        weighed.replace(
                                                "\"height\"",
                                                "\"glassWeight\":\"5 kg\",\"height\"")))
                .isInstanceOfSatisfying(
                        FaultsException.class,
                        e ->
                                assertThat(e.faults())
                                        .extracting(Fault::pointer)
                                        .containsExactly("/glassWeight"));
    }

    /** 0.1 in of block for each square foot and 4 in at least. */
    @Test
    void sizesTheBlocksByTheGlassArea() {
        assertThat(SettingBlock.length(80 * 0.09290304) / INCH).isCloseTo(8, offset(1e-9));
        assertThat(SettingBlock.length(40 * 0.09290304) / INCH).isCloseTo(4, offset(1e-9));
        assertThat(SettingBlock.length(10 * 0.09290304) / INCH).isCloseTo(4, offset(1e-9));
        assertThat(SettingBlock.cutLength(8 * INCH) / INCH).isCloseTo(8, offset(1e-9));
        assertThat(SettingBlock.cutLength(8.01 * INCH) / INCH).isCloseTo(8.25, offset(1e-9));
    }

    /**
     * Blocks of 4 in: at 64 in of width the eighth point is at 8 in and the near end at 6 in, just
     * enough; at 63 in it is not, whatever the fabricator says.
     */
    @Test
    void keepsTheNearEndSixInchesFromTheCorner() {
        String json =
                """
                {"width":"%s in","height":"60 in","glassWeight":"2000 lb","fabricatorApproval":true,
                 "support":{"kind":"MEMBER","span":"%s in","secondMomentOfArea":"1 in4",
                            "elasticModulus":"10100 ksi"},
                 "below":{"kind":"FIXED_LITE","edgeClearance":"0.5 in","bite":"0.5 in"}}""";
        assertThat(run(json.formatted(64, 64)).candidates())
                .extracting(BlockCandidate::eligible)
                .containsExactly(true, true, false);
        SettingBlocksResult narrow = run(json.formatted(63, 63));
        assertThat(narrow.candidates())
                .extracting(BlockCandidate::eligible)
                .containsExactly(true, false, false);
        assertThat(narrow.candidates().get(1).reason()).contains("less than 6\"");
        assertThat(narrow.outcome().verdict()).isEqualTo(Verdict.EXCEEDED);
    }

    @Test
    void keepsTheQuarterPointsOnASillThatIsShimmed() {
        SettingBlocksResult result =
                run(
                        "{\"width\":\"10 ft\",\"height\":\"8 ft\",\"support\":{\"kind\":\"SHIMMED_SILL\"}}");
        assertThat(result.outcome().verdict()).isEqualTo(Verdict.SATISFIED);
        assertThat(result.outcome().utilization()).isNull();
        assertThat(recommended(result).point()).isEqualTo(BlockPoint.QUARTER);
        assertThat(result.shopDrawingNote().required()).isFalse();
        assertThat(result.shimNote())
                .contains("each 8\" long")
                .contains("2'-6\"")
                .contains("shims");
        assertThat(result.candidates())
                .extracting(BlockCandidate::eligible)
                .containsExactly(true, false, false);
    }

    /**
     * A span 4 in shorter than the glass takes 2 in off each block's place on the member: a = 28 in
     * on 116 in, d = 260 x 28 x (3 x 116^2 - 4 x 28^2) / (24 x 121.2e6) = 0.0932 in by hand.
     */
    @Test
    void measuresBlocksFromTheCornerAndBendsThemOnTheSpan() {
        SettingBlocksResult result =
                run(LITE.formatted(12, "").replace("\"span\":\"10 ft\"", "\"span\":\"116 in\""));
        assertThat(inches(recommended(result).memberDeflection())).isCloseTo(0.0932, offset(5e-5));
        assertThat(inches(recommended(result).distanceFromCorner())).isCloseTo(30, offset(1e-9));
    }

    @Test
    void aSpanThatIsNotThisLitesIsLeftToAPerson() {
        for (String span : List.of("20 ft", "4 ft")) {
            SettingBlocksResult result =
                    run(
                            LITE.formatted(12, "")
                                    .replace("\"span\":\"10 ft\"", "\"span\":\"" + span + "\""));
            assertThat(result.outcome().verdict()).isEqualTo(Verdict.UNDETERMINED);
            assertThat(codes(result)).contains("SPAN_DIFFERS_FROM_GLASS");
        }
        assertThat(
                        codes(
                                run(
                                        LITE.formatted(12, "")
                                                .replace(
                                                        "\"span\":\"10 ft\"",
                                                        "\"span\":\"4 ft\""))))
                .contains("NO_BLOCK_POSITION_FITS");
    }

    @Test
    void theMembersOwnWeightCounts() {
        double without = inches(recommended(lite(12, "")).memberDeflection());
        SettingBlocksResult with =
                run(
                        LITE.formatted(12, "")
                                .replace(
                                        "\"kind\":\"MEMBER\"",
                                        "\"kind\":\"MEMBER\",\"massPerLength\":\"3 lb/ft\""));
        // 5 x 0.25 lbf/in x 120^4 / (384 x 121.2e6) = 0.00557 in
        assertThat(inches(recommended(with).memberDeflection()) - without)
                .isCloseTo(0.00557, offset(1e-5));
        assertThat(codes(with)).doesNotContain("MEMBER_WEIGHT_NOT_INCLUDED");
        assertThat(codes(lite(12, ""))).contains("MEMBER_WEIGHT_NOT_INCLUDED");
    }

    /** 3/16 in of clearance: over a sash 1/16 in is kept and 0.106 in passes, over a lite not. */
    @Test
    void keepsTheClearanceThatTheGlazingBelowNeeds() {
        String tight = LITE.formatted(12, "").replace("0.25 in", "0.1875 in");
        assertThat(run(tight).candidates().get(0).verdict()).isEqualTo(Verdict.EXCEEDED);
        assertThat(run(tight.replace("FIXED_LITE", "PANEL")).candidates().get(0).verdict())
                .isEqualTo(Verdict.EXCEEDED);
        SettingBlocksResult sash = run(tight.replace("FIXED_LITE", "OPERATING_SASH"));
        assertThat(sash.outcome().verdict()).isEqualTo(Verdict.SATISFIED);
        assertThat(recommended(sash).point()).isEqualTo(BlockPoint.QUARTER);
        SettingBlocksResult sinks =
                run(tight.replace("\"bite\"", "\"memberDeflection\":\"0.05 in\",\"bite\""));
        assertThat(sinks.candidates().get(0).verdict()).isEqualTo(Verdict.SATISFIED);
        assertThat(inches(sinks.candidates().get(0).clearanceLeft()))
                .isCloseTo(0.1875 + 0.05 - 0.1062, offset(5e-5));
    }

    /**
     * L/360 of 36 in is 0.1 in and governs over 1/8 in; from 45 in on the eighth of an inch does.
     */
    @Test
    void limitsShortSpansByTheirLength() {
        assertThat(new DeadLoadLimits(36 * INCH, null).ownLimit() / INCH)
                .isCloseTo(0.1, offset(1e-9));
        assertThat(new DeadLoadLimits(45 * INCH, null).ownLimit() / INCH)
                .isCloseTo(0.125, offset(1e-9));
        assertThat(new DeadLoadLimits(46 * INCH, null).limit(0) / INCH)
                .isCloseTo(0.125, offset(1e-9));
    }

    /** Three quarters of the bite must be left: 3/8 in of bite lets 0.094 in go. */
    @Test
    void keepsThreeQuartersOfTheBite() {
        SettingBlocksResult result = run(LITE.formatted(12, "").replace("0.5 in", "0.375 in"));
        assertThat(inches(result.governingLimit())).isCloseTo(0.09375, offset(1e-9));
        assertThat(recommended(result).point()).isEqualTo(BlockPoint.EIGHTH);
        SettingBlocksResult sunk =
                run(
                        LITE.formatted(12, "")
                                .replace("\"bite\"", "\"memberDeflection\":\"0.2 in\",\"bite\""));
        assertThat(sunk.outcome().verdict()).isEqualTo(Verdict.EXCEEDED);
        assertThat(sunk.outcome().remedies()).isEmpty();
    }

    /**
     * Nothing below: the member's own limits alone, 0.1062 in of 1/8 in; and 0.411 in of it at the
     * quarter points of a weak one.
     */
    @Test
    void whereNothingStandsBelowTheMembersOwnLimitsAreAll() {
        String nothing =
                LITE.replace(
                        "{\"kind\":\"FIXED_LITE\",\"edgeClearance\":\"0.25 in\",\"bite\":\"0.5 in\"}",
                        "{\"kind\":\"NONE\"}");
        SettingBlocksResult result = run(nothing.formatted(12, ""));
        assertThat(result.outcome().verdict()).isEqualTo(Verdict.SATISFIED);
        assertThat(utilization(result)).isCloseTo(0.1062 / 0.125, offset(5e-4));
        assertThat(codes(result))
                .containsExactly(
                        "MEMBER_WEIGHT_NOT_INCLUDED",
                        "ROTATION_NOT_CHECKED",
                        "END_CONNECTION_NOT_CHECKED",
                        "BLOCK_PRESSURE_NOT_CHECKED");
        assertThat(result.governingLimit()).isEqualTo(result.deflectionLimit());
        assertThat(result.candidates().get(0).clearanceLeft()).isNull();
        assertThat(run(nothing.formatted(3.1, "")).outcome().verdict()).isEqualTo(Verdict.EXCEEDED);
        assertThatThrownBy(
                        () ->
                                bind(
                                        LITE.formatted(12, "")
                                                .replace("FIXED_LITE", "NONE")
                                                .replace(
                                                        "\"bite\"",
                                                        "\"memberDeflection\":\"0.1 in\",\"bite\"")))
                .isInstanceOfSatisfying(
                        FaultsException.class,
                        e ->
                                assertThat(e.faults())
                                        .extracting(Fault::pointer)
                                        .containsExactly(
                                                "/below/edgeClearance",
                                                "/below/bite",
                                                "/below/memberDeflection"));
    }

    @Test
    void aClearanceTooSmallAsDrawnIsExceededWhateverTheBlocksDo() {
        SettingBlocksResult result = run(LITE.formatted(12, "").replace("0.25 in", "0.125 in"));
        assertThat(result.outcome().verdict()).isEqualTo(Verdict.EXCEEDED);
        assertThat(codes(result)).contains("CLEARANCE_TOO_SMALL_AS_DRAWN");
        assertThat(utilization(result)).isGreaterThan(1);
    }

    @Test
    void whatIsLeftOutIsUndeterminedAndSaid() {
        SettingBlocksResult bare =
                run("{\"width\":\"10 ft\",\"height\":\"8 ft\",\"support\":{\"kind\":\"MEMBER\"}}");
        assertThat(bare.outcome().verdict()).isEqualTo(Verdict.UNDETERMINED);
        assertThat(bare.recommended()).isNull();
        assertThat(codes(bare))
                .contains(
                        "GLASS_WEIGHT_NOT_GIVEN",
                        "SPAN_NOT_GIVEN",
                        "SECOND_MOMENT_OF_AREA_NOT_GIVEN",
                        "ELASTIC_MODULUS_NOT_GIVEN",
                        "BELOW_NOT_GIVEN");
        SettingBlocksResult partly =
                run(
                        LITE.formatted(12, "")
                                .replace("\"edgeClearance\":\"0.25 in\",\"bite\":\"0.5 in\"", "")
                                .replace("\"FIXED_LITE\",", "\"FIXED_LITE\""));
        assertThat(partly.outcome().verdict()).isEqualTo(Verdict.UNDETERMINED);
        assertThat(recommended(partly).point()).isEqualTo(BlockPoint.QUARTER);
        assertThat(codes(partly)).contains("EDGE_CLEARANCE_NOT_GIVEN", "BITE_NOT_GIVEN");
        SettingBlocksResult sash =
                run(
                        LITE.formatted(12, "")
                                .replace("FIXED_LITE", "OPERATING_SASH")
                                .replace(",\"bite\":\"0.5 in\"", ""));
        assertThat(sash.outcome().verdict()).isEqualTo(Verdict.SATISFIED);
    }

    @Test
    void refusesWhatItCannotMean() {
        assertThatThrownBy(
                        () ->
                                bind(
                                        """
                                        {"width":"7 in","height":"0 ft","support":{"kind":"SHIMMED_SILL",
                                         "span":"4 ft","elasticModulus":"10100 ksi"}}"""))
                .isInstanceOfSatisfying(
                        FaultsException.class,
                        e ->
                                assertThat(e.faults())
                                        .extracting(Fault::pointer)
                                        .containsExactlyInAnyOrder(
                                                "/width",
                                                "/height",
                                                "/support/span",
                                                "/support/elasticModulus"));
    }

    @Test
    void unitsAndTraceNeverChangeANumber() {
        SettingBlocksRequest request = bind(LITE.formatted(6.2, ""));
        SettingBlocksResult us = SettingBlocksCheck.run(request, US);
        SettingBlocksResult si = SettingBlocksCheck.run(request, SI);
        assertThat(si.candidates()).isEqualTo(us.candidates());
        assertThat(si.recommended()).isEqualTo(us.recommended());
        assertThat(si.outcome().utilization()).isEqualTo(us.outcome().utilization());
        assertThat(si.outcome().trace().size()).isLessThan(us.outcome().trace().size());
    }

    /** A heavier lite bends more, a stiffer horizontal less; the choice never moves inward. */
    @Test
    void choosesMonotonically() {
        Random random = new Random(11);
        for (int i = 0; i < 300; i++) {
            double secondMoment = 1 + 12 * random.nextDouble();
            SettingBlocksResult weak = lite(secondMoment, "");
            SettingBlocksResult stiff = lite(secondMoment * (1 + random.nextDouble()), "");
            for (int c = 0; c < 3; c++) {
                assertThat(inches(stiff.candidates().get(c).memberDeflection()))
                        .isLessThanOrEqualTo(inches(weak.candidates().get(c).memberDeflection()));
            }
            assertThat(fraction(stiff)).isGreaterThanOrEqualTo(fraction(weak));
            assertThat(inches(weak.candidates().get(0).memberDeflection()))
                    .isGreaterThan(inches(weak.candidates().get(1).memberDeflection()));
            assertThat(inches(weak.candidates().get(1).memberDeflection()))
                    .isGreaterThan(inches(weak.candidates().get(2).memberDeflection()));
        }
    }

    private static double fraction(SettingBlocksResult result) {
        return result.recommended() == null ? 0 : result.recommended().fraction();
    }

    @Test
    void answersItsOwnExample() throws IOException {
        try (InputStream example =
                Objects.requireNonNull(
                        SettingBlocksCheckTest.class.getResourceAsStream(
                                "/contract/checkSettingBlocks.request.json"))) {
            SettingBlocksResult result =
                    run(new String(example.readAllBytes(), StandardCharsets.UTF_8));
            assertThat(result.outcome().verdict()).isEqualTo(Verdict.SATISFIED);
            assertThat(recommended(result).point()).isEqualTo(BlockPoint.EIGHTH);
            assertThat(result.outcome().cautions()).hasSizeGreaterThan(3);
        }
    }
}
