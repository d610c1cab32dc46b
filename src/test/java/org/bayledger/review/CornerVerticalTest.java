package org.bayledger.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.bayledger.review.Documents.codes;
import static org.bayledger.review.Documents.demo;
import static org.bayledger.review.Documents.element;
import static org.bayledger.review.Documents.item;
import static org.bayledger.review.Documents.object;
import static org.bayledger.review.Documents.review;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.bayledger.check.Verdict;
import org.bayledger.framing.FramingRequest;
import org.bayledger.framing.FramingResult;
import org.junit.jupiter.api.Test;

/** Verticals at which the wall turns. The jamb of N-201 at 0 ft stands at such a corner. */
class CornerVerticalTest {

    private static final double FOOT = 0.3048;
    private static final double PSF = 47.88025898;
    private static final double KSI = 6894757.293168361;
    private static final String JAMB = "N-201/mullion/1";

    private static Map<String, Object> returning(String width, boolean held) {
        Map<String, Object> tree = demo(2);
        Map<String, Object> said = new HashMap<>(Map.of("side", "LEFT", "tributaryWidth", width));
        if (held) {
            said.put("heldSideways", true);
        }
        element(tree, "bays", 0).put("cornerReturns", List.of(said));
        return tree;
    }

    private static Verdict verdict(ReviewResult result, String id, String check) {
        return item(result, id, check).verdict();
    }

    private static String text(ReviewResult result, String id, String code) {
        return result.findings().stream()
                .filter(finding -> finding.items().contains(id) && finding.code().equals(code))
                .findFirst()
                .orElseThrow()
                .text();
    }

    @Test
    void isNotJudgedByOneFaceWhereNobodySaidWhatItCarries() {
        Map<String, Object> unsaid = demo(2);
        element(unsaid, "bays", 0).remove("cornerReturns");
        ReviewResult result = review(unsaid);
        assertThat(verdict(result, JAMB, "framing")).isEqualTo(Verdict.UNDETERMINED);
        assertThat(codes(result, JAMB)).containsExactly("CORNER_RETURN_NOT_GIVEN");
        assertThat(codes(result, "N-201/anchor/L2"))
                .containsExactly("CORNER_FORCE_NOT_IN_THE_NUMBERS");
        assertThat(verdict(result, "N-201/mullion/2", "framing")).isEqualTo(Verdict.SATISFIED);
        assertThat(verdict(review(demo(2)), JAMB, "framing")).isEqualTo(Verdict.SATISFIED);
    }

    @Test
    void isNotJudgedWhereNobodySaidWhatHoldsItSideways() {
        ReviewResult both = review(returning("2.5 ft", false));
        assertThat(verdict(both, JAMB, "framing")).isEqualTo(Verdict.UNDETERMINED);
        assertThat(codes(both, JAMB)).containsExactly("CORNER_VERTICAL_CARRIES_TWO_FACES");
        assertThat(text(both, JAMB, "CORNER_VERTICAL_CARRIES_TWO_FACES")).contains("heldSideways");
    }

    /**
     * By hand: 0.25 ft of wall round the corner, suction of zone 5 of the jamb's own effective area
     * (13.5 ft x 4.5 ft on both faces), 0.6 x 47.74 psf; w = 7.16 plf, M2 = w 13.5^2 / 8 = 163 lbf
     * ft, S2 1.8 in3: 1.088 ksi beside w L^2 / 8 / 4.6 in3 of 2.5 ft on its own face; 48.34 lbf on
     * each anchor.
     */
    @Test
    void carriesBothFacesAtOnceWhereItIsHeldSideways() {
        ReviewResult result = review(returning("0.25 ft", true));
        ReviewItem jamb = item(result, JAMB, "framing");
        assertThat(jamb.verdict()).isEqualTo(Verdict.SATISFIED);
        assertThat(codes(result, JAMB)).isEmpty();
        assertThat(jamb.findings())
                .extracting(finding -> finding.code())
                .contains("CORNER_VERTICAL_CARRIES_TWO_FACES");
        double pressure = 0.6 * jamb.wind().negative().si() / PSF;
        assertThat(pressure).isCloseTo(-0.6 * 47.7433, within(1e-3));
        double side = -pressure * 0.25 * 13.5 * 13.5 / 8 * 12 / 1.8 / 1000;
        double own = -pressure * 2.5 * 13.5 * 13.5 / 8 * 12 / 4.6 / 1000;
        FramingRequest request = (FramingRequest) jamb.inputs();
        assertThat(request.concurrentBendingStress() / KSI).isCloseTo(side, within(1e-4));
        assertThat(((FramingResult) jamb.result()).stressUtilization())
                .isCloseTo((side + own) / 15.2, within(1e-4));
        assertThat(text(result, "N-201/anchor/L2", "CORNER_FORCE_NOT_IN_THE_NUMBERS"))
                .contains("48.34 lbf", "weight of the wall round the corner");
        assertThat(verdict(result, "N-201/anchor/L2", "anchorage-movement"))
                .isEqualTo(Verdict.UNDETERMINED);
    }

    /** 2.5 ft bend V2's 2.3 in4 by 2.30 in, of 0.926 in: that governs. */
    @Test
    void failsWhereItBendsTooFarParallelToTheWall() {
        ReviewResult result = review(returning("2.5 ft", true));
        ReviewItem jamb = item(result, JAMB, "framing");
        assertThat(jamb.verdict()).isEqualTo(Verdict.EXCEEDED);
        double w = 0.6 * 47.7433 * 2.5 / 12;
        double deflection = 5 * w * Math.pow(162, 4) / (384 * 10.1e6 * 2.3);
        assertThat(((FramingResult) jamb.result()).maxDeflection().si() / 0.0254)
                .isCloseTo(deflection, within(1e-3));
        assertThat(jamb.utilization()).isCloseTo(deflection / (162 / 175.0), within(1e-3));
    }

    @Test
    void withoutPropertiesParallelToTheWallOrWithAnothersPressuresItIsOpen() {
        Map<String, Object> tree = returning("0.5 ft", true);
        element(tree, "sections", 1).remove("deadLoadSectionModulus");
        ReviewResult noModulus = review(tree);
        assertThat(verdict(noModulus, JAMB, "framing")).isEqualTo(Verdict.UNDETERMINED);
        assertThat(text(noModulus, JAMB, "CORNER_VERTICAL_CARRIES_TWO_FACES"))
                .contains("deadLoadSectionModulus");
        element(tree, "sections", 1).remove("deadLoadSecondMomentOfArea");
        ReviewResult nothing = review(tree);
        assertThat(verdict(nothing, JAMB, "framing")).isEqualTo(Verdict.UNDETERMINED);
        assertThat(text(nothing, JAMB, "CORNER_VERTICAL_CARRIES_TWO_FACES"))
                .contains("deadLoadSecondMomentOfArea");
        Map<String, Object> specified = returning("0.5 ft", true);
        specified.put(
                "specifiedPressures",
                Documents.tree(
                        """
                        {"source":"Sheet S-001","basis":"ALLOWABLE_STRESS","zoneWidth":"9 ft","pressures":[
                          {"zone":"4","elevation":"N","positive":"20 psf","negative":"-20 psf"},
                          {"zone":"5","elevation":"N","positive":"20 psf","negative":"-25 psf"}]}"""));
        ReviewResult other = review(specified);
        assertThat(verdict(other, JAMB, "framing")).isEqualTo(Verdict.UNDETERMINED);
        assertThat(text(other, JAMB, "CORNER_VERTICAL_CARRIES_TWO_FACES"))
                .contains("specified by elevation");
    }

    /**
     * An elevation laid out flat turns at 5 ft: half the wall there bends the vertical each way.
     */
    @Test
    void wallThatTurnsInsideAnElevationBendsItBothWays() {
        Map<String, Object> tree = demo(2);
        element(tree, "elevations", 0)
                .put("corners", List.of(Map.of("at", "5 ft", "kind", "OUTSIDE")));
        ReviewResult result = review(tree);
        ReviewItem vertical = item(result, "N-201/mullion/2", "framing");
        assertThat(vertical.verdict()).isEqualTo(Verdict.UNDETERMINED);
        assertThat(codes(result, "N-201/mullion/2"))
                .containsExactly("CORNER_VERTICAL_CARRIES_TWO_FACES");
        assertThat(((FramingRequest) vertical.inputs()).tributaryWidth())
                .isCloseTo(2.5 * FOOT, within(1e-9));
        Map<String, Object> between = demo(2);
        element(between, "elevations", 0)
                .put("corners", List.of(Map.of("at", "10 ft", "kind", "REENTRANT")));
        element(between, "bays", 1)
                .put(
                        "cornerReturns",
                        List.of(
                                Map.of(
                                        "side",
                                        "LEFT",
                                        "tributaryWidth",
                                        "0.25 ft",
                                        "heldSideways",
                                        true)));
        ReviewItem turned = item(review(between), "N-202/mullion/1", "framing");
        assertThat(turned.verdict()).isEqualTo(Verdict.SATISFIED);
        assertThat(((FramingRequest) turned.inputs()).concurrentBendingStress()).isPositive();
        assertThat(object(between, "site")).isNotEmpty();
    }

    /** 2.1 lb/ft on 5 ft: M = 6.5625 lbf ft on 1.1 in3; no glass stands on the head. */
    @Test
    void headBendsUnderItsOwnWeightAsWell() {
        FramingResult head =
                (FramingResult) item(review(demo(2)), "N-201/horizontal/4", "framing").result();
        assertThat(head.deadLoadBendingStress().si() / KSI)
                .isCloseTo(2.1 * 25 / 8 * 12 / 1.1 / 1000, within(1e-7));
        assertThat(head.stressUtilization())
                .isCloseTo(
                        (head.bendingStress().si() + head.deadLoadBendingStress().si())
                                / (15.2 * KSI),
                        within(1e-9));
        Map<String, Object> tree = demo(2);
        element(tree, "sections", 2).remove("massPerLength");
        ReviewResult unknown = review(tree);
        assertThat(verdict(unknown, "N-201/horizontal/4", "framing"))
                .isEqualTo(Verdict.UNDETERMINED);
        assertThat(codes(unknown, "N-201/horizontal/4")).contains("OWN_WEIGHT_LEFT_OUT");
    }
}
