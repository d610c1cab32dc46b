package org.bayledger.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.bayledger.check.FaultsException;
import org.bayledger.check.Reporting;
import org.bayledger.check.TraceLevel;
import org.bayledger.quantity.UnitSystem;
import org.bayledger.review.ElevationZones;
import org.bayledger.review.Review;
import org.bayledger.review.ReviewResult;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;

class WindZonesDrawingTest {

    static Stream<Arguments> walls() {
        Map<String, Object> noSite = Walls.demo();
        noSite.remove("site");
        Map<String, Object> stepped = Walls.wall(200, 150, 5, 4, 10, 14);
        Walls.element(stepped, "elevations", 0)
                .putAll(
                        Walls.tree(
                                "{'corners':[{'at':'120 ft','kind':'OUTSIDE'},{'at':'160 ft',"
                                        + "'kind':'REENTRANT'}],'steps':[{'from':'0 ft','to':'60"
                                        + " ft','height':'80 ft'},{'from':'60 ft','to':'130 ft',"
                                        + "'height':'150 ft'},{'from':'130 ft','to':'200 ft',"
                                        + "'height':'60 ft','meanRoofHeight':'60 ft'}]}"));
        return Stream.of(
                Arguments.of("the demo", Walls.demo()),
                Arguments.of("no site", noSite),
                Arguments.of("a tower of many bands", Walls.wall(72, 480, 3, 40, 24, 12)),
                Arguments.of("a narrow return", Walls.wall(8, 98, 1, 6, 8, 13)),
                Arguments.of("sixty bays in a row", Walls.wall(600, 98, 60, 1, 10, 14)),
                Arguments.of("sixty bays on six levels", Walls.wall(100, 98, 10, 6, 10, 14)),
                Arguments.of("bays too many to be named", Walls.wall(900, 300, 90, 25, 10, 12)),
                Arguments.of("steps and corners", stepped));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("walls")
    void keepsWordsClearOfWordsAndInsideTheSheet(String name, Map<String, Object> document) {
        Drawn drawn = Walls.drawn(document);
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
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("walls")
    void isBlackOnWhiteWithoutAnythingFromElsewhere(String name, Map<String, Object> document) {
        Drawn drawn = Walls.drawn(document);
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
                        "text");
        assertThat(drawn.values("stroke")).containsOnly("black");
        assertThat(drawn.values("fill"))
                .allMatch(
                        fill ->
                                List.of("black", "white", "none").contains(fill)
                                        || fill.startsWith("url(#hatch-"));
        assertThat(drawn.values("href")).isEmpty();
        assertThat(drawn.values("style")).isEmpty();
        assertThat(drawn.values("font-size"))
                .allSatisfy(size -> assertThat(Double.parseDouble(size)).isGreaterThanOrEqualTo(7));
    }

    /** The numbers are those of the review, for every band, zone and kind of component. */
    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void showsThePressuresOfTheReview(UnitSystem units) {
        DrawingRequest request = Walls.request(Walls.demo());
        ReviewResult review =
                Review.run(request.document(), new Reporting(units, TraceLevel.GOVERNING));
        ElevationZones wall = review.elevationZones().get(0);
        assertThat(wall.elevation()).isEqualTo("N");
        assertThat(wall.pressures()).hasSizeGreaterThan(20);
        Drawn drawn = Drawn.of(Walls.svg(request, units));
        List<String> texts = drawn.texts();
        String said = drawn.elements("desc").get(0).getTextContent();
        for (ReviewResult.WindRow row : wall.pressures()) {
            String toward = "+" + number(Objects.requireNonNull(row.positive()).text(units));
            String suction = number(Objects.requireNonNull(row.negative()).text(units));
            String away = "\u2212" + suction.substring(1);
            assertThat(texts).as("%s", row).contains(toward, away);
            assertThat(said).contains(toward + " / " + away);
        }
        assertThat(texts).contains("N-201", "N-202", "N-203", "N-701", "Zone 4", "Zone 5", "N");
        assertThat(texts).contains("Quillmoor Civic Library", "strength level");
        assertThat(texts)
                .contains(
                        "ASCE/SEI 7-16, basic wind speed "
                                + (units == UnitSystem.US ? "115 mph" : "51.41 m/s")
                                + ", exposure B");
    }

    private static String number(String quantity) {
        return quantity.substring(0, quantity.indexOf(' '));
    }

    /** ASCE/SEI 7-16: a = 10 % of the least horizontal dimension of 90 ft, on a wall of 120 ft. */
    @Test
    void drawsZonesAndBaysWhereTheyAre() {
        Drawn drawn = Walls.drawn(Walls.demo());
        List<Element> zones =
                drawn.elements("rect").stream()
                        .filter(rect -> rect.getAttribute("fill").startsWith("url("))
                        .filter(rect -> Drawn.number(rect, "height") > 50)
                        .toList();
        assertThat(zones).hasSize(3);
        double whole = zones.stream().mapToDouble(rect -> Drawn.number(rect, "width")).sum();
        assertThat(Drawn.number(zones.get(0), "width") / whole)
                .isCloseTo(9.0 / 120, Offset.offset(1e-4));
        assertThat(zones.get(0).getAttribute("fill"))
                .isEqualTo(zones.get(2).getAttribute("fill"))
                .isNotEqualTo(zones.get(1).getAttribute("fill"));
        assertThat(drawn.texts()).contains("9'-0\"", "102'-0\"", "120'-0\"", "Top 98'-0\"");
        double scale = whole / 120;
        Element bay =
                drawn.elements("rect").stream()
                        .filter(rect -> rect.getAttribute("stroke-width").equals("0.8"))
                        .filter(rect -> Math.abs(Drawn.number(rect, "width") - 20 * scale) < 0.02)
                        .findFirst()
                        .orElseThrow();
        assertThat(Drawn.number(bay, "x"))
                .isCloseTo(Drawn.number(zones.get(0), "x") + 10 * scale, Offset.offset(0.02));
        double foot = Drawn.number(zones.get(0), "y") + Drawn.number(zones.get(0), "height");
        assertThat(Drawn.number(bay, "y") + Drawn.number(bay, "height"))
                .isCloseTo(foot - 14 * scale, Offset.offset(0.02));
    }

    /** An outside corner at the left only, a = 9 ft, and another between the ends. */
    @Test
    void drawsZonesAndCornersOnTheirOwnSide() {
        Map<String, Object> document = Walls.demo();
        Walls.element(document, "elevations", 0)
                .putAll(
                        Walls.tree(
                                "{'cornerAtRight':false,'corners':[{'at':'80 ft','kind':"
                                        + "'REENTRANT'}]}"));
        Drawn drawn = Walls.drawn(document);
        List<Element> zones =
                drawn.elements("rect").stream()
                        .filter(rect -> rect.getAttribute("fill").startsWith("url("))
                        .filter(rect -> Drawn.number(rect, "height") > 50)
                        .toList();
        double left = zones.stream().mapToDouble(rect -> Drawn.number(rect, "x")).min().orElse(0);
        double scale = zones.stream().mapToDouble(rect -> Drawn.number(rect, "width")).sum() / 120;
        assertThat(Drawn.number(zones.get(0), "x")).isEqualTo(left);
        assertThat(Drawn.number(zones.get(0), "width")).isCloseTo(9 * scale, Offset.offset(0.02));
        assertThat(drawn.elements("line"))
                .anySatisfy(
                        line -> {
                            assertThat(line.getAttribute("stroke-width")).isEqualTo("1.4");
                            assertThat(line.getAttribute("x1")).isEqualTo(line.getAttribute("x2"));
                            assertThat(Drawn.number(line, "x1"))
                                    .isCloseTo(left + 80 * scale, Offset.offset(0.02));
                        });
        double nine = middle(drawn, "9'-0\"");
        assertThat((nine - left) / scale).isLessThan(30);
        assertThat((middle(drawn, "80'-0\"") - left) / scale).isBetween(70.0, 90.0);
        assertThat(middle(drawn, "N-201")).isLessThan(middle(drawn, "N-203"));
    }

    private static double middle(Drawn drawn, String words) {
        return drawn.elements("text").stream()
                .filter(text -> text.getTextContent().equals(words))
                .filter(text -> text.getAttribute("text-anchor").equals("middle"))
                .mapToDouble(text -> Drawn.number(text, "x"))
                .min()
                .orElseThrow();
    }

    @Test
    void tellsThoseWhoCannotSeeIt() {
        Drawn drawn = Walls.drawn(Walls.demo());
        assertThat(drawn.root().getAttribute("role")).isEqualTo("img");
        assertThat(drawn.root().getAttribute("aria-label"))
                .isEqualTo("Wind zones and design pressures, elevation N");
        assertThat(drawn.root().getFirstChild().getNextSibling().getNodeName()).isEqualTo("title");
        assertThat(drawn.root().getAttribute("width")).isEqualTo("11in");
        assertThat(
                        Drawn.of(Walls.svg(Walls.request(Walls.demo()), UnitSystem.SI))
                                .root()
                                .getAttribute("width"))
                .isEqualTo("297mm");
    }

    @Test
    void saysWhatIsUndetermined() {
        Map<String, Object> document = Walls.demo();
        document.remove("site");
        assertThat(Walls.drawn(document).texts())
                .contains("nothing: UNDETERMINED", "undetermined", "Zone unknown")
                .anySatisfy(
                        said -> assertThat(said).startsWith("Wind pressures UNDETERMINED: the"));
    }

    /** Specified pressures are shown as they are given, and what they leave out is said. */
    @Test
    void showsSpecifiedPressuresAndWhatTheyLeaveOut() {
        Map<String, Object> document = Walls.demo();
        document.put(
                "specifiedPressures",
                Walls.tree(
                        "{'source':'Report <1> & 2','basis':'ALLOWABLE_STRESS','pressures':["
                                + "{'zone':'4','positive':'21 psf','negative':'-23 psf'},"
                                + "{'zone':'5','positive':'22 psf'}]}"));
        Drawn drawn = Walls.drawn(document);
        assertThat(drawn.texts())
                .contains("+21", "\u221223", "+22", "\u2013", "allowable-stress level")
                .contains("specified: Report <1> & 2")
                .doesNotContain("strength level");
        assertThat(String.join(" ", drawn.texts()))
                .contains("stands for UNDETERMINED", "N-201/lite/1-1");
        assertThat(drawn.overlaps()).isEmpty();
    }

    @Test
    void namesEveryBayOrSaysHowManyItDoesNot() {
        assertThat(Walls.drawn(Walls.wall(600, 98, 60, 1, 10, 14)).texts())
                .anySatisfy(key -> assertThat(key).contains("(1)\u00a0N-0000"))
                .anySatisfy(key -> assertThat(key).contains("(60)\u00a0N-0059"))
                .contains("(1)", "(60)");
        assertThat(Walls.drawn(Walls.wall(100, 98, 10, 1, 10, 14)).texts())
                .contains("N-0000", "N-0009");
        Drawn crowded = Walls.drawn(Walls.wall(900, 900, 90, 50, 10, 12));
        assertThat(String.join(" ", crowded.texts()))
                .containsPattern("\\d+ of 4500 bays are too small here to be named\\.");
    }

    @Test
    void marksTheBayThatIsAskedFor() {
        DrawingRequest request = Walls.request(Walls.demo(), tree -> tree.put("bay", "N-203"));
        assertThat(Drawn.of(Walls.svg(request, UnitSystem.US)).texts())
                .contains("Bay N-203 is drawn with a double line.");
    }

    @Test
    void isTheSameEveryTime() {
        DrawingRequest request = Walls.request(Walls.demo());
        assertThat(Walls.svg(request, UnitSystem.US)).isEqualTo(Walls.svg(request, UnitSystem.US));
    }

    /** A job's own words stay words. */
    @Test
    void takesHostileNamesForNames() {
        String script = "<script>alert('1')</script>&amp;\"]]>";
        Map<String, Object> document = Walls.demo();
        document.put("name", script + "\ufffe\u202e\u0645\u0628 " + "long ".repeat(30));
        Walls.element(document, "elevations", 0).put("id", "N<&\">");
        Walls.element(document, "bays", 0).put("id", "<b>'&\u202e");
        for (int i = 0; i < 4; i++) {
            Walls.element(document, "bays", i).put("elevation", "N<&\">");
        }
        DrawingRequest request =
                Walls.request(
                        document,
                        tree -> {
                            tree.put("elevation", "N<&\">");
                            tree.put("bay", "<b>'&\u202e");
                        });
        Drawn drawn = Drawn.of(Walls.svg(request, UnitSystem.US));
        assertThat(drawn.names()).doesNotContain("script", "b");
        assertThat(drawn.texts()).contains("<b>'&", "N<&\">");
        assertThat(drawn.texts())
                .anySatisfy(
                        job ->
                                assertThat(job)
                                        .startsWith("<script>alert('1')</script>&amp;\"]]> \u0645")
                                        .endsWith("\u2026"));
        assertThat(drawn.elements("desc").get(0).getTextContent())
                .contains("long long long long")
                .doesNotContain("\u202e");
        assertThat(drawn.root().getAttribute("aria-label")).endsWith("elevation N<&\">");
        assertThat(drawn.overlaps()).isEmpty();
    }

    @Test
    void refusesWhatTheDocumentDoesNotHave() {
        assertThatThrownBy(() -> Walls.request(Walls.demo(), tree -> tree.put("elevation", "Q")))
                .isInstanceOfSatisfying(
                        FaultsException.class, refused -> fault(refused, "/elevation", false));
        assertThatThrownBy(() -> Walls.request(Walls.demo(), tree -> tree.put("bay", "E-101")))
                .isInstanceOfSatisfying(
                        FaultsException.class, refused -> fault(refused, "/bay", false));
        assertThatThrownBy(() -> Walls.request(Walls.demo(), tree -> tree.put("drawing", "SUNSET")))
                .isInstanceOfSatisfying(
                        FaultsException.class, refused -> fault(refused, "/drawing", true));
        Map<String, Object> broken = new LinkedHashMap<>(Walls.demo());
        broken.put("bays", List.of());
        assertThatThrownBy(() -> Walls.request(broken))
                .isInstanceOfSatisfying(
                        FaultsException.class, refused -> fault(refused, "/document/bays", false));
    }

    private static void fault(FaultsException refused, String pointer, boolean malformed) {
        assertThat(refused.faults()).hasSize(1);
        assertThat(refused.faults().get(0).pointer()).isEqualTo(pointer);
        assertThat(refused.malformed()).isEqualTo(malformed);
    }
}
