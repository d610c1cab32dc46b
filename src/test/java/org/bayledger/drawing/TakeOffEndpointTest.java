package org.bayledger.drawing;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.assertj.core.data.Offset;
import org.bayledger.contract.RunningService;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Take-offs of the demo, held against counts by hand: five bays, their grids and build-ups are in
 * demo-seed.
 */
@RunningService
class TakeOffEndpointTest {

    private static final String XLSX =
            "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

    @LocalServerPort private int port;

    private final HttpClient http = HttpClient.newHttpClient();

    @Test
    void glassAddsUpToTheBays() throws Exception {
        List<CSVRecord> rows = csv("GLASS");
        // every bay's lites, and its area: columns x rows, width x height
        int lites = 0;
        BigDecimal area = BigDecimal.ZERO;
        for (double[][] bay : BAYS) {
            lites += bay[0].length * bay[1].length;
            area = area.add(BigDecimal.valueOf(sum(bay[0]) * sum(bay[1])));
        }
        assertThat(rows.stream().mapToInt(row -> Integer.parseInt(row.get("count"))).sum())
                .isEqualTo(lites);
        assertThat(total(rows, "area (ft2)")).isCloseTo(area.doubleValue(), within(1e-3));
        assertThat(rows).extracting(row -> row.get("glass type")).contains("G1", "G2");
        for (CSVRecord row : rows) {
            // glass of 2500 kg/m3: two panes of 6 mm; 8 mm and two plies of 5 mm, where the
            // interlayer of 1.52 mm adds less than 2 kg/m2
            boolean laminated = row.get("glass type").equals("G3");
            double perSquareFoot = (laminated ? 45 : 30) * 0.3048 * 0.3048 / 0.45359237;
            double weight = number(row, "weight (lb)") / number(row, "area (ft2)");
            assertThat(weight)
                    .as(row.toString())
                    .isBetween(perSquareFoot - 1e-4, perSquareFoot + (laminated ? 0.41 : 1e-4));
            double[] feet = {inches(row.get("width")) / 12, inches(row.get("height")) / 12};
            assertThat(number(row, "area (ft2)"))
                    .as(row.toString())
                    .isCloseTo(number(row, "count") * feet[0] * feet[1], within(1e-3));
        }
    }

    private static double number(CSVRecord row, String column) {
        return Double.parseDouble(row.get(column));
    }

    private static double inches(String length) {
        assertThat(length).endsWith(" in");
        return Double.parseDouble(length.replace(" in", ""));
    }

    @Test
    void twoBlocksALite() throws Exception {
        List<CSVRecord> rows = csv("BLOCKS");
        int lites = Arrays.stream(BAYS).mapToInt(bay -> bay[0].length * bay[1].length).sum();
        assertThat(rows.stream().mapToInt(row -> Integer.parseInt(row.get("lites"))).sum())
                .isEqualTo(lites);
        for (CSVRecord row : rows) {
            assertThat(Integer.parseInt(row.get("blocks")))
                    .isEqualTo(2 * Integer.parseInt(row.get("lites")));
        }
    }

    @Test
    void aluminumIsLengthTimesMassPerLength() throws Exception {
        List<CSVRecord> rows = csv("ALUMINUM");
        assertThat(rows).extracting(row -> row.get("section")).contains("V1", "H1");
        for (CSVRecord row : rows) {
            // massPerLength of the demo's sections, lb/ft
            double each =
                    switch (row.get("section")) {
                        case "V1" -> 3.4;
                        case "V2" -> 4.6;
                        case "H1" -> 2.1;
                        case "H2" -> 3.6;
                        default -> throw new AssertionError(row.toString());
                    };
            assertThat(Double.parseDouble(row.get("mass (lb)")))
                    .isCloseTo(Double.parseDouble(row.get("length (ft)")) * each, within(1e-2));
        }
    }

    @Test
    void everyVerticalHasItsAnchors() throws Exception {
        List<CSVRecord> rows = csv("ANCHORS");
        // 2 verticals of N-201, whose third is N-202's first, then 3 each of N-202 (its fourth is
        // N-203's first), N-203, N-701 and E-101; each hangs from one anchor and is held by one,
        // and the dead-load anchor above the stack joint is the next piece's
        assertThat(rows)
                .extracting(row -> row.get("role") + " " + row.get("count"))
                .containsExactlyInAnyOrder("DEAD_LOAD 14", "WIND_LOAD 14");
    }

    @Test
    void theWorkbookHasASheetForEach(@TempDir Path folder) throws Exception {
        HttpResponse<byte[]> answer = take(null, XLSX);
        assertThat(answer.statusCode()).isEqualTo(200);
        List<String> parts = new ArrayList<>();
        String strings = "";
        String workbook = "";
        Path file = Files.write(folder.resolve("take-offs.xlsx"), answer.body());
        try (ZipFile zip = new ZipFile(file.toFile())) {
            for (ZipEntry entry : Collections.list(zip.entries())) {
                parts.add(entry.getName());
                String text = new String(zip.getInputStream(entry).readAllBytes(), UTF_8);
                strings += entry.getName().endsWith("sharedStrings.xml") ? text : "";
                workbook += entry.getName().endsWith("workbook.xml") ? text : "";
            }
        }
        assertThat(parts).filteredOn(name -> name.matches("xl/worksheets/.*")).hasSize(5);
        assertThat(workbook).contains("Glass", "Blocks", "Sealant", "Aluminum", "Anchors");
        assertThat(strings).contains("glass type", "DEAD_LOAD", "JOINT_PLUG");
    }

    @Test
    void aTableIsOneList() throws Exception {
        HttpResponse<byte[]> answer = take(null, "text/csv");
        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(new String(answer.body(), UTF_8))
                .contains("\"pointer\":\"/takeOff\"")
                .contains("GLASS");
    }

    private static final Path DEMO = Path.of("demo-seed/quillmoor-library-1.json");

    /** Columns and rows of the demo's bays, ft. */
    private static final double[][][] BAYS = bays();

    private static double[][][] bays() {
        try {
            JsonNode demo = JsonMapper.shared().readTree(Files.readString(DEMO));
            List<double[][]> bays = new ArrayList<>();
            for (JsonNode bay : demo.path("bays")) {
                bays.add(new double[][] {feet(bay.path("columns")), feet(bay.path("rows"))});
            }
            return bays.toArray(double[][][]::new);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static double[] feet(JsonNode list) {
        double[] feet = new double[list.size()];
        for (int i = 0; i < feet.length; i++) {
            String[] parts = list.get(i).asString().split(" ", 2);
            assertThat(parts[1]).isEqualTo("ft");
            feet[i] = Double.parseDouble(parts[0]);
        }
        return feet;
    }

    private static double sum(double[] values) {
        return Arrays.stream(values).sum();
    }

    private static double total(List<CSVRecord> rows, String column) {
        return rows.stream().mapToDouble(row -> Double.parseDouble(row.get(column))).sum();
    }

    private static Offset<Double> within(double offset) {
        return org.assertj.core.api.Assertions.within(offset);
    }

    private List<CSVRecord> csv(String kind) throws Exception {
        HttpResponse<byte[]> answer = take(kind, "text/csv");
        assertThat(answer.statusCode()).as(new String(answer.body(), UTF_8)).isEqualTo(200);
        return CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get()
                .parse(new StringReader(new String(answer.body(), UTF_8)))
                .getRecords();
    }

    private HttpResponse<byte[]> take(String kind, String accept) throws Exception {
        String body =
                "{\"document\":"
                        + Files.readString(DEMO)
                        + (kind == null ? "" : ",\"takeOff\":\"" + kind + "\"")
                        + "}";
        return http.send(
                HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + "/v1/take-offs"))
                        .header("Accept", accept)
                        .header("Content-Type", "application/json")
                        .POST(HttpRequest.BodyPublishers.ofString(body))
                        .build(),
                HttpResponse.BodyHandlers.ofByteArray());
    }
}
