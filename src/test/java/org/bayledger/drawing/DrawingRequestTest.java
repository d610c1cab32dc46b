package org.bayledger.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Consumer;
import org.bayledger.check.Fault;
import org.bayledger.check.FaultsException;
import org.bayledger.check.Reporting;
import org.bayledger.check.TraceLevel;
import org.bayledger.framing.SpanTableRequest;
import org.bayledger.quantity.UnitSystem;
import org.bayledger.review.Review;
import org.bayledger.review.ReviewResult;
import org.junit.jupiter.api.Test;

/** What each kind of drawing takes and refuses, and the chart of spans of a document. */
class DrawingRequestTest {

    private static void refused(
            DrawingKind kind,
            boolean malformed,
            String pointer,
            String advice,
            Consumer<Map<String, Object>> edit) {
        assertThatThrownBy(() -> Walls.svg(Bays.request(Bays.uneven(), kind, edit), UnitSystem.US))
                .isInstanceOfSatisfying(
                        FaultsException.class,
                        refused -> {
                            assertThat(refused.malformed()).isEqualTo(malformed);
                            assertThat(refused.faults())
                                    .extracting(Fault::pointer)
                                    .contains(pointer);
                            assertThat(refused.getMessage()).contains(advice);
                        });
    }

    @Test
    void asksForWhatAKindNeeds() {
        for (DrawingKind kind : DrawingKind.values()) {
            if (kind.ofBay()) {
                refused(kind, true, "/bay", "N-1", all -> all.remove("bay"));
                refused(kind, false, "/bay", "N-1", all -> all.put("bay", "N-2"));
            }
        }
        refused(DrawingKind.SPAN_CHART, true, "/section", "V1, V2, H1, H2", all -> {});
        refused(
                DrawingKind.SPAN_CHART,
                false,
                "/section",
                "V1, V2, H1, H2",
                all -> all.put("section", "V9"));
    }

    @Test
    void refusesWhatDoesNotBelong() {
        for (String property : List.of("item", "section")) {
            refused(
                    DrawingKind.WIND_ZONES,
                    false,
                    "/" + property,
                    "leave it out",
                    all -> all.put(property, "N-1/horizontal/2"));
        }
        refused(
                DrawingKind.SETTING_BLOCKS,
                false,
                "/spacings",
                "leave it out",
                all -> all.put("spacings", List.of("5 ft")));
        refused(
                DrawingKind.SPAN_CHART,
                false,
                "/basis",
                "pressures, which were not given",
                all -> {
                    all.put("section", "V2");
                    all.put("basis", "STRENGTH");
                });
        refused(
                DrawingKind.SPAN_CHART,
                true,
                "/pressures/0",
                "psf",
                all -> {
                    all.put("section", "V2");
                    all.put("pressures", List.of("30 ft"));
                });
    }

    @Test
    void knowsTheHorizontalsThatBend() {
        for (String item :
                List.of(
                        "N-1/horizontal/1", // a sill that is shimmed
                        "N-1/horizontal/4", // the head, on which nothing stands
                        "N-1/horizontal/99999",
                        "N-1/lite/4-2",
                        "N-1/lite/0-2",
                        "N-2/horizontal/2",
                        "N-1/mullion/1")) {
            refused(
                    DrawingKind.DEFLECTED_HORIZONTAL,
                    false,
                    "/item",
                    "N-1/horizontal/2, N-1/horizontal/3",
                    all -> all.put("item", item));
        }
        assertThatThrownBy(
                        () ->
                                Bays.request(
                                        Bays.bay(List.of(5.0), List.of(8.0)),
                                        DrawingKind.DEFLECTED_HORIZONTAL,
                                        all -> {}))
                .isInstanceOf(FaultsException.class)
                .hasMessageContaining("a sill that is shimmed");
    }

    @Test
    void chartsTheSpansUnderThePressuresOfTheDocument() {
        Drawn chart = chart(all -> all.put("section", "V2"), UnitSystem.US);
        // half of 4 ft, (4 + 10) / 2, (10 + 6) / 2 and half of 6 ft
        assertThat(table(all -> all.put("section", "V2")).spacings())
                .extracting(metres -> Math.rint(metres / 0.3048 * 100) / 100)
                .contains(2.0, 3.0, 7.0, 8.0)
                .startsWith(2.0)
                .endsWith(8.0);
        List<Double> spacings = table(all -> all.put("section", "V2")).spacings();
        for (int i = 1; i < spacings.size(); i++) {
            assertThat(spacings.get(i) / spacings.get(i - 1)).isBetween(1.0001, 1.121);
        }
        assertThat(chart.said()).contains("They hold at the marks");
        assertThat(chart.elements("title").get(0).getTextContent())
                .isEqualTo("Greatest spans of section V2, elevation N");
        assertThat(chart.texts()).contains("STRENGTH", "V2", "Quillmoor Civic Library");
        assertThat(chart.elements("desc").get(0).getTextContent())
                .contains("at a spacing of 7 ft, limited by");
        assertThat(chart.overlaps()).isEmpty();
        List<Double> pressures = table(all -> all.put("section", "V2")).pressures();
        assertThat(pressures).isSorted().hasSizeBetween(4, 20);
        DrawingRequest request =
                Bays.request(
                        Bays.uneven(), DrawingKind.SPAN_CHART, all -> all.put("section", "V2"));
        double greatest =
                Review.run(request.document(), new Reporting(UnitSystem.US, TraceLevel.GOVERNING))
                        .windSchedule()
                        .stream()
                        .filter(row -> row.elevation().equals("N"))
                        .filter(row -> row.component() == ReviewResult.Component.HORIZONTAL)
                        .mapToDouble(row -> -Objects.requireNonNull(row.negative()).si())
                        .max()
                        .orElse(0);
        assertThat(pressures.get(pressures.size() - 1)).isEqualTo(greatest);
        for (int i = 1; i < pressures.size(); i++) {
            assertThat(pressures.get(i) / pressures.get(i - 1)).isGreaterThan(1.005);
        }
        assertThat(chart.elements("polyline")).hasSize(pressures.size());
    }

    @Test
    void chartsTheSpansUnderOthersWhereTheyAreGiven() {
        Consumer<Map<String, Object>> given =
                all -> {
                    all.put("section", "H1");
                    all.put("pressures", List.of("30 psf", "40 psf"));
                    all.put("spacings", List.of("4 ft", "5 ft", "6 ft"));
                };
        Drawn chart = chart(given, UnitSystem.SI);
        assertThat(chart.texts()).contains("1.436\u00a0kPa", "1.915\u00a0kPa", "ALLOWABLE_STRESS");
        assertThat(chart.elements("circle")).hasSize(8);
        refused(
                DrawingKind.SPAN_CHART,
                false,
                "/spacings",
                "section V1",
                all -> all.put("section", "V1"));
        Map<String, Object> calm = Bays.uneven();
        calm.remove("site");
        assertThatThrownBy(
                        () ->
                                Walls.svg(
                                        Bays.request(
                                                calm,
                                                DrawingKind.SPAN_CHART,
                                                all -> all.put("section", "V2")),
                                        UnitSystem.US))
                .isInstanceOf(FaultsException.class)
                .hasMessageContaining("/pressures: are needed here");
    }

    @Test
    void chartsNoSpansForSteelOnAPartOfTheLength() {
        Map<String, Object> document = Bays.uneven();
        Walls.element(document, "sections", 1)
                .put(
                        "reinforcement",
                        Walls.tree(
                                "{'secondMomentOfArea':'2 in4','sectionModulus':'1"
                                        + " in3','yieldStrength':'36 ksi','from':'1 ft','to':'9 ft'}"));
        assertThatThrownBy(
                        () ->
                                Walls.svg(
                                        Bays.request(
                                                document,
                                                DrawingKind.SPAN_CHART,
                                                all -> all.put("section", "V2")),
                                        UnitSystem.US))
                .isInstanceOf(FaultsException.class)
                .hasMessageContaining("/section")
                .hasMessageContaining("steel");
    }

    private static SpanTableRequest table(Consumer<Map<String, Object>> edit) {
        DrawingRequest request = Bays.request(Bays.uneven(), DrawingKind.SPAN_CHART, edit);
        return SectionSpans.of(
                new Job(
                        request,
                        Review.run(
                                request.document(),
                                new Reporting(UnitSystem.US, TraceLevel.GOVERNING)),
                        UnitSystem.US,
                        ""));
    }

    private static Drawn chart(Consumer<Map<String, Object>> edit, UnitSystem units) {
        return Bays.drawn(Bays.request(Bays.uneven(), DrawingKind.SPAN_CHART, edit), units);
    }
}
