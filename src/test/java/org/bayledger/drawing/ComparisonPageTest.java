package org.bayledger.drawing;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.StringReader;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.bayledger.ledger.Comparison;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** A comparison as a page and as a table. */
class ComparisonPageTest {

    private static final Comparison.NoteChanges NO_NOTES =
            new Comparison.NoteChanges(List.of(), List.of(), List.of());

    private static final Comparison COMPARISON =
            new Comparison(
                    1,
                    2,
                    List.of(
                            new Comparison.InputChange(
                                    "glassType/G<1>",
                                    "/glassTypes/0/panes/0/nominalThickness",
                                    "6 mm",
                                    "=HYPERLINK(\"x\")"),
                            new Comparison.InputChange("N-03", "/bays/0/load", "-35 psf", null)),
                    List.of(
                            move("N-03/lite/1-1", "SATISFIED", "SATISFIED", "0.5", "0.9"),
                            move("N-03/lite/1-2", "SATISFIED", "EXCEEDED", "0.95", "1.05"),
                            new Comparison.VerdictChange(
                                    "N-04", "glass", null, "UNDETERMINED", null, null, null)),
                    new Comparison.NoteChanges(
                            List.of(note("*", "Blocks at eighth points.", "N-03/lite/1-1")),
                            List.of(),
                            List.of(
                                    new Comparison.NoteChange(
                                            note("1", "Fixed.", "N-03/anchor/L2"),
                                            note("2", "Fixed.", "N-03/anchor/L3")))),
                    true,
                    new Comparison.Recomputed(
                            "0.2.0",
                            new Comparison.Effect(
                                    List.of(
                                            move(
                                                    "N-09/lite/1-1",
                                                    "EXCEEDED",
                                                    "SATISFIED",
                                                    "1.2",
                                                    "0.8")),
                                    NO_NOTES),
                            null,
                            List.of(new Comparison.Refusal(2, "/site/x", "is not known"))));

    private static Comparison.VerdictChange move(
            String item, String from, String to, String before, String after) {
        return new Comparison.VerdictChange(
                item,
                "glass",
                from,
                to,
                new BigDecimal(before),
                new BigDecimal(after),
                new BigDecimal(after).subtract(new BigDecimal(before)));
    }

    private static Map<String, Object> note(String mark, String text, String item) {
        return Map.of("mark", mark, "text", text, "items", List.of(item));
    }

    @Test
    void pageIsWellFormedAndTellsEverything() throws Exception {
        Document page = page(COMPARISON);
        assertThat(page.getDocumentElement().getAttribute("lang")).isEqualTo("en");
        List<String> rows = rows(page);
        assertThat(rows)
                .contains(
                        "glassType/G<1> | /glassTypes/0/panes/0/nominalThickness | 6 mm |"
                                + " =HYPERLINK(\"x\")",
                        "N-03 | /bays/0/load | -35 psf | \u2013",
                        "N-03/lite/1-2 | glass | \u25cf Satisfied | \u25b2 Exceeded | 0.95 | 1.05 |"
                                + " +0.1",
                        "N-04 | glass | \u2013 | \u25ca Undetermined | \u2013 | \u2013 | \u2013",
                        "N-09/lite/1-1 | glass | \u25b2 Exceeded | \u25cf Satisfied | 1.2 | 0.8 |"
                                + " -0.4",
                        "Appeared | N-03/lite/1-1 | \u2013 | * Blocks at eighth points.",
                        "Changed | N-03/anchor/L3 | 1 Fixed. | 2 Fixed.");
        // what became worse stands before what only moved
        assertThat(
                        rows.indexOf(
                                rows.stream()
                                        .filter(r -> r.startsWith("N-03/lite/1-2"))
                                        .findFirst()
                                        .orElseThrow()))
                .isLessThan(
                        rows.indexOf(
                                rows.stream()
                                        .filter(r -> r.startsWith("N-03/lite/1-1"))
                                        .findFirst()
                                        .orElseThrow()));
        assertThat(page.getDocumentElement().getTextContent())
                .contains("Today's engine refuses revision 2 at /site/x: is not known")
                .contains("recompute=true")
                .contains("never replace, the judgement");
    }

    @Test
    void nothingChangedIsSaid() throws Exception {
        Document page = page(new Comparison(1, 2, List.of(), List.of(), NO_NOTES, false, null));
        assertThat(rows(page)).isEmpty();
        assertThat(page.getDocumentElement().getTextContent())
                .contains("None.")
                .contains("The same engine version computed both.")
                .contains("No shop-drawing note appeared");
    }

    @Test
    void tableHasALineForEachChange() throws Exception {
        List<CSVRecord> lines =
                CSVFormat.RFC4180
                        .builder()
                        .setHeader()
                        .setSkipHeaderRecord(true)
                        .get()
                        .parse(new StringReader(new String(ComparisonCsv.write(COMPARISON), UTF_8)))
                        .getRecords();
        assertThat(lines)
                .extracting(line -> line.get("kind"))
                .containsExactly(
                        "INPUT",
                        "INPUT",
                        "VERDICT",
                        "VERDICT",
                        "VERDICT",
                        "NOTE_ADDED",
                        "NOTE_CHANGED",
                        "ENGINE_EFFECT_VERDICT",
                        "REFUSED_TODAY");
        assertThat(lines.get(0).get("to"))
                .as("what a spreadsheet would run")
                .isEqualTo("'=HYPERLINK(\"x\")");
        assertThat(lines.get(1).get("from")).as("a quantity is none").isEqualTo("-35 psf");
        assertThat(lines.get(7).get("utilizationChange")).isEqualTo("-0.4");
        assertThat(lines.get(6).get("to")).isEqualTo("2 Fixed.");
    }

    private static Document page(Comparison comparison) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        return factory.newDocumentBuilder()
                .parse(new ByteArrayInputStream(ComparisonPage.write(comparison)));
    }

    private static List<String> rows(Document page) {
        List<String> rows = new ArrayList<>();
        NodeList bodies = page.getElementsByTagName("tbody");
        for (int i = 0; i < bodies.getLength(); i++) {
            NodeList lines = ((Element) bodies.item(i)).getElementsByTagName("tr");
            for (int j = 0; j < lines.getLength(); j++) {
                List<String> cells = new ArrayList<>();
                NodeList nodes = lines.item(j).getChildNodes();
                for (int k = 0; k < nodes.getLength(); k++) {
                    cells.add(nodes.item(k).getTextContent());
                }
                rows.add(String.join(" | ", cells));
            }
        }
        return rows;
    }
}
