package org.bayledger.contract;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.LoggerContext;
import ch.qos.logback.classic.PatternLayout;
import ch.qos.logback.classic.spi.LoggingEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.slf4j.LoggerFactory;
import org.slf4j.MDC;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.core.env.Environment;

/** An open service answers this machine alone, and tells browsers to be careful. */
@RunningService
class OpenServiceTest {

    private static final String DRAWING = "/v1/drawings";

    @LocalServerPort private int port;
    @Autowired private Environment environment;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "localhost",
                "localhost:8080",
                "LOCALHOST:1",
                "127.0.0.1",
                "127.0.0.1:8080",
                "127.1.2.3",
                "[::1]",
                "[::1]:8080"
            })
    void answersUnderItsOwnMachinesNames(String host) throws IOException {
        assertThat(ask("/v1/projects", host).status()).isEqualTo(200);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "ledger.example",
                "ledger.example:8080",
                "127.0.0.1.ledger.example",
                "localhost.ledger.example",
                "ledger-127.0.0.1.example",
                "192.0.2.1",
                "0.0.0.0",
                "[2001:db8::1]:8080"
            })
    void refusesNamesThatSomebodyElseCouldHaveResolvedToIt(String host) throws IOException {
        for (String path : List.of("/v1/projects", "/", "/swagger-ui/index.html", "/nothing")) {
            RawHttp.Answer answer = ask(path, host);
            assertThat(answer.status()).as(answer.toString()).isEqualTo(421);
            assertThat(answer.isProblem()).isTrue();
            Contract.validateProblem(answer.body());
            assertThat(answer.body()).contains("Host header must be localhost");
        }
        byte[] absolute =
                ("GET http://"
                                + host
                                + "/v1/projects HTTP/1.1\r\nHost: "
                                + host
                                + "\r\nConnection: close\r\n\r\n")
                        .getBytes(UTF_8);
        assertThat(RawHttp.send(port, absolute).status()).isEqualTo(421);
        byte[] mixed =
                ("GET http://"
                                + host
                                + "/v1/projects HTTP/1.1\r\nHost: localhost"
                                + "\r\nConnection: close\r\n\r\n")
                        .getBytes(UTF_8);
        assertThat(RawHttp.send(port, mixed).status()).isIn(400, 421);
    }

    @Test
    void givesForeignPagesNothing() throws IOException {
        RawHttp.Answer preflight =
                RawHttp.send(
                        port,
                        RawHttp.line(
                                "OPTIONS /v1/projects HTTP/1.1",
                                "Origin: https://page.example",
                                "Access-Control-Request-Method: POST",
                                "Access-Control-Request-Headers: content-type"));
        assertThat(preflight.head()).doesNotContainIgnoringCase("access-control-allow");
        RawHttp.Answer simple =
                RawHttp.send(
                        port,
                        RawHttp.post(
                                "/v1/projects",
                                "{\"name\":\"x\"}".getBytes(UTF_8),
                                "Content-Type: text/plain",
                                "Origin: https://page.example"));
        assertThat(simple.status()).isEqualTo(415);
    }

    @Test
    void setsHeaderFieldsOnEveryAnswer() throws IOException {
        byte[] drawing =
                Files.readAllBytes(
                        Path.of("src/main/resources/contract/createDrawing.request.json"));
        List<byte[]> requests =
                List.of(
                        RawHttp.get("/v1/projects"),
                        RawHttp.get("/"),
                        RawHttp.get("/nothing"),
                        RawHttp.get("/actuator/health"),
                        RawHttp.get("/v3/api-docs.yaml"),
                        RawHttp.post("{".getBytes(UTF_8)),
                        RawHttp.post(DRAWING, drawing),
                        RawHttp.get("/v1/%zz"),
                        RawHttp.get("/v1/%2fchecks"),
                        RawHttp.line("BREW / HTTP/1.1"),
                        RawHttp.line("GET / HTTP/1.1", "X: " + "a".repeat(20_000)),
                        "\u0016\u0003\u0001\r\n\r\n".getBytes(UTF_8));
        for (byte[] request : requests) {
            RawHttp.Answer answer = RawHttp.send(port, request);
            String what = new String(request, 0, Math.min(40, request.length), ISO_8859_1);
            assertThat(answer.head())
                    .as(what)
                    .containsIgnoringCase("X-Content-Type-Options: nosniff")
                    .containsIgnoringCase("Content-Security-Policy: default-src 'none'; style-src")
                    .contains("frame-ancestors 'none'")
                    .containsIgnoringCase("Referrer-Policy: no-referrer")
                    .containsIgnoringCase("Cross-Origin-Resource-Policy: same-origin")
                    .containsIgnoringCase("Cache-Control: no-store")
                    .containsPattern("(?i)X-Request-Id: [0-9a-f-]{36}")
                    .doesNotContainIgnoringCase("Set-Cookie");
        }
        RawHttp.Answer ui = RawHttp.send(port, RawHttp.get("/swagger-ui/index.html"));
        assertThat(ui.head())
                .contains("default-src 'none'; script-src 'self'; connect-src 'self'")
                .contains("frame-ancestors 'none'");
        // what that policy forbids is not there
        assertThat(ui.body())
                .doesNotContainPattern("<script(?![^>]*src=)")
                .doesNotContain("onload");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/actuator",
                "/actuator/env",
                "/actuator/metrics",
                "/actuator/prometheus",
                "/actuator/sbom",
                "/actuator/beans",
                "/actuator/loggers",
                "/actuator/heapdump",
                "/actuator/threaddump",
                "/actuator/mappings"
            })
    void keepsTheActuatorClosed(String path) throws IOException {
        assertThat(RawHttp.send(port, RawHttp.get(path)).status()).isEqualTo(404);
    }

    @Test
    void takesOnlyIdentifiersThatCantDoHarm() throws IOException {
        for (String bad : List.of("a b", "a\tb", "<b>", "a".repeat(65), "%0d%0a", "\u00e9")) {
            assertThat(RawHttp.send(port, identified(bad)).head())
                    .containsPattern("(?i)X-Request-Id: [0-9a-f-]{36}");
        }
        assertThat(RawHttp.send(port, identified("job-7.a_B")).head())
                .containsIgnoringCase("X-Request-Id: job-7.a_B");
    }

    @Test
    void refusesControlCharactersInHeaderFields() throws IOException {
        byte[] request =
                "POST /v1/projects/x/revisions HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\nIdempotency-Key: a\u0085b\r\nContent-Type: application/json\r\nContent-Length: 2\r\n\r\n{}"
                        .getBytes(ISO_8859_1);
        RawHttp.Answer answer = RawHttp.send(port, request);
        assertThat(answer.status()).as(answer.toString()).isEqualTo(400);
        Contract.validateProblem(answer.body());
    }

    /** A line break in what a caller sent must not begin a line of the log. */
    @ParameterizedTest
    @ValueSource(strings = {"console", "file"})
    void nothingThatWasSentBeginsALineOfTheLog(String kind) {
        LoggerContext context = (LoggerContext) LoggerFactory.getILoggerFactory();
        PatternLayout layout = new PatternLayout();
        layout.setContext(context);
        layout.setPattern(environment.getProperty("logging.pattern." + kind));
        layout.start();
        Logger logger = context.getLogger("org.bayledger.test");
        String sent = "A. Author\r\n2026 ERROR forged\u2028forged\u0085forged\nforged\u001b[31m";
        MDC.put("requestId", "job-7");
        String text;
        try {
            text =
                    layout.doLayout(
                            new LoggingEvent(
                                    "x",
                                    logger,
                                    Level.WARN,
                                    "by {}",
                                    new IllegalStateException(
                                            sent, new IllegalArgumentException(sent)),
                                    new Object[] {sent}));
        } finally {
            MDC.remove("requestId");
        }
        assertThat(text).contains("[job-7] ").doesNotContain("\u001b[31m", "\u2028", "\u0085");
        List<String> lines = text.lines().toList();
        assertThat(lines.get(0)).contains("by A. Author");
        assertThat(lines)
                .noneMatch(line -> line.startsWith("2026 ERROR") || line.startsWith("forged"))
                .contains("    2026 ERROR forged")
                .anyMatch(line -> line.startsWith("Caused by: java.lang.IllegalArgument"))
                .anyMatch(line -> line.startsWith("\tat "));
        String plain =
                layout.doLayout(new LoggingEvent("x", logger, Level.WARN, "well", null, null));
        assertThat(plain).doesNotContain("[]").endsWith("well" + System.lineSeparator());
        assertThat(plain.lines()).hasSize(1);
    }

    private RawHttp.Answer ask(String path, String host) throws IOException {
        return RawHttp.send(
                port,
                ("GET " + path + " HTTP/1.1\r\nHost: " + host + "\r\nConnection: close\r\n\r\n")
                        .getBytes(UTF_8));
    }

    private static byte[] identified(String id) {
        return RawHttp.line("GET / HTTP/1.1", "X-Request-Id: " + id);
    }
}
