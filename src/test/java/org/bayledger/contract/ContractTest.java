package org.bayledger.contract;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.bayledger.contract.Contract.Form;
import org.bayledger.contract.Contract.Operation;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.JsonNodeFactory;
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
            HttpResponse<String> answer = perform(operation, variables);
            assertThat(answer.statusCode())
                    .as("%s: %s", operation, answer.body())
                    .isEqualTo(operation.success());
            Path file = EXAMPLES.resolve(operation.exampleOfAnAnswer());
            boolean same;
            String text;
            if (operation.form() == Form.PAGE) {
                assertThat(answer.body()).as("%s", operation).isNotEmpty();
                continue;
            }
            if (operation.form() == Form.TABLE) {
                text = answer.body();
                same = Files.exists(file) && text.equals(Files.readString(file));
            } else if (operation.form() == Form.DRAWING) {
                text = answer.body();
                same =
                        Files.exists(file)
                                && Story.stableDrawing(text)
                                        .equals(Story.stableDrawing(Files.readString(file)));
            } else if (operation.form() == Form.LINES) {
                text = Story.abridged(answer.body());
                same =
                        Files.exists(file)
                                && Story.stable(text).equals(Story.stable(Files.readString(file)));
            } else {
                JsonNode body = Story.own(JSON.readTree(answer.body()), variables);
                Story.learn(body, variables);
                if (operation.id().equals("recordRevision")) {
                    recordASecond(operation, variables, answer);
                }
                JsonNode example =
                        Files.exists(file)
                                ? JSON.readTree(Files.readString(file))
                                : JsonNodeFactory.instance.missingNode();
                text = JSON.writerWithDefaultPrettyPrinter().writeValueAsString(body) + "\n";
                same = Story.stable(body).equals(Story.stable(example));
            }
            if (!same && WRITE) {
                Files.writeString(file, text);
                Files.writeString(BUILT.resolve(file.getFileName()), text);
            } else if (!same) {
                differing.put(operation.id(), answer.body());
            }
        }
        assertThat(differing).as("examples that are not what the service answers").isEmpty();
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
            if (operation.takesBody()
                    && !node.path("requestBody")
                            .path("content")
                            .path(operation.takes())
                            .has("example")) {
                missing.add(operation + ": example of a request");
            }
            if (operation.form() != Form.PAGE
                    && !responses
                            .path(Integer.toString(operation.success()))
                            .path("content")
                            .path(operation.form().media())
                            .has("example")) {
                missing.add(operation + ": example of an answer");
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
                String request = read(operation.exampleOfABody());
                assertThat(Contract.faultsOfRequest(operation.method(), operation.path(), request))
                        .as("%s", operation)
                        .isEmpty();
            }
            if (operation.form() != Form.PAGE) {
                Contract.validate(
                        operation.method(),
                        operation.path(),
                        operation.success(),
                        read(operation.exampleOfAnAnswer()));
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
                        read(operation.exampleOfABody()).replaceFirst("\\{", "{\"surplus\":1,");
                assertThat(Contract.faultsOfRequest(operation.method(), operation.path(), request))
                        .as("%s", operation)
                        .isNotEmpty();
            }
            if (operation.form() != Form.VALUE) {
                continue;
            }
            String answer =
                    read(operation.exampleOfAnAnswer()).replaceFirst("\\{", "{\"later\":1,");
            Contract.validate(operation.method(), operation.path(), operation.success(), answer);
        }
    }

    /** So that there is something to compare. */
    private void recordASecond(
            Operation operation, Map<String, String> variables, HttpResponse<String> first)
            throws Exception {
        HttpResponse<String> second =
                send(
                        operation.method(),
                        Story.path(operation, variables),
                        read(operation.id() + ".request.json").replace("115 mph", "120 mph"),
                        "Content-Type",
                        "application/json",
                        "If-Match",
                        first.headers().firstValue("ETag").orElseThrow());
        assertThat(second.statusCode()).as(second.body()).isEqualTo(201);
    }

    private HttpResponse<String> perform(Operation operation, Map<String, String> variables)
            throws Exception {
        String body = operation.takesBody() ? read(operation.exampleOfABody()) : null;
        return send(
                operation.method(),
                Story.path(operation, variables),
                body,
                Stream.concat(
                                Stream.of("Content-Type", operation.takes()),
                                Stream.of(Story.headers(operation)))
                        .toArray(String[]::new));
    }

    private HttpResponse<String> send(
            String method, String path, @Nullable String body, String... headers)
            throws IOException, InterruptedException {
        HttpRequest.Builder request =
                HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path))
                        .method(
                                method,
                                body == null
                                        ? HttpRequest.BodyPublishers.noBody()
                                        : HttpRequest.BodyPublishers.ofString(body));
        if (headers.length > 0) {
            request.headers(headers);
        }
        return http.send(request.build(), HttpResponse.BodyHandlers.ofString());
    }

    private static String read(String example) throws IOException {
        return Files.readString(EXAMPLES.resolve(example));
    }
}
