package org.bayledger.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.assertj.core.data.Offset;
import org.bayledger.blocks.BlockPlace;
import org.bayledger.blocks.SettingBlocksResult;
import org.bayledger.quantity.UnitSystem;
import org.bayledger.review.ReviewItem;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class SettingBlocksDrawingTest {

    private static final double FOOT = 0.3048;
    private static final Offset<Double> ROUNDING = Offset.offset(0.02);

    private static Drawn drawn(Map<String, Object> document) {
        return Bays.drawn(document, DrawingKind.SETTING_BLOCKS, UnitSystem.US);
    }

    /** Blocks on the wall, those of the legend aside. */
    private static List<Element> blocks(Drawn drawn, String fill) {
        Element frame = drawn.frame();
        double right = Drawn.number(frame, "x") + Drawn.number(frame, "width");
        return drawn.filled(fill).stream().filter(box -> Drawn.number(box, "x") < right).toList();
    }

    /** Center and length of every block against what the review found for its lite. */
    @Test
    void putsBlocksToScaleWhereTheReviewWantsThem() {
        Map<String, Object> document = Bays.uneven();
        Drawn drawn = drawn(document);
        Element frame = drawn.frame();
        double left = Drawn.number(frame, "x");
        double scale = Drawn.number(frame, "width") / (20 * FOOT);
        double foot = Drawn.number(frame, "y") + Drawn.number(frame, "height");
        List<Double> columns = Bays.lines(List.of(4.0, 10.0, 6.0));
        List<Double> rows = Bays.lines(List.of(3.0, 8.0, 2.5));
        List<Element> blocks = blocks(drawn, "black");
        assertThat(blocks).hasSize(18);
        Map<String, ReviewItem> reviewed = Bays.reviewed(document, "setting-blocks");
        int n = 0;
        for (int row = 1; row <= 3; row++) {
            for (int column = 1; column <= 3; column++) {
                SettingBlocksResult result =
                        (SettingBlocksResult)
                                Objects.requireNonNull(
                                        reviewed.get("lite/" + column + "-" + row).result());
                BlockPlace place = Objects.requireNonNull(result.recommended());
                double from = place.distanceFromCorner().si();
                double start = columns.get(column - 1) * FOOT;
                double end = columns.get(column) * FOOT;
                for (double center : new double[] {start + from, end - from}) {
                    Element block = blocks.get(n++);
                    double width = Drawn.number(block, "width");
                    assertThat(Drawn.number(block, "x") + width / 2)
                            .isCloseTo(left + center * scale, ROUNDING);
                    assertThat(width).isCloseTo(result.blockCutLength().si() * scale, ROUNDING);
                    assertThat(Drawn.number(block, "y") + Drawn.number(block, "height"))
                            .isCloseTo(foot - rows.get(row - 1) * FOOT * scale, ROUNDING);
                }
            }
        }
    }

    /** The middle lite's blocks leave the quarter points: 10 ft / 8 = 1'-3" from the corner. */
    @Test
    void marksBlocksThatLeaveTheQuarterPoints() {
        Drawn drawn = drawn(Bays.uneven());
        assertThat(drawn.texts()).contains("Blocks E *1", "*1", "eighth points", "1'-3\"", "8\"");
        assertThat(drawn.said())
                .contains("*1 Set two setting blocks, each 8\" long")
                .contains("(lites 2-2)")
                .contains("Quarter point, which the blocks of this lite leave");
        Element frame = drawn.frame();
        double scale = Drawn.number(frame, "width") / 20;
        List<Double> triangles =
                drawn.elements("polyline").stream()
                        .filter(line -> line.getAttribute("fill").equals("white"))
                        .map(line -> line.getAttribute("points").split(",", -1)[0])
                        .map(Double::parseDouble)
                        .map(x -> (x - Drawn.number(frame, "x")) / scale)
                        .filter(feet -> feet < 20)
                        .toList();
        assertThat(triangles).hasSize(2);
        assertThat(triangles.get(0)).isCloseTo(4 + 2.5, Offset.offset(1e-3));
        assertThat(triangles.get(1)).isCloseTo(14 - 2.5, Offset.offset(1e-3));
        Drawn plain = drawn(Bays.tall());
        assertThat(plain.said())
                .contains("None: no blocks of this bay leave the quarter points.")
                .doesNotContain("*1")
                .doesNotContain("of this lite leave");
    }

    /** Quarter points of 4, 10 and 6 ft, and the schedule's rows for them. */
    @Test
    void dimensionsFromTheCornerToTheCenter() {
        Drawn drawn = drawn(Bays.uneven());
        assertThat(drawn.texts()).contains("1'-0\"", "2'-6\"", "1'-6\"", "1'-3\"");
        long own = drawn.texts().stream().filter("1'-6\""::equals).count();
        // three lites six feet wide with two dimensions each, and three rows of the schedule
        assertThat(own).isEqualTo(9);
        assertThat(drawn.said()).contains("Corner to center");
    }

    @Test
    void drawsAndCallsOutShims() {
        Drawn drawn = drawn(Bays.uneven());
        Element frame = drawn.frame();
        double foot = Drawn.number(frame, "y") + Drawn.number(frame, "height");
        List<Element> shims =
                drawn.elements("rect").stream()
                        .filter(rect -> rect.getAttribute("fill").equals(Hatch.of(6).fill()))
                        .filter(rect -> Math.abs(Drawn.number(rect, "y") - foot) < 0.02)
                        .toList();
        List<Element> blocks = blocks(drawn, "black");
        assertThat(shims).hasSize(6);
        for (int i = 0; i < shims.size(); i++) {
            assertThat(shims.get(i).getAttribute("x")).isEqualTo(blocks.get(i).getAttribute("x"));
            assertThat(shims.get(i).getAttribute("width"))
                    .isEqualTo(blocks.get(i).getAttribute("width"));
        }
        assertThat(drawn.texts()).contains("Shims", "shims");
        assertThat(drawn.said()).contains("with solid shims under the sill below the full length");
        Drawn onMembers = drawn(Bays.tall());
        assertThat(onMembers.said()).doesNotContain("Shims").doesNotContain("shims");
    }

    @Test
    void saysInWordsWhatIsNotSettled() {
        Drawn drawn = drawn(Bays.unsettled());
        assertThat(drawn.texts()).contains("UNDETERMINED", "NO PLACE PASSES", "Not settled");
        assertThat(drawn.said())
                .contains("The edge clearance below the horizontal was not given")
                .contains("The horizontal bends by at least");
        // places known but not settled are outlines: the lites beside the middle one, twice two
        assertThat(blocks(drawn, "white")).hasSize(8);
        assertThat(blocks(drawn, "black")).hasSize(6);
        assertThat(drawn.values("fill")).contains(BlockPicture.OPEN.fill());
        Drawn bare = drawn(Bays.bare());
        assertThat(blocks(bare, "black")).isEmpty();
        assertThat(blocks(bare, "white")).isEmpty();
        assertThat(bare.texts()).contains("UNDETERMINED", "no glass type");
        assertThat(bare.said())
                .contains("None so far")
                .contains("It was not said whether the bottom lites rest on a member");
        assertThat(bare.elements("desc").get(0).getTextContent()).contains("no place");
    }

    @Test
    void namesLitesThatAreTooSmallForTheirBlocksByNumber() {
        Drawn drawn = drawn(Bays.bay(Collections.nCopies(5, 2.0), Collections.nCopies(200, 0.4)));
        assertThat(drawn.said())
                .contains("1000 of 1000 lites are too small here for their blocks to be drawn")
                .contains("180 190 200");
    }
}
