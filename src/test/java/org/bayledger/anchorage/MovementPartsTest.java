package org.bayledger.anchorage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;
import static org.bayledger.anchorage.AnchorageMovementCheckTest.SOUND;
import static org.bayledger.anchorage.AnchorageMovementCheckTest.bind;
import static org.bayledger.anchorage.AnchorageMovementCheckTest.codes;
import static org.bayledger.anchorage.AnchorageMovementCheckTest.inches;
import static org.bayledger.anchorage.AnchorageMovementCheckTest.run;
import static org.bayledger.anchorage.AnchorageMovementCheckTest.with;

import java.util.List;
import java.util.Random;
import org.bayledger.anchorage.MovementPart.Cause;
import org.bayledger.check.Fault;
import org.bayledger.check.FaultsException;
import org.bayledger.check.Verdict;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;

/** Creep, tolerances and how they are combined, shares of each part, expansion joints. */
@NullMarked
class MovementPartsTest {

    private static final String CREEPING =
            SOUND.replace("\"0.3 in\"", "\"0.3 in\",\"slabCreepDeflection\":\"0.2 in\"")
                    .replace("\"0.5 in\"", "\"0.5 in\",\"slabCreepDeflection\":\"0.1 in\"")
                    .replace("\"0.4 in\"", "\"0.4 in\",\"slabCreepDeflection\":\"0.15 in\"")
                    .replace("\"material\"", "\"columnCreep\":\"0.03 in\",\"material\"");

    private static final String TOLERANCES =
            SOUND.replace(
                    "\"material\"",
                    "\"fabricationTolerance\":\"0.0625 in\",\"structureTolerance\":\"0.25 in\",%s\"material\"");

    /** The hand sums of the sound run, 0.7841 in closing and 0.4320 in opening, and the creep. */
    @Test
    void creepMovesJointsAndSlots() {
        AnchorageMovementResult result = run(CREEPING);
        JointResult joint = result.joints().get(0);
        assertThat(inches(joint.closing())).isCloseTo(0.7841 + 0.1 + 0.03, offset(1e-4));
        assertThat(inches(joint.opening())).isCloseTo(0.4320 + 0.2, offset(1e-4));
        assertThat(inches(joint.requiredWidth())).isCloseTo(0.9141 / 0.5 + 0.125, offset(2e-4));
        SlotResult slot = result.slots().get(0);
        assertThat(inches(slot.up())).isCloseTo(0.7714 + 0.15 + 0.03, offset(1e-4));
        assertThat(inches(slot.down())).isCloseTo(0.7382 + 0.1, offset(1e-4));
        assertThat(codes(result)).doesNotContain("CREEP_NOT_GIVEN");
        assertThat(codes(run(SOUND))).contains("CREEP_NOT_GIVEN");
        assertThat(run(SOUND).outcome().verdict()).isEqualTo(Verdict.SATISFIED);
        assertThat(run(SOUND).joints().get(0).parts())
                .extracting(MovementPart::cause)
                .containsExactly(Cause.THERMAL, Cause.SLAB_LIVE_LOAD, Cause.COLUMN_SHORTENING);
    }

    /** 0.125 + 0.0625 + 0.25 = 0.4375 in; squared and rooted 0.28641 in. */
    @Test
    void tolerancesAreAddedAsAsked() {
        JointResult sum = run(TOLERANCES.formatted("")).joints().get(0);
        assertThat(inches(sum.tolerance())).isCloseTo(0.4375, offset(1e-9));
        assertThat(inches(sum.requiredWidth())).isCloseTo(2 * 0.7841 + 0.4375, offset(2e-4));
        String rss = TOLERANCES.formatted("\"combination\":\"RSS_TOLERANCES\",");
        JointResult root = run(rss).joints().get(0);
        assertThat(inches(root.tolerance())).isCloseTo(0.286411, offset(1e-6));
        assertThat(root.closing()).isEqualTo(sum.closing());
        assertThat(inches(root.requiredWidth())).isCloseTo(2 * 0.7841 + 0.28641, offset(2e-4));
        assertThat(run(rss).outcome().trace())
                .filteredOn(step -> step.symbol().equals("t"))
                .singleElement()
                .satisfies(step -> assertThat(step.formula()).contains("squares"));
        // one tolerance alone is the same either way
        assertThat(with("\"material\"", "\"combination\":\"RSS_TOLERANCES\",\"material\"").joints())
                .isEqualTo(run(SOUND).joints());
    }

    /** Root of squares never exceeds the sum, and more temperature never needs less width. */
    @Test
    void sumIsNeverLessThanRootAndHotterIsWider() {
        Random random = new Random(7);
        for (int i = 0; i < 200; i++) {
            String tolerances =
                    "\"fabricationTolerance\":\"%s in\",\"structureTolerance\":\"%s in\",%%s\"material\""
                            .formatted(random.nextDouble(), random.nextDouble());
            double hot = 100 + 80 * random.nextDouble();
            String json = SOUND.replace("\"material\"", tolerances);
            AnchorageMovementResult sum =
                    run(json.formatted("").replace("180 degF", hot + " degF"));
            AnchorageMovementResult root =
                    run(
                            json.formatted("\"combination\":\"RSS_TOLERANCES\",")
                                    .replace("180 degF", hot + " degF"));
            AnchorageMovementResult hotter =
                    run(json.formatted("").replace("180 degF", (hot + 5) + " degF"));
            double width = inches(sum.joints().get(0).requiredWidth());
            assertThat(inches(root.joints().get(0).requiredWidth())).isLessThanOrEqualTo(width);
            assertThat(inches(hotter.joints().get(0).requiredWidth())).isGreaterThan(width);
            assertThat(inches(root.slots().get(0).up()))
                    .isLessThanOrEqualTo(inches(sum.slots().get(0).up()));
        }
    }

    /** Every part with its amount and its percentage of the whole, which they make up. */
    @Test
    void sharesMakeUpTheWhole() {
        AnchorageMovementResult result = run(CREEPING);
        JointResult joint = result.joints().get(0);
        SlotResult slot = result.slots().get(0);
        for (List<MovementShare> shares :
                List.of(
                        joint.closingShares(),
                        joint.openingShares(),
                        slot.upShares(),
                        slot.downShares())) {
            assertThat(shares.stream().mapToDouble(MovementShare::percentage).sum())
                    .isCloseTo(100, offset(1e-9));
        }
        assertThat(joint.closingShares())
                .extracting(MovementShare::cause)
                .containsExactly(
                        Cause.THERMAL,
                        Cause.SLAB_LIVE_LOAD,
                        Cause.COLUMN_SHORTENING,
                        Cause.SLAB_CREEP,
                        Cause.COLUMN_CREEP,
                        Cause.TOLERANCES);
        // 0.5 of 0.9141 + 0.125
        assertThat(joint.closingShares().get(1).percentage()).isCloseTo(48.12, offset(0.01));
        assertThat(slot.upShares().stream().mapToDouble(share -> share.amount().si()).sum())
                .isCloseTo(java.util.Objects.requireNonNull(slot.up()).si(), offset(1e-12));
    }

    /** Bolt of 1/2 in, 0.7714 in up and 0.7382 in down. */
    @Test
    void slotIsAsLongAsItsBoltAndTheRoomBothWays() {
        SlotResult slot = with("\"40 ft\"", "\"40 ft\",\"boltDiameter\":\"0.5 in\"").slots().get(0);
        assertThat(inches(slot.slotLength())).isCloseTo(0.5 + 0.7714 + 0.7382, offset(2e-4));
        assertThat(run(SOUND).slots().get(0).slotLength()).isNull();
    }

    private static String joint(String width, String more) {
        return SOUND.replace(
                "\"material\"",
                "\"expansionJoints\":[{\"id\":\"EJ1\",\"nominalWidth\":\"%s\",\"sealantMovementCapability\":0.5%s}],\"material\""
                        .formatted(width, more));
    }

    private static final String SWAYS =
            ",\"inPlaneMovement\":\"0.25 in\",\"thermalLength\":\"30 ft\"";

    /**
     * 30 ft: warming 13.1e-6 x 360 x 120 = 0.5659 in, cooling 0.2830 in; with 0.25 in of sway
     * 0.8159 in closing and 0.5330 in opening; W = 0.8159 / 0.5 + 0.125 = 1.7568 in.
     */
    @Test
    void expansionJointTakesSwayAndTemperature() {
        ExpansionJointResult joint = run(joint("2 in", SWAYS)).expansionJoints().get(0);
        assertThat(inches(joint.closing())).isCloseTo(0.8159, offset(1e-4));
        assertThat(inches(joint.opening())).isCloseTo(0.5330, offset(1e-4));
        assertThat(inches(joint.requiredWidth())).isCloseTo(1.7568, offset(2e-4));
        assertThat(inches(joint.widthWhenClosed())).isCloseTo(2 - 0.125 - 0.8159, offset(1e-4));
        assertThat(joint.verdict()).isEqualTo(Verdict.SATISFIED);
        assertThat(run(joint("2 in", SWAYS)).outcome().verdict()).isEqualTo(Verdict.SATISFIED);
        AnchorageMovementResult narrow = run(joint("1 in", SWAYS));
        assertThat(narrow.outcome().verdict()).isEqualTo(Verdict.EXCEEDED);
        assertThat(codes(narrow)).contains("EXPANSION_JOINT_TOO_NARROW");
        assertThat(narrow.outcome().utilization()).isCloseTo(1.7568, offset(2e-4));
    }

    @Test
    void expansionJointLackingItsSwayIsUndetermined() {
        AnchorageMovementResult open = run(joint("2 in", ",\"thermalLength\":\"30 ft\""));
        assertThat(open.outcome().verdict()).isEqualTo(Verdict.UNDETERMINED);
        assertThat(codes(open)).contains("EXPANSION_JOINT_INCOMPLETE");
        String twice =
                joint("2 in", SWAYS)
                        .replace("\"expansionJoints\":[", "\"expansionJoints\":[{\"id\":\"EJ1\"},");
        assertThatThrownBy(() -> bind(twice))
                .isInstanceOfSatisfying(
                        FaultsException.class,
                        e ->
                                assertThat(e.faults())
                                        .extracting(Fault::pointer)
                                        .containsExactly("/expansionJoints/1/id"));
    }
}
