package org.bayledger.platform;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.UUID;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.util.FileSystemUtils;
import org.testcontainers.DockerClientFactory;
import org.testcontainers.postgresql.PostgreSQLContainer;
import org.testcontainers.utility.DockerImageName;

/**
 * A database of its own on a real PostgreSQL server, one server for each JVM.
 *
 * <p>The system property bayledger.test.database chooses the server: "container" (a missing engine
 * is a failure), "embedded", or "auto": a container where an engine answers, else the embedded one.
 *
 * @param url where the database is
 * @param superuser a login that may do everything, for tests that tamper
 * @param superuserPassword its password
 */
public record TestDatabase(String url, String superuser, String superuserPassword) {

    public static final String OWNER = EmbeddedDatabase.OWNER;
    public static final String SERVICE = EmbeddedDatabase.SERVICE;

    /** Both logins' password. */
    public static final String PASSWORD = "only-for-tests";

    private static final TestDatabase SERVER = server();

    /** Makes a new empty database with an owner for migrations and a login for the service. */
    public static TestDatabase create() {
        String name = "test_" + UUID.randomUUID().toString().replace("-", "");
        try (Connection connection = SERVER.connect()) {
            DatabaseRoles.ensureLogin(connection, OWNER, PASSWORD);
            DatabaseRoles.ensureLogin(connection, SERVICE, PASSWORD);
            DatabaseRoles.ensureDatabase(connection, name, OWNER, SERVICE);
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
        String url = SERVER.url.replaceFirst("/[^/]*$", "/" + name);
        return new TestDatabase(url, SERVER.superuser, SERVER.superuserPassword);
    }

    /** Gives the service under test this database. */
    public void register(DynamicPropertyRegistry registry) {
        registry.add("spring.datasource.url", () -> url);
        registry.add("spring.datasource.username", () -> SERVICE);
        registry.add("spring.datasource.password", () -> PASSWORD);
        registry.add("spring.flyway.user", () -> OWNER);
        registry.add("spring.flyway.password", () -> PASSWORD);
    }

    /** Connects with every right. */
    public Connection connect() throws SQLException {
        return DriverManager.getConnection(url, superuser, superuserPassword);
    }

    /** Connects as the owner or the service. */
    public Connection connect(String role) throws SQLException {
        return DriverManager.getConnection(url, role, PASSWORD);
    }

    private static TestDatabase server() {
        String choice = System.getProperty("bayledger.test.database", "auto");
        return switch (choice) {
            case "container" -> container();
            case "embedded" -> embedded();
            case "auto" ->
                    DockerClientFactory.instance().isDockerAvailable() ? container() : embedded();
            default -> throw new IllegalArgumentException("bayledger.test.database: " + choice);
        };
    }

    @SuppressWarnings("resource") // lives as long as the JVM
    private static TestDatabase container() {
        String image = System.getProperty("bayledger.test.postgres-image", "postgres:17-alpine");
        PostgreSQLContainer container =
                new PostgreSQLContainer(
                        DockerImageName.parse(image).asCompatibleSubstituteFor("postgres"));
        container.start();
        Runtime.getRuntime().addShutdownHook(new Thread(container::stop));
        // without the parameters that Testcontainers adds
        String url = container.getJdbcUrl().replaceFirst("\\?.*$", "");
        return new TestDatabase(url, container.getUsername(), container.getPassword());
    }

    @SuppressWarnings("resource") // lives as long as the JVM
    private static TestDatabase embedded() {
        try {
            Path folder = Files.createTempDirectory("bayledger-test");
            EmbeddedDatabase database = EmbeddedDatabase.start(folder);
            Runtime.getRuntime()
                    .addShutdownHook(
                            new Thread(
                                    () -> {
                                        database.close();
                                        FileSystemUtils.deleteRecursively(folder.toFile());
                                    }));
            return new TestDatabase(
                    database.jdbcUrl("postgres"),
                    "postgres",
                    database.credentials().superuserPassword());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
