package org.bayledger.anchorage;

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
class AnchorageMovementCheckTest {

    private static final Reporting US = new Reporting(UnitSystem.US, TraceLevel.ALL);
    private static final Reporting SI = new Reporting(UnitSystem.SI, TraceLevel.GOVERNING);
    private static final double INCH = 0.0254;

    /** Two pieces, each fixed once; L4 slides. The joint is 1.75 in wide. */
    static final String SOUND =
            """
            {"anchors":[{"id":"L2","elevation":"14 ft","role":"DEAD_LOAD","slabLiveLoadDeflection":"0.3 in"},
                        {"id":"L3","elevation":"28 ft","role":"DEAD_LOAD","slabLiveLoadDeflection":"0.5 in"},
                        {"id":"L4","elevation":"40 ft","role":"WIND_LOAD","slabLiveLoadDeflection":"0.4 in"}],
             "stackJoints":[{"elevation":"16 ft","nominalWidth":"1.75 in","sealantMovementCapability":0.5}],
             "material":"ALUMINUM","temperature":{"installed":"60 degF","minimum":"0 degF","maximum":"180 degF"},
             "erectionTolerance":"0.125 in","columnShortening":"0.02 in","interstoryDrift":"0.6 in",
             "storyHeight":"14 ft",
             "drift":{"glassWidth":"5 ft","glassHeight":"8 ft","sideClearance":"0.25 in",
                      "topBottomClearance":"0.25 in","importanceFactor":1.0}}""";

    static AnchorageMovementRequest bind(String json) {
        return Binder.bind(
                StrictJson.read(json.getBytes(StandardCharsets.UTF_8)),
                AnchorageMovementRequest.class);
    }

    static AnchorageMovementResult run(String json) {
        return AnchorageMovementCheck.run(bind(json), US);
    }

    /** The sound run with something else in the place of something. */
    static AnchorageMovementResult with(String what, String instead) {
        assertThat(SOUND).contains(what);
        return run(SOUND.replace(what, instead));
    }

    static double inches(@Nullable Quantity quantity) {
        return Objects.requireNonNull(quantity).si() / INCH;
    }

    static List<String> codes(AnchorageMovementResult result) {
        return result.outcome().findings().stream().map(Finding::code).toList();
    }

    /** The trade's number: an aluminum mullion of 12 ft over 180 degF moves about 0.34 in. */
    @Test
    void aTwelveFootMullionMovesAThirdOfAnInch() {
        AnchorageMovementResult result = with("\"28 ft\"", "\"26 ft\"");
        assertThat(inches(result.thermalMovement())).isCloseTo(0.34, offset(5e-3));
        assertThat(inches(result.thermalMovement())).isCloseTo(13.1e-6 * 144 * 180, offset(1e-6));
    }

    /**
     * By hand, L = 168 in: warming 120 degF 0.2641 in, cooling 60 degF 0.1320 in; closing 0.2641 +
     * 0.5 + 0.02 = 0.7841, opening 0.1320 + 0.3 = 0.4320; W = 0.7841/0.5 + 0.125 = 1.6932 in.
     */
    @Test
    void sizesTheJointForWhatClosesAndOpensIt() {
        AnchorageMovementResult result = run(SOUND);
        JointResult joint = result.joints().get(0);
        assertThat(inches(joint.closing())).isCloseTo(0.7841, offset(1e-4));
        assertThat(inches(joint.opening())).isCloseTo(0.4320, offset(1e-4));
        assertThat(inches(joint.requiredWidth())).isCloseTo(1.6932, offset(2e-4));
        assertThat(inches(joint.widthWhenClosed())).isCloseTo(1.75 - 0.125 - 0.7841, offset(1e-4));
        assertThat(joint.utilization()).isCloseTo(1.6932 / 1.75, offset(2e-4));
        assertThat(joint.parts().stream().mapToDouble(part -> part.closing().si()).sum())
                .isCloseTo(joint.closing().si(), offset(1e-12));
        assertThat(joint.verdict()).isEqualTo(Verdict.SATISFIED);
        assertThat(result.outcome().verdict()).isEqualTo(Verdict.SATISFIED);
        assertThat(result.outcome().utilization()).isEqualTo(joint.utilization());
        assertThat(result.outcome().remedies()).isEmpty();
    }

    /**
     * L4 is 144 in above L3. Up: 13.1e-6 x 144 x 120 + own slab 0.4 + columns 0.02 + 0.125; down:
     * 13.1e-6 x 144 x 60 + slab of L3 0.5 + 0.125. Below its dead-load anchor the parts change
     * over.
     */
    @Test
    void givesEachSlotItsRoomUpAndDown() {
        SlotResult above = run(SOUND).slots().get(0);
        assertThat(above.anchor()).isEqualTo("L4");
        assertThat(above.relativeTo()).isEqualTo("L3");
        assertThat(inches(above.up())).isCloseTo(0.2264 + 0.4 + 0.02 + 0.125, offset(1e-4));
        assertThat(inches(above.down())).isCloseTo(0.1132 + 0.5 + 0.125, offset(1e-4));
        SlotResult below =
                run(SOUND.replace("\"28 ft\"", "\"x\"")
                                .replace("\"40 ft\"", "\"28 ft\"")
                                .replace("\"x\"", "\"40 ft\""))
                        .slots()
                        .get(0);
        assertThat(inches(below.up())).isCloseTo(0.1132 + 0.4 + 0.125, offset(1e-4));
        assertThat(inches(below.down())).isCloseTo(0.2264 + 0.5 + 0.02 + 0.125, offset(1e-4));
        assertThat(codes(run(SOUND))).contains("SLOTS_TO_CALL_OUT");
    }

    @Test
    void holdsTheRoomOfASlotAgainstTheMovement() {
        String slot = "\"40 ft\",\"slotUp\":\"%s in\",\"slotDown\":\"%s in\"";
        AnchorageMovementResult enough = with("\"40 ft\"", slot.formatted("0.8", "0.8"));
        assertThat(enough.outcome().verdict()).isEqualTo(Verdict.SATISFIED);
        assertThat(enough.slots().get(0).utilization()).isCloseTo(0.7714 / 0.8, offset(2e-4));
        AnchorageMovementResult little = with("\"40 ft\"", slot.formatted("0.8", "0.7"));
        assertThat(little.outcome().verdict()).isEqualTo(Verdict.EXCEEDED);
        assertThat(codes(little)).contains("SLOT_TOO_SHORT");
        assertThat(with("\"40 ft\"", "\"40 ft\",\"slotUp\":\"1 in\"").outcome().verdict())
                .isEqualTo(Verdict.UNDETERMINED);
    }

    @Test
    void everyPieceIsFixedExactlyOnce() {
        AnchorageMovementResult none =
                with("\"28 ft\",\"role\":\"DEAD_LOAD\"", "\"28 ft\",\"role\":\"WIND_LOAD\"");
        assertThat(none.outcome().verdict()).isEqualTo(Verdict.EXCEEDED);
        assertThat(none.pieces())
                .extracting(PieceResult::verdict)
                .containsExactly(Verdict.SATISFIED, Verdict.EXCEEDED);
        assertThat(codes(none)).contains("NO_DEAD_LOAD_ANCHOR");
        // nothing holds the upper piece, so that all of it, up to L4, may move into the joint
        assertThat(none.joints().get(0).freeLength().si()).isCloseTo(26 * 0.3048, offset(1e-9));
        assertThat(none.slots()).extracting(SlotResult::relativeTo).containsExactly("L2", "L2");

        AnchorageMovementResult twice =
                run(
                        SOUND.replace("\"WIND_LOAD\"", "\"DEAD_LOAD\"")
                                .replace("\"material\"", "\"sectionArea\":\"2 in2\",\"material\""));
        assertThat(twice.outcome().verdict()).isEqualTo(Verdict.UNDETERMINED);
        assertThat(codes(twice)).contains("SEVERAL_DEAD_LOAD_ANCHORS");
        // E A alpha dT = 10100 ksi x 2 in2 x 13.1e-6 x 120 = 31.75 kip, by hand
        assertThat(Objects.requireNonNull(twice.pieces().get(1).lockedInForce()).si())
                .isCloseTo(31.754 * 4448.2216, offset(20.0));
        assertThat(with("\"WIND_LOAD\"", "\"DEAD_LOAD\"").pieces().get(1).lockedInForce()).isNull();
    }

    @Test
    void aPieceOfWhichNothingIsKnownIsLeftOpen() {
        AnchorageMovementResult open = with("\"elevation\":\"16 ft\"", "\"elevation\":\"45 ft\"");
        assertThat(open.pieces().get(1).verdict()).isEqualTo(Verdict.UNDETERMINED);
        assertThat(open.joints().get(0).verdict()).isEqualTo(Verdict.UNDETERMINED);
        assertThat(codes(open)).contains("BEYOND_JOINT_NOT_GIVEN");
        // from L3, the nearest of the two dead-load anchors below, up to the joint
        assertThat(open.joints().get(0).freeLength().si()).isCloseTo(17 * 0.3048, offset(1e-9));
    }

    /** ASCE/SEI 7-16, 13.5.9.1 by hand: 2 x 0.25 x (1 + 96 x 0.25 / (60 x 0.25)) = 1.3 in. */
    @Test
    void letsTheGlassFollowTheDriftOfItsOwnHeight() {
        AnchorageMovementResult result = run(SOUND);
        assertThat(inches(result.driftCapacity())).isCloseTo(1.3, offset(1e-9));
        assertThat(inches(result.driftDemand())).isCloseTo(1.25 * 0.6 * 8 / 14, offset(1e-9));
        assertThat(codes(result)).contains("DRIFT_PRORATED");

        AnchorageMovementResult more = with("\"0.6 in\"", "\"2.5 in\"");
        assertThat(more.outcome().verdict()).isEqualTo(Verdict.UNDETERMINED);
        assertThat(codes(more)).contains("DRIFT_CAPACITY_SHORT");
        assertThat(more.outcome().utilization()).isGreaterThan(1);
        assertThat(more.outcome().remedies())
                .singleElement()
                .satisfies(
                        remedy ->
                                assertThat(remedy.changes().get(0).pointer())
                                        .isEqualTo("/drift/sideClearance"));
    }

    /** Without Ie and story height the demand is at most 1.25 x 1.5 x 0.6 = 1.125 in. */
    @Test
    void assumesNothingOfTheDriftThatWasNotGiven() {
        String unsaid =
                SOUND.replace(",\"importanceFactor\":1.0", "")
                        .replace("\"storyHeight\":\"14 ft\",", "");
        AnchorageMovementResult kept = run(unsaid);
        assertThat(kept.outcome().verdict()).isEqualTo(Verdict.SATISFIED);
        assertThat(inches(kept.driftDemand())).isCloseTo(1.125, offset(1e-9));
        assertThat(kept.outcome().findings())
                .filteredOn(f -> f.severity() == Finding.Severity.NOTE)
                .extracting(Finding::code)
                .contains("IMPORTANCE_FACTOR_NOT_GIVEN", "STORY_HEIGHT_NOT_GIVEN");
        AnchorageMovementResult open = run(unsaid.replace("\"0.6 in\"", "\"0.8 in\""));
        assertThat(open.outcome().verdict()).isEqualTo(Verdict.UNDETERMINED);
        assertThat(open.outcome().findings())
                .filteredOn(f -> f.severity() == Finding.Severity.ACTION)
                .extracting(Finding::code)
                .contains("IMPORTANCE_FACTOR_NOT_GIVEN", "STORY_HEIGHT_NOT_GIVEN");
        assertThat(open.outcome().remedies()).isEmpty();
    }

    @Test
    void holdsReactionsAgainstWhatTheCallerAllows() {
        String forces =
                "\"14 ft\",\"windReactionPositive\":\"900 lbf\",\"windReactionNegative\":\"-1200 lbf\","
                        + "\"allowableWindForce\":\"%s lbf\",\"deadLoadReaction\":\"300 lbf\","
                        + "\"allowableDeadLoadForce\":\"%s lbf\"";
        AnchorageMovementResult strong =
                with("\"14 ft\",\"role\"", forces.formatted(1500, 400) + ",\"role\"");
        assertThat(strong.outcome().verdict()).isEqualTo(Verdict.SATISFIED);
        assertThat(strong.anchors().get(0).windUtilization()).isCloseTo(0.8, offset(1e-9));
        assertThat(strong.anchors().get(0).deadLoadUtilization()).isCloseTo(0.75, offset(1e-9));
        assertThat(codes(strong)).contains("ANCHOR_INTERACTION_NOT_CHECKED");
        AnchorageMovementResult weak =
                with("\"14 ft\",\"role\"", forces.formatted(1000, 200) + ",\"role\"");
        assertThat(weak.outcome().verdict()).isEqualTo(Verdict.EXCEEDED);
        assertThat(weak.outcome().utilization()).isCloseTo(1.5, offset(1e-9));
        String open = "\"14 ft\",\"windReactionPositive\":\"900 lbf\",\"role\"";
        AnchorageMovementResult unsaid = with("\"14 ft\",\"role\"", open);
        assertThat(unsaid.outcome().verdict()).isEqualTo(Verdict.UNDETERMINED);
        assertThat(codes(unsaid))
                .contains("WIND_REACTION_SIGN_NOT_GIVEN", "ALLOWABLE_ANCHOR_FORCE_NOT_GIVEN");
        assertThat(
                        codes(
                                with(
                                        "\"14 ft\",\"role\"",
                                        "\"14 ft\",\"allowableDeadLoadForce\":\"1 kN\",\"role\"")))
                .contains("ANCHOR_REACTION_NOT_GIVEN");
        assertThat(codes(run(SOUND))).contains("ANCHOR_STRENGTH_NOT_CHECKED");
    }

    @Test
    void whatIsLeftOutIsUndeterminedAndSaid() {
        for (String part :
                List.of(
                        "\"material\":\"ALUMINUM\",",
                        "\"erectionTolerance\":\"0.125 in\",",
                        "\"columnShortening\":\"0.02 in\",",
                        "\"interstoryDrift\":\"0.6 in\",",
                        ",\"sealantMovementCapability\":0.5",
                        "\"nominalWidth\":\"1.75 in\",",
                        ",\"slabLiveLoadDeflection\":\"0.4 in\"",
                        ",\"slabLiveLoadDeflection\":\"0.5 in\"")) {
            AnchorageMovementResult result = with(part, "");
            assertThat(result.outcome().verdict()).as(part).isEqualTo(Verdict.UNDETERMINED);
            String name = part.replaceAll("^,?\"(\\w+)\".*", "$1");
            assertThat(result.outcome().findings())
                    .as(part)
                    .anyMatch(
                            finding ->
                                    finding.severity() == Finding.Severity.ACTION
                                            && finding.pointer().endsWith("/" + name));
        }
        AnchorageMovementResult bare = run("{\"anchors\":[]}");
        assertThat(bare.outcome().verdict()).isEqualTo(Verdict.UNDETERMINED);
        assertThat(codes(bare))
                .contains(
                        "ANCHORS_NOT_GIVEN",
                        "STACK_JOINTS_NOT_GIVEN",
                        "TEMPERATURE_NOT_GIVEN",
                        "DRIFT_CLEARANCE_NOT_GIVEN");
        // least values already too wide for the joint are too wide for certain
        assertThat(
                        run(SOUND.replace("\"material\":\"ALUMINUM\",", "")
                                        .replace("1.75 in", "0.75 in"))
                                .outcome()
                                .verdict())
                .isEqualTo(Verdict.EXCEEDED);
    }

    @Test
    void aRunWithoutJointsMovesFromItsDeadLoadAnchor() {
        AnchorageMovementResult result =
                run(
                        SOUND.replaceAll("\"stackJoints\":\\[.*\\]", "\"stackJoints\":[]")
                                .replace("28 ft\",\"role\":\"DEAD", "28 ft\",\"role\":\"WIND"));
        assertThat(result.outcome().verdict()).isEqualTo(Verdict.SATISFIED);
        assertThat(inches(result.thermalMovement()))
                .isCloseTo(13.1e-6 * 26 * 12 * 180, offset(1e-6));
        assertThat(result.slots()).extracting(SlotResult::relativeTo).containsExactly("L2", "L2");
    }

    @Test
    void refusesWhatItCannotMean() {
        assertThatThrownBy(
                        () ->
                                bind(
                                        """
                                        {"anchors":[{"id":"A","elevation":"3 m","role":"WIND_LOAD","deadLoadReaction":"1 kN"},
                                                    {"id":"B","elevation":"3 m","role":"DEAD_LOAD","slotUp":"0 mm"}],
                                         "temperature":{"installed":"90 degC","minimum":"10 degC","maximum":"80 degC"}}"""))
                .isInstanceOfSatisfying(
                        FaultsException.class,
                        e ->
                                assertThat(e.faults())
                                        .extracting(Fault::pointer)
                                        .containsExactlyInAnyOrder(
                                                "/anchors/0/deadLoadReaction",
                                                "/anchors/1/slotUp",
                                                "/temperature/installed"));
        assertThatThrownBy(
                        () ->
                                bind(
                                        """
                                        {"anchors":[{"id":"A","elevation":"3 m","role":"WIND_LOAD"},
                                                    {"id":"A","elevation":"5 m","role":"DEAD_LOAD"}],
                                         "stackJoints":[{"elevation":"3 m"},{"elevation":"4 m"},{"elevation":"4 m"}]}"""))
                .isInstanceOfSatisfying(
                        FaultsException.class,
                        e ->
                                assertThat(e.faults())
                                        .extracting(Fault::pointer)
                                        .containsExactlyInAnyOrder(
                                                "/anchors/1/id",
                                                "/stackJoints/0/elevation",
                                                "/stackJoints/2/elevation"));
    }

    @Test
    void unitsAndTraceNeverChangeANumber() {
        AnchorageMovementResult us = AnchorageMovementCheck.run(bind(SOUND), US);
        AnchorageMovementResult si = AnchorageMovementCheck.run(bind(SOUND), SI);
        assertThat(si.joints()).isEqualTo(us.joints());
        assertThat(si.slots()).isEqualTo(us.slots());
        assertThat(si.driftDemand()).isEqualTo(us.driftDemand());
        assertThat(si.outcome().trace().size()).isLessThan(us.outcome().trace().size());
    }

    /** Installing hotter turns closing into opening, and leaves the range as it is. */
    @Test
    void movementsFollowTemperatureLengthAndCapability() {
        Random random = new Random(5);
        for (int i = 0; i < 200; i++) {
            double installed = 1 + 178 * random.nextDouble();
            JointResult joint = with("60 degF", installed + " degF").joints().get(0);
            JointResult mirrored = with("60 degF", (180 - installed) + " degF").joints().get(0);
            MovementPart thermal = joint.parts().get(0);
            assertThat(thermal.closing().si())
                    .isCloseTo(mirrored.parts().get(0).opening().si(), offset(1e-9));
            assertThat(thermal.closing().si() + thermal.opening().si())
                    .isCloseTo(13.1e-6 * 168 * 180 * INCH, offset(1e-9));
            double capability = 0.1 + 0.4 * random.nextDouble();
            double movement = Math.max(joint.closing().si(), joint.opening().si());
            AnchorageMovementResult other =
                    run(
                            SOUND.replace("60 degF", installed + " degF")
                                    .replace(":0.5}", ":" + capability + "}"));
            assertThat(inches(other.joints().get(0).requiredWidth()))
                    .isCloseTo(movement / INCH / capability + 0.125, offset(1e-6));
        }
    }

    @Test
    void keepsTheClearanceAskedForBetweenTheMetal() {
        AnchorageMovementResult result =
                with("\"material\"", "\"metalClearance\":\"1 in\",\"material\"");
        assertThat(inches(result.joints().get(0).requiredWidth()))
                .isCloseTo(0.7841 + 0.125 + 1, offset(1e-4));
        assertThat(result.outcome().verdict()).isEqualTo(Verdict.EXCEEDED);
    }

    @Test
    void answersItsOwnExample() throws IOException {
        try (InputStream example =
                Objects.requireNonNull(
                        AnchorageMovementCheckTest.class.getResourceAsStream(
                                "/contract/checkAnchorageMovement.request.json"))) {
            AnchorageMovementResult result =
                    run(new String(example.readAllBytes(), StandardCharsets.UTF_8));
            assertThat(result.outcome().verdict()).isEqualTo(Verdict.SATISFIED);
            assertThat(result.outcome().cautions()).hasSizeGreaterThan(3);
        }
    }
}
