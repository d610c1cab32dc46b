package org.bayledger.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.bayledger.quantity.UnitSystem;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;

/** What all drawings of a bay have in common, whatever the bay. */
class BayDrawingsTest {

    static Stream<Arguments> drawings() {
        List<Arguments> drawings = new ArrayList<>();
        Bays.all()
                .forEach(
                        (name, document) -> {
                            for (DrawingKind kind : DrawingKind.values()) {
                                boolean bends =
                                        kind != DrawingKind.DEFLECTED_HORIZONTAL
                                                || !name.equals("one lite");
                                if (kind.ofBay() && bends) {
                                    drawings.add(Arguments.of(name, kind, document));
                                }
                            }
                        });
        return drawings.stream();
    }

    @ParameterizedTest(name = "{0}, {1}")
    @MethodSource("drawings")
    void keepsWordsClearOfWordsAndInsideTheSheet(
            String name, DrawingKind kind, Map<String, Object> document) {
        for (UnitSystem units : UnitSystem.values()) {
            Drawn drawn = Bays.drawn(document, kind, units);
            assertThat(drawn.overlaps()).isEmpty();
            String[] view = drawn.root().getAttribute("viewBox").split(" ", -1);
            double width = Double.parseDouble(view[2]);
            double height = Double.parseDouble(view[3]);
            assertThat(drawn.words())
                    .allSatisfy(
                            words -> {
                                assertThat(words.left()).isGreaterThan(28);
                                assertThat(words.right()).isLessThan(width - 28);
                                assertThat(words.top()).isGreaterThan(28);
                                assertThat(words.bottom()).isLessThan(height - 28);
                            });
            for (Element rect : drawn.filled("black")) {
                assertThat(Drawn.number(rect, "x")).isBetween(28.0, width - 28);
                assertThat(Drawn.number(rect, "y")).isBetween(28.0, height - 28);
            }
        }
    }

    @ParameterizedTest(name = "{0}, {1}")
    @MethodSource("drawings")
    void saysWhatItIsAndWhatItIsMadeFrom(
            String name, DrawingKind kind, Map<String, Object> document) {
        Drawn drawn = Bays.drawn(document, kind, UnitSystem.SI);
        assertThat(drawn.root().getAttribute("role")).isEqualTo("img");
        assertThat(drawn.root().getAttribute("aria-label")).contains("N-1");
        assertThat(drawn.elements("title")).hasSize(1);
        assertThat(drawn.elements("title").get(0).getTextContent())
                .isEqualTo(drawn.root().getAttribute("aria-label"));
        assertThat(drawn.elements("desc").get(0).getTextContent())
                .contains("Quillmoor Civic Library")
                .doesNotContain("null");
        assertThat(drawn.texts())
                .contains("Job", "Quillmoor Civic Library", "Bay", "N-1", "Engine of the tests")
                .contains("Verdict", "Sheet", "Scale in a full-size print");
        assertThat(drawn.said()).contains("licensed professional").doesNotContain("null");
    }

    /** Only colours of marks beside black and white, each dark enough to be seen on white. */
    @ParameterizedTest(name = "{0}, {1}")
    @MethodSource("drawings")
    void holdsNothingFromElsewhereAndIsTheSameEveryTime(
            String name, DrawingKind kind, Map<String, Object> document) {
        DrawingRequest request = Bays.request(document, kind, all -> {});
        byte[] svg = Walls.svg(request, UnitSystem.US);
        assertThat(Walls.svg(request, UnitSystem.US)).isEqualTo(svg);
        Drawn drawn = Drawn.of(svg);
        assertThat(drawn.names())
                .isSubsetOf(
                        "svg",
                        "title",
                        "desc",
                        "defs",
                        "pattern",
                        "g",
                        "rect",
                        "line",
                        "polyline",
                        "circle",
                        "path",
                        "text");
        assertThat(drawn.values("href")).isEmpty();
        assertThat(drawn.values("style")).isEmpty();
        for (String attribute : List.of("stroke", "fill")) {
            for (String colour : drawn.values(attribute)) {
                if (!List.of("black", "white", "none").contains(colour)
                        && !colour.startsWith("url(#hatch-")) {
                    assertThat(kind).isEqualTo(DrawingKind.INTERNAL_SEALS);
                    assertThat(contrast(colour)).as(colour).isGreaterThan(4.5);
                }
            }
        }
        assertThat(drawn.values("font-size"))
                .allSatisfy(size -> assertThat(Double.parseDouble(size)).isGreaterThanOrEqualTo(7));
    }

    /** Contrast with white by the formula of the Web Content Accessibility Guidelines 2.1. */
    private static double contrast(String colour) {
        double[] parts = new double[3];
        for (int i = 0; i < 3; i++) {
            double part = Integer.parseInt(colour.substring(1 + 2 * i, 3 + 2 * i), 16) / 255.0;
            parts[i] = part <= 0.03928 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4);
        }
        double luminance = 0.2126 * parts[0] + 0.7152 * parts[1] + 0.0722 * parts[2];
        return 1.05 / (luminance + 0.05);
    }

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void dimensionsTheFrameInTheUnitsThatAreAskedFor(UnitSystem units) {
        boolean us = units == UnitSystem.US;
        for (DrawingKind kind : List.of(DrawingKind.SETTING_BLOCKS, DrawingKind.INTERNAL_SEALS)) {
            Drawn drawn = Bays.drawn(Bays.uneven(), kind, units);
            assertThat(drawn.texts())
                    .containsAll(
                            us
                                    ? List.of(
                                            "4'-0\"", "10'-0\"", "6'-0\"", "20'-0\"", "3'-0\"",
                                            "8'-0\"", "2'-6\"", "13'-6\"")
                                    : List.of(
                                            "1219 mm", "3048 mm", "1829 mm", "6096 mm", "914 mm",
                                            "2438 mm", "762 mm", "4115 mm"));
            assertThat(drawn.root().getAttribute("width")).endsWith(us ? "in" : "mm");
            Element frame = drawn.frame();
            double left = Drawn.number(frame, "x");
            double middle = Drawn.number(text(drawn, us ? "10'-0\"" : "3048 mm"), "x");
            assertThat((middle - left) / Drawn.number(frame, "width"))
                    .isBetween(0.45 - 1e-3, 0.45 + 1e-3);
            double low = Drawn.number(text(drawn, us ? "3'-0\"" : "914 mm"), "y");
            assertThat((low - Drawn.number(frame, "y")) / Drawn.number(frame, "height"))
                    .isBetween(12 / 13.5 - 0.02, 12 / 13.5 + 0.02);
            assertThat(Drawn.number(frame, "width") / Drawn.number(frame, "height"))
                    .isBetween(20 / 13.5 - 1e-3, 20 / 13.5 + 1e-3);
            List<Double> inside =
                    drawn.elements("line").stream()
                            .filter(line -> line.getAttribute("stroke-width").equals("0.8"))
                            .filter(
                                    line ->
                                            line.getAttribute("x1").equals(line.getAttribute("x2"))
                                                    && Drawn.number(line, "y1")
                                                            == Drawn.number(frame, "y"))
                            .map(
                                    line ->
                                            Math.rint(
                                                    (Drawn.number(line, "x1")
                                                                    - Drawn.number(frame, "x"))
                                                            / Drawn.number(frame, "width")
                                                            * 2000))
                            .toList();
            assertThat(inside).containsExactly(0.0, 400.0, 1400.0, 2000.0);
        }
    }

    private static Element text(Drawn drawn, String words) {
        return drawn.elements("text").stream()
                .filter(text -> text.getTextContent().equals(words))
                .findFirst()
                .orElseThrow();
    }
}
