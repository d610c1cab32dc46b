package org.bayledger.platform;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The embedded database keeps what it acknowledged, whatever is killed, and lets nobody else in.
 */
class EmbeddedDatabaseTest {

    /** One folder, so that the server is unpacked once; the tests stop and start it. */
    @TempDir static Path folder;

    private static final String KEEP =
            "DROP TABLE IF EXISTS kept; CREATE TABLE kept AS SELECT 42 AS answer";

    @Test
    void isDurableAndAsksForAPassword() throws Exception {
        Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxr-xr-x"));
        try (EmbeddedDatabase database = EmbeddedDatabase.start(folder)) {
            assertDurable(database);
            assertThat(show(database, "listen_addresses")).isEqualTo("127.0.0.1");
            assertThat(Files.readString(folder.resolve("data/postmaster.pid")).lines().toList())
                    .as("line 5 names the folder of a local socket")
                    .element(4)
                    .isEqualTo("");

            for (String role : List.of("postgres", EmbeddedDatabase.OWNER, "bayledger_service")) {
                assertThatThrownBy(
                                () ->
                                        DriverManager.getConnection(
                                                database.jdbcUrl(), role, "guess"))
                        .isInstanceOf(SQLException.class)
                        .extracting(e -> ((SQLException) e).getSQLState())
                        .isEqualTo("28P01"); // invalid_password
            }
            assertThat(Files.readAllLines(folder.resolve("data/pg_hba.conf")))
                    .filteredOn(line -> !line.isBlank() && !line.startsWith("#"))
                    .isNotEmpty()
                    .allMatch(line -> line.strip().endsWith("scram-sha-256"));
            assertThat(PosixFilePermissions.toString(rights("credentials"))).isEqualTo("rw-------");
            assertThat(PosixFilePermissions.toString(rights(".")))
                    .as("nobody else may put programs there")
                    .isEqualTo("rwx------");
            assertThat(PosixFilePermissions.toString(rights("data"))).isEqualTo("rwx------");
            assertThat(folder.resolve("initial-password")).doesNotExist();
        }
    }

    @Test
    void keepsItsDataAndItsSettingsBetweenStarts() throws Exception {
        try (EmbeddedDatabase database = EmbeddedDatabase.start(folder)) {
            execute(database, KEEP);
        }
        assertThat(folder.resolve("data/postmaster.pid")).doesNotExist();
        try (EmbeddedDatabase database = EmbeddedDatabase.start(folder)) {
            assertDurable(database);
            assertThat(query(database, "SELECT answer FROM kept")).isEqualTo("42");
        }
    }

    @Test
    void refusesAFolderThatAnotherServiceHolds() throws Exception {
        try (EmbeddedDatabase database = EmbeddedDatabase.start(folder)) {
            assertThatThrownBy(() -> EmbeddedDatabase.start(folder))
                    .isInstanceOf(StartupRefusedException.class)
                    .hasMessageContaining("Another service is running");
            Process other = startInOtherJvm();
            assertThat(other.waitFor(60, TimeUnit.SECONDS)).isTrue();
            assertThat(other.exitValue()).isNotZero();
            assertThat(new String(other.getErrorStream().readAllBytes(), UTF_8))
                    .contains("Another service is running");
            assertThat(query(database, "SELECT 1")).isEqualTo("1");
        }
    }

    @Test
    void startsAgainAfterItsJvmWasKilled() throws Exception {
        Process service = startInOtherJvm();
        ProcessHandle orphan;
        try {
            assertThat(service.inputReader().readLine()).isEqualTo("committed");
            orphan = postmaster();
        } finally {
            service.destroyForcibly().waitFor(); // SIGKILL
        }
        assertThat(orphan.isAlive()).as("the server outlives its JVM").isTrue();

        try (EmbeddedDatabase database = EmbeddedDatabase.start(folder)) {
            orphan.onExit().get(60, TimeUnit.SECONDS);
            assertThat(query(database, "SELECT answer FROM kept")).isEqualTo("42");
        }
    }

    @Test
    void startsAgainAfterTheServerWasKilled() throws Exception {
        try (EmbeddedDatabase database = EmbeddedDatabase.start(folder)) {
            execute(database, KEEP);
            ProcessHandle server = postmaster();
            server.destroyForcibly(); // SIGKILL
            server.onExit().get(60, TimeUnit.SECONDS);
        }
        try (EmbeddedDatabase database = EmbeddedDatabase.start(folder)) {
            assertThat(query(database, "SELECT answer FROM kept")).isEqualTo("42");
        }
    }

    @Test
    void leavesAProcessAloneThatOnlyHasTheOldNumber() throws Exception {
        try (EmbeddedDatabase database = EmbeddedDatabase.start(folder)) {
            execute(database, KEEP);
        }
        Process stranger = new ProcessBuilder("sleep", "600").start();
        try {
            Files.writeString(folder.resolve("data/postmaster.pid"), stranger.pid() + "\n");
            try (EmbeddedDatabase database = EmbeddedDatabase.start(folder)) {
                assertThat(query(database, "SELECT answer FROM kept")).isEqualTo("42");
            }
            assertThat(stranger.isAlive()).isTrue();
        } finally {
            stranger.destroyForcibly();
        }
    }

    @Test
    void aFirstStartThatWasKilledHalfWayLeavesNothingInTheWay(@TempDir Path fresh)
            throws Exception {
        Files.createDirectories(fresh.resolve("data.unfinished"));
        Files.writeString(fresh.resolve("data.unfinished/postgresql.conf"), "half");
        try (EmbeddedDatabase database = EmbeddedDatabase.start(fresh)) {
            assertThat(query(database, "SELECT 1")).isEqualTo("1");
            assertThat(fresh.resolve("data.unfinished")).doesNotExist();
        }
    }

    @Test
    void refusesADatabaseWithoutItsPasswords(@TempDir Path fresh) throws Exception {
        Files.createDirectories(fresh.resolve("data"));
        assertThatThrownBy(() -> EmbeddedDatabase.start(fresh))
                .isInstanceOf(StartupRefusedException.class)
                .hasMessageContaining("not its passwords");
    }

    /** What the other JVM of these tests runs. */
    static final class OtherJvm {

        private OtherJvm() {}

        public static void main(String[] args) throws Exception {
            EmbeddedDatabase database = EmbeddedDatabase.start(Path.of(args[0]));
            execute(database, KEEP);
            System.out.println("committed");
            System.in.read(); // until it is killed
        }
    }

    private Process startInOtherJvm() throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        // nothing but the test's own words on standard output
                        "-Dlogging.level.root=OFF",
                        "-Dlogback.configurationFile=quiet-logback.xml",
                        OtherJvm.class.getName(),
                        folder.toString())
                .start();
    }

    private ProcessHandle postmaster() throws IOException {
        return Postmaster.process(folder.resolve("data/postmaster.pid")).orElseThrow();
    }

    private Set<PosixFilePermission> rights(String name) throws IOException {
        return Files.getPosixFilePermissions(folder.resolve(name));
    }

    private static void assertDurable(EmbeddedDatabase database) throws SQLException {
        assertThat(show(database, "fsync")).isEqualTo("on");
        assertThat(show(database, "synchronous_commit")).isEqualTo("on");
        assertThat(show(database, "full_page_writes")).isEqualTo("on");
    }

    private static String show(EmbeddedDatabase database, String setting) throws SQLException {
        return query(database, "SHOW " + setting);
    }

    private static String query(EmbeddedDatabase database, String sql) throws SQLException {
        try (Connection connection = owner(database);
                Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery(sql)) {
            assertThat(rows.next()).isTrue();
            return rows.getString(1);
        }
    }

    private static void execute(EmbeddedDatabase database, String sql) throws SQLException {
        try (Connection connection = owner(database);
                Statement statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }

    private static Connection owner(EmbeddedDatabase database) throws SQLException {
        return DriverManager.getConnection(
                database.jdbcUrl(), EmbeddedDatabase.OWNER, database.credentials().ownerPassword());
    }
}
