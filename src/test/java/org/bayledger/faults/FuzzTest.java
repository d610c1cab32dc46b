package org.bayledger.faults;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.core.read.ListAppender;
import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.bayledger.contract.Contract;
import org.bayledger.contract.RunningService;
import org.junit.jupiter.api.Test;
import org.slf4j.LoggerFactory;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.dataformat.yaml.YAMLMapper;

/**
 * Every operation of the contract is sent rubbish from a fixed seed: two thousand requests, or as
 * many as the property bayledger.test.fuzz says. No answer is a 5xx or shows the inside of the
 * service, no line of the log is forged, and what is answered holds against the contract.
 */
@RunningService
class FuzzTest {

    private static final int REQUESTS = Integer.getInteger("bayledger.test.fuzz", 2_000);
    private static final long SEED = 19_310_417;
    private static final JsonMapper JSON = JsonMapper.shared();

    private static final Base64.Encoder CURSOR = Base64.getUrlEncoder().withoutPadding();

    private static final List<String> ACCEPTS =
            List.of(
                    "*/*",
                    "application/json",
                    "text/csv",
                    "text/html",
                    "image/svg+xml",
                    "application/x-ndjson",
                    "application/pdf",
                    "x",
                    "text/html;q=0.1, application/json;q=banana");
    private static final List<String> TYPES =
            List.of(
                    "application/json",
                    "application/json",
                    "application/json",
                    "application/json;charset=utf-16",
                    "application/problem+json",
                    "text/plain",
                    "x/y;z");

    @LocalServerPort private int port;

    private final HttpClient http =
            HttpClient.newBuilder().connectTimeout(Duration.ofSeconds(20)).build();
    private final ListAppender<ILoggingEvent> log = new ListAppender<>();
    private final Mutation mutation = new Mutation(new SplittableRandom(SEED));

    /** One operation of the contract. */
    private record Target(String method, String path, JsonNode operation, JsonNode example) {}

    @Test
    void rubbishIsAnsweredInGoodOrder() throws Exception {
        List<Target> targets = targets();
        assertThat(targets).hasSizeGreaterThan(15);
        String project = project();
        TreeMap<Integer, Integer> statuses = new TreeMap<>();
        Logger root = (Logger) LoggerFactory.getLogger(org.slf4j.Logger.ROOT_LOGGER_NAME);
        log.start();
        root.addAppender(log);
        try {
            for (int i = 0; i < REQUESTS; i++) {
                statuses.merge(send(i, mutation.oneOf(targets), project), 1, Integer::sum);
            }
        } finally {
            root.detachAppender(log);
        }
        // rubbish that is never accepted, or always, tests nothing
        assertThat(statuses).as("%s", statuses).containsKeys(200, 400, 404, 406, 415, 422, 428);
        assertThat(log.list)
                .filteredOn(
                        event ->
                                event.getLevel().isGreaterOrEqual(Level.ERROR)
                                        || event.getThrowableProxy() != null
                                        || event.getFormattedMessage()
                                                .matches("(?s).*[\\r\\n]" + Mutation.FORGED + ".*"))
                .extracting(ILoggingEvent::getFormattedMessage)
                .isEmpty();
        JsonNode verification =
                JSON.readTree(
                        http.send(
                                        HttpRequest.newBuilder(address(project + "/verification"))
                                                .build(),
                                        HttpResponse.BodyHandlers.ofString())
                                .body());
        assertThat(verification.path("intact").asBoolean()).isTrue();
    }

    private int send(int count, Target target, String project) throws Exception {
        String path = path(target, project);
        HttpRequest.Builder request =
                HttpRequest.newBuilder(address(path))
                        .timeout(Duration.ofSeconds(60))
                        .header("Accept", mutation.below(3) > 0 ? "*/*" : mutation.oneOf(ACCEPTS));
        byte[] body = target.example().isMissingNode() ? null : mutation.body(target.example());
        if (body == null) {
            request.method(target.method(), HttpRequest.BodyPublishers.noBody());
        } else {
            request.header("Content-Type", mutation.oneOf(TYPES))
                    .method(target.method(), HttpRequest.BodyPublishers.ofByteArray(body));
        }
        for (String header : List.of("If-Match", "If-None-Match", "Idempotency-Key")) {
            if (mutation.below(4) == 0) {
                request.header(header, headerValue());
            }
        }
        HttpResponse<byte[]> answer =
                http.send(request.build(), HttpResponse.BodyHandlers.ofByteArray());
        String text = new String(answer.body(), UTF_8);
        String what =
                "request %d: %s %s\n%s\nanswered %d %s"
                        .formatted(
                                count,
                                target.method(),
                                path,
                                body == null ? "" : new String(body, UTF_8),
                                answer.statusCode(),
                                text.length() > 2000 ? text.substring(0, 2000) : text);
        assertThat(answer.statusCode()).as(what).isBetween(200, 499);
        String type = answer.headers().firstValue("Content-Type").orElse("");
        if (answer.statusCode() >= 400) {
            assertThat(type).as(what).startsWith("application/problem+json");
            assertThat(text)
                    .as(what)
                    .doesNotContain("Exception")
                    .doesNotContain("\\tat ")
                    .doesNotContain("org.springframework")
                    .doesNotContain("org.postgresql");
        }
        // whole reviews are large: one in ten is held against the contract
        if (type.endsWith("json") && (text.length() < 100_000 || mutation.below(10) == 0)) {
            try {
                Contract.validate(target.method(), target.path(), answer.statusCode(), text);
            } catch (AssertionError broken) {
                throw new AssertionError(what, broken);
            }
        }
        return answer.statusCode();
    }

    private String path(Target target, String project) {
        String path = target.path();
        String id = project.substring(project.lastIndexOf('/') + 1);
        path =
                path.replace(
                        "{projectId}",
                        mutation.below(5) > 0 ? id : encoded(mutation.string(), "%20"));
        path =
                path.replace(
                        "{number}",
                        mutation.below(4) > 0 ? "1" : encoded(mutation.string(), "%20"));
        List<String> query = new ArrayList<>();
        for (JsonNode parameter : target.operation().path("parameters")) {
            if (parameter.path("in").asString().equals("query") && mutation.below(3) > 0) {
                String good =
                        parameter.has("example")
                                ? parameter.path("example").asString()
                                : parameter.path("schema").path("default").asString("1");
                String name = parameter.path("name").asString();
                String value = mutation.below(3) > 0 ? good : mutation.string();
                // half of the cursors can be decoded, to positions that were never given out
                query.add(
                        name
                                + "="
                                + (name.equals("cursor") && mutation.below(2) == 0
                                        ? CURSOR.encodeToString(value.getBytes(UTF_8))
                                        : encoded(value, "x")));
            }
        }
        if (mutation.below(20) == 0) {
            query.add(encoded(mutation.string(), "x") + "=1");
        }
        return query.isEmpty() ? path : path + "?" + String.join("&", query);
    }

    private static String encoded(String text, String ifEmpty) {
        return text.isEmpty() ? ifEmpty : URLEncoder.encode(text, UTF_8);
    }

    private String headerValue() {
        String value = mutation.string().replaceAll("[^\\x20-\\x7e]", "?");
        return mutation.below(3) == 0 ? "*" : value.isBlank() ? "\"\"" : value;
    }

    private URI address(String path) {
        return URI.create("http://127.0.0.1:" + port + path);
    }

    private String project() throws IOException, InterruptedException {
        Writer writer = new Writer(port);
        assertThat(writer.append(port).statusCode()).isEqualTo(201);
        return writer.project();
    }

    private static List<Target> targets() throws IOException {
        List<Target> targets = new ArrayList<>();
        JsonNode paths = new YAMLMapper().readTree(Contract.FILE).path("paths");
        for (String path : paths.propertyNames()) {
            for (String method : paths.path(path).propertyNames()) {
                JsonNode operation = paths.path(path).path(method);
                if (!operation.has("operationId")) {
                    continue;
                }
                Path example =
                        Path.of(
                                "src/main/resources/contract",
                                operation.path("operationId").asString() + ".request.json");
                targets.add(
                        new Target(
                                method.toUpperCase(Locale.ROOT),
                                path,
                                operation,
                                Files.exists(example)
                                        ? JSON.readTree(Files.readString(example))
                                        : JSON.missingNode()));
            }
        }
        return targets;
    }
}
