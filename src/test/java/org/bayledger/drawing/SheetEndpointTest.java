package org.bayledger.drawing;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.io.ByteArrayInputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.text.PDFTextStripper;
import org.bayledger.contract.RunningService;
import org.bayledger.quantity.UnitSystem;
import org.junit.jupiter.api.Test;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The review sheet over HTTP, as a page and as a PDF, sent and recorded. */
@RunningService
class SheetEndpointTest {

    @LocalServerPort private int port;

    private final HttpClient http = HttpClient.newHttpClient();

    @Test
    void pageOfASentDocumentSaysWhatTheReviewSays() throws Exception {
        Document page = page(post("/v1/reviews", demo(), "text/html").body());
        JsonNode review = JsonMapper.shared().readTree(post("/v1/reviews", demo(), "*/*").body());
        assertThat(texts(page, "h1")).containsExactly("Quillmoor Civic Library");
        assertThat(page.getDocumentElement().getTextContent())
                .contains("stands in no ledger")
                .contains("\u25b2 Exceeded");
        List<String> rows = rows(page);
        int items = 0;
        for (JsonNode bay : review.path("bays")) {
            for (JsonNode item : bay.path("items")) {
                items++;
                String start =
                        item.path("id").asString()
                                + " | "
                                + ResultTree.words(item.path("check").asString())
                                + " | "
                                + VerdictMark.text(item.path("verdict").asString());
                assertThat(rows).as(start).anyMatch(row -> row.startsWith(start));
            }
        }
        assertThat(items).isGreaterThan(100);
        for (JsonNode note : review.path("notes")) {
            assertThat(rows).anyMatch(row -> row.endsWith(note.path("text").asString()));
        }
        assertThat(rows)
                .as("both signs for every row of the wind schedule, with their units")
                .filteredOn(row -> row.matches(".* \\| [\\d.]+ psf \\| \u2212[\\d.]+ psf \\| .*"))
                .hasSizeGreaterThanOrEqualTo(review.path("windSchedule").size());
        assertThat(texts(page, "li"))
                .contains("guards and fall protection")
                .contains("Follow the manufacturers' instructions for every product used.");
        assertThat(page.getElementsByTagName("script").getLength()).isZero();
        assertThat(rows)
                .contains(
                        "Standard | ASCE/SEI 7-16",
                        "Basic wind speed | 115 mph",
                        "Enclosure classification | Enclosed",
                        "Exposure category | B",
                        "Design basis | Strength");
        JsonNode seals = item(review, "N-202/seals").path("result");
        for (JsonNode step : seals.path("sequence")) {
            assertThat(rows)
                    .anyMatch(
                            row ->
                                    row.startsWith(
                                            step.path("step").asString()
                                                    + " | "
                                                    + step.path("title").asString()
                                                    + " | "
                                                    + step.path("tooling").asString("")));
        }
        assertThat(page.getDocumentElement().getTextContent())
                .contains("Preparation: Wipe both metals")
                .doesNotContain(seals.at("/joints/0/instruction").asString());
        JsonNode remedies = item(review, "N-701/mullion/2").at("/result/remedies");
        assertThat(remedies.size()).isPositive();
        for (JsonNode remedy : remedies) {
            assertThat(texts(page, "li"))
                    .anyMatch(
                            line ->
                                    line.startsWith(
                                            remedy.path("text").asString()
                                                    + " Utilization then: "));
        }
        NodeList images = page.getElementsByTagName("img");
        assertThat(images.getLength()).isPositive();
        for (int i = 0; i < images.getLength(); i++) {
            Element image = (Element) images.item(i);
            assertThat(image.getAttribute("alt")).isNotBlank();
            assertThat(image.getAttribute("src")).startsWith("data:image/svg+xml;base64,");
        }
    }

    @Test
    void drawingsAreThoseAskedForOrThoseThatTheJobHasRoomFor() throws Exception {
        assertThat(pictures(page(post("/v1/reviews?drawings=NONE", demo(), "text/html").body())))
                .isEmpty();
        assertThat(
                        pictures(
                                page(
                                        post("/v1/reviews?drawings=ELEVATIONS", demo(), "text/html")
                                                .body())))
                .hasSize(2);
        byte[] page = post("/v1/reviews", many(45), "text/html").body();
        assertThat(pictures(page(page))).hasSize(2);
        assertThat(new String(page, UTF_8)).contains("Drawings of the 45 bays are left out");
        HttpResponse<byte[]> unknown = post("/v1/reviews?drawings=SOME", demo(), "text/html");
        assertThat(unknown.statusCode()).isEqualTo(400);
        HttpResponse<byte[]> long45 = post("/v1/reviews", many(45), "application/pdf");
        assertThat(long45.statusCode()).isEqualTo(422);
        assertThat(new String(long45.body(), UTF_8))
                .contains("this job has 1125 items")
                .contains("take the page instead (Accept: text/html)");
        assertThatThrownBy(() -> SheetDrawings.chosen(SheetDrawings.ALL, 101))
                .hasMessageContaining("ask for ELEVATIONS");
        assertThat(SheetDrawings.chosen(SheetDrawings.ALL, 100)).isEqualTo(SheetDrawings.ALL);
        assertThat(SheetDrawings.chosen(null, 20)).isEqualTo(SheetDrawings.ALL);
        assertThat(SheetDrawings.chosen(null, 21)).isEqualTo(SheetDrawings.ELEVATIONS);
    }

    @Test
    void documentThatTodaysEngineRefusesHasNoDrawingsAndSaysSo() throws Exception {
        SheetPictures pictures =
                SheetPictures.ofRecorded(
                        ResultTree.of(
                                demo().replace("\"115 mph\"", "\"9000 mph\"").getBytes(UTF_8)),
                        null,
                        UnitSystem.US,
                        SheetOrigin.unrecorded("0"));
        assertThat(pictures.hasPictures()).isFalse();
        assertThat(pictures.said()).contains("refuses the document at /site/basicWindSpeed: ");
    }

    @Test
    void whatSomebodyHasToDoComesFirst() {
        assertThat(
                        SheetFinding.ofJob(
                                Map.of(
                                        "findings",
                                        List.of(
                                                finding("INFO", "A", "one"),
                                                finding("NOTE", "B", "two"),
                                                finding("ACTION", "C", "three")))))
                .extracting(SheetFinding::text)
                .containsExactly("three", "two", "one");
        List<Object> items = new ArrayList<>();
        for (int i = 1; i <= 8; i++) {
            items.add(
                    Map.of(
                            "id",
                            "B/lite/" + i,
                            "findings",
                            List.of(
                                    finding("NOTE", "SAME", "Said."),
                                    finding("NOTE", "OTHER", "Said with " + i + "."),
                                    finding("INFO", "LEFT_OUT", "Not said."))));
        }
        assertThat(SheetFinding.assumptions(Map.of("bays", List.of(Map.of("items", items)))))
                .extracting(SheetFinding::text, SheetFinding::more)
                .containsExactly(
                        tuple("Said.", " and 2 more"),
                        tuple(
                                "Said with 1. The numbers are those of the first item; the answer"
                                        + " as JSON has those of every one.",
                                " and 2 more"));
    }

    private static Map<String, String> finding(String severity, String code, String text) {
        return Map.of("severity", severity, "code", code, "text", text);
    }

    @Test
    void recordedSheetCarriesRevisionHashAndCheckpoint() throws Exception {
        String project = location(post("/v1/projects", "{\"name\":\"Sheets\"}", "*/*"));
        HttpResponse<byte[]> made =
                http.send(
                        request(project + "/revisions", "*/*")
                                .header("Content-Type", "application/json")
                                .header("If-None-Match", "*")
                                .POST(
                                        HttpRequest.BodyPublishers.ofString(
                                                "{\"author\":\"R. <Reviewer>\",\"reason\":\"handed"
                                                        + " over\",\"document\":"
                                                        + example()
                                                        + "}"))
                                .build(),
                        HttpResponse.BodyHandlers.ofByteArray());
        assertThat(made.statusCode()).isEqualTo(201);
        String hash = JsonMapper.shared().readTree(made.body()).path("hash").asString();
        String sheet = location(made) + "/sheet";

        HttpResponse<byte[]> html = get(sheet, "text/html");
        assertThat(html.headers().firstValue("Content-Type")).hasValue("text/html;charset=UTF-8");
        assertThat(rows(page(html.body())))
                .contains(
                        "Author, as claimed | R. <Reviewer>",
                        "Reason | handed over",
                        "Hash of the revision | " + hash)
                .anyMatch(row -> row.startsWith("Checkpoint to keep | size 1, headHash " + hash));

        HttpResponse<byte[]> pdf = get(sheet, "application/pdf");
        assertThat(pdf.headers().firstValue("Content-Type")).hasValue("application/pdf");
        try (PDDocument document = Loader.loadPDF(pdf.body())) {
            assertThat(document.getNumberOfPages()).isBetween(4, 40);
            assertThat(document.getPage(0).getMediaBox().getWidth())
                    .as("letter paper for a job in US units")
                    .isEqualTo(612f);
            PDFTextStripper text = new PDFTextStripper();
            String all = text.getText(document);
            assertThat(all)
                    .contains("Example wall")
                    .contains("\u25cf Satisfied")
                    .contains("never replace, the judgement");
            assertThat(all).as("names stay in one line").contains("N-01/mullion/2 Framing");
            assertThat(document.getDocumentInformation().getTitle())
                    .isEqualTo("Review sheet, revision 1: Example wall");
            assertThat(document.getDocumentInformation().getCreationDate().toInstant())
                    .isEqualTo(
                            Instant.parse(
                                            rows(page(html.body())).stream()
                                                    .filter(row -> row.startsWith("Recorded at | "))
                                                    .findFirst()
                                                    .orElseThrow()
                                                    .substring("Recorded at | ".length()))
                                    .truncatedTo(ChronoUnit.SECONDS));
            PDDocumentCatalog catalog = document.getDocumentCatalog();
            assertThat(catalog.getLanguage()).isEqualTo("en");
            assertThat(catalog.getMarkInfo().isMarked()).isTrue();
            assertThat(figures(catalog.getStructureTreeRoot()))
                    .containsExactly(
                            "Wind zones of elevation N",
                            "Setting blocks of bay N-01",
                            "Internal seals of bay N-01",
                            "Deflected horizontal of bay N-01");
            for (int i = 1; i <= document.getNumberOfPages(); i++) {
                text.setStartPage(i);
                text.setEndPage(i);
                assertThat(text.getText(document))
                        .as("page %d", i)
                        .contains("Revision 1, hash " + hash)
                        .contains(i + " of " + document.getNumberOfPages());
            }
        }
        assertThat(get(sheet, "application/pdf").body())
                .as("the same revision, the same bytes")
                .isEqualTo(pdf.body());
        assertThat(pictures(page(html.body())).get(1))
                .as("drawn as it is drawn by itself")
                .isEqualTo(
                        get(
                                        location(made)
                                                + "/drawings?drawing=SETTING_BLOCKS&elevation=N"
                                                + "&bay=N-01",
                                        "*/*")
                                .body());
        topics(location(made) + "/topics", hash);
        assertThat(get(location(made) + "9/sheet", "application/pdf").statusCode()).isEqualTo(404);
    }

    /** One topic a finding, and the same file whenever it is asked for. */
    private void topics(String path, String hash) throws Exception {
        HttpResponse<byte[]> file = get(path, "application/zip");
        assertThat(file.statusCode()).isEqualTo(200);
        assertThat(get(path, "application/zip").body()).isEqualTo(file.body());
        JsonNode findings =
                JsonMapper.shared()
                        .readTree(get(path.replace("/topics", ""), "*/*").body())
                        .at("/result/findings");
        assertThat(findings.size()).isPositive();
        List<String> titles = new ArrayList<>();
        Set<String> guids = new HashSet<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(file.body()))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                Document xml = page(zip.readAllBytes());
                if (entry.getName().equals("bcf.version")) {
                    assertThat(xml.getDocumentElement().getAttribute("VersionId")).isEqualTo("3.0");
                }
                if (entry.getName().endsWith("/markup.bcf")) {
                    Element topic = (Element) xml.getElementsByTagName("Topic").item(0);
                    String guid = topic.getAttribute("Guid");
                    assertThat(entry.getName()).isEqualTo(guid + "/markup.bcf");
                    assertThat(UUID.fromString(guid)).hasToString(guid);
                    assertThat(guids.add(guid)).as("%s is another topic's", guid).isTrue();
                    titles.addAll(texts(xml, "Title"));
                    assertThat(texts(xml, "Description").get(0)).contains(hash);
                    assertThat(texts(xml, "CreationAuthor")).containsExactly("R. <Reviewer>");
                }
            }
        }
        List<String> said = new ArrayList<>();
        for (JsonNode finding : findings) {
            String text = finding.path("text").asString();
            said.add(text.length() > 120 ? text.substring(0, 117) + "..." : text);
        }
        assertThat(titles).containsExactlyElementsOf(said);
    }

    private static List<byte[]> pictures(Document page) {
        List<byte[]> pictures = new ArrayList<>();
        NodeList images = page.getElementsByTagName("img");
        for (int i = 0; i < images.getLength(); i++) {
            String source = ((Element) images.item(i)).getAttribute("src");
            pictures.add(Base64.getDecoder().decode(source.substring(source.indexOf(',') + 1)));
        }
        return pictures;
    }

    /** What the drawings are called for those who can't see them. */
    private static List<String> figures(PDStructureNode node) {
        List<String> figures = new ArrayList<>();
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureElement element) {
                if (element.getStructureType().equals("Figure")) {
                    figures.add(element.getAlternateDescription());
                }
                figures.addAll(figures(element));
            }
        }
        return figures;
    }

    private static JsonNode item(JsonNode review, String id) {
        for (JsonNode bay : review.path("bays")) {
            for (JsonNode item : bay.path("items")) {
                if (item.path("id").asString().equals(id)) {
                    return item;
                }
            }
        }
        throw new AssertionError(id);
    }

    /** The demo with one of its bays again and again. */
    private static String many(int bays) throws Exception {
        ObjectNode demo = (ObjectNode) JsonMapper.shared().readTree(demo());
        JsonNode bay = demo.path("bays").path(0);
        ArrayNode all = demo.putArray("bays");
        for (int i = 1; i <= bays; i++) {
            all.add(((ObjectNode) bay.deepCopy()).put("id", "N-" + i));
        }
        return demo.toString();
    }

    /** What somebody is told who asks again and has an answer with a tag. */
    private int statusOfWhoHas(String tag, String path, String accept) throws Exception {
        return http.send(
                        request(path, accept).header("If-None-Match", tag).build(),
                        HttpResponse.BodyHandlers.ofByteArray())
                .statusCode();
    }

    @Test
    void whatIsReadAgainIsNotMadeAgainAndComesCompressed() throws Exception {
        String project = location(post("/v1/projects", "{\"name\":\"Tags\"}", "*/*"));
        String first = record(project, "If-None-Match", "*", example());
        record(project, "If-Match", first, example().replace("115 mph", "120 mph"));
        for (String path :
                List.of(
                        "/revisions/1/sheet?drawings=NONE",
                        "/revisions/1/drawings?drawing=WIND_ZONES&elevation=N",
                        "/revisions/1/take-offs?takeOff=GLASS",
                        "/revisions/1/topics",
                        "/revisions/1",
                        "/comparisons?base=1&head=2")) {
            HttpResponse<byte[]> read = get(project + path, "*/*");
            assertThat(read.statusCode()).as(path).isEqualTo(200);
            String tag = read.headers().firstValue("ETag").orElseThrow();
            assertThat(tag).as(path).startsWith("W/\"");
            HttpResponse<byte[]> again =
                    http.send(
                            request(project + path, "*/*").header("If-None-Match", tag).build(),
                            HttpResponse.BodyHandlers.ofByteArray());
            assertThat(again.statusCode()).as(path).isEqualTo(304);
            assertThat(again.body()).as(path).isEmpty();
            assertThat(again.headers().firstValue("ETag")).as(path).hasValue(tag);
            if (read.body().length > 4000 && !path.endsWith("topics")) {
                HttpResponse<byte[]> packed =
                        http.send(
                                request(project + path, "*/*")
                                        .header("Accept-Encoding", "gzip")
                                        .build(),
                                HttpResponse.BodyHandlers.ofByteArray());
                assertThat(packed.headers().firstValue("Content-Encoding"))
                        .as(path)
                        .hasValue("gzip");
                assertThat(packed.body().length).as(path).isLessThan(read.body().length / 2);
            }
        }
        assertThat(get(project + "/comparisons?base=2&head=1", "*/*").headers().firstValue("ETag"))
                .as("another question, another tag")
                .isNotEqualTo(
                        get(project + "/comparisons?base=1&head=2", "*/*")
                                .headers()
                                .firstValue("ETag"));
        assertThat(get(project + "/revisions/2", "*/*").headers().firstValue("ETag").orElseThrow())
                .as("the head's tag is strong: If-Match needs it")
                .startsWith("\"");
        String sheet = project + "/revisions/1/sheet?drawings=NONE";
        String tag = get(sheet, "text/html").headers().firstValue("ETag").orElseThrow();
        assertThat(statusOfWhoHas(tag, sheet, "text/html")).isEqualTo(304);
        assertThat(statusOfWhoHas(tag, sheet.replace("NONE", "ALL"), "text/html"))
                .as("the same sheet with its drawings")
                .isEqualTo(200);
        assertThat(statusOfWhoHas(tag, sheet, "application/json, text/html"))
                .as("the same sheet, in the form of somebody who takes others as well")
                .isEqualTo(200);
        assertThat(statusOfWhoHas(tag, sheet.replace("/1/", "/2/"), "text/html"))
                .as("the sheet of another revision")
                .isEqualTo(200);
        assertThat(get(project + "/revisions/9/sheet", "*/*").headers().firstValue("ETag"))
                .isEmpty();
    }

    private String record(String project, String precondition, String tag, String document)
            throws Exception {
        HttpResponse<byte[]> made =
                http.send(
                        request(project + "/revisions", "*/*")
                                .header("Content-Type", "application/json")
                                .header(precondition, tag)
                                .POST(
                                        HttpRequest.BodyPublishers.ofString(
                                                "{\"author\":\"R.\",\"reason\":\"tagged\","
                                                        + "\"document\":"
                                                        + document
                                                        + "}"))
                                .build(),
                        HttpResponse.BodyHandlers.ofByteArray());
        assertThat(made.statusCode()).isEqualTo(201);
        return made.headers().firstValue("ETag").orElseThrow();
    }

    private static Document page(byte[] html) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(html));
    }

    private static List<String> texts(Document page, String tag) {
        List<String> texts = new ArrayList<>();
        NodeList found = page.getElementsByTagName(tag);
        for (int i = 0; i < found.getLength(); i++) {
            texts.add(found.item(i).getTextContent());
        }
        return texts;
    }

    private static List<String> rows(Document page) {
        List<String> rows = new ArrayList<>();
        NodeList found = page.getElementsByTagName("tr");
        for (int i = 0; i < found.getLength(); i++) {
            List<String> cells = new ArrayList<>();
            NodeList children = found.item(i).getChildNodes();
            for (int j = 0; j < children.getLength(); j++) {
                cells.add(children.item(j).getTextContent());
            }
            rows.add(String.join(" | ", cells));
        }
        return rows;
    }

    private HttpResponse<byte[]> get(String path, String accept) throws Exception {
        return http.send(
                request(path, accept).GET().build(), HttpResponse.BodyHandlers.ofByteArray());
    }

    private HttpResponse<byte[]> post(String path, String body, String accept) throws Exception {
        return http.send(
                request(path, accept)
                        .header("Content-Type", "application/json")
                        .POST(HttpRequest.BodyPublishers.ofString(body, UTF_8))
                        .build(),
                HttpResponse.BodyHandlers.ofByteArray());
    }

    private static String location(HttpResponse<byte[]> made) {
        return made.headers().firstValue("Location").orElseThrow();
    }

    private HttpRequest.Builder request(String path, String accept) {
        return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path))
                .header("Accept", accept);
    }

    /** A job of one bay: a PDF of it is made in a second. */
    private static String example() throws Exception {
        return Files.readString(Path.of("src/main/resources/contract/review.request.json"));
    }

    private static String demo() throws Exception {
        return Files.readString(Path.of("demo-seed/quillmoor-library-1.json"));
    }
}
