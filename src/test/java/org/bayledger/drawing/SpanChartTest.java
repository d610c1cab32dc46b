package org.bayledger.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.bayledger.check.Binder;
import org.bayledger.check.Reporting;
import org.bayledger.check.StrictJson;
import org.bayledger.check.TraceLevel;
import org.bayledger.framing.SpanTable;
import org.bayledger.framing.SpanTableRequest;
import org.bayledger.framing.SpanTableResult;
import org.bayledger.quantity.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.w3c.dom.Document;
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
}
