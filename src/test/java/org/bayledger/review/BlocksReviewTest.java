package org.bayledger.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.bayledger.review.Documents.demo;
import static org.bayledger.review.Documents.element;
import static org.bayledger.review.Documents.item;
import static org.bayledger.review.Documents.object;
import static org.bayledger.review.Documents.review;

import java.util.List;
import java.util.Map;
import org.bayledger.blocks.BlockPoint;
import org.bayledger.blocks.SettingBlocksRequest;
import org.bayledger.blocks.SettingBlocksResult;
import org.bayledger.check.Fault;
import org.bayledger.check.FaultsException;
import org.bayledger.check.Finding;
import org.bayledger.framing.FramingRequest;
import org.junit.jupiter.api.Test;

/** Glass of its real size, what its blocks are told of the horizontal, and the notes. */
class BlocksReviewTest {

    private static final double INCH = 0.0254;

    private static Map<String, Object> withFaces() {
        Map<String, Object> tree = demo(1);
        Map<String, Object> horizontal = object(element(tree, "bays", 1), "horizontal");
        horizontal.put("faceWidth", "2.5 in");
        horizontal.put("verticalFaceWidth", "2.5 in");
        return tree;
    }

    /**
     * A module of 120 in x 96 in with faces of 2.5 in and a bite of 0.5 in: glass 118.5 x 94.5 in
     * on a span of 117.5 in. Eighth points 14.8125 in from the corner, 14.3125 in from the support.
     */
    @Test
    void takesTheGlassAsLargeAsItIs() {
        ReviewResult result = review(withFaces());
        ReviewItem blocks = item(result, "N-202/lite/2-2", "setting-blocks");
        SettingBlocksRequest request = (SettingBlocksRequest) blocks.inputs();
        assertThat(request.width() / INCH).isCloseTo(118.5, within(1e-9));
        assertThat(request.height() / INCH).isCloseTo(94.5, within(1e-9));
        assertThat(request.support().span() / INCH).isCloseTo(117.5, within(1e-9));
        assertThat(blocks.findings()).extracting(Finding::code).isEmpty();
        SettingBlocksResult found = (SettingBlocksResult) blocks.result();
        assertThat(found.recommended().point()).isEqualTo(BlockPoint.EIGHTH);
        assertThat(found.recommended().distanceFromCorner().si() / INCH)
                .isCloseTo(14.8125, within(1e-9));
        FramingRequest under =
                (FramingRequest) item(result, "N-202/horizontal/2", "framing-dead-load").inputs();
        assertThat(under.length() / INCH).isCloseTo(117.5, within(1e-9));
        assertThat(under.pointLoads().get(0).at() / INCH).isCloseTo(14.3125, within(1e-9));
        FramingRequest wind =
                (FramingRequest) item(result, "N-202/horizontal/2", "framing").inputs();
        assertThat(wind.length() / INCH).isCloseTo(120, within(1e-9));
        assertThat(wind.deadLoad().pointLoads().get(0).at() / INCH)
                .isCloseTo(14.3125 + 1.25, within(1e-9));
        assertThat(item(review(demo(1)), "N-202/lite/2-2", "setting-blocks").findings())
                .extracting(Finding::code)
                .containsExactly("GLASS_TAKEN_AS_MODULE");
    }

    @Test
    void handsOnWhatTheHorizontalAndThePocketSay() {
        Map<String, Object> tree = withFaces();
        Map<String, Object> bay = element(tree, "bays", 1);
        object(bay, "horizontal")
                .putAll(
                        Map.of(
                                "torsionConstant", "4 in4",
                                "eccentricity", "1.5 in",
                                "endReactionAllowable", "600 lbf"));
        object(bay, "glazingPocket")
                .putAll(
                        Map.of(
                                "tolerance", "0.0625 in",
                                "thermalGrowth", "0.03 in",
                                "blockPressureAllowable", "100 psi"));
        SettingBlocksResult result =
                (SettingBlocksResult)
                        item(review(tree), "N-202/lite/2-2", "setting-blocks").result();
        assertThat(result.candidates().get(0).rotation()).isNotNull();
        assertThat(result.outcome().findings())
                .extracting(Finding::code)
                .doesNotContain(
                        "ROTATION_NOT_CHECKED",
                        "END_CONNECTION_NOT_CHECKED",
                        "BLOCK_PRESSURE_NOT_CHECKED",
                        "CLEARANCE_AS_DRAWN");
    }

    /** A place that was chosen for one lite is judged there, and noted. */
    @Test
    void aLiteKeepsItsChosenPlace() {
        Map<String, Object> tree = demo(1);
        element(tree, "bays", 1)
                .put(
                        "lites",
                        List.of(
                                Documents.tree(
                                        "{\"column\":2,\"row\":2,\"blockDistance\":\"17 in\"}")));
        SettingBlocksResult result =
                (SettingBlocksResult)
                        item(review(tree), "N-202/lite/2-2", "setting-blocks").result();
        assertThat(result.candidates().get(3).point()).isEqualTo(BlockPoint.CHOSEN);
    }

    /** Lites of several bays that share a note are told once. */
    @Test
    void notesMergeAcrossBays() {
        ReviewResult result = review(demo(1));
        assertThat(result.notes()).extracting(ReviewResult.Note::text).doesNotHaveDuplicates();
        assertThat(result.notes())
                .anySatisfy(
                        note ->
                                assertThat(
                                                note.items().stream()
                                                        .map(id -> id.substring(0, id.indexOf('/')))
                                                        .distinct())
                                        .hasSizeGreaterThan(1));
    }

    @Test
    void facesLeaveAnOpeningAndCoverTheBites() {
        for (String face : List.of("36 in", "0.75 in")) {
            Map<String, Object> tree = demo(1);
            object(element(tree, "bays", 1), "horizontal").put("faceWidth", face);
            assertThatThrownBy(() -> Documents.document(tree))
                    .isInstanceOfSatisfying(
                            FaultsException.class,
                            e ->
                                    assertThat(e.faults())
                                            .extracting(Fault::pointer)
                                            .containsExactly("/bays/1/horizontal/faceWidth"));
        }
    }
}
