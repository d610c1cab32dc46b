package org.bayledger.platform;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Duration;
import org.springframework.util.FileSystemUtils;

/**
 * A real PostgreSQL server that the service starts for itself when it is given none.
 *
 * <p>Durable: a commit is on the disk before it is acknowledged. Every login needs a password, and
 * the server listens on 127.0.0.1 alone. The folder holds:
 *
 * <pre>
 * lock          held while a service runs on this folder
 * credentials   generated passwords, readable by the owner only
 * programs/     the server's program files
 * data/         the database; data/log its logs of the last seven days
 * </pre>
 *
 * <p>The program files stay out of the system's temporary folder, where they could be cleaned away
 * or put in place by somebody else.
 */
public final class EmbeddedDatabase implements AutoCloseable {

    static final String DATABASE = "bayledger";
    static final String OWNER = "bayledger_owner";
    static final String SERVICE = "bayledger_service";

    /** Recovery after a crash is part of the start, so this is generous. */
    private static final Duration START_WITHIN = Duration.ofSeconds(60);

    private final FolderLock lock;
    private final EmbeddedPostgres server;
    private final EmbeddedCredentials credentials;

    private EmbeddedDatabase(
            FolderLock lock, EmbeddedPostgres server, EmbeddedCredentials credentials) {
        this.lock = lock;
        this.server = server;
        this.credentials = credentials;
    }

    /** Starts the database kept in a folder, making it first where the folder has none. */
    public static EmbeddedDatabase start(Path directory) {
        try {
            Path absolute = directory.toAbsolutePath();
            Files.createDirectories(absolute, EmbeddedCredentials.ownerOnly(absolute, "rwx------"));
            Path folder = absolute.toRealPath();
            EmbeddedCredentials.keepToOwner(folder);
            FolderLock lock = FolderLock.take(folder);
            try {
                return start(folder, lock);
            } catch (IOException | InterruptedException | SQLException | RuntimeException failed) {
                lock.close();
                throw failed;
            }
        } catch (IOException e) {
            throw new UncheckedIOException("The embedded database did not start", e);
        } catch (SQLException e) {
            throw new IllegalStateException("The embedded database did not start", e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("Interrupted while the database started", e);
        }
    }

    private static EmbeddedDatabase start(Path folder, FolderLock lock)
            throws IOException, InterruptedException, SQLException {
        Path data = folder.resolve("data");
        Path credentialsFile = folder.resolve("credentials");
        EmbeddedCredentials credentials;
        if (Files.exists(data)) {
            credentials = readCredentials(credentialsFile);
            Postmaster.stopLeftOver(folder, data);
        } else {
            credentials =
                    Files.exists(credentialsFile)
                            ? readCredentials(credentialsFile)
                            : EmbeddedCredentials.create(credentialsFile);
            initialise(folder, data, credentials);
        }
        EmbeddedPostgres server = launch(folder, data, credentials);
        try {
            prepare(server, credentials);
            return new EmbeddedDatabase(lock, server, credentials);
        } catch (SQLException | RuntimeException failed) {
            server.close();
            throw failed;
        }
    }

    private static EmbeddedCredentials readCredentials(Path file) throws IOException {
        if (!Files.exists(file)) {
            throw new StartupRefusedException(
                    "The folder "
                            + file.getParent()
                            + " holds a database but not its passwords ("
                            + file.getFileName()
                            + ").",
                    "Restore the file from the same backup as the database beside it.");
        }
        return EmbeddedCredentials.read(file);
    }

    /**
     * Makes the database under another name and renames it when it is whole, so that a start that
     * was killed half-way leaves nothing that looks like a database.
     */
    private static void initialise(Path folder, Path data, EmbeddedCredentials credentials)
            throws IOException, InterruptedException {
        Path unfinished = folder.resolve("data.unfinished");
        if (Files.exists(unfinished)) {
            Postmaster.stopLeftOver(folder, unfinished);
            FileSystemUtils.deleteRecursively(unfinished);
        }
        Path passwordFile = folder.resolve("initial-password");
        EmbeddedCredentials.writePrivately(passwordFile, credentials.superuserPassword());
        try {
            // These go to initdb as --key=value, after the library's own "-A trust", so they win:
            // no login without a password exists at any moment.
            EmbeddedPostgres.Builder builder =
                    builder(folder, unfinished, credentials)
                            .setLocaleConfig("auth", "scram-sha-256")
                            .setLocaleConfig("pwfile", passwordFile.toString())
                            .setLocaleConfig("locale", "C");
            launch(builder, folder, unfinished).close();
        } finally {
            Files.deleteIfExists(passwordFile);
        }
        Files.move(unfinished, data, StandardCopyOption.ATOMIC_MOVE);
    }

    private static EmbeddedPostgres launch(Path folder, Path data, EmbeddedCredentials credentials)
            throws IOException, InterruptedException {
        return launch(builder(folder, data, credentials), folder, data);
    }

    private static EmbeddedPostgres launch(EmbeddedPostgres.Builder builder, Path folder, Path data)
            throws IOException, InterruptedException {
        try {
            return builder.start();
        } catch (IOException | RuntimeException failed) {
            Postmaster.stopLeftOver(folder, data);
            throw failed;
        }
    }

    private static EmbeddedPostgres.Builder builder(
            Path folder, Path data, EmbeddedCredentials credentials) {
        return EmbeddedPostgres.builder()
                .setOverrideWorkingDirectory(folder.resolve("programs").toFile())
                .setDataDirectory(data)
                .setCleanDataDirectory(false)
                // The application context closes the server, after the connection pool.
                .setRegisterShutdownHook(false)
                .setPGStartupWait(START_WITHIN)
                .setConnectConfig("password", credentials.superuserPassword())
                // The library switches these off, for tests; a ledger needs them.
                .setServerConfig("fsync", "on")
                .setServerConfig("synchronous_commit", "on")
                .setServerConfig("full_page_writes", "on")
                .setServerConfig("listen_addresses", "127.0.0.1")
                .setServerConfig("unix_socket_directories", "")
                .setServerConfig("password_encryption", "scram-sha-256")
                .setServerConfig("max_connections", "100")
                // One file for each day of the week.
                .setServerConfig("logging_collector", "on")
                .setServerConfig("log_filename", "postgresql-%a.log")
                .setServerConfig("log_truncate_on_rotation", "on");
    }

    private static void prepare(EmbeddedPostgres server, EmbeddedCredentials credentials)
            throws SQLException {
        try (Connection connection = server.getPostgresDatabase().getConnection()) {
            DatabaseRoles.ensureLogin(connection, OWNER, credentials.ownerPassword());
            DatabaseRoles.ensureLogin(connection, SERVICE, credentials.servicePassword());
            DatabaseRoles.ensureDatabase(connection, DATABASE, OWNER, SERVICE);
        }
    }

    /** Address of the service's database. */
    public String jdbcUrl() {
        return jdbcUrl(DATABASE);
    }

    /** Address of a database of this server. */
    public String jdbcUrl(String database) {
        return "jdbc:postgresql://127.0.0.1:" + server.getPort() + "/" + database;
    }

    /** The generated passwords. */
    EmbeddedCredentials credentials() {
        return credentials;
    }

    /** Stops the server and lets go of the folder. */
    @Override
    public void close() {
        try (lock) {
            server.close();
        } catch (IOException e) {
            throw new UncheckedIOException("The embedded database did not stop", e);
        }
    }
}
