package org.bayledger.platform;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.Statement;
import javax.sql.DataSource;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.boot.autoconfigure.AutoConfigurations;
import org.springframework.boot.diagnostics.FailureAnalysis;
import org.springframework.boot.flyway.autoconfigure.FlywayAutoConfiguration;
import org.springframework.boot.jdbc.autoconfigure.DataSourceAutoConfiguration;
import org.springframework.boot.test.context.runner.ApplicationContextRunner;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Two logins on one database, whether the service starts it or is given it. */
class DatabaseConfigurationTest {

    private final ApplicationContextRunner service =
            new ApplicationContextRunner()
                    .withConfiguration(
                            AutoConfigurations.of(
                                    DataSourceAutoConfiguration.class,
                                    FlywayAutoConfiguration.class))
                    .withUserConfiguration(DatabaseConfiguration.class)
                    .withPropertyValues("spring.flyway.default-schema=ledger");

    @Test
    void startsItsOwnDatabaseWhenItIsGivenNoneAndStopsItAgain(@TempDir Path folder) {
        service.withPropertyValues("bayledger.embedded-database.directory=" + folder)
                .run(
                        context -> {
                            assertThat(context).hasSingleBean(EmbeddedDatabase.class);
                            assertThat(userOf(context.getBean(DataSource.class)))
                                    .isEqualTo("bayledger_service");
                            assertThat(folder.resolve("data/postmaster.pid")).exists();
                        });
        assertThat(folder.resolve("data/postmaster.pid")).doesNotExist();
    }

    @Test
    void usesTheDatabaseItIsGiven(@TempDir Path folder) {
        TestDatabase database = TestDatabase.create();
        given(database)
                .withPropertyValues("bayledger.embedded-database.directory=" + folder)
                .run(
                        context -> {
                            assertThat(context).doesNotHaveBean(EmbeddedDatabase.class);
                            assertThat(userOf(context.getBean(DataSource.class)))
                                    .isEqualTo(TestDatabase.SERVICE);
                        });
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void refusesOneLoginForBoth() {
        TestDatabase database = TestDatabase.create();
        service.withPropertyValues(
                        "spring.datasource.url=" + database.url(),
                        "spring.datasource.username=" + TestDatabase.OWNER,
                        "spring.datasource.password=" + TestDatabase.PASSWORD)
                .run(
                        context ->
                                assertThat(context.getStartupFailure())
                                        .rootCause()
                                        .isInstanceOf(StartupRefusedException.class)
                                        .hasMessageContaining("two different logins"));
    }

    @Test
    void refusesAServiceLoginThatCouldChangeWhatItRecorded() {
        TestDatabase database = TestDatabase.create();
        given(database).run(context -> assertThat(context).hasNotFailed());

        execute(database, "GRANT UPDATE (reason) ON ledger.revision TO bayledger_service");
        given(database)
                .run(
                        context ->
                                assertThat(context.getStartupFailure())
                                        .rootCause()
                                        .isInstanceOf(StartupRefusedException.class)
                                        .hasMessageContaining("tables: revision)"));

        given(database)
                .withPropertyValues(
                        "spring.datasource.username=" + database.superuser(),
                        "spring.datasource.password=" + database.superuserPassword())
                .run(
                        context ->
                                assertThat(context.getStartupFailure())
                                        .rootCause()
                                        .isInstanceOf(StartupRefusedException.class)
                                        .hasMessageContaining("be no superuser"));
    }

    @Test
    void createsTheServicesLoginWhereItIsToldTo() {
        TestDatabase database = TestDatabase.create();
        String role = "service_" + Long.toString(System.nanoTime(), 36);
        execute(database, "GRANT CONNECT ON DATABASE " + name(database) + " TO PUBLIC");
        service.withPropertyValues(
                        "spring.datasource.url=" + database.url(),
                        "spring.datasource.username=" + role,
                        "spring.datasource.password=secret",
                        "spring.flyway.user=" + database.superuser(),
                        "spring.flyway.password=" + database.superuserPassword(),
                        "bayledger.database.create-service-role=true")
                .run(
                        context -> {
                            assertThat(userOf(context.getBean(DataSource.class))).isEqualTo(role);
                            assertThat(context.getBean(DataSource.class).getConnection())
                                    .isNotNull();
                        });
    }

    @Test
    void aRefusedStartIsSaidInTwoPlainParagraphs() {
        FailureAnalysis analysis =
                new StartupRefusedAnalyzer()
                        .analyze(
                                new IllegalStateException(
                                        new StartupRefusedException("It is so.", "Do this.")));
        assertThat(analysis.getDescription()).isEqualTo("It is so.");
        assertThat(analysis.getAction()).isEqualTo("Do this.");
    }

    private ApplicationContextRunner given(TestDatabase database) {
        return service.withPropertyValues(
                "spring.datasource.url=" + database.url(),
                "spring.datasource.username=" + TestDatabase.SERVICE,
                "spring.datasource.password=" + TestDatabase.PASSWORD,
                "spring.flyway.user=" + TestDatabase.OWNER,
                "spring.flyway.password=" + TestDatabase.PASSWORD);
    }

    private static String userOf(DataSource dataSource) {
        return JdbcClient.create(dataSource)
                .sql("SELECT current_user FROM ledger.project RIGHT JOIN (SELECT 1) x ON true")
                .query(String.class)
                .single();
    }

    private static String name(TestDatabase database) {
        return database.url().substring(database.url().lastIndexOf('/') + 1);
    }

    private static void execute(TestDatabase database, String sql) {
        try (Connection connection = database.connect();
                Statement statement = connection.createStatement()) {
            statement.execute(sql);
        } catch (java.sql.SQLException e) {
            throw new IllegalStateException(e);
        }
    }
}
