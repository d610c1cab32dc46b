package org.bayledger.drawing;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.bayledger.contract.RunningService;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;

/**
 * The review sheet and the comparison as people see them: in a browser at the widths of a phone and
 * of a desk, on paper, and by the rules of the Web Content Accessibility Guidelines.
 */
@RunningService
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SheetBrowserTest {

    private static final int PHONE = 390;
    private static final int DESK = 1280;

    @TempDir static Path profile;

    @LocalServerPort private int port;

    private final HttpClient http = HttpClient.newHttpClient();
    private Browser browser;
    private String sheet;
    private String comparison;

    @BeforeAll
    void start() throws Exception {
        Browser.require();
        String project =
                send("/v1/projects", "{\"name\":\"Looked at\"}")
                        .headers()
                        .firstValue("Location")
                        .orElseThrow();
        HttpResponse<String> first =
                send(project + "/revisions", revision(1), "If-None-Match", "*");
        send(
                project + "/revisions",
                revision(2),
                "If-Match",
                first.headers().firstValue("ETag").orElseThrow());
        sheet = at(project + "/revisions/1/sheet");
        comparison = at(project + "/comparisons?base=1&head=2");
        browser = Browser.start(profile);
    }

    @AfterAll
    void stop() throws Exception {
        if (browser != null) {
            browser.close();
        }
    }

    @Test
    void nothingMakesThePageScrollSideways() {
        for (String page : List.of(sheet, comparison)) {
            for (int width : List.of(PHONE, DESK)) {
                browser.show(page, width);
                assertThat(browser.run("return window.innerWidth").asInt()).isEqualTo(width);
                assertThat(browser.run("return document.documentElement.scrollWidth").asInt())
                        .as("%s at %d px", page, width)
                        .isLessThanOrEqualTo(width);
                assertThat(
                                texts(
                                        browser.run(
                                                "return [...document.querySelectorAll('body *')]"
                                                        + ".filter(e => !e.closest('.wide')"
                                                        + " && e.getBoundingClientRect().right >"
                                                        + " innerWidth + 1).map(e => e.outerHTML"
                                                        + ".slice(0, 80))")))
                        .as("what sticks out of %s at %d px", page, width)
                        .isEmpty();
            }
        }
        browser.show(sheet, PHONE);
        assertThat(
                        browser.run(
                                        "return [...document.querySelectorAll('.wide')].filter(e =>"
                                                + " e.scrollWidth > e.clientWidth).length")
                                .asInt())
                .as("wide tables scroll inside their own region")
                .isGreaterThan(10);
    }

    @Test
    void wordsAreLargeEnoughToRead() {
        for (int width : List.of(PHONE, DESK)) {
            browser.show(sheet, width);
            assertThat(
                            browser.run(
                                            "return Math.min(...[...document.querySelectorAll('p,"
                                                    + " li, th, td, h1, h2, h3, figcaption, a')]"
                                                    + ".map(e => parseFloat(getComputedStyle(e)"
                                                    + ".fontSize)))")
                                    .asDouble())
                    .as("least size at %d px", width)
                    .isGreaterThanOrEqualTo(14);
            assertThat(
                            texts(
                                    browser.run(
                                            "return [...document.querySelectorAll('td, th')].filter(e"
                                                    + " => e.scrollWidth > e.clientWidth + 1).map(e =>"
                                                    + " e.textContent)")))
                    .as("words that run out of their cell at %d px", width)
                    .isEmpty();
        }
    }

    @Test
    void headingsAreInOrderAndImagesHaveNames() {
        browser.show(sheet, DESK);
        List<String> headings =
                texts(
                        browser.run(
                                "return [...document.querySelectorAll('h1, h2, h3, h4')].map(e =>"
                                        + " e.tagName)"));
        assertThat(headings.get(0)).isEqualTo("H1");
        assertThat(headings).filteredOn("H1"::equals).hasSize(1);
        for (int i = 1; i < headings.size(); i++) {
            assertThat(headings.get(i).charAt(1) - headings.get(i - 1).charAt(1))
                    .isLessThanOrEqualTo(1);
        }
        JsonNode images =
                browser.run(
                        "return [...document.images].map(e => [e.alt, String(e.complete &&"
                                + " e.naturalWidth > 0)])");
        assertThat(images.size()).as("2 elevations, 3 drawings of each of 5 bays").isEqualTo(17);
        List<String> names = new ArrayList<>();
        for (JsonNode image : images) {
            names.add(image.path(0).asString());
            assertThat(image.path(1).asString()).isEqualTo("true");
        }
        assertThat(names)
                .doesNotHaveDuplicates()
                .contains("Setting blocks of bay N-202", "Deflected horizontal of bay N-202");
    }

    @Test
    void pagesKeepTheAccessibilityGuidelines() throws Exception {
        for (String page : List.of(sheet, comparison)) {
            for (int width : List.of(PHONE, DESK)) {
                browser.show(page, width);
                browser.run(axe());
                JsonNode found =
                        browser.await(
                                "const done = arguments[0];"
                                        + "axe.run({runOnly: ['wcag2a', 'wcag2aa', 'wcag21a',"
                                        + " 'wcag21aa', 'best-practice']}).then(r => done({passes:"
                                        + " r.passes.length, violations: r.violations.map(v => v.id +"
                                        + " ': ' + v.nodes.length + ' x ' + v.nodes[0].html)}))");
                assertThat(found.path("passes").asInt()).isGreaterThan(15);
                assertThat(texts(found.path("violations")))
                        .as("%s at %d px", page, width)
                        .isEmpty();
            }
        }
    }

    @Test
    void printsOnLetterAndOnA4() throws Exception {
        browser.show(sheet, DESK);
        paper(browser.print(Map.of("preferCSSPageSize", true)), 612, 792);
        browser.run(
                "const style = document.querySelector('style'); style.textContent ="
                        + " style.textContent.replaceAll('size: letter', 'size: A4')");
        paper(browser.print(Map.of("preferCSSPageSize", true)), 595, 842);
    }

    private static void paper(byte[] pdf, int width, int height) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(document.getNumberOfPages()).isBetween(30, 60);
            int lying = 0;
            for (int i = 1; i <= document.getNumberOfPages(); i++) {
                PDPage page = document.getPage(i - 1);
                boolean lies = page.getMediaBox().getWidth() > page.getMediaBox().getHeight();
                lying += lies ? 1 : 0;
                float right = page.getMediaBox().getWidth();
                assertThat((int) right)
                        .as("width of page %d", i)
                        .isBetween((lies ? height : width) - 1, (lies ? height : width) + 1);
                Edges edges = new Edges();
                edges.setStartPage(i);
                edges.setEndPage(i);
                String text = edges.getText(document);
                assertThat(edges.right).as("right edge of page %d", i).isBetween(100f, right - 20);
                assertThat(text).contains(i + " of " + document.getNumberOfPages());
            }
            assertThat(lying).as("drawings lie").isEqualTo(17);
            assertThat(new PDFTextStripper().getText(document))
                    .contains("N-701/mullion/2", "Use section V2.", "\u25b2 Exceeded");
        }
    }

    /** How far text goes to the right. */
    private static final class Edges extends PDFTextStripper {

        private float right;

        @Override
        protected void processTextPosition(TextPosition text) {
            right = Math.max(right, text.getX() + text.getWidth());
            super.processTextPosition(text);
        }
    }

    private static String axe() throws IOException {
        try (InputStream script = SheetBrowserTest.class.getResourceAsStream("/axe.min.js")) {
            return new String(script.readAllBytes(), UTF_8);
        }
    }

    private static List<String> texts(JsonNode list) {
        List<String> texts = new ArrayList<>();
        list.forEach(text -> texts.add(text.asString()));
        return texts;
    }

    private HttpResponse<String> send(String path, String body, String... headers)
            throws Exception {
        HttpRequest.Builder request =
                HttpRequest.newBuilder(URI.create(at(path)))
                        .header("Content-Type", "application/json")
                        .POST(HttpRequest.BodyPublishers.ofString(body));
        if (headers.length > 0) {
            request.headers(headers);
        }
        HttpResponse<String> answer =
                http.send(request.build(), HttpResponse.BodyHandlers.ofString());
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(201);
        return answer;
    }

    private String at(String path) {
        return "http://127.0.0.1:" + port + path;
    }

    private static String revision(int number) throws IOException {
        return "{\"author\":\"R. Reviewer\",\"reason\":\"handed over\",\"document\":"
                + Files.readString(Path.of("demo-seed/quillmoor-library-" + number + ".json"))
                + "}";
    }
}
