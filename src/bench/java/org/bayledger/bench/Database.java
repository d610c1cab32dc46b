package org.bayledger.bench;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import org.springframework.boot.logging.LogLevel;
import org.springframework.boot.logging.LoggingSystem;

/**
 * A PostgreSQL that runs before the services and outlives them: an external one, as they see it.
 */
final class Database implements AutoCloseable {

    private static final String OWNER = "bayledger_owner";

    private final EmbeddedPostgres server;

    private Database(EmbeddedPostgres server) {
        this.server = server;
    }

    /** Starts a durable server with an empty database that belongs to the login of migrations. */
    static Database start(Path folder) throws IOException {
        LoggingSystem.get(Database.class.getClassLoader()).setLogLevel("io.zonky", LogLevel.WARN);
        EmbeddedPostgres server =
                EmbeddedPostgres.builder()
                        .setOverrideWorkingDirectory(folder.resolve("programs").toFile())
                        .setDataDirectory(folder.resolve("data"))
                        .setServerConfig("fsync", "on")
                        .setServerConfig("synchronous_commit", "on")
                        .setServerConfig("full_page_writes", "on")
                        .setServerConfig("max_connections", "100")
                        .start();
        Database database = new Database(server);
        database.run("CREATE ROLE " + OWNER + " LOGIN CREATEROLE PASSWORD 'owner'");
        database.run("CREATE DATABASE bayledger OWNER " + OWNER);
        return database;
    }

    /** What a service is told of it. */
    List<String> arguments() {
        return List.of(
                "--spring.datasource.url=jdbc:postgresql://127.0.0.1:"
                        + server.getPort()
                        + "/bayledger",
                "--spring.datasource.username=bayledger_service",
                "--spring.datasource.password=service",
                "--spring.flyway.user=" + OWNER,
                "--spring.flyway.password=owner",
                "--bayledger.database.create-service-role=true");
    }

    private void run(String sql) {
        try (Connection connection = server.getPostgresDatabase().getConnection();
                Statement statement = connection.createStatement()) {
            statement.execute(sql);
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    /** The one number that a query gives. */
    long number(String sql) {
        try (Connection connection = server.getPostgresDatabase().getConnection();
                Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery(sql)) {
            rows.next();
            return rows.getLong(1);
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    @Override
    public void close() throws IOException {
        server.close();
    }
}
