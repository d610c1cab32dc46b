package org.bayledger.anchorage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;
import static org.bayledger.anchorage.AnchorageMovementCheckTest.SOUND;
import static org.bayledger.anchorage.AnchorageMovementCheckTest.bind;
import static org.bayledger.anchorage.AnchorageMovementCheckTest.codes;
import static org.bayledger.anchorage.AnchorageMovementCheckTest.run;

import java.util.Objects;
import java.util.Random;
import org.bayledger.check.Fault;
import org.bayledger.check.FaultsException;
import org.bayledger.check.Finding;
import org.bayledger.check.Verdict;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.NullMarked;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/**
 * Bolts of brackets by moment equilibrium, by hand: weight 300 lbf at 6 in from the slab, wind 1200
 * lbf, 4 bolts of which 2 in tension.
 */
@NullMarked
class BracketTest {

    private static final double LBF = 4.4482216152605;

    private static final String STRONG =
            ",\"pryingFactor\":1,\"allowableBoltTension\":\"2000 lbf\",\"allowableBoltShear\":\"1500 lbf\"";

    private static String bracket(String mounting, double lever, double wind, String more) {
        return ("{\"mounting\":\"%s\",\"eccentricity\":\"6 in\",\"leverArm\":\"%s in\","
                        + "\"windLeverArm\":\"%s in\",\"boltCount\":4,\"tensionBoltCount\":2%s}")
                .formatted(mounting, lever, wind, more);
    }

    private static String at14(String bracket) {
        return SOUND.replace(
                "\"14 ft\",\"role\"",
                "\"14 ft\",\"windReactionPositive\":\"900 lbf\",\"windReactionNegative\":\"-1200 lbf\","
                        + "\"allowableWindForce\":\"2000 lbf\",\"deadLoadReaction\":\"300 lbf\","
                        + "\"allowableDeadLoadForce\":\"600 lbf\",\"bracket\":"
                        + bracket
                        + ",\"role\"");
    }

    private static BracketResult of(String bracket) {
        return Objects.requireNonNull(run(at14(bracket)).anchors().get(0).bracket());
    }

    private static double lbf(@Nullable Quantity force) {
        return Objects.requireNonNull(force).si() / LBF;
    }

    /**
     * On the face, wind at the level of the bolts, 5 in above the lower edge: 2 T 5 = 300 x 6 +
     * 1200 x 5, T = 780 lbf, that is 1200/2 + 180; V = 300/4 = 75 lbf.
     */
    @Test
    void onTheFaceOfASlab() {
        BracketResult result = of(bracket("FACE_OF_SLAB", 5, 5, STRONG));
        assertThat(lbf(result.boltTension())).isCloseTo(780, offset(1e-6));
        assertThat(lbf(result.boltShear())).isCloseTo(75, offset(1e-6));
        assertThat(lbf(result.overturningMoment())).isCloseTo(7800 * 0.0254, offset(1e-6));
        assertThat(result.interaction()).isCloseTo(780.0 / 2000 + 75.0 / 1500, offset(1e-9));
        assertThat(result.verdict()).isEqualTo(Verdict.SATISFIED);
        assertThat(run(at14(bracket("FACE_OF_SLAB", 5, 5, STRONG))).outcome().verdict())
                .isEqualTo(Verdict.SATISFIED);
    }

    /**
     * Wind below the bolts, at 2 of 5 in, the upper edge 1.5 in above them: about the upper edge 2
     * T 1.5 = 1200 (5 + 1.5 - 2), T = 1800 lbf, more than (1800 + 2400) / 10 = 420 about the lower
     * one. Above the bracket, at 8 in: (1800 + 9600) / 10 = 1140 lbf about the lower edge against
     * 1200 (8 - 6.5) / 3 = 600 about the upper.
     */
    @Test
    void windOffTheBolts() {
        String upper = ",\"oppositeLeverArm\":\"1.5 in\"";
        assertThat(lbf(of(bracket("FACE_OF_SLAB", 5, 2, upper + STRONG)).boltTension()))
                .isCloseTo(1800, offset(1e-6));
        assertThat(lbf(of(bracket("FACE_OF_SLAB", 5, 8, upper + STRONG)).boltTension()))
                .isCloseTo(1140, offset(1e-6));
        BracketResult unknown = of(bracket("FACE_OF_SLAB", 5, 2, STRONG));
        assertThat(unknown.boltTension()).isNull();
        assertThat(unknown.verdict()).isEqualTo(Verdict.UNDETERMINED);
        assertThat(codes(run(at14(bracket("FACE_OF_SLAB", 5, 2, STRONG)))))
                .contains("OPPOSITE_LEVER_ARM_NOT_GIVEN");
    }

    /**
     * On top: bolts 4 in behind the slab's edge, wind 3 in above the slab: 2 T 4 = 300 x 6 + 1200 x
     * 3, T = 675 lbf; about the inner edge, 2 in behind the bolts, 2 T 2 = 1200 x 3, T = 900 lbf; V
     * = 1200/4 = 300 lbf.
     */
    @Test
    void onTopOfASlab() {
        String inner = ",\"oppositeLeverArm\":\"%s in\"";
        BracketResult near = of(bracket("TOP_OF_SLAB", 4, 3, inner.formatted("2") + STRONG));
        assertThat(lbf(near.boltTension())).isCloseTo(900, offset(1e-6));
        assertThat(lbf(near.boltShear())).isCloseTo(300, offset(1e-6));
        BracketResult far = of(bracket("TOP_OF_SLAB", 4, 3, inner.formatted("8") + STRONG));
        assertThat(lbf(far.boltTension())).isCloseTo(675, offset(1e-6));
    }

    /** Prying is the caller's: it raises the tension, and without it nothing is satisfied. */
    @Test
    void pryingAndAllowablesAreTheCallers() {
        String pried = STRONG.replace("\"pryingFactor\":1", "\"pryingFactor\":1.25");
        assertThat(lbf(of(bracket("FACE_OF_SLAB", 5, 5, pried)).boltTension()))
                .isCloseTo(975, offset(1e-6));
        String unsaid = STRONG.replace(",\"pryingFactor\":1", "");
        AnchorageMovementResult open = run(at14(bracket("FACE_OF_SLAB", 5, 5, unsaid)));
        assertThat(open.outcome().verdict()).isEqualTo(Verdict.UNDETERMINED);
        assertThat(codes(open)).contains("PRYING_NOT_CHECKED");
        BracketResult bare = of(bracket("FACE_OF_SLAB", 5, 5, ",\"pryingFactor\":1"));
        assertThat(bare.interaction()).isNull();
        assertThat(bare.verdict()).isEqualTo(Verdict.UNDETERMINED);
        assertThat(lbf(bare.boltTension())).isCloseTo(780, offset(1e-6));
    }

    @Test
    void weakBoltsAreExceededAndEmbedmentIsLeftOut() {
        String weak = STRONG.replace("2000 lbf", "800 lbf");
        AnchorageMovementResult result = run(at14(bracket("FACE_OF_SLAB", 5, 5, weak)));
        assertThat(result.outcome().verdict()).isEqualTo(Verdict.EXCEEDED);
        assertThat(result.outcome().utilization()).isCloseTo(0.975 + 0.05, offset(1e-9));
        assertThat(codes(result)).contains("BRACKET_BOLTS_EXCEEDED");
        assertThat(result.outcome().remedies()).hasSize(1);
        assertThat(result.outcome().findings())
                .filteredOn(finding -> finding.code().equals("CONCRETE_EMBEDMENT_NOT_CHECKED"))
                .singleElement()
                .extracting(Finding::text)
                .asString()
                .contains("L2", "licensed engineer");
        assertThat(codes(run(SOUND))).doesNotContain("CONCRETE_EMBEDMENT_NOT_CHECKED");
    }

    @Test
    void bracketWithoutForcesIsUndetermined() {
        AnchorageMovementResult result =
                run(
                        SOUND.replace(
                                "\"14 ft\",\"role\"",
                                "\"14 ft\",\"bracket\":"
                                        + bracket("FACE_OF_SLAB", 5, 5, STRONG)
                                        + ",\"role\""));
        assertThat(result.outcome().verdict()).isEqualTo(Verdict.UNDETERMINED);
        assertThat(codes(result)).contains("BRACKET_FORCES_NOT_GIVEN");
        assertThat(result.anchors().get(0).bracket()).isNull();
    }

    /**
     * Moment equilibrium holds: what the bolts and the edge carry is what acts, for any bracket.
     */
    @Test
    void boltsBalanceTheMoment() {
        Random random = new Random(3);
        for (int i = 0; i < 200; i++) {
            double lever = 1 + 9 * random.nextDouble();
            BracketResult result = of(bracket("FACE_OF_SLAB", lever, lever, STRONG));
            double bolts = 2 * lbf(result.boltTension());
            double edge = bolts - 1200;
            // about the wind's own line, at the bolts: the edge's push against the weight
            assertThat(edge * lever).isCloseTo(300 * 6, offset(1e-6));
            BracketResult longer = of(bracket("FACE_OF_SLAB", lever + 1, lever + 1, STRONG));
            assertThat(lbf(longer.boltTension())).isLessThan(lbf(result.boltTension()));
        }
    }

    @Test
    void moreBoltsInTensionThanThereAreIsRefused() {
        assertThatThrownBy(
                        () ->
                                bind(
                                        at14(
                                                bracket("FACE_OF_SLAB", 5, 5, STRONG)
                                                        .replace(
                                                                "\"boltCount\":4",
                                                                "\"boltCount\":1"))))
                .isInstanceOfSatisfying(
                        FaultsException.class,
                        e ->
                                assertThat(e.faults())
                                        .extracting(Fault::pointer)
                                        .containsExactly("/anchors/0/bracket/tensionBoltCount"));
    }
}
