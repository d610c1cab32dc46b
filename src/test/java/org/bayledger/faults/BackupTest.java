package org.bayledger.faults;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.bayledger.platform.TestDatabase;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A backup made with pg_dump under a running service, restored into another database. */
class BackupTest {

    private static final JsonMapper JSON = JsonMapper.shared();

    @Test
    void aRestoredLedgerIsTheLedger(@TempDir Path folder) throws Exception {
        TestDatabase database = TestDatabase.create();
        Tools.require(
                "pg_dump of version " + serverVersion(database) + " or newer",
                clientVersion() >= serverVersion(database));
        Path dump = folder.resolve("ledger.dump");
        Writer writer;
        JsonNode checkpoint;
        try (ServiceProcess service = ServiceProcess.on(database)) {
            writer = new Writer(service.port());
            for (int i = 0; i < 3; i++) {
                assertThat(writer.append(service.port()).statusCode()).isEqualTo(201);
            }
            checkpoint =
                    JSON.readTree(
                            writer.get(service.port(), writer.project() + "/checkpoint").body());
            run(database, "pg_dump", "--format=custom", "--file=" + dump, name(database));
            // what comes after the backup is not in it
            Writer later = writer.besides("later");
            assertThat(later.append(service.port()).statusCode()).isEqualTo(412);
        }

        TestDatabase restored = TestDatabase.create();
        run(
                restored,
                "pg_restore",
                "--exit-on-error",
                "--dbname=" + name(restored),
                dump.toString());
        try (ServiceProcess service = ServiceProcess.on(restored)) {
            writer.everythingStands(service.port());
            JsonNode held =
                    JSON.readTree(
                            writer.get(
                                            service.port(),
                                            writer.project()
                                                    + "/verification?size="
                                                    + checkpoint.path("size").asInt()
                                                    + "&headHash="
                                                    + checkpoint.path("headHash").asString())
                                    .body());
            assertThat(held.path("intact").asBoolean()).as("%s", held).isTrue();
            assertThat(writer.append(service.port()).statusCode())
                    .as("the restored ledger goes on")
                    .isEqualTo(201);
        }
        try (Connection connection = restored.connect(TestDatabase.SERVICE);
                Statement statement = connection.createStatement()) {
            assertThatThrownBy(() -> statement.execute("DELETE FROM ledger.revision"))
                    .as("rights come back with the rows")
                    .isInstanceOf(SQLException.class)
                    .hasMessageContaining("permission denied");
        }
        try (Connection connection = restored.connect();
                Statement statement = connection.createStatement()) {
            assertThatThrownBy(() -> statement.execute("DELETE FROM ledger.revision"))
                    .as("and so do triggers")
                    .isInstanceOf(SQLException.class)
                    .hasMessageContaining("append only");
        }
    }

    private static int serverVersion(TestDatabase database) throws SQLException {
        try (Connection connection = database.connect();
                Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery("SHOW server_version_num")) {
            assertThat(row.next()).isTrue();
            return row.getInt(1) / 10_000;
        }
    }

    /** The major version of pg_dump; 0 where there is none. */
    private static int clientVersion() throws InterruptedException {
        try {
            Process asked = new ProcessBuilder("pg_dump", "--version").start();
            String said = new String(asked.getInputStream().readAllBytes(), UTF_8);
            asked.waitFor();
            Matcher version = Pattern.compile("(\\d+)\\.").matcher(said);
            return version.find() ? Integer.parseInt(version.group(1)) : 0;
        } catch (IOException noSuchProgram) {
            return 0;
        }
    }

    private static String name(TestDatabase database) {
        return database.url().substring(database.url().lastIndexOf('/') + 1);
    }

    private static void run(TestDatabase database, String... command)
            throws IOException, InterruptedException {
        URI server = URI.create(database.url().substring("jdbc:".length()));
        List<String> all = new ArrayList<>(List.of(command));
        all.addAll(
                1,
                List.of(
                        "--host=" + server.getHost(),
                        "--port=" + server.getPort(),
                        "--username=" + database.superuser()));
        ProcessBuilder program = new ProcessBuilder(all).redirectErrorStream(true);
        program.environment().put("PGPASSWORD", database.superuserPassword());
        Process running = program.start();
        String said = new String(running.getInputStream().readAllBytes(), UTF_8);
        assertThat(running.waitFor()).as(said).isZero();
    }
}
