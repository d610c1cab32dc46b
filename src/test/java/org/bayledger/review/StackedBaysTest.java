package org.bayledger.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.bayledger.review.Documents.codes;
import static org.bayledger.review.Documents.demo;
import static org.bayledger.review.Documents.element;
import static org.bayledger.review.Documents.item;
import static org.bayledger.review.Documents.object;
import static org.bayledger.review.Documents.review;
import static org.bayledger.review.ReviewEdgesTest.stacked;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.bayledger.anchorage.Anchor;
import org.bayledger.check.Finding;
import org.bayledger.check.Verdict;
import org.bayledger.framing.FramingRequest;
import org.bayledger.framing.FramingResult;
import org.junit.jupiter.api.Test;

/** What the verticals of one bay put on those of another, and anchors that two bays share. */
class StackedBaysTest {

    private static final double FOOT = 0.3048;

    /**
     * N-701 hangs from anchors 13 ft and 13.5 ft above the joint at 27.5 ft in which it stands;
     * N-201 is held at its foot and at 13 ft, and the joint lies 6 in beyond.
     */
    private static Map<String, Object> standing(List<String> columns) {
        Map<String, Object> tree = stacked("SHIMMED_SILL", columns);
        Map<String, Object> top = element(tree, "bays", 3);
        element(element(tree, "bays", 0), "stackJoints", 0).put("elevation", "27.5 ft");
        element(element(tree, "bays", 0), "anchors", 1).put("elevation", "27 ft");
        object(element(tree, "bays", 0), "mullion").remove("supports");
        top.put(
                "stackJoints",
                List.of(
                        Map.of(
                                "elevation",
                                "27.5 ft",
                                "nominalWidth",
                                "1.375 in",
                                "sealantMovementCapability",
                                new BigDecimal("0.5"))));
        element(top, "anchors", 0).put("elevation", "40.5 ft");
        object(tree, "site").put("basicWindSpeed", "95 mph");
        return tree;
    }

    private static List<FramingResult.Reaction> reactions(ReviewResult result, String id) {
        return ((FramingResult) item(result, id, "framing").result()).reactions();
    }

    private static double negative(FramingResult.Reaction reaction) {
        return reaction.underNegative().si();
    }

    private static Anchor anchor(ReviewResult result, String id) {
        return (Anchor) item(result, id, "anchorage-movement").inputs();
    }

    /**
     * By moments about the foot of N-201: L3 carries w 13.5^2 / 2 / 13 and P 13.5 / 13, P the
     * reaction of N-701 at the joint; L2 what is left of w 13.5 / 1 without P, which relieves it.
     */
    @Test
    void footInTheStackJointLoadsThePieceBelow() {
        ReviewResult result = review(standing(List.of("5 ft", "5 ft")));
        double foot = negative(reactions(result, "N-701/mullion/2").get(0));
        ReviewItem mullion = item(result, "N-201/mullion/2", "framing");
        double w = 0.6 * -mullion.wind().negative().si() * 5 * FOOT;
        double alone = w * FOOT * 13.5 * 13.5 / 2 / 13;
        assertThat(foot).isPositive();
        assertThat(anchor(result, "N-201/anchor/L3").windReactionNegative())
                .isCloseTo(alone + foot * 13.5 / 13, within(1e-3 * alone));
        assertThat(anchor(result, "N-201/anchor/L2").windReactionNegative())
                .isCloseTo(w * FOOT * 13.5 - alone, within(1e-3 * alone));
        for (String id : List.of("N-201/anchor/L2", "N-201/anchor/L3")) {
            assertThat(codes(result, id)).doesNotContain("CARRIES_PIECE_ABOVE");
        }
        assertThat(mullion.findings())
                .filteredOn(finding -> finding.code().equals("CARRIES_PIECE_ABOVE"))
                .singleElement()
                .satisfies(
                        finding -> {
                            assertThat(finding.severity()).isEqualTo(Finding.Severity.NOTE);
                            assertThat(finding.text()).contains("N-701");
                        });
        // what the foot puts on, spread over the span, is not what bends it most
        assertThat(((FramingRequest) mullion.inputs()).tributaryAreas()).isNull();
        assertThat(codes(review(demo(2)), "")).doesNotContain("CARRIES_PIECE_ABOVE");
    }

    /** With a longer overhang the foot governs: M = P a + w a^2 / 2 at the upper anchor. */
    @Test
    void footGovernsALongOverhang() {
        Map<String, Object> tree = standing(List.of("5 ft", "5 ft"));
        element(element(tree, "bays", 0), "anchors", 1).put("elevation", "20 ft");
        ReviewResult result = review(tree);
        ReviewItem mullion = item(result, "N-201/mullion/2", "framing");
        FramingRequest request = (FramingRequest) mullion.inputs();
        assertThat(request.tributaryAreas()).hasSize(1);
        assertThat(request.tributaryAreas().get(0).at()).isCloseTo(13.5 * FOOT, within(1e-9));
        double foot = negative(reactions(result, "N-701/mullion/2").get(0));
        double w = 0.6 * -mullion.wind().negative().si() * 5 * FOOT;
        double a = 7.5 * FOOT;
        double moment = foot * a + w * a * a / 2;
        assertThat(((FramingResult) mullion.result()).maxMoment().si())
                .isCloseTo(moment, within(1e-2 * moment));
    }

    @Test
    void footWhoseForceIsNotKnownLeavesThePieceBelowOpen() {
        Map<String, Object> tree = standing(List.of("5 ft", "5 ft"));
        element(tree, "bays", 3).remove("mullion");
        ReviewResult result = review(tree);
        for (String id : List.of("N-201/mullion/2", "N-201/anchor/L2", "N-201/anchor/L3")) {
            String check = id.contains("anchor") ? "anchorage-movement" : "framing";
            assertThat(item(result, id, check).verdict()).as(id).isEqualTo(Verdict.UNDETERMINED);
            assertThat(codes(result, id)).contains("CARRIES_PIECE_ABOVE");
        }
    }

    @Test
    void footBetweenTheVerticalsBelowIsNotForgotten() {
        ReviewResult result = review(standing(List.of("3 ft", "7 ft")));
        assertThat(item(result, "N-201/mullion/2", "framing").verdict())
                .isEqualTo(Verdict.UNDETERMINED);
        assertThat(codes(result, "N-201/mullion/2"))
                .contains("FOOT_ABOVE_STANDS_BETWEEN_VERTICALS");
        assertThat(item(result, "N-201/anchor/L3", "anchorage-movement").verdict())
                .isEqualTo(Verdict.UNDETERMINED);
    }

    private static Map<String, Object> shared() {
        Map<String, Object> tree = stacked("SHIMMED_SILL", List.of("5 ft", "5 ft"));
        element(element(tree, "bays", 3), "anchors", 0).put("elevation", "27.5 ft");
        Map<String, Object> below = element(tree, "bays", 0);
        below.put("stackJoints", List.of());
        below.put("anchors", List.of(element(below, "anchors", 0), element(below, "anchors", 1)));
        return tree;
    }

    /**
     * Two spans of 13.5 ft over one anchor: w1 L/2 + w2 L/2 if each ends there, and (w1 + w2) L^2 /
     * 16 x 2 / L more if they run through, which makes 10/8 w L of equal ones (beam tables).
     */
    @Test
    void anchorOfTwoBaysCarriesBoth() {
        ReviewResult result = review(shared());
        double below = negative(reactions(result, "N-201/mullion/2").get(1));
        double above = negative(reactions(result, "N-701/mullion/2").get(0));
        for (String id : List.of("N-201/anchor/L3", "N-701/anchor/L7")) {
            assertThat(anchor(result, id).windReactionNegative())
                    .as(id)
                    .isCloseTo(1.25 * (below + above), within(1e-6 * below));
            assertThat(item(result, id, "anchorage-movement").findings())
                    .filteredOn(finding -> finding.code().equals("ANCHOR_SHARED_BETWEEN_BAYS"))
                    .singleElement()
                    .extracting(Finding::severity)
                    .isEqualTo(Finding.Severity.NOTE);
        }
        // the other anchors carry their own bay
        assertThat(anchor(result, "N-701/anchor/ROOF").windReactionNegative())
                .isCloseTo(negative(reactions(result, "N-701/mullion/2").get(1)), within(1e-6));
    }

    /** Only an anchor that is fixed in both carries the weight of both. */
    @Test
    void sharedDeadLoadAnchorCarriesBothWeights() {
        double own = anchor(review(shared()), "N-701/anchor/L7").deadLoadReaction();
        Map<String, Object> tree = shared();
        Map<String, Object> below = element(tree, "bays", 0);
        element(below, "anchors", 0).put("role", "WIND_LOAD");
        element(below, "anchors", 0).remove("allowableDeadLoadForce");
        element(below, "anchors", 1).put("role", "DEAD_LOAD");
        element(below, "anchors", 1).put("allowableDeadLoadForce", "1100 lbf");
        ReviewResult result = review(tree);
        Anchor upper = anchor(result, "N-701/anchor/L7");
        assertThat(upper.deadLoadReaction())
                .isEqualTo(anchor(result, "N-201/anchor/L3").deadLoadReaction())
                .isGreaterThan(1.5 * own);
        assertThat(codes(result, "N-201/anchorage"))
                .doesNotContain("NO_JOINT_BETWEEN_DEAD_LOAD_ANCHORS");
    }

    @Test
    void sharedAnchorOfABayOfWhichTooLittleIsKnownIsOpen() {
        Map<String, Object> tree = shared();
        element(tree, "bays", 3).remove("mullion");
        ReviewResult result = review(tree);
        assertThat(item(result, "N-201/anchor/L3", "anchorage-movement").verdict())
                .isNotEqualTo(Verdict.SATISFIED);
        assertThat(codes(result, "N-201/anchor/L3")).contains("ANCHOR_SHARED_BETWEEN_BAYS");
    }

    /** L2 of the one bay and L7 of the other are both fixed, and nothing moves between them. */
    @Test
    void piecesWithoutAJointBetweenAreFixedTwice() {
        ReviewResult result = review(shared());
        for (String id : List.of("N-201/anchorage", "N-701/anchorage")) {
            assertThat(item(result, id, "anchorage-movement").verdict())
                    .isNotEqualTo(Verdict.SATISFIED);
            assertThat(codes(result, id)).contains("NO_JOINT_BETWEEN_DEAD_LOAD_ANCHORS");
        }
        assertThat(codes(review(standing(List.of("5 ft", "5 ft"))), ""))
                .doesNotContain("NO_JOINT_BETWEEN_DEAD_LOAD_ANCHORS");
    }

    @Test
    void expansionJointsOfABayAreChecked() {
        Map<String, Object> tree = demo(2);
        element(tree, "bays", 0)
                .put(
                        "expansionJoints",
                        List.of(
                                Map.of(
                                        "id",
                                        "EJ1",
                                        "nominalWidth",
                                        "0.25 in",
                                        "sealantMovementCapability",
                                        new BigDecimal("0.5"),
                                        "inPlaneMovement",
                                        "0.25 in",
                                        "thermalLength",
                                        "30 ft")));
        ReviewResult result = review(tree);
        assertThat(item(result, "N-201/anchorage", "anchorage-movement").verdict())
                .isEqualTo(Verdict.EXCEEDED);
        assertThat(codes(result, "N-201/anchorage")).contains("EXPANSION_JOINT_TOO_NARROW");
    }
}
