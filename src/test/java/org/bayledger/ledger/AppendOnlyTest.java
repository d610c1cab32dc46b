package org.bayledger.ledger;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import org.bayledger.check.RawJson;
import org.bayledger.platform.TestDatabase;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.context.annotation.Import;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;

/** Nothing that was recorded can be changed: not by the service's login, not by the owner's. */
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.NONE)
@Import(StandInReview.class)
class AppendOnlyTest {

    private static final TestDatabase DATABASE = TestDatabase.create();

    private static final List<String> TABLES =
            List.of(
                    "project",
                    "content",
                    "revision",
                    "bay_change",
                    "idempotency",
                    "result_verdicts");

    @Autowired private Ledger ledger;

    @DynamicPropertySource
    static void database(DynamicPropertyRegistry registry) {
        DATABASE.register(registry);
    }

    @Test
    void theServicesLoginCanOnlyReadAndAppend() {
        recordOne();
        for (String table : TABLES) {
            for (String sql :
                    List.of(
                            "UPDATE ledger.%s SET organisation = 'x'",
                            "DELETE FROM ledger.%s",
                            "TRUNCATE ledger.%s CASCADE",
                            "DROP TABLE ledger.%s CASCADE",
                            "ALTER TABLE ledger.%s DISABLE TRIGGER ALL",
                            "DROP TRIGGER append_only ON ledger.%s",
                            "SELECT * FROM ledger.%s FOR UPDATE")) {
                assertThat(state(TestDatabase.SERVICE, sql.formatted(table)))
                        .as(sql.formatted(table))
                        .isEqualTo("42501"); // insufficient_privilege
            }
        }
        for (String sql :
                List.of(
                        "CREATE TABLE ledger.mine (x int)",
                        "SELECT * FROM ledger.flyway_schema_history",
                        "SET session_replication_role = replica",
                        "SET ROLE " + TestDatabase.OWNER)) {
            assertThat(state(TestDatabase.SERVICE, sql)).as(sql).isEqualTo("42501");
        }
    }

    @Test
    void theTriggerRefusesEvenTheOwner() {
        recordOne();
        for (String table : TABLES) {
            for (String sql :
                    List.of(
                            "UPDATE ledger.%s SET organisation = 'x'",
                            "DELETE FROM ledger.%s", "TRUNCATE ledger.%s CASCADE")) {
                assertThat(state(TestDatabase.OWNER, sql.formatted(table)))
                        .as(sql.formatted(table))
                        .isEqualTo("23001"); // restrict_violation, raised by the trigger
            }
        }
    }

    @Test
    void theTablesThemselvesRefuseAForkAndContentUnderAWrongHash() {
        recordOne();
        assertThat(
                        state(
                                TestDatabase.SERVICE,
                                """
                                INSERT INTO ledger.revision
                                SELECT organisation, project_id, number + 1, previous_hash,
                                    sha256('x'), author, recorded_by, reason, engine_version,
                                    recorded_at, verdict, document_shell, result_shell
                                FROM ledger.revision
                                """))
                .isEqualTo("23505"); // unique_violation
        assertThat(
                        state(
                                TestDatabase.SERVICE,
                                "INSERT INTO ledger.content VALUES ('local', sha256('x'), 'y')"))
                .isEqualTo("23514"); // check_violation
    }

    private void recordOne() {
        Project project = ledger.create(Caller.OPEN, "Civic library");
        ledger.record(
                Caller.OPEN,
                project,
                RawJson.read(
                        LedgerClient.body("A", "r", "{\"bays\":[{\"id\":\"N-01\"}]}")
                                .getBytes(UTF_8)),
                "key",
                () -> Precondition.of(null, "*"));
    }

    private static String state(String role, String sql) {
        SQLException refused =
                catchThrowableOfType(
                        SQLException.class,
                        () -> {
                            try (Connection connection = DATABASE.connect(role);
                                    Statement statement = connection.createStatement()) {
                                statement.execute(sql);
                            }
                        });
        return refused == null ? "accepted" : String.valueOf(refused.getSQLState());
    }
}
