package org.bayledger.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.bayledger.review.Documents.codes;
import static org.bayledger.review.Documents.demo;
import static org.bayledger.review.Documents.element;
import static org.bayledger.review.Documents.item;
import static org.bayledger.review.Documents.object;
import static org.bayledger.review.Documents.review;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.bayledger.blocks.SettingBlocksRequest;
import org.bayledger.check.Fault;
import org.bayledger.check.FaultsException;
import org.bayledger.check.Verdict;
import org.bayledger.framing.FramingRequest;
import org.bayledger.framing.RetentionRequest;
import org.bayledger.seals.Edge;
import org.bayledger.seals.SealsRequest;
import org.junit.jupiter.api.Test;

/** Edges, steps and joints between bays: no member may vanish there or carry too little. */
class ReviewEdgesTest {

    private static final double FOOT = 0.3048;

    /** Bay N-701 on top of N-201, 13.5 ft higher, with what it says of its sill and columns. */
    static Map<String, Object> stacked(String sill, List<String> columns) {
        Map<String, Object> tree = demo(2);
        Map<String, Object> top = element(tree, "bays", 3);
        top.put("sill", "27.5 ft");
        top.put("columns", columns);
        top.put("sillSupport", sill);
        element(top, "anchors", 0).put("elevation", "27.75 ft");
        element(top, "anchors", 1).put("elevation", "41 ft");
        object(top, "mullion").remove("supports");
        return tree;
    }

    private static Set<String> ids(ReviewResult result) {
        Set<String> ids = new HashSet<>();
        result.bays().forEach(bay -> bay.items().forEach(item -> ids.add(item.id())));
        return ids;
    }

    /** The upper 2 ft of the left bay have no neighbour: that jamb is still there. */
    @Test
    void jambBesideALowerBayIsCheckedAndCarriesBoth() {
        Map<String, Object> tree = demo(2);
        element(tree, "bays", 1).put("rows", List.of("3 ft", "8 ft", "0.5 ft"));
        ReviewResult result = review(tree);
        FramingRequest jamb = (FramingRequest) item(result, "N-201/mullion/3", "framing").inputs();
        assertThat(jamb.tributaryWidth()).isCloseTo(5 * FOOT, within(1e-9));
        assertThat(jamb.length()).isCloseTo(13.5 * FOOT, within(1e-9));
        assertThat(ids(result)).contains("N-202/mullion/1");
        // the short rows of the neighbour end where no row of the bay does
        assertThat(jamb.glassEdges())
                .anySatisfy(edge -> assertThat(edge.to()).isCloseTo(11.5 * FOOT, within(1e-9)));
        SealsRequest seals = (SealsRequest) item(result, "N-201/seals", "internal-seals").inputs();
        assertThat(seals.details().continuousEdges()).doesNotContain(Edge.RIGHT);
        assertThat(ids(review(demo(2)))).doesNotContain("N-201/mullion/3");
    }

    /** A neighbour's row that begins where the bay's own does and is taller is an edge as well. */
    @Test
    void edgesOfTheNeighboursTallerRowsAreChecked() {
        Map<String, Object> tree = demo(2);
        element(tree, "bays", 0).put("rows", List.of("11 ft", "2.5 ft"));
        FramingRequest shared =
                (FramingRequest) item(review(tree), "N-202/mullion/1", "framing").inputs();
        assertThat(shared.glassEdges())
                .anySatisfy(
                        edge -> {
                            assertThat(edge.from()).isZero();
                            assertThat(edge.to()).isCloseTo(11 * FOOT, within(1e-9));
                        });
    }

    @Test
    void headBelongsToTheBayAboveOnlyWhereThatLooksAtAllOfIt() {
        List<String> same = List.of("5 ft", "5 ft");
        assertThat(ids(review(stacked("MEMBER", same))))
                .contains("N-701/horizontal/1")
                .doesNotContain("N-201/horizontal/4");
        assertThat(ids(review(stacked("SHIMMED_SILL", same))))
                .contains("N-201/horizontal/4")
                .doesNotContain("N-701/horizontal/1");
        assertThat(ids(review(stacked("MEMBER", List.of("5 ft"))))).contains("N-201/horizontal/4");
        ReviewResult other = review(stacked("MEMBER", List.of("3 ft", "7 ft")));
        ReviewItem head = item(other, "N-201/horizontal/4", "framing");
        assertThat(head.verdict()).isEqualTo(Verdict.UNDETERMINED);
        assertThat(codes(other, "N-201/horizontal/4")).contains("VERTICALS_ABOVE_STAND_ELSEWHERE");
        // half of 2.5 ft below and of 3 ft above
        assertThat(((FramingRequest) head.inputs()).tributaryWidth())
                .isCloseTo(2.75 * FOOT, within(1e-9));
    }

    /** A sill that stands on the slab has its own perimeter joint, whatever stands below. */
    @Test
    void shimmedSillMeetsTheBuilding() {
        ReviewResult result = review(stacked("SHIMMED_SILL", List.of("5 ft", "5 ft")));
        SealsRequest above = (SealsRequest) item(result, "N-701/seals", "internal-seals").inputs();
        SealsRequest below = (SealsRequest) item(result, "N-201/seals", "internal-seals").inputs();
        assertThat(above.details().continuousEdges()).doesNotContain(Edge.BOTTOM);
        assertThat(below.details().continuousEdges()).doesNotContain(Edge.TOP);
    }

    private static List<Double> stackSeals(Map<String, Object> tree, String bay) {
        SealsRequest request =
                (SealsRequest) item(review(tree), bay + "/seals", "internal-seals").inputs();
        return request.details().stackJoints();
    }

    private static Map<String, Object> withStackJoints(
            String lowerJoint, String upperJoint, String upperColumn) {
        Map<String, Object> tree = stacked("MEMBER", List.of(upperColumn, upperColumn));
        element(tree, "bays", 0).put("stackJoints", joints(lowerJoint));
        element(tree, "bays", 3).put("stackJoints", joints(upperJoint));
        return tree;
    }

    private static List<Object> joints(String level) {
        return level.isEmpty() ? List.of() : List.of(Map.of("elevation", level));
    }

    /** Whoever lists the joint between two bays, its seal counts once, with the upper one. */
    @Test
    void stackJointBetweenBaysCountsOnce() {
        for (String[] listed :
                List.of(
                        new String[] {"27.5 ft", "", "0"},
                        new String[] {"", "27.5 ft", "0"},
                        new String[] {"27.5 ft", "27.5 ft", "0"},
                        new String[] {"27.75 ft", "", "0.25"},
                        new String[] {"27.75 ft", "27.75 ft", "0.25"})) {
            Map<String, Object> tree = withStackJoints(listed[0], listed[1], "5 ft");
            assertThat(stackSeals(tree, "N-201")).isEmpty();
            assertThat(stackSeals(tree, "N-701")).hasSize(1);
            assertThat(stackSeals(tree, "N-701").get(0))
                    .isCloseTo(Double.parseDouble(listed[2]) * FOOT, within(1e-9));
            assertThat(item(review(tree), "N-201/seals", "internal-seals").findings())
                    .extracting("code")
                    .doesNotContain("STACK_JOINT_NOT_IN_COUNT");
        }
        // the bay above says nothing of its joints, or of its seals: nobody counts it
        Map<String, Object> silent = withStackJoints("27.5 ft", "", "5 ft");
        element(silent, "bays", 3).remove("stackJoints");
        Map<String, Object> noSeals = withStackJoints("27.5 ft", "", "5 ft");
        element(noSeals, "bays", 3).remove("seals");
        // it is wider than the bay that lists a joint within its rows
        Map<String, Object> wider = withStackJoints("27.75 ft", "", "10 ft");
        for (Map<String, Object> tree : List.of(silent, noSeals, wider)) {
            assertThat(item(review(tree), "N-201/seals", "internal-seals").findings())
                    .extracting("code")
                    .contains("STACK_JOINT_NOT_IN_COUNT");
        }
    }

    /**
     * The bay's stack joint parts its units, its hinges splice nothing, and the window has none.
     */
    @Test
    void systemOfTheSealsIsHandedOn() {
        Map<String, Object> tree = withStackJoints("25 ft", "", "5 ft");
        Map<String, Object> seals = object(element(tree, "bays", 0), "seals");
        for (String stick :
                List.of("pressurePlateLength", "perimeterFastenerSpacing", "jointCovers")) {
            seals.remove(stick);
        }
        seals.put("system", "UNITIZED");
        seals.put("unitized", Map.of("columnsPerUnit", List.of(new java.math.BigDecimal(2))));
        SealsRequest units =
                (SealsRequest) item(review(tree), "N-201/seals", "internal-seals").inputs();
        assertThat(units.details().stackJoints().get(0)).isCloseTo(11 * FOOT, within(1e-9));
        assertThat(units.details().splices()).isNull();
        seals.remove("unitized");
        seals.put("system", "WINDOW_WALL");
        SealsRequest windows =
                (SealsRequest) item(review(tree), "N-201/seals", "internal-seals").inputs();
        assertThat(windows.details().stackJoints()).isNull();
        assertThat(item(review(tree), "N-201/seals", "internal-seals").findings())
                .extracting("code")
                .doesNotContain("STACK_JOINT_NOT_IN_COUNT");
    }

    /** The sill's clearance is that of the tightest lite under it. */
    @Test
    void tightestPocketBelowCounts() {
        Map<String, Object> tree = stacked("MEMBER", List.of("10 ft", "10 ft"));
        object(element(tree, "bays", 1), "glazingPocket").put("edgeClearance", "0.25 in");
        element(tree, "bays", 3).put("columns", List.of("20 ft"));
        ReviewItem blocks = item(review(tree), "N-701/lite/1-1", "setting-blocks");
        assertThat(((SettingBlocksRequest) blocks.inputs()).below().edgeClearance())
                .isCloseTo(0.25 * 0.0254, within(1e-12));
    }

    /** A jamb carries half of its one lite, and the plate levers about its screws. */
    @Test
    void screwsOfJambsCountTwice() {
        Map<String, Object> tree = demo(2);
        element(tree, "bays", 4).put("columns", List.of("10 ft"));
        ReviewItem retention = item(review(tree), "E-101/retention", "glass-retention");
        assertThat(((RetentionRequest) retention.inputs()).tributaryWidth())
                .isCloseTo(10 * FOOT, within(1e-9));
    }

    /**
     * The end zone begins at 81 ft. Of a bay from 73 ft to 83 ft the left jamb lies outside it, the
     * right vertical belongs to the next bay; the horizontals reach in and carry 2 x half of 9 ft.
     */
    @Test
    void screwsOfHorizontalsAreChecked() {
        Map<String, Object> tree = demo(2);
        Map<String, Object> bay = element(tree, "bays", 4);
        bay.put("offset", "73 ft");
        bay.put("columns", List.of("10 ft"));
        Map<String, Object> next = new HashMap<>(bay);
        next.put("id", "E-102");
        next.put("offset", "83 ft");
        next.put("columns", List.of("7 ft"));
        bays(tree).add(next);
        ReviewItem retention = item(review(tree), "E-101/retention", "glass-retention");
        assertThat(retention.wind().governingZone()).isEqualTo("5");
        assertThat(((RetentionRequest) retention.inputs()).tributaryWidth())
                .isCloseTo(9 * FOOT, within(1e-9));
    }

    @SuppressWarnings("unchecked")
    private static List<Object> bays(Map<String, Object> tree) {
        List<Object> bays = new ArrayList<>((List<Object>) tree.get("bays"));
        tree.put("bays", bays);
        return bays;
    }

    /** A sill member with nothing of the document under it: what stands there has to be said. */
    @Test
    void whatStandsBelowTheSillIsTakenFromTheBay() {
        Map<String, Object> tree = demo(2);
        Map<String, Object> bay = element(tree, "bays", 4);
        bay.put("sill", "14 ft");
        bay.put("sillSupport", "MEMBER");
        bay.put("horizontal", Map.of("section", "H2"));
        assertThat(codes(review(tree), "E-101/lite/1-1")).contains("BELOW_NOT_GIVEN");
        bay.put("belowSill", Map.of("kind", "NONE"));
        ReviewResult result = review(tree);
        ReviewItem nothing = item(result, "E-101/lite/1-1", "setting-blocks");
        assertThat(nothing.verdict()).isEqualTo(Verdict.SATISFIED);
        bay.put("belowSill", Map.of("kind", "OPERATING_SASH", "edgeClearance", "0.0625 in"));
        assertThat(item(review(tree), "E-101/lite/1-1", "setting-blocks").verdict())
                .isEqualTo(Verdict.EXCEEDED);
        bay.put("sillSupport", "SHIMMED_SILL");
        assertThatThrownBy(() -> review(tree))
                .isInstanceOfSatisfying(
                        FaultsException.class,
                        e ->
                                assertThat(e.faults())
                                        .extracting(Fault::pointer)
                                        .containsExactly("/bays/4/belowSill"));
    }

    /** Where a bay of the document stands below, that counts and not what was said of it. */
    @Test
    void bayBelowCountsOverWhatWasSaidOfTheSill() {
        Map<String, Object> tree = stacked("MEMBER", List.of("10 ft"));
        element(tree, "bays", 3).put("belowSill", Map.of("kind", "NONE"));
        ReviewItem blocks = item(review(tree), "N-701/lite/1-1", "setting-blocks");
        assertThat(((SettingBlocksRequest) blocks.inputs()).below().edgeClearance())
                .isCloseTo(0.375 * 0.0254, within(1e-12));
    }

    @Test
    void deadLoadAnchorWhoseWeightIsNotKnownIsNotSatisfied() {
        Map<String, Object> tree = demo(2);
        element(tree, "sections", 1).remove("massPerLength");
        element(element(tree, "bays", 0), "anchors", 0).remove("allowableDeadLoadForce");
        ReviewResult result = review(tree);
        ReviewItem anchor = item(result, "N-201/anchor/L2", "anchorage-movement");
        assertThat(anchor.verdict()).isEqualTo(Verdict.UNDETERMINED);
        assertThat(anchor.findings())
                .singleElement()
                .satisfies(
                        finding -> {
                            assertThat(finding.code()).isEqualTo("ANCHOR_NOT_CHECKED_FOR_WEIGHT");
                            assertThat(finding.pointer())
                                    .isEqualTo("/bays/0/anchors/0/allowableDeadLoadForce");
                        });
    }

    @Test
    void supportThatNoAnchorHoldsIsSaid() {
        Map<String, Object> tree = demo(2);
        Map<String, Object> bay = element(tree, "bays", 0);
        bay.put("anchors", List.of(element(bay, "anchors", 0)));
        bay.put("stackJoints", List.of());
        ReviewResult result = review(tree);
        assertThat(item(result, "N-201/mullion/2", "framing").verdict())
                .isEqualTo(Verdict.UNDETERMINED);
        assertThat(codes(result, "N-201/mullion/2")).containsExactly("SUPPORT_WITHOUT_ANCHOR");
    }

    @Test
    void driftIsOfTheLargestLite() {
        Map<String, Object> tree = demo(2);
        object(object(element(tree, "bays", 1), "movement"), "drift").put("glassWidth", "5 ft");
        ReviewResult result = review(tree);
        assertThat(item(result, "N-202/anchorage", "anchorage-movement").verdict())
                .isEqualTo(Verdict.UNDETERMINED);
        assertThat(codes(result, "N-202/anchorage")).contains("DRIFT_OF_A_LARGER_LITE_NOT_CHECKED");
    }

    /** 3050 mm for 10 ft: the bays no longer share a vertical, and nothing else would say so. */
    @Test
    void baysAHairApartAreSaid() {
        Map<String, Object> tree = demo(2);
        Map<String, Object> middle = element(tree, "bays", 1);
        middle.put("offset", "3050 mm");
        middle.put("columns", List.of("5 ft", "9.9 ft", "5 ft"));
        ReviewResult result = review(tree);
        assertThat(codes(result, "")).contains("BAYS_ALMOST_TOUCH");
        assertThat(result.verdict()).isEqualTo(Verdict.UNDETERMINED);
        assertThat(codes(review(demo(2)), "")).doesNotContain("BAYS_ALMOST_TOUCH");
    }

    @Test
    void verticalBesideNothingSaysThatItCarriesOneSide() {
        ReviewResult result = review(demo(2));
        assertThat(item(result, "N-203/mullion/3", "framing").findings())
                .extracting("code")
                .contains("TAKEN_AS_EDGE_OF_WALL");
        assertThat(item(result, "N-201/mullion/1", "framing").findings())
                .extracting("code")
                .doesNotContain("TAKEN_AS_EDGE_OF_WALL");
    }

    /** 27.5 ft - 14 ft is 13.5 ft but for rounding: L/175 still holds. */
    @Test
    void spanOfThirteenAndAHalfFeetKeepsItsRuleDespiteRounding() {
        assertThat(item(review(demo(2)), "N-201/mullion/2", "framing").result())
                .extracting("deflectionLimit.si")
                .satisfies(
                        limit ->
                                assertThat((Double) limit)
                                        .isCloseTo(13.5 * FOOT / 175, within(1e-9)));
    }
}
