package org.bayledger.contract;

import static java.nio.charset.StandardCharsets.UTF_16;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.bayledger.contract.RawHttp.get;
import static org.bayledger.contract.RawHttp.join;
import static org.bayledger.contract.RawHttp.line;
import static org.bayledger.contract.RawHttp.post;

import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.core.read.ListAppender;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.slf4j.LoggerFactory;
import org.springframework.boot.test.web.server.LocalServerPort;

/** Whatever is sent, the answer is a problem of the 4xx class and nothing is logged as an error. */
@RunningService
class BadInputTest {

    private static final String EXAMPLE = example();
    private static final String PATH = "/v1/checks/framing";

    @LocalServerPort private int port;

    private final ListAppender<ILoggingEvent> log = new ListAppender<>();

    @BeforeEach
    void listen() {
        log.start();
        root().addAppender(log);
    }

    @AfterEach
    void nothingIsLoggedAsAnError() {
        root().detachAppender(log);
        assertThat(log.list)
                .filteredOn(
                        event ->
                                event.getLevel().isGreaterOrEqual(Level.ERROR)
                                        || event.getThrowableProxy() != null)
                .extracting(ILoggingEvent::getFormattedMessage)
                .isEmpty();
    }

    static Stream<Arguments> bodies() {
        return Stream.of(
                body("nothing", 400, ""),
                body("blanks", 400, "  \n"),
                body("cut off", 400, "{\"axis\":"),
                body("not JSON", 400, "axis=WIND"),
                body("an array", 400, "[]"),
                body("a text", 400, "\"x\""),
                body("null", 400, "null"),
                body("two values", 400, EXAMPLE + "{}"),
                body("a comment", 400, "/* x */" + EXAMPLE),
                body("a trailing comma", 400, "{\"axis\":\"WIND\",}"),
                body("NaN", 400, "{\"axis\":NaN}"),
                body("100 000 arrays deep", 400, "[".repeat(100_000)),
                body("100 000 objects deep", 400, "{\"a\":".repeat(100_000)),
                body("a number beyond a double", 400, length("1e350")),
                body("a number of a thousand million digits", 400, length("1e999999999")),
                body("a number next to nothing", 400, length("-1e-999999999")),
                body("an exponent beyond an int", 400, length("1e99999999999")),
                body("a hundred thousand digits", 400, length("9".repeat(100_000))),
                body(
                        "a quantity beyond a double",
                        400,
                        EXAMPLE.replace("\"13 ft\"", "\"1e400 ft\"")),
                body(
                        "an absurd quantity",
                        422,
                        EXAMPLE.replace("\"length\": \"13 ft\"", "\"length\": \"1e99 ft\"")),
                body(
                        "a negative length",
                        422,
                        EXAMPLE.replace("\"length\": \"13 ft\"", "\"length\": \"-1 ft\"")),
                body(
                        "the wrong unit",
                        400,
                        EXAMPLE.replace("\"length\": \"13 ft\"", "\"length\": \"13 mph\"")),
                body("a property twice", 400, "{\"axis\":\"WIND\",\"axis\":\"DEAD\"}"),
                body("an unknown property", 400, EXAMPLE.replaceFirst("\\{", "{\"axes\":1,")),
                body("NUL in a text", 400, "{\"axis\":\"WI\\u0000ND\"}"),
                body("NUL in a name", 400, "{\"a\\u0000xis\":\"WIND\"}"),
                body("a raw NUL", 400, "{\"axis\":\"WI\0ND\"}"),
                body("half a surrogate pair in a text", 400, "{\"axis\":\"\\ud800\"}"),
                body("half a surrogate pair in a name", 400, "{\"\\udc00\":1}"),
                body(
                        "a text of ten megabytes",
                        400,
                        "{\"axis\":\"" + "a".repeat(10_000_000) + "\"}"),
                body("five million values", 400, "[" + "1,".repeat(5_000_000) + "1]"),
                body("eleven megabytes", 413, " ".repeat(11 << 20)),
                raw("not UTF-8", 400, post(new byte[] {'{', '"', (byte) 0xff, '"', '}'})),
                raw("UTF-16", 400, post(EXAMPLE.getBytes(UTF_16))),
                raw("eleven megabytes in chunks", 413, chunked(11 << 20)),
                raw(
                        "a chunk without a size",
                        400,
                        join(chunkedHead(), "zz\r\nabc\r\n".getBytes(UTF_8))),
                raw(
                        "less than was promised",
                        400,
                        line(
                                "POST " + PATH + " HTTP/1.1",
                                "Content-Type: application/json",
                                "Content-Length: 50")));
    }

    static Stream<Arguments> headers() {
        byte[] body = EXAMPLE.getBytes(UTF_8);
        return Stream.of(
                raw("no such representation", 406, post(body, "Accept: image/png")),
                raw("an Accept that is none", 406, post(body, "Accept: ;;;")),
                raw("plain text", 415, post(body, "Content-Type: text/plain")),
                raw("no media type", 415, post(body, "Content-Type:")),
                raw("a media type that is none", 415, post(body, "Content-Type: ///")),
                raw(
                        "another charset",
                        415,
                        post(body, "Content-Type: application/json;charset=UTF-16")),
                raw(
                        "an unknown charset",
                        415,
                        post(body, "Content-Type: application/json;charset=none")),
                raw(
                        "a form",
                        415,
                        post(
                                "units=%zz".getBytes(UTF_8),
                                "Content-Type: application/x-www-form-urlencoded")),
                raw("multipart", 415, post(body, "Content-Type: multipart/form-data; boundary=x")),
                raw("compressed", 415, post(body, "Content-Encoding: gzip")),
                raw(
                        "a negative length",
                        400,
                        line("POST " + PATH + " HTTP/1.1", "Content-Length: -1")),
                raw(
                        "a header field of 20 kB",
                        400,
                        line("GET / HTTP/1.1", "X: " + "a".repeat(20_000))),
                raw("two hosts", 400, line("GET / HTTP/1.1", "Host: y")),
                raw(
                        "a host that is none",
                        400,
                        "GET / HTTP/1.1\r\nHost: {}\r\n\r\n".getBytes(UTF_8)));
    }

    static Stream<Arguments> lines() {
        return Stream.of(
                raw("an unknown path", 404, get("/nope")),
                raw("an unknown endpoint of the actuator", 404, get("/actuator/env")),
                raw("an unknown kind of problem", 404, get("/problems/none")),
                raw("another method", 405, get(PATH)),
                raw("TRACE", 405, line("TRACE " + PATH + " HTTP/1.1")),
                raw("an invented method", 405, line("BREW " + PATH + " HTTP/1.1")),
                raw("a broken percent sign in the path", 400, get("/v1/%zz")),
                raw("an encoded slash", 400, get("/v1/%2fchecks")),
                raw("an encoded NUL", 400, get("/v1/%00")),
                raw("bytes that are no UTF-8", 400, get("/v1/%ff")),
                raw("a backslash", 400, get("/v1/a\\b")),
                raw("above the root", 400, get("/../../etc/hosts")),
                raw("braces", 400, get("/v1/{x}")),
                raw("an accent", 400, get("/v1/\u00e9")),
                raw("a line of 20 kB", 400, get("/" + "a".repeat(20_000))),
                raw("not HTTP", 400, "\u0016\u0003\u0001\r\n\r\n".getBytes(UTF_8)));
    }

    static Stream<Arguments> queries() {
        return Stream.of(
                query("unknown", "unit=US"),
                query("an unknown value", "units=METRIC"),
                query("in lower case", "units=us"),
                query("twice", "units=US&units=SI"),
                query("empty", "units="),
                query("blank before", "units=%20US"),
                query("NUL", "units=%00"),
                query("a broken percent sign", "units=%zz"),
                query("no UTF-8 in the value", "units=%ff"),
                query("no UTF-8 in the name", "%ff=1"),
                query("nine hundred names", "a=1&".repeat(900)));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource({"bodies", "headers", "lines", "queries"})
    void isAnsweredWithAProblem(String name, int status, byte[] request) throws IOException {
        RawHttp.Answer answer = RawHttp.send(port, request);
        assertThat(answer.status()).as("%s: %s", name, answer).isEqualTo(status);
        assertThat(answer.isProblem()).as("%s: %s", name, answer).isTrue();
        Contract.validateProblem(answer.body());
        assertThat(answer.body())
                .contains("\"status\":" + status)
                .doesNotContain("Exception", "jackson", "springframework", "ALLOW_");
    }

    @Test
    void namesTheQueryParametersThatAreKnown() throws IOException {
        RawHttp.Answer answer =
                RawHttp.send(port, post(PATH + "?unit=US", EXAMPLE.getBytes(UTF_8)));
        assertThat(answer.body())
                .contains("unknown query parameter unit; known here: trace, units");
    }

    @Test
    void reportsAHundredFaultsAndCountsTheRest() throws IOException {
        StringBuilder body = new StringBuilder("{");
        for (int i = 0; i < 50_000; i++) {
            body.append("\"unknown").append(i).append("\":1,");
        }
        body.append("\"axis\":\"WIND\"}");
        RawHttp.Answer answer = RawHttp.send(port, post(body.toString().getBytes(UTF_8)));
        assertThat(answer.status()).isEqualTo(400);
        assertThat(answer.body()).contains("50003 faults; the first 100 are in errors.");
        assertThat(answer.body().split("\"pointer\"", -1)).hasSize(101);
    }

    @Test
    void takesAByteOrderMarkAndABodyThatNobodyAskedFor() throws IOException {
        byte[] marked =
                join(new byte[] {(byte) 0xef, (byte) 0xbb, (byte) 0xbf}, EXAMPLE.getBytes(UTF_8));
        assertThat(RawHttp.send(port, post(marked)).status()).isEqualTo(200);
        byte[] withBody =
                join(
                        line("GET /actuator/health HTTP/1.1", "Content-Length: 5"),
                        "hello".getBytes(UTF_8));
        assertThat(RawHttp.send(port, withBody).status()).isEqualTo(200);
    }

    @Test
    void hasPagesForPeople() throws IOException {
        RawHttp.Answer index = RawHttp.send(port, get("/"));
        assertThat(index.status()).isEqualTo(200);
        assertThat(index.head()).containsIgnoringCase("content-type: text/html;charset=utf-8");
        assertThat(index.body()).contains("/swagger-ui.html", "/v3/api-docs", "/v1/projects");
        RawHttp.Answer ui = RawHttp.send(port, get("/swagger-ui.html"));
        assertThat(ui.status()).isEqualTo(302);
        assertThat(RawHttp.send(port, get("/swagger-ui/index.html")).body()).contains("Swagger UI");
        assertThat(RawHttp.send(port, get("/problems")).body()).contains("/problems/out-of-range");
        assertThat(RawHttp.send(port, get("/problems/out-of-range")).body()).contains("422");
    }

    private static Arguments body(String name, int status, String body) {
        return Arguments.of(name, status, post(body.getBytes(UTF_8)));
    }

    private static Arguments raw(String name, int status, byte[] request) {
        return Arguments.of(name, status, request);
    }

    private static Arguments query(String name, String query) {
        return Arguments.of(name, 400, post(PATH + "?" + query, EXAMPLE.getBytes(UTF_8)));
    }

    private static String length(String number) {
        return EXAMPLE.replace(
                "\"length\": \"13 ft\"", "\"length\": {\"value\":" + number + ",\"unit\":\"ft\"}");
    }

    private static byte[] chunkedHead() {
        return line(
                "POST " + PATH + " HTTP/1.1",
                "Content-Type: application/json",
                "Transfer-Encoding: chunked");
    }

    private static byte[] chunked(int size) {
        byte[] chunk = ("10000\r\n" + " ".repeat(0x10000) + "\r\n").getBytes(UTF_8);
        byte[][] parts = new byte[size / 0x10000 + 2][];
        parts[0] = chunkedHead();
        for (int i = 1; i < parts.length - 1; i++) {
            parts[i] = chunk;
        }
        parts[parts.length - 1] = "0\r\n\r\n".getBytes(UTF_8);
        return join(parts);
    }

    private static Logger root() {
        return (Logger) LoggerFactory.getLogger(org.slf4j.Logger.ROOT_LOGGER_NAME);
    }

    private static String example() {
        Path file = Path.of("src/main/resources/contract/checkFraming.request.json");
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
