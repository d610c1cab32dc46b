package org.bayledger.drawing;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.bayledger.contract.Contract;
import org.bayledger.contract.RunningService;
import org.junit.jupiter.api.Test;
import org.springframework.boot.test.web.server.LocalServerPort;

/** Drawings over HTTP, from documents that are sent and from recorded ones. */
@RunningService
class DrawingEndpointTest {

    private static final String PATH = "/v1/drawings";

    @LocalServerPort private int port;

    private final HttpClient http = HttpClient.newHttpClient();

    @Test
    void answersWithAnSvgInTheUnitsThatAreAskedFor() throws Exception {
        HttpResponse<String> drawn = post(PATH, request("N"), "Accept", "image/svg+xml");
        assertThat(drawn.statusCode()).as(drawn.body()).isEqualTo(200);
        assertThat(type(drawn)).isEqualTo("image/svg+xml");
        assertThat(drawn.body()).contains("psf").contains("Engine 0.1.0");
        assertThat(post(PATH + "?units=SI", request("N")).body()).contains("kPa");
    }

    @Test
    void answersFaultsWithProblems() throws Exception {
        problem(post(PATH, request("Q"), "Accept", "image/svg+xml"), 422, "/elevation");
        problem(
                post(PATH, request("N").replace("\"drawing\"", "\"bay\":\"E-101\",\"drawing\"")),
                422,
                "/bay");
        problem(post(PATH, request("N").replace("WIND_ZONES", "SUNSET")), 400, "/drawing");
        problem(post(PATH, request("N").replace("WIND_ZONES", "INTERNAL_SEALS")), 400, "/bay");
        problem(post(PATH, request("N").replace("WIND_ZONES", "SPAN_CHART")), 400, "/section");
        problem(post(PATH, request("N").replace("\"120 ft\"", "\"120 mph\"")), 400, "/document");
        problem(post(PATH + "?unit=SI", request("N")), 400, "known here: units");
        problem(post(PATH, request("N"), "Accept", "application/json"), 406, "");
        problem(post(PATH, request("N"), "Accept", "image/png"), 406, "");
    }

    @Test
    void drawsARecordedDocument() throws Exception {
        String project =
                post("/v1/projects", "{\"name\":\"Drawn\"}")
                        .headers()
                        .firstValue("Location")
                        .orElseThrow();
        String body =
                "{\"author\":\"R. Reviewer\",\"reason\":\"drawn\",\"document\":" + demo() + "}";
        HttpResponse<String> recorded = post(project + "/revisions", body, "If-None-Match", "*");
        assertThat(recorded.statusCode()).as(recorded.body()).isEqualTo(201);
        String drawings = project + "/revisions/1/drawings";
        HttpResponse<String> drawn = get(drawings + "?drawing=WIND_ZONES&elevation=N");
        assertThat(drawn.statusCode()).as(drawn.body()).isEqualTo(200);
        assertThat(type(drawn)).isEqualTo("image/svg+xml");
        String hash = recorded.headers().firstValue("ETag").orElseThrow().substring(1, 13);
        List<String> texts = Drawn.of(drawn.body().getBytes(UTF_8)).texts();
        assertThat(texts)
                .contains(
                        "Revision 1, hash "
                                + hash
                                + ", recorded by engine 0.1.0, drawn by engine 0.1.0");
        List<String> sent = Drawn.of(post(PATH, request("N")).body().getBytes(UTF_8)).texts();
        assertThat(texts).containsAll(sent.stream().filter(t -> !t.startsWith("Engine")).toList());

        for (String query :
                List.of(
                        "SETTING_BLOCKS&bay=N-202",
                        "INTERNAL_SEALS&bay=N-202",
                        "DEFLECTED_HORIZONTAL&bay=N-202&item=N-202%2Fhorizontal%2F3",
                        "SPAN_CHART&section=V2")) {
            HttpResponse<String> other = get(drawings + "?elevation=N&drawing=" + query);
            assertThat(other.statusCode()).as(other.body()).isEqualTo(200);
            assertThat(type(other)).isEqualTo("image/svg+xml");
            assertThat(other.body()).contains("Revision 1, hash " + hash, "Quillmoor");
        }
        problem(
                get(drawings + "?drawing=SETTING_BLOCKS&elevation=N"),
                400,
                "query parameter bay: is required for SETTING_BLOCKS");
        problem(
                get(drawings + "?drawing=DEFLECTED_HORIZONTAL&elevation=N&bay=N-202&item=x"),
                422,
                "query parameter item: 'x' is no horizontal that bends under glass");
        problem(
                get(drawings + "?drawing=SPAN_CHART&elevation=N&section=H9"),
                422,
                "query parameter section");
        problem(
                get(drawings + "?drawing=WIND_ZONES&elevation=Q"),
                422,
                "query parameter elevation");
        problem(get(drawings + "?drawing=SUNSET&elevation=N"), 400, "WIND_ZONES");
        problem(get(drawings + "?drawing=WIND_ZONES"), 400, "elevation");
        problem(get(project + "/revisions/2/drawings?drawing=WIND_ZONES&elevation=N"), 404, "");
    }

    private static void problem(HttpResponse<String> answer, int status, String said) {
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(status);
        assertThat(type(answer)).isEqualTo("application/problem+json");
        Contract.validateProblem(answer.body());
        assertThat(answer.body()).contains(said);
    }

    private static String type(HttpResponse<String> answer) {
        return answer.headers().firstValue("Content-Type").orElse("");
    }

    private static String demo() throws IOException {
        return Files.readString(Path.of("demo-seed/quillmoor-library-1.json"));
    }

    private static String request(String elevation) throws IOException {
        return "{\"document\":"
                + demo()
                + ",\"drawing\":\"WIND_ZONES\",\"elevation\":\""
                + elevation
                + "\"}";
    }

    private HttpResponse<String> get(String path) throws Exception {
        return http.send(
                HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path)).build(),
                HttpResponse.BodyHandlers.ofString());
    }

    private HttpResponse<String> post(String path, String body, String... headers)
            throws Exception {
        HttpRequest.Builder request =
                HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path))
                        .header("Content-Type", "application/json")
                        .POST(HttpRequest.BodyPublishers.ofString(body));
        if (headers.length > 0) {
            request.headers(headers);
        }
        return http.send(request.build(), HttpResponse.BodyHandlers.ofString());
    }
}
