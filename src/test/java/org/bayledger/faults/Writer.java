package org.bayledger.faults;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Appends to one project, and remembers what was acknowledged and what was left in the air. */
final class Writer {

    private static final JsonMapper JSON = JsonMapper.shared();
    private static final JsonNode EXAMPLE = example();

    /** Longer than any answer takes; a test that waits as long has failed. */
    private static final Duration NEVER = Duration.ofSeconds(60);

    private final HttpClient http =
            HttpClient.newBuilder().connectTimeout(Duration.ofSeconds(10)).build();
    private final String project;
    private final String keys;
    private final List<Acknowledged> acknowledged = new ArrayList<>();
    private int readBack;
    private @Nullable Attempt open;
    private int attempts;

    /** A revision that the service said it had recorded. */
    record Acknowledged(int number, String hash, String etag, String body) {}

    /** A request whose answer never came. */
    record Attempt(String key, String body, String precondition) {}

    /** Creates a project to write to. */
    Writer(int port) throws IOException, InterruptedException {
        HttpResponse<String> made =
                send(port, "/v1/projects", "{\"name\":\"Killed and risen\"}", List.of());
        assertThat(made.statusCode()).as(made.body()).isEqualTo(201);
        project = made.headers().firstValue("Location").orElseThrow();
        keys = "attempt";
    }

    private Writer(String project, String keys) {
        this.project = project;
        this.keys = keys;
    }

    /** Another writer to the same project, with keys of its own or the same ones. */
    Writer besides(String otherKeys) {
        return new Writer(project, otherKeys);
    }

    String project() {
        return project;
    }

    List<Acknowledged> acknowledged() {
        return acknowledged;
    }

    /** Whether a request is in the air. */
    boolean isOpen() {
        return open != null;
    }

    /** Records one more revision; what goes wrong on the way leaves the attempt open. */
    HttpResponse<String> append(int port) throws IOException, InterruptedException {
        attempts++;
        open = new Attempt(keys + "-" + attempts, body(attempts), precondition());
        return again(port);
    }

    /** Sends the open attempt, or sends it once more: same key, same body. */
    HttpResponse<String> again(int port) throws IOException, InterruptedException {
        Attempt attempt = Objects.requireNonNull(open);
        HttpResponse<String> answer =
                send(
                        port,
                        project + "/revisions",
                        attempt.body(),
                        List.of(attempt.precondition(), "Idempotency-Key: " + attempt.key()));
        if (answer.statusCode() == 201) {
            JsonNode made = JSON.readTree(answer.body());
            acknowledged.add(
                    new Acknowledged(
                            made.path("number").asInt(),
                            made.path("hash").asString(),
                            answer.headers().firstValue("ETag").orElseThrow(),
                            answer.body()));
            open = null;
        }
        return answer;
    }

    /** Everything acknowledged is there as it was acknowledged, and the chain is whole. */
    void everythingStands(int port) throws IOException, InterruptedException {
        readBack = 0;
        newestStands(port);
    }

    /**
     * The chain is whole and leads to the last revision that was acknowledged, and what was
     * acknowledged since it was read back last is there as it was acknowledged. What was read back
     * before is under the hash of the last one.
     */
    void newestStands(int port) throws IOException, InterruptedException {
        JsonNode verification = JSON.readTree(get(port, project + verificationOfTheLast()).body());
        assertThat(verification.path("intact").asBoolean()).as("%s", verification).isTrue();
        int size = verification.path("size").asInt();
        assertThat(size)
                .as("nothing acknowledged is missing, and at most the open request was recorded")
                .isBetween(acknowledged.size(), acknowledged.size() + (isOpen() ? 1 : 0));
        for (Acknowledged made : acknowledged.subList(readBack, acknowledged.size())) {
            HttpResponse<String> read = get(port, project + "/revisions/" + made.number());
            assertThat(read.statusCode()).isEqualTo(200);
            assertThat(JSON.readTree(read.body()).path("hash").asString()).isEqualTo(made.hash());
        }
        readBack = acknowledged.size();
        assertThat(acknowledged.stream().map(Acknowledged::number).toList())
                .as("one number, one revision")
                .doesNotHaveDuplicates();
    }

    private String verificationOfTheLast() {
        if (acknowledged.isEmpty()) {
            return "/verification";
        }
        Acknowledged last = acknowledged.get(acknowledged.size() - 1);
        return "/verification?size=" + last.number() + "&headHash=" + last.hash();
    }

    /** A retry of the open request records it once, and every further one answers the same. */
    void retryIsAnsweredOnce(int port) throws IOException, InterruptedException {
        if (!isOpen()) {
            return;
        }
        Attempt attempt = Objects.requireNonNull(open);
        HttpResponse<String> first = again(port);
        assertThat(first.statusCode()).as(first.body()).isEqualTo(201);
        open = attempt;
        HttpResponse<String> second = again(port);
        acknowledged.remove(acknowledged.size() - 1);
        assertThat(second.statusCode()).isEqualTo(201);
        assertThat(second.body()).isEqualTo(first.body());
        assertThat(second.headers().firstValue("ETag"))
                .isEqualTo(first.headers().firstValue("ETag"));
    }

    HttpResponse<String> get(int port, String path) throws IOException, InterruptedException {
        return http.send(request(port, path).GET().build(), HttpResponse.BodyHandlers.ofString());
    }

    private String precondition() {
        return acknowledged.isEmpty()
                ? "If-None-Match: *"
                : "If-Match: " + acknowledged.get(acknowledged.size() - 1).etag();
    }

    private HttpResponse<String> send(int port, String path, String body, List<String> headers)
            throws IOException, InterruptedException {
        HttpRequest.Builder request =
                request(port, path)
                        .header("Content-Type", "application/json")
                        .POST(HttpRequest.BodyPublishers.ofString(body));
        for (String header : headers) {
            int colon = header.indexOf(": ");
            request.header(header.substring(0, colon), header.substring(colon + 2));
        }
        return http.send(request.build(), HttpResponse.BodyHandlers.ofString(UTF_8));
    }

    private static HttpRequest.Builder request(int port, String path) {
        return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path)).timeout(NEVER);
    }

    private static String body(int attempt) {
        ObjectNode body = EXAMPLE.deepCopy().asObject();
        body.put("reason", "attempt " + attempt);
        body.path("document").asObject().put("name", "Issue " + attempt);
        return JSON.writeValueAsString(body);
    }

    private static JsonNode example() {
        try {
            return JSON.readTree(
                    Files.readString(
                            Path.of("src/main/resources/contract/recordRevision.request.json")));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
