package org.bayledger.platform;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import org.bayledger.ledger.ExportVerifier;
import org.bayledger.platform.RunningCopy.Answer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** The connection to PostgreSQL is lost at the worst moments: callers can tell, and go on. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class LostConnectionTest {

    private static final int REVISIONS = 6;

    private final TestDatabase database = TestDatabase.create();
    private final Relay relay = new Relay(database);
    private RunningCopy service;
    private String project = "";
    private String etag = "";

    LostConnectionTest() throws IOException {}

    @BeforeAll
    void start() {
        service =
                new RunningCopy(
                        relay.database(database),
                        "spring.datasource.hikari.maximum-pool-size=1",
                        // every COMMIT crosses the wire in words
                        "spring.datasource.hikari.data-source-properties.prepareThreshold=0",
                        "bayledger.demo.enabled=false",
                        "logging.level.org.apache.catalina.core=off");
    }

    @AfterAll
    void stop() throws IOException {
        service.close();
        relay.close();
    }

    @BeforeEach
    void oneProject() throws Exception {
        project = service.post("/v1/projects", "{\"name\":\"Library\"}").header("Location");
        etag = service.get(project).header("ETag");
    }

    /** PostgreSQL ends the connection when it is told to commit: nothing was recorded. */
    @Test
    void aRevisionThatCouldNotBeCommittedIsNotThere() throws Exception {
        endsConnections("CONSTRAINT TRIGGER", "AFTER INSERT", "DEFERRABLE INITIALLY DEFERRED");
        unavailable(record("at commit"));
        endsNone();
        nothingRecordedAndARetryIs("at commit");
    }

    /** PostgreSQL ends the connection in the middle, and there is nothing to roll back on. */
    @Test
    void aRevisionThatCouldNotBeRolledBackIsNotThere() throws Exception {
        endsConnections("TRIGGER", "BEFORE INSERT", "");
        unavailable(record("in the middle"));
        endsNone();
        nothingRecordedAndARetryIs("in the middle");
    }

    /** The revision is committed and nobody hears of it: a retry with its key gets its answer. */
    @Test
    void aCommitWhoseAnswerIsLostIsAnsweredAgain() throws Exception {
        relay.cutAtCommit();
        unavailable(record("answer lost"));
        assertThat(service.get(project).json().at("/head/size").asInt()).isEqualTo(1);
        Answer again = record("answer lost");
        assertThat(again.status()).as(again.body()).isEqualTo(201);
        assertThat(again.json().path("number").asInt()).isEqualTo(1);
        assertThat(service.get(project).json().at("/head/size").asInt()).isEqualTo(1);
    }

    /** An export that stops in its middle ends without an end, in HTTP as in its lines. */
    @Test
    void anExportThatIsCutOffDoesNotLookWhole(@TempDir Path folder) throws Exception {
        for (int i = 0; i < REVISIONS; i++) {
            // another wind, other results
            Answer made = record("revision " + i, body().replace("115 mph", 110 + i + " mph"));
            assertThat(made.status()).as(made.body()).isEqualTo(201);
            etag = made.header("ETag");
        }
        String whole = exported();
        assertThat(whole).startsWith("HTTP/1.1 200").endsWith("\r\n0\r\n\r\n");

        // content crosses the wire in hexadecimal, so that this is about the middle
        relay.cutAfter(whole.length());
        String cut;
        try {
            cut = exported();
        } finally {
            relay.mend();
        }
        assertThat(cut).startsWith("HTTP/1.1 200").contains("{\"type\":\"revision\"");
        assertThat(cut.length()).isLessThan(whole.length());
        assertThat(cut)
                .as("the last chunk, which says that this is all")
                .doesNotEndWith("\r\n0\r\n\r\n");
        assertThat(cut).doesNotContain("{\"type\":\"end\"", "/problems/");

        Path file = Files.writeString(folder.resolve("export.ndjson"), lines(cut));
        ExportVerifier.Finding found = ExportVerifier.launch(file);
        assertThat(found.code()).as(found.output()).isIn(1, 2);
        assertThat(service.get(project + "/verification").json().path("intact").asBoolean())
                .isTrue();
    }

    /** The export as it crosses the wire. */
    private String exported() throws IOException {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), service.port())) {
            socket.setSoTimeout(60_000);
            socket.getOutputStream()
                    .write(
                            ("GET "
                                            + project
                                            + "/export HTTP/1.1\r\nHost: localhost\r\n"
                                            + "Connection: close\r\n\r\n")
                                    .getBytes(UTF_8));
            return new String(socket.getInputStream().readAllBytes(), UTF_8);
        }
    }

    /** The lines of an export without the sizes of its chunks and what follows its last line. */
    private static String lines(String answer) {
        StringBuilder lines = new StringBuilder();
        String rest = answer.substring(answer.indexOf("\r\n\r\n") + 4);
        while (rest.indexOf("\r\n") > 0) {
            int begin = rest.indexOf("\r\n") + 2;
            int size = Integer.parseInt(rest.substring(0, begin - 2), 16);
            int end = Math.min(begin + size, rest.length());
            lines.append(rest, begin, end);
            rest = rest.substring(Math.min(end + 2, rest.length()));
        }
        return lines.toString();
    }

    private static String body() throws IOException {
        return Files.readString(Path.of("src/main/resources/contract/recordRevision.request.json"));
    }

    private Answer record(String key) throws Exception {
        return record(key, body());
    }

    private Answer record(String key, String body) throws Exception {
        return service.post(
                project + "/revisions",
                body,
                "If-Match: " + etag,
                "Idempotency-Key: " + key.replace(' ', '-'));
    }

    private void nothingRecordedAndARetryIs(String key) throws Exception {
        assertThat(service.get(project).json().at("/head/size").asInt()).isZero();
        Answer again = record(key);
        assertThat(again.status()).as(again.body()).isEqualTo(201);
        assertThat(service.get(project + "/verification").json().path("intact").asBoolean())
                .isTrue();
    }

    private static void unavailable(Answer answer) {
        assertThat(answer.status()).as(answer.body()).isEqualTo(503);
        assertThat(answer.header("Retry-After")).isEqualTo("5");
        assertThat(answer.header("Content-Type")).startsWith("application/problem+json");
        assertThat(answer.body())
                .contains("/problems/service-unavailable")
                .doesNotContain("Hikari", "SQL", "Exception", "terminat");
    }

    /** Whoever records a revision loses its connection. */
    private void endsConnections(String kind, String when, String how) throws SQLException {
        execute(
                """
                CREATE FUNCTION ledger.end_connection() RETURNS trigger LANGUAGE plpgsql AS $$
                BEGIN
                    PERFORM pg_terminate_backend(pg_backend_pid());
                    RETURN NEW;
                END
                $$;
                CREATE %s end_connection %s ON ledger.revision %s
                    FOR EACH ROW EXECUTE FUNCTION ledger.end_connection()
                """
                        .formatted(kind, when, how));
    }

    private void endsNone() throws SQLException {
        execute("DROP FUNCTION ledger.end_connection() CASCADE");
    }

    private void execute(String sql) throws SQLException {
        try (Connection connection = database.connect();
                Statement statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }
}
