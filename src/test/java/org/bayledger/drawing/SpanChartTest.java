package org.bayledger.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import javax.xml.parsers.DocumentBuilderFactory;
import org.bayledger.check.Binder;
import org.bayledger.check.Reporting;
import org.bayledger.check.StrictJson;
import org.bayledger.check.TraceLevel;
import org.bayledger.framing.SpanTable;
import org.bayledger.framing.SpanTableRequest;
import org.bayledger.framing.SpanTableResult;
import org.bayledger.quantity.Quantity;
import org.bayledger.quantity.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** The table of spans as CSV and as a chart. */
class SpanChartTest {

    private static SpanTableRequest request() throws IOException {
        byte[] json =
                Files.readAllBytes(
                        Path.of("src/main/resources/contract/tabulateSpans.request.json"));
        return Binder.bind(StrictJson.read(json), SpanTableRequest.class);
    }

    private static SpanTableResult table(UnitSystem units) throws IOException {
        return SpanTable.run(request(), new Reporting(units, TraceLevel.GOVERNING));
    }

    @Test
    void csvHoldsEverySpanWithUnits() throws IOException {
        SpanTableResult table = table(UnitSystem.US);
        List<String> lines =
                new String(SpanCsv.write(table, UnitSystem.US), StandardCharsets.UTF_8)
                        .lines()
                        .toList();
        assertThat(lines.get(0)).isEqualTo("pressure (psf),spacing (ft),span (ft),limit,verdict");
        assertThat(lines).hasSize(10);
        assertThat(lines.get(1))
                .isEqualTo(
                        "20,4,"
                                + table.rows().get(0).cells().get(0).span().value(UnitSystem.US)
                                + ",DEFLECTION,SATISFIED");
    }

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void chartNamesEveryPressureAndMarksEverySpan(UnitSystem units) throws Exception {
        SpanTableResult table = table(units);
        byte[] svg = new SpanChart(request(), table, units).draw();
        assertThat(new SpanChart(request(), table, units).draw()).isEqualTo(svg);
        Document document =
                DocumentBuilderFactory.newInstance()
                        .newDocumentBuilder()
                        .parse(new ByteArrayInputStream(svg));
        String text = document.getDocumentElement().getTextContent().replace('\u00a0', ' ');
        for (SpanTableResult.Row row : table.rows()) {
            assertThat(text).contains(row.pressure().text(units));
        }
        NodeList circles = document.getElementsByTagName("circle");
        // nine spans and two marks of the legend; the third is a square
        assertThat(circles.getLength()).isEqualTo(11);
        assertThat(document.getElementsByTagName("polyline").getLength()).isEqualTo(3);
    }

    /**
     * Stress limits the wide spacings of this section, deflection the narrow ones, and the table
     * ends at 13 ft: every mark is of its limit's kind and stands where its span is, on a scale.
     */
    @Test
    void marksStandWhereTheSpansAreAndShowWhatLimitsThem() throws Exception {
        SpanTableRequest request =
                Binder.bind(
                        StrictJson.read(
                                """
                                {"section":{"secondMomentOfArea":"6.5 in4","sectionModulus":"2.1 in3","elasticModulus":"10100 ksi",
                                            "allowableBendingStress":"15.2 ksi","bucklingCovered":true},
                                 "pressures":["16 psf","45 psf"],"spacings":["6 ft","3 ft","4 ft"],"greatestSpan":"13 ft"}"""
                                        .getBytes(StandardCharsets.UTF_8)),
                        SpanTableRequest.class);
        SpanTableResult table =
                SpanTable.run(request, new Reporting(UnitSystem.US, TraceLevel.GOVERNING));
        Document document =
                DocumentBuilderFactory.newInstance()
                        .newDocumentBuilder()
                        .parse(
                                new ByteArrayInputStream(
                                        new SpanChart(request, table, UnitSystem.US).draw()));
        Map<SpanTableResult.Limit, Long> limits =
                table.rows().stream()
                        .flatMap(row -> row.cells().stream())
                        .collect(
                                Collectors.groupingBy(
                                        SpanTableResult.Cell::limit, Collectors.counting()));
        assertThat(limits).hasSize(3);
        NodeList circles = document.getElementsByTagName("circle");
        NodeList texts = document.getElementsByTagName("text");
        long black = 0;
        int mark = 0;
        for (SpanTableResult.Row row : table.rows()) {
            List<SpanTableResult.Cell> cells =
                    row.cells().stream()
                            .sorted(Comparator.comparingDouble(cell -> cell.spacing().si()))
                            .toList();
            for (SpanTableResult.Cell cell : cells) {
                if (cell.limit() == SpanTableResult.Limit.GREATEST_SPAN) {
                    continue;
                }
                Element circle = (Element) circles.item(mark);
                mark++;
                boolean filled = circle.getAttribute("fill").equals("black");
                assertThat(filled).isEqualTo(cell.limit() == SpanTableResult.Limit.STRESS);
                black += filled ? 1 : 0;
                assertThat(number(circle, "cx"))
                        .isCloseTo(read(texts, "x", cell.spacing()), within(0.1));
                assertThat(number(circle, "cy"))
                        .isCloseTo(read(texts, "y", cell.span()) - 2.5, within(0.1));
            }
        }
        assertThat(black).isEqualTo(limits.get(SpanTableResult.Limit.STRESS));
    }

    private static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }

    /** Where a value stands between the two figures of an axis that lie about it. */
    private static double read(NodeList texts, String axis, Quantity quantity) {
        double value = quantity.value(UnitSystem.US).doubleValue();
        String anchor = axis.equals("x") ? "middle" : "end";
        Element low = null;
        Element high = null;
        for (int i = 0; i < texts.getLength(); i++) {
            Element text = (Element) texts.item(i);
            if (!text.getAttribute("text-anchor").equals(anchor)
                    || !text.getTextContent().matches("[0-9.]+")) {
                continue;
            }
            double figure = Double.parseDouble(text.getTextContent());
            if (figure <= value && (low == null || figure > figure(low))) {
                low = text;
            }
            if (figure > value && (high == null || figure < figure(high))) {
                high = text;
            }
        }
        if (low != null && Math.abs(figure(low) - value) < 1e-9) {
            return number(low, axis);
        }
        double share = (value - figure(low)) / (figure(high) - figure(low));
        return number(low, axis) + share * (number(high, axis) - number(low, axis));
    }

    private static double figure(Element text) {
        return Double.parseDouble(text.getTextContent());
    }
}
