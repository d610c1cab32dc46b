package org.bayledger.contract;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.bayledger.contract.Contract.Operation;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.dataformat.yaml.YAMLMapper;

/**
 * The committed contract is what the running service says of itself, and the service keeps to it.
 *
 * <p>After a change that is meant, this writes the contract and the examples of answers anew:
 *
 * <pre>mvn -B test -Dtest=ContractTest -Dbayledger.contract.write=true</pre>
 *
 * <p>Then the difference is read before it is committed: it is what callers will see.
 */
@RunningService
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class ContractTest {

    private static final boolean WRITE = Boolean.getBoolean("bayledger.contract.write");
    private static final Path EXAMPLES = Path.of("src", "main", "resources", "contract");
    private static final Path BUILT = Path.of("target", "classes", "contract");
    private static final JsonMapper JSON = JsonMapper.shared();

    @LocalServerPort private int port;

    private final HttpClient http = HttpClient.newHttpClient();

    @Test
    @Order(1)
    void everyExampleOfAnAnswerIsWhatTheServiceAnswers() throws Exception {
        Contract served =
                new Contract(
                        new YAMLMapper().readTree(send("GET", "/v3/api-docs.yaml", null).body()));
        Map<String, String> differing = new TreeMap<>();
        Map<String, String> variables = new TreeMap<>();
        for (Operation operation : Story.inOrder(served.operations())) {
            for (Media media : operation.answers()) {
                HttpResponse<byte[]> answer = perform(operation, media, variables);
                String body = new String(answer.body(), StandardCharsets.UTF_8);
                assertThat(answer.statusCode())
                        .as("%s: %s", operation, body)
                        .isEqualTo(operation.success());
                assertThat(answer.headers().firstValue("Content-Type").map(Media::of))
                        .as("%s: Content-Type", operation)
                        .contains(media);
                assertThat(media.faults(answer.body())).as("%s", operation).isEmpty();
                if (operation.id().equals("recordRevision")) {
                    recordASecond(operation, variables, answer);
                }
                if (media.shown()) {
                    compare(operation, media, body, variables, differing);
                }
            }
            for (Media sent : operation.taken()) {
                if (sent != operation.takes()) {
                    HttpResponse<byte[]> answer =
                            perform(operation, sent, operation.answers().get(0), variables);
                    assertThat(answer.statusCode())
                            .as("%s, sent as %s", operation, sent)
                            .isEqualTo(operation.success());
                }
            }
        }
        assertThat(differing).as("examples that are not what the service answers").isEmpty();
    }

    /** Holds an answer against its example, or writes the example anew. */
    private static void compare(
            Operation operation,
            Media media,
            String body,
            Map<String, String> variables,
            Map<String, String> differing)
            throws IOException {
        Path file = EXAMPLES.resolve(operation.exampleOfAnAnswer(media));
        String example = Files.exists(file) ? Files.readString(file) : "";
        String text = body;
        boolean same;
        if (media == Media.JSON) {
            JsonNode answer = Story.own(JSON.readTree(body), variables);
            Story.learn(answer, variables);
            text = JSON.writerWithDefaultPrettyPrinter().writeValueAsString(answer) + "\n";
            same =
                    !example.isEmpty()
                            && Story.stable(answer).equals(Story.stable(JSON.readTree(example)));
        } else if (media == Media.SVG) {
            same = Story.stableDrawing(body).equals(Story.stableDrawing(example));
        } else {
            text = media == Media.NDJSON ? Story.abridged(body) : body;
            same = Story.stable(text).equals(Story.stable(example));
        }
        if (!same && WRITE) {
            Files.writeString(file, text);
            Files.writeString(BUILT.resolve(file.getFileName()), text);
        } else if (!same) {
            differing.put(operation + " " + media, body);
        }
    }

    @Test
    @Order(2)
    void theCommittedContractIsWhatTheServiceServes() throws Exception {
        String served = send("GET", "/v3/api-docs.yaml", null).body();
        if (WRITE) {
            Files.createDirectories(Contract.FILE.getParent());
            Files.writeString(Contract.FILE, served);
        }
        assertThat(served).isEqualTo(Files.readString(Contract.FILE));
        assertThat(JSON.readTree(send("GET", "/v3/api-docs", null).body()))
                .isEqualTo(
                        JSON.readTree(JSON.writeValueAsString(new YAMLMapper().readTree(served))));
    }

    @Test
    @Order(3)
    void everyOperationIsDescribedWithExamplesAndProblems() {
        List<String> missing = new ArrayList<>();
        for (Operation operation : Contract.committed().operations()) {
            JsonNode node = operation.node();
            JsonNode responses = node.get("responses");
            if (!operation.id().matches("[a-z][A-Za-z]+")) {
                missing.add(operation + ": an operationId of its own, not " + operation.id());
            }
            if (node.path("summary").asString("").isBlank()) {
                missing.add(operation + ": summary");
            }
            for (JsonNode body : node.at("/requestBody/content")) {
                if (!body.has("example")) {
                    missing.add(operation + ": example of a request");
                }
            }
            JsonNode content = responses.at("/" + operation.success() + "/content");
            for (Media media : operation.answers()) {
                if (media.shown() != shows(content, media)) {
                    missing.add(operation + ": example of an answer as " + media.type());
                }
            }
            for (JsonNode parameter : node.path("parameters")) {
                if (parameter.path("description").asString("").isBlank()) {
                    missing.add(operation + ": what " + parameter.get("name") + " is");
                }
            }
            List<String> needed = new ArrayList<>(List.of("400", "406", "500"));
            if (operation.takesBody()) {
                needed.addAll(List.of("413", "415", "422"));
            }
            if (operation.path().contains("{")) {
                needed.add("404");
            }
            needed.stream()
                    .filter(status -> !responses.has(status))
                    .forEach(status -> missing.add(operation + ": " + status));
        }
        missing.addAll(Contract.committed().undescribed());
        assertThat(missing).isEmpty();
    }

    @Test
    @Order(4)
    void examplesFitTheirSchemas() throws Exception {
        for (Operation operation : Contract.committed().operations()) {
            if (operation.takesJson()) {
                String request = read(operation.exampleOfARequest());
                assertThat(Contract.faultsOfRequest(operation.method(), operation.path(), request))
                        .as("%s", operation)
                        .isEmpty();
            }
            if (operation.answers().get(0).shown()) {
                Contract.validate(
                        operation.method(),
                        operation.path(),
                        operation.success(),
                        read(operation.exampleOfAnAnswer(operation.answers().get(0))));
            }
            operation
                    .node()
                    .get("responses")
                    .properties()
                    .forEach(
                            response -> {
                                int status = Integer.parseInt(response.getKey());
                                if (status >= 400) {
                                    JsonNode example =
                                            Contract.committed()
                                                    .problemExample(response.getValue());
                                    Contract.validate(
                                            operation.method(),
                                            operation.path(),
                                            status,
                                            example.toString());
                                    assertThat(example.get("status").asInt()).isEqualTo(status);
                                }
                            });
        }
    }

    @Test
    @Order(5)
    void requestsAreClosedAndAnswersAreOpen() throws Exception {
        for (Operation operation : Contract.committed().operations()) {
            if (operation.takesJson()) {
                String request =
                        read(operation.exampleOfARequest()).replaceFirst("\\{", "{\"surplus\":1,");
                assertThat(Contract.faultsOfRequest(operation.method(), operation.path(), request))
                        .as("%s", operation)
                        .isNotEmpty();
            }
            if (!operation.answersJson()) {
                continue;
            }
            String answer =
                    read(operation.exampleOfAnAnswer(Media.JSON))
                            .replaceFirst("\\{", "{\"later\":1,");
            Contract.validate(operation.method(), operation.path(), operation.success(), answer);
        }
    }

    private static boolean shows(JsonNode content, Media media) {
        return content.properties().stream()
                .anyMatch(
                        entry ->
                                Media.of(entry.getKey()) == media
                                        && entry.getValue().has("example"));
    }

    /** So that there is something to compare. */
    private void recordASecond(
            Operation operation, Map<String, String> variables, HttpResponse<byte[]> first)
            throws Exception {
        HttpResponse<String> second =
                send(
                        operation.method(),
                        Story.path(operation, variables),
                        read(operation.exampleOfARequest()).replace("115 mph", "120 mph"),
                        "If-Match",
                        first.headers().firstValue("ETag").orElseThrow());
        assertThat(second.statusCode()).as(second.body()).isEqualTo(201);
    }

    private HttpResponse<byte[]> perform(
            Operation operation, Media media, Map<String, String> variables) throws Exception {
        Media sent = operation.takesBody() ? operation.takes() : null;
        return perform(operation, sent, media, variables);
    }

    private HttpResponse<byte[]> perform(
            Operation operation, @Nullable Media sent, Media media, Map<String, String> variables)
            throws Exception {
        List<String> headers = new ArrayList<>(List.of("Accept", media.type()));
        headers.addAll(Story.headers(operation));
        String body = null;
        if (sent != null) {
            body = read(operation.exampleOfARequest());
            headers.addAll(List.of("Content-Type", sent.type()));
        }
        return http.send(
                request(
                        operation.method(),
                        Story.path(operation, variables),
                        body,
                        headers.toArray(new String[0])),
                HttpResponse.BodyHandlers.ofByteArray());
    }

    private HttpResponse<String> send(
            String method, String path, @Nullable String body, String... headers)
            throws IOException, InterruptedException {
        List<String> all = new ArrayList<>(List.of("Content-Type", "application/json"));
        all.addAll(List.of(headers));
        return http.send(
                request(method, path, body, all.toArray(new String[0])),
                HttpResponse.BodyHandlers.ofString());
    }

    private HttpRequest request(
            String method, String path, @Nullable String body, String... headers) {
        return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path))
                .method(
                        method,
                        body == null
                                ? HttpRequest.BodyPublishers.noBody()
                                : HttpRequest.BodyPublishers.ofString(body))
                .headers(headers)
                .build();
    }

    private static String read(String example) throws IOException {
        return Files.readString(EXAMPLES.resolve(example));
    }
}
