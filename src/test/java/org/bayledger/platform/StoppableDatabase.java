package org.bayledger.platform;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;

/** A PostgreSQL server on one port and folder, for tests that stop it under a running service. */
public final class StoppableDatabase implements AutoCloseable {

    private static final String NAME = "away";

    private final Path folder;
    private final int port;
    private EmbeddedPostgres server;

    /** Starts a new server whose database has both logins. */
    public StoppableDatabase(Path folder) throws IOException, SQLException {
        this.folder = folder;
        try (ServerSocket free = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            this.port = free.getLocalPort();
        }
        this.server = launch();
        try (Connection connection = server.getPostgresDatabase().getConnection()) {
            DatabaseRoles.ensureLogin(connection, TestDatabase.OWNER, TestDatabase.PASSWORD);
            DatabaseRoles.ensureLogin(connection, TestDatabase.SERVICE, TestDatabase.PASSWORD);
            DatabaseRoles.ensureDatabase(
                    connection, NAME, TestDatabase.OWNER, TestDatabase.SERVICE);
        }
    }

    private EmbeddedPostgres launch() throws IOException {
        return EmbeddedPostgres.builder()
                .setPort(port)
                .setOverrideWorkingDirectory(folder.resolve("programs").toFile())
                .setDataDirectory(folder.resolve("data"))
                .setCleanDataDirectory(false)
                .setServerConfig("fsync", "on")
                .start();
    }

    /** How the service finds it. */
    public TestDatabase database() {
        return new TestDatabase("jdbc:postgresql://127.0.0.1:" + port + "/" + NAME, "postgres", "");
    }

    /** Stops it; whoever is connected is thrown out. */
    public void stop() throws IOException {
        server.close();
    }

    /** Starts it again with what it held. */
    public void startAgain() throws IOException {
        server = launch();
    }

    @Override
    public void close() throws IOException {
        server.close();
    }
}
