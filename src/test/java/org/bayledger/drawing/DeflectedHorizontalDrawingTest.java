package org.bayledger.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.assertj.core.data.Offset;
import org.bayledger.blocks.BlockCandidate;
import org.bayledger.blocks.SettingBlocksRequest;
import org.bayledger.blocks.SettingBlocksResult;
import org.bayledger.quantity.UnitSystem;
import org.bayledger.review.ReviewItem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.w3c.dom.Element;

class DeflectedHorizontalDrawingTest {

    private static final double METRE = 72 / 0.0254;
    private static final Pattern SCALES =
            Pattern.compile("lengths 1:(\\d+), deflections ([0-9.]+) times larger");

    private static Drawn drawn(Map<String, Object> document, UnitSystem units) {
        return Bays.drawn(document, DrawingKind.DEFLECTED_HORIZONTAL, units);
    }

    /** Bent lines, one a place, as points. */
    private static List<List<double[]>> lines(Drawn drawn) {
        List<List<double[]>> lines = new ArrayList<>();
        for (Element line : drawn.elements("polyline")) {
            if (line.getAttribute("stroke-width").equals("1.4")) {
                List<double[]> points = new ArrayList<>();
                for (String point : line.getAttribute("points").split(" ", -1)) {
                    String[] both = point.split(",", -1);
                    points.add(
                            new double[] {
                                Double.parseDouble(both[0]), Double.parseDouble(both[1])
                            });
                }
                lines.add(points);
            }
        }
        return lines;
    }

    private static double[] scales(Drawn drawn) {
        Matcher scales = SCALES.matcher(drawn.said());
        assertThat(scales.find()).isTrue();
        double across = METRE / Double.parseDouble(scales.group(1));
        return new double[] {across, across * Double.parseDouble(scales.group(2))};
    }

    private static ReviewItem lite(Map<String, Object> document, String name) {
        return Bays.reviewed(document, "setting-blocks").get("lite/" + name);
    }

    /**
     * Against closed forms of textbooks for a beam on two supports: two equal forces P at a give P
     * a (3 L2 - 4 a2) / (24 E I) at mid-span and P a2 (3 L - 4 a) / (6 E I) under a force, a weight
     * w along it 5 w L4 / (384 E I) and w a (L3 - 2 L a2 + a3) / (24 E I).
     */
    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void bendsDownAsTextbooksSayAndToTheScaleThatIsStated(UnitSystem units) {
        Map<String, Object> document = Bays.uneven();
        Drawn drawn = drawn(document, units);
        double[] scales = scales(drawn);
        ReviewItem item = lite(document, "2-2");
        SettingBlocksRequest asked = (SettingBlocksRequest) Objects.requireNonNull(item.inputs());
        SettingBlocksResult result = (SettingBlocksResult) Objects.requireNonNull(item.result());
        double span = Objects.requireNonNull(asked.support().span());
        double rigidity =
                Objects.requireNonNull(asked.support().secondMomentOfArea())
                        * Objects.requireNonNull(asked.support().elasticModulus());
        double own = Objects.requireNonNull(asked.support().massPerLength()) * 9.80665;
        double load = Objects.requireNonNull(result.glassWeight()).si() * 9.80665 / 2;
        List<List<double[]>> lines = lines(drawn);
        assertThat(lines).hasSize(3);
        List<Element> blocks = drawn.filled("black");
        assertThat(blocks).hasSize(6);
        for (int i = 0; i < 3; i++) {
            BlockCandidate candidate = result.candidates().get(i);
            double a = candidate.distanceFromCorner().si();
            double middle =
                    load * a * (3 * span * span - 4 * a * a) / (24 * rigidity)
                            + 5 * own * Math.pow(span, 4) / (384 * rigidity);
            double under =
                    load * a * a * (3 * span - 4 * a) / (6 * rigidity)
                            + own
                                    * a
                                    * (Math.pow(span, 3) - 2 * span * a * a + Math.pow(a, 3))
                                    / (24 * rigidity);
            List<double[]> line = lines.get(i);
            double top = line.get(0)[1];
            double[] lowest =
                    line.stream().max(Comparator.comparingDouble(point -> point[1])).orElseThrow();
            assertThat(line.get(line.size() - 1)[1]).isEqualTo(top);
            assertThat(line.get(line.size() - 1)[0] - line.get(0)[0])
                    .isCloseTo(span * scales[0], Offset.offset(0.05));
            assertThat(lowest[1] - top).isCloseTo(middle * scales[1], Offset.offset(0.05));
            assertThat(lowest[0] - line.get(0)[0])
                    .isCloseTo(span / 2 * scales[0], Offset.offset(0.05));
            Element block = blocks.get(2 * i);
            assertThat(Drawn.number(block, "x") + Drawn.number(block, "width") / 2)
                    .isCloseTo(line.get(0)[0] + a * scales[0], Offset.offset(0.05));
            assertThat(Drawn.number(block, "y") + Drawn.number(block, "height"))
                    .isCloseTo(top + under * scales[1], Offset.offset(0.05));
            assertThat(drawn.said())
                    .contains(
                            Objects.requireNonNull(candidate.memberDeflection()).text(units)
                                    + ", ");
        }
        double limit = Objects.requireNonNull(result.governingLimit()).si();
        List<Double> limits =
                drawn.elements("line").stream()
                        .filter(line -> line.hasAttribute("stroke-dasharray"))
                        .map(line -> Drawn.number(line, "y1"))
                        .toList();
        assertThat(limits).hasSize(3);
        assertThat(limits.get(0) - lines.get(0).get(0)[1])
                .isCloseTo(limit * scales[1], Offset.offset(0.05));
    }

    @Test
    void saysWhichPlaceIsRecommendedAndWhichIsNotEligible() {
        Drawn drawn = drawn(Bays.uneven(), UnitSystem.US);
        assertThat(drawn.texts())
                .contains(
                        "Blocks at the quarter points, exceeds the limit",
                        "Blocks at the eighth points, RECOMMENDED, keeps the limit",
                        "Blocks at the tenth points, NOT ELIGIBLE, keeps the limit",
                        "N-1/horizontal/2",
                        "span 10'-0\"",
                        "limit")
                .contains("2'-6\"", "1'-3\"", "1'-0\"");
        assertThat(drawn.said())
                .contains("Recommended: eighth points, 1'-3\" from each glass corner.")
                .contains("Not eligible, tenth points: needs the glass fabricator's word")
                .contains("Lites on this line")
                .contains("2-2, drawn");
        assertThat(drawn.elements("desc").get(0).getTextContent())
                .contains("Blocks at the eighth points", "not eligible", "EXCEEDED");
    }

    @Test
    void drawsTheHorizontalThatIsAskedFor() {
        Drawn third =
                Bays.drawn(
                        Bays.request(
                                Bays.uneven(),
                                DrawingKind.DEFLECTED_HORIZONTAL,
                                all -> all.put("item", "N-1/horizontal/3")),
                        UnitSystem.US);
        assertThat(third.texts()).contains("N-1/horizontal/3", "2-3");
        Drawn lite =
                Bays.drawn(
                        Bays.request(
                                Bays.uneven(),
                                DrawingKind.DEFLECTED_HORIZONTAL,
                                all -> all.put("item", "N-1/lite/3-2")),
                        UnitSystem.US);
        assertThat(lite.texts()).contains("N-1/horizontal/2", "3-2", "span 6'-0\"");
    }

    @Test
    void saysWhatIsNotKnown() {
        Drawn bare = drawn(Bays.bare(), UnitSystem.US);
        assertThat(bare.said()).contains("UNDETERMINED", "not known", "No place is recommended.");
        assertThat(lines(bare)).isEmpty();
        Map<String, Object> light = Bays.uneven();
        Walls.element(light, "bays", 0).remove("glassType");
        Walls.element(light, "bays", 0).remove("lites");
        Drawn unknown = drawn(light, UnitSystem.US);
        assertThat(unknown.texts()).contains("Deflection UNDETERMINED", "Verdict", "UNDETERMINED");
        assertThat(unknown.said()).contains("The weight of the lite is not known.");
        assertThat(lines(unknown)).isEmpty();
        Drawn exceeded = drawn(Bays.unsettled(), UnitSystem.US);
        assertThat(exceeded.said())
                .contains("No place is recommended.", "The horizontal bends by at least");
    }
}
