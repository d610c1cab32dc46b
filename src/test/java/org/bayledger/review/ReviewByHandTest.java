package org.bayledger.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.bayledger.review.Documents.demo;
import static org.bayledger.review.Documents.element;
import static org.bayledger.review.Documents.item;
import static org.bayledger.review.Documents.object;
import static org.bayledger.review.Documents.review;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.assertj.core.data.Offset;
import org.bayledger.anchorage.Anchor;
import org.bayledger.blocks.BlockCandidate;
import org.bayledger.blocks.SettingBlocksRequest;
import org.bayledger.blocks.SettingBlocksResult;
import org.bayledger.check.Verdict;
import org.bayledger.framing.FramingResult;
import org.bayledger.framing.RetentionResult;
import org.bayledger.seals.JointType;
import org.bayledger.seals.SealJoint;
import org.bayledger.seals.SealsResult;
import org.junit.jupiter.api.Test;

/**
 * Items of the demo scenario redone from its document in US units: pressures after ASCE/SEI 7-16,
 * Figure 30.5-1 (from memory), members by closed forms of statics and beam theory.
 */
class ReviewByHandTest {

    private static final double INCH = 0.0254;
    private static final double FOOT = 0.3048;
    private static final double LBF = 4.4482216152605;
    private static final double PSI = 6894.757293168361;
    private static final double E = 10.1e6;

    /** qh: 0.00256 x 2.01 (98/1200)^(2/7) x 0.85 x exp(-0.0000362 x 250) x 115^2, psf. */
    private static final double QH =
            0.00256
                    * 2.01
                    * Math.pow(98.0 / 1200, 2.0 / 7)
                    * 0.85
                    * Math.exp(-0.0000362 * 250)
                    * 115
                    * 115;

    /** 6 mm + 6 mm of glass at 2500 kg/m3, lbf/ft2. */
    private static final double GLASS = 2500 * 0.012 * 9.80665 * FOOT * FOOT / LBF;

    private final ReviewResult result = review(demo(1));

    /** Suction at allowable-stress level, psf; zone 4 -0.9 to -0.7, zone 5 -1.8 to -1.0. */
    private static double suction(int zone, double area) {
        double log = Math.log10(Math.max(area, 20) / 20) / Math.log10(500.0 / 20);
        double coefficient = zone == 4 ? 0.9 - 0.2 * log : 1.8 - 0.8 * log;
        return 0.6 * QH * (coefficient + 0.18);
    }

    private static Offset<Double> percent(double value) {
        return within(value * 1e-5);
    }

    /** Verticals: width, zone, second moment of area and section modulus as the document has. */
    @Test
    void verticals() {
        vertical("N-701/mullion/2", 5, 5, 9.6, 3.2);
        vertical("N-202/mullion/1", 5, 5, 13.8, 4.6);
        vertical("N-202/mullion/2", 7.5, 4, 13.8, 4.6);
        vertical("N-203/mullion/3", 2.5, 4, 9.6, 3.2);
        vertical("E-101/mullion/2", 6, 4, 13.8, 4.6);
    }

    private void vertical(String id, double width, int zone, double inertia, double modulus) {
        double load = suction(zone, 13.5 * Math.max(width, 4.5)) * width; // lbf/ft
        double deflection = 5 * load / 12 * Math.pow(162, 4) / (384 * E * inertia);
        double stress = load * 13.5 * 13.5 / 8 * 12 / modulus;
        ReviewItem vertical = item(result, id, "framing");
        FramingResult framing = (FramingResult) vertical.result();
        assertThat(framing.maxDeflection().si() / INCH).as(id).isCloseTo(deflection, percent(1));
        assertThat(framing.bendingStress().si() / PSI).as(id).isCloseTo(stress, percent(stress));
        assertThat(framing.reactions().get(0).underNegative().si() / LBF)
                .as(id)
                .isCloseTo(load * 13.5 / 2, percent(load * 7));
        assertThat(vertical.utilization())
                .as(id)
                .isCloseTo(Math.max(deflection / (162.0 / 175), stress / 15200), percent(1));
    }

    /** Wind and weight on the horizontal under the 10 ft x 8 ft lite, its blocks at 15 in. */
    @Test
    void horizontalUnderTheLargeLite() {
        double wind = suction(4, 55) * 5.5;
        double block = GLASS * 80 / 2;
        double own = 3.6 / 12;
        double bends =
                block * 15 * (3 * 120 * 120 - 4 * 15 * 15) / (24 * E * 6.5)
                        + 5 * own * Math.pow(120, 4) / (384 * E * 6.5);
        double stress = wind * 100 / 8 * 12 / 3.2;
        double other = (block * 15 + own * 120 * 120 / 8) / 2.6;
        ReviewItem under = item(result, "N-202/horizontal/2", "framing-dead-load");
        assertThat(under.utilization()).isCloseTo(bends / 0.125, percent(1));
        assertThat(item(result, "N-202/horizontal/2", "framing").utilization())
                .isCloseTo((stress + other) / 15200, percent(1));
        SettingBlocksResult blocks =
                (SettingBlocksResult) item(result, "N-202/lite/2-2", "setting-blocks").result();
        assertThat(blocks.blockLength().si() / INCH).isCloseTo(8, within(1e-9));
        BlockCandidate eighth = blocks.candidates().get(1);
        assertThat(eighth.memberDeflection().si() / INCH).isCloseTo(bends, percent(1));
        assertThat(eighth.clearanceLeft().si() / INCH).isCloseTo(0.375 - bends, percent(1));
        double sinks =
                block * 15 * 15 * (3 * 120 - 4 * 15) / (6 * E * 6.5)
                        + own * 15 * (Math.pow(120, 3) - 2 * 120 * 225 + 3375) / (24 * E * 6.5);
        SettingBlocksRequest above =
                (SettingBlocksRequest) item(result, "N-202/lite/2-3", "setting-blocks").inputs();
        assertThat(above.below().memberDeflection() / INCH).isCloseTo(sinks, percent(1));
    }

    /** Glass of 5 ft and 10 ft columns, half of each; four horizontals; the vertical itself. */
    @Test
    void anchorsCarryWindAndWeightOfTheHeaviestVertical() {
        double weight = GLASS * 13.5 * 7.5 + 4.6 * 13.5 + 4 * 3.6 * 7.5;
        Anchor anchor = (Anchor) item(result, "N-202/anchor/L2", "anchorage-movement").inputs();
        assertThat(anchor.deadLoadReaction() / LBF).isCloseTo(weight, percent(weight));
        double wind = suction(5, 67.5) * 5 * 13.5 / 2;
        assertThat(anchor.windReactionNegative() / LBF).isCloseTo(wind, percent(wind));
        assertThat(item(result, "N-202/anchor/L2", "anchorage-movement").utilization())
                .isCloseTo(weight / 1100, percent(1));
    }

    /**
     * A plate levers about its screws under the side that is loaded more: between lites of 5 ft and
     * 10 ft it counts 2 x 5 ft, at a jamb 2 x half of the one lite.
     */
    @Test
    void screwsOfThePressurePlate() {
        screws("N-201", 5, 5, 5);
        screws("N-202", 4, 7.5, 10);
        screws("E-101", 4, 6, 6);
    }

    private void screws(String bay, int zone, double wall, double width) {
        double tension = suction(zone, wall * 0.75) * width * 0.75;
        RetentionResult found =
                (RetentionResult) item(result, bay + "/retention", "glass-retention").result();
        assertThat(found.fastenerTension().si() / LBF).as(bay).isCloseTo(tension, percent(tension));
    }

    /**
     * Three columns, four horizontals: 2 x 3 x 4 ends with two fasteners each; 4 + 7 + 4 fasteners
     * at 18 in along head and sill; three verticals with one cut of a 10 ft plate each.
     */
    @Test
    void sealsOfTheMiddleBay() {
        SealsResult seals = (SealsResult) item(result, "N-202/seals", "internal-seals").result();
        Map<JointType, Integer> counts =
                seals.joints().stream()
                        .collect(Collectors.toMap(SealJoint::type, SealJoint::count));
        assertThat(counts)
                .containsEntry(JointType.HORIZONTAL_TO_VERTICAL, 24)
                .containsEntry(JointType.JOINT_PLUG, 24)
                .containsEntry(JointType.FASTENER_HEAD, 24 * 2 + 2 * 15)
                .containsEntry(JointType.PRESSURE_PLATE_BUTT, 24 + 3)
                .containsEntry(JointType.PERIMETER_JAMB, 0)
                .containsEntry(JointType.PERIMETER_HEAD, 1);
    }

    /** The joint at 27.75 ft lies above the rows of the bay: who seals it must be said. */
    @Test
    void jointBeyondTheRowsIsSaidNotToBeCounted() {
        assertThat(item(result, "N-202/seals", "internal-seals").findings())
                .extracting("code", "pointer")
                .contains(
                        org.assertj.core.groups.Tuple.tuple(
                                "STACK_JOINT_NOT_IN_COUNT", "/bays/1/stackJoints/0"));
        assertThat(item(result, "N-701/seals", "internal-seals").findings())
                .extracting("code")
                .doesNotContain("STACK_JOINT_NOT_IN_COUNT");
    }

    /** No wind called out: there is no demand, and nought is not one. */
    @Test
    void withoutWindThereIsNoUtilization() {
        Map<String, Object> still = demo(2);
        still.remove("site");
        element(still, "bays", 0).put("retention", object(element(still, "bays", 1), "retention"));
        ReviewResult calm = review(still);
        for (String[] of :
                List.of(
                        new String[] {"N-201/mullion/2", "framing"},
                        new String[] {"N-201/retention", "glass-retention"})) {
            assertThat(item(calm, of[0], of[1]).verdict()).isEqualTo(Verdict.UNDETERMINED);
            assertThat(item(calm, of[0], of[1]).utilization()).isNull();
        }
    }
}
