package org.bayledger.ledger;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.bayledger.check.RawJson;
import org.bayledger.platform.TestDatabase;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.context.annotation.Import;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;

/**
 * Somebody with every right in the database changes rows, with all triggers and constraints out of
 * the way: the service's verification finds it, and so does the verifier of the exported file, both
 * at the right revision.
 */
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.NONE)
@Import(StandInReview.class)
class TamperTest {

    private static final TestDatabase DATABASE = TestDatabase.create();

    private static final int SIZE = 5;

    /** The attacker's shorthand: rows of revision 3 of this test's project. */
    private static final String THIRD = "project_id = :project AND number = 3";

    private static final String RESULT_OF_THIRD =
            "(SELECT result_hash FROM bay_change WHERE :third AND place = 0)";

    /** Which rows of a table are attacked, and which revision is then the first broken one. */
    private record Target(String rows, int firstBroken) {}

    /** The tables that hold what an auditor sees. */
    private static final Map<String, Target> RECORD =
            Map.of(
                    "project", new Target("project_id = :project", 1),
                    "revision", new Target(":third", 3),
                    "bay_change", new Target(":third AND place = 0", 3),
                    "content", new Target("hash = " + RESULT_OF_THIRD, 3));

    /** Copies of what is under the hash, for speed; missing ones are made anew. */
    private static final String DERIVED = "result_verdicts";

    /** Answers a repeated request with the revision that the first one recorded; no auditor's. */
    private static final String RETRIES = "idempotency";

    @Autowired private Ledger ledger;
    @Autowired private LedgerStore store;
    @Autowired private Verifier verifier;
    @Autowired private Exporter exporter;
    @Autowired private VerdictStore verdicts;

    @TempDir private Path folder = Path.of("");

    private Project project = new Project("", new UUID(0, 0), "", Instant.EPOCH, "");
    private final List<Revision> chain = new ArrayList<>();

    @DynamicPropertySource
    static void database(DynamicPropertyRegistry registry) {
        DATABASE.register(registry);
    }

    @BeforeAll
    static void takeTheConstraintsAway(@Autowired LedgerStore migrated) throws SQLException {
        assertThat(migrated).isNotNull();
        attack("ALTER TABLE content DROP CONSTRAINT content_has_its_hash");
        attack("ALTER TABLE revision DROP CONSTRAINT revision_pkey CASCADE");
        attack("ALTER TABLE revision DROP CONSTRAINT revision_number_check");
        attack("ALTER TABLE revision DROP CONSTRAINT revision_has_one_successor");
        attack("ALTER TABLE bay_change DROP CONSTRAINT bay_change_pkey");
        attack("ALTER TABLE bay_change DROP CONSTRAINT bay_is_there_or_not");
    }

    @BeforeEach
    void aChainOfFive() {
        project = ledger.create(Caller.OPEN, "Civic library");
        chain.clear();
        for (int i = 1; i <= SIZE; i++) {
            chain.add(record(i));
        }
        assertThat(verifier.verify(project))
                .isEqualTo(new Verification(true, SIZE, chain.get(4).hash(), null, null, null));
        assertThat(ExportVerifier.run(exported()).output())
                .startsWith("intact: 5 revisions, head " + chain.get(4).hash());
    }

    static Stream<Arguments> columns() throws SQLException {
        List<Arguments> columns = new ArrayList<>();
        try (Connection connection = DATABASE.connect();
                Statement statement = connection.createStatement();
                ResultSet row =
                        statement.executeQuery(
                                """
                                SELECT table_name, column_name, data_type
                                FROM information_schema.columns
                                WHERE table_schema = 'ledger' AND table_name NOT LIKE 'flyway%'
                                ORDER BY table_name, ordinal_position
                                """)) {
            while (row.next()) {
                columns.add(Arguments.of(row.getString(1), row.getString(2), row.getString(3)));
            }
        }
        return columns.stream();
    }

    @Test
    void noTableIsForgotten() throws SQLException {
        assertThat(columns().map(column -> column.get()[0]).collect(Collectors.toSet()))
                .as("a new table belongs to one of these kinds, or nobody notices its changes")
                .containsExactlyInAnyOrderElementsOf(
                        Stream.concat(RECORD.keySet().stream(), Stream.of(DERIVED, RETRIES))
                                .toList());
    }

    @ParameterizedTest(name = "{0}.{1}")
    @MethodSource("columns")
    void everyColumnOfTheRecordIsUnderTheHashOrComparedWithWhatIs(
            String table, String column, String type) throws SQLException {
        Target target = RECORD.get(table);
        if (target == null) {
            return; // the two tests after this
        }
        attack(
                "UPDATE %s SET %s = %s WHERE %s"
                        .formatted(table, column, another(column, type), rows(target.rows())));
        assertBroken(target.firstBroken());
    }

    @ParameterizedTest(name = "{0}.{1}")
    @MethodSource("columns")
    void whatIsDerivedIsComparedOrOfNoEffect(String table, String column, String type)
            throws SQLException {
        if (!table.equals(DERIVED)) {
            return;
        }
        String hash = store.bays(project, 3).get(0).result();
        List<ItemVerdict> before = verdicts.verdicts("local", List.of(hash)).get(hash);
        attack(
                "UPDATE %s SET %s = %s WHERE result_hash = %s"
                        .formatted(table, column, another(column, type), rows(RESULT_OF_THIRD)));
        Verification found = verifier.verify(project);
        if (column.equals("bytes")) {
            assertThat(found.firstBroken()).as(found.reason()).isEqualTo(3);
        } else {
            assertThat(found.intact()).isTrue();
            assertThat(verdicts.verdicts("local", List.of(hash)).get(hash)).isEqualTo(before);
        }
        assertThat(ExportVerifier.run(exported()).code()).as("no part of an export").isZero();
    }

    @ParameterizedTest(name = "{0}.{1}")
    @MethodSource("columns")
    void whatAnswersRepeatedRequestsIsNothingThatAnAuditorSees(
            String table, String column, String type) throws SQLException, IOException {
        if (!table.equals(RETRIES)) {
            return;
        }
        String before = Files.readString(exported());
        attack(
                "UPDATE %s SET %s = %s WHERE project_id = %s"
                        .formatted(table, column, another(column, type), rows(":project")));
        assertThat(verifier.verify(project).intact()).isTrue();
        assertThat(Files.readString(exported())).isEqualTo(before);
    }

    private static String another(String column, String type) {
        return switch (type) {
            case "text" -> column + " || 'y'";
            case "uuid" -> "gen_random_uuid()";
            case "integer" -> column + " + 30";
            case "timestamp with time zone" -> column + " + interval '1 microsecond'";
            case "bytea" -> "sha256(" + column + " || sha256(random()::text::bytea))";
            default -> throw new AssertionError("no attack is known on a column of type " + type);
        };
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    3 | UPDATE revision SET document_shell = result_shell WHERE :third
                    3 | UPDATE revision SET result_shell = document_shell WHERE :third
                    3 | UPDATE revision SET verdict = 'EXCEEDED' WHERE :third
                    3 | DELETE FROM revision WHERE :third
                    1 | DELETE FROM revision WHERE project_id = :project AND number = 1
                    2 | UPDATE revision SET number = CASE number WHEN 2 THEN 3 ELSE 2 END WHERE project_id = :project AND number IN (2, 3)
                    2 | UPDATE bay_change SET number = CASE number WHEN 2 THEN 3 ELSE 2 END WHERE project_id = :project AND number IN (2, 3)
                    1 | UPDATE revision SET number = -1 WHERE project_id = :project AND number = 1
                    1 | INSERT INTO revision SELECT organisation, project_id, 0, sha256('x'), sha256('y'), author, recorded_by, reason, engine_version, recorded_at, verdict, document_shell, result_shell FROM revision WHERE :third
                    4 | UPDATE revision SET number = 2147483647 WHERE project_id = :project AND number = 4
                    3 | INSERT INTO revision SELECT * FROM revision WHERE :third
                    3 | UPDATE bay_change SET bay_id = 'N-99' WHERE :third AND place = 0
                    3 | UPDATE bay_change SET input_hash = result_hash WHERE :third AND place = 0
                    3 | UPDATE bay_change SET result_hash = input_hash WHERE :third AND place = 0
                    3 | UPDATE bay_change SET place = place + 1 WHERE :third
                    3 | UPDATE bay_change SET place = 1 - place WHERE :third
                    3 | UPDATE bay_change SET bay_id = NULL, input_hash = NULL, result_hash = NULL WHERE :third AND place = 1
                    1 | UPDATE bay_change SET number = 0 WHERE project_id = :project AND number = 1
                    3 | DELETE FROM bay_change WHERE :third AND place = 1
                    3 | INSERT INTO bay_change SELECT organisation, project_id, number, 2, bay_id, input_hash, result_hash FROM bay_change WHERE :third AND place = 1
                    3 | INSERT INTO bay_change SELECT organisation, project_id, number, 7, 'N-99', input_hash, result_hash FROM bay_change WHERE :third AND place = 1
                    3 | INSERT INTO bay_change SELECT * FROM bay_change WHERE :third AND place = 1
                    3 | INSERT INTO bay_change SELECT organisation, project_id, number, 5, NULL, NULL, NULL FROM bay_change WHERE :third AND place = 1
                    3 | UPDATE content SET bytes = 'x' WHERE hash = (SELECT input_hash FROM bay_change WHERE :third AND place = 0)
                    3 | UPDATE content SET bytes = 'x' WHERE hash = (SELECT result_hash FROM bay_change WHERE :third AND place = 0)
                    3 | UPDATE content SET bytes = 'x' WHERE hash = (SELECT document_shell FROM revision WHERE :third)
                    3 | UPDATE content SET bytes = 'x' WHERE hash = (SELECT result_shell FROM revision WHERE :third)
                    3 | UPDATE content SET bytes = '\\xff' WHERE hash = (SELECT input_hash FROM bay_change WHERE :third AND place = 1)
                    3 | UPDATE content SET bytes = substring(bytes from 2) WHERE hash = (SELECT input_hash FROM bay_change WHERE :third AND place = 1)
                    3 | DELETE FROM content WHERE hash = (SELECT input_hash FROM bay_change WHERE :third AND place = 0)
                    3 | DELETE FROM content WHERE hash = (SELECT document_shell FROM revision WHERE :third)
                    """)
    void findsTheFirstRevisionThatIsNotWhatWasRecorded(int firstBroken, String sql)
            throws SQLException {
        attack(rows(sql));
        assertBroken(firstBroken);
    }

    @Test
    void rowsOfBaysWithoutARevisionAreFoundBehindTheNewest() throws SQLException {
        attack(
                rows(
                        "INSERT INTO bay_change SELECT organisation, project_id, 9, 0, bay_id,"
                                + " input_hash, result_hash FROM bay_change WHERE :third"));
        assertThat(verifier.verify(project).firstBroken()).isEqualTo(6);
    }

    @Test
    void aRevisionRewrittenWithAHashOfItsOwnBreaksTheLinkOfTheNext() throws SQLException {
        Revision forged = forged(chain.get(2));
        attack(
                rows(
                        "UPDATE revision SET author = 'B. Other', hash = decode('"
                                + forged.hash()
                                + "', 'hex') WHERE :third"));
        assertBroken(4);
    }

    @Test
    void aForkIsFoundWhereTheChainsPart() throws SQLException {
        Revision forged = forged(chain.get(2));
        attack(
                rows(
                        "INSERT INTO revision SELECT organisation, project_id, number,"
                                + " previous_hash, decode('"
                                + forged.hash()
                                + "', 'hex'), 'B. Other', recorded_by, reason, engine_version,"
                                + " recorded_at, verdict, document_shell, result_shell"
                                + " FROM revision WHERE :third"));
        assertBroken(3);
    }

    private Revision forged(Revision recorded) {
        return new Revision(
                        recorded.number(),
                        "",
                        recorded.previousHash(),
                        "B. Other",
                        recorded.recordedBy(),
                        recorded.reason(),
                        recorded.engineVersion(),
                        recorded.recordedAt(),
                        recorded.verdict(),
                        recorded.documentShell(),
                        recorded.resultShell())
                .sealed(project, store.bays(project, recorded.number()));
    }

    @Test
    void aHeldCheckpointShowsATruncatedChain() throws SQLException {
        cutAfter(4);
        assertThat(verifier.verify(project).intact()).as("a chain alone can't show it").isTrue();
        assertThat(ExportVerifier.run(exported()).code()).as("nor can its export").isZero();

        String end = chain.get(4).hash();
        Verification found = verifier.verify(project, SIZE, end);
        assertThat(found.intact()).isFalse();
        assertThat(found.firstBroken()).isEqualTo(5);
        assertThat(found.size()).isEqualTo(4);
        assertThat(found.checkpoint()).isEqualTo(new Verification.HeldCheckpoint(SIZE, end, false));
        assertThat(verifier.verify(project, 4, chain.get(3).hash()).intact()).isTrue();

        assertThat(ExportVerifier.run(exported(), "5", end).firstBroken()).isEqualTo(5);
        assertThat(ExportVerifier.run(exported(), "4", chain.get(3).hash()).code()).isZero();
    }

    @Test
    void aHeldCheckpointShowsAChainRewrittenFromSomewhereOn() throws SQLException {
        cutAfter(2);
        for (int i = 3; i <= SIZE; i++) {
            record(10 + i);
        }
        assertThat(verifier.verify(project).intact()).as("a chain alone can't show it").isTrue();
        assertThat(ExportVerifier.run(exported()).code()).as("nor can its export").isZero();

        String fourth = chain.get(3).hash();
        Verification found = verifier.verify(project, 4, fourth);
        assertThat(found.intact()).isFalse();
        assertThat(found.firstBroken()).isEqualTo(4);
        assertThat(found.reason()).contains("or an earlier one was replaced");
        assertThat(verifier.verify(project, 2, chain.get(1).hash()).intact())
                .as("what came before is as it was")
                .isTrue();

        assertThat(ExportVerifier.run(exported(), "4", fourth).firstBroken()).isEqualTo(4);
        assertThat(ExportVerifier.run(exported(), "2", chain.get(1).hash()).code()).isZero();
    }

    @Test
    void theEmptyCheckpointHoldsForTheProjectItWasTakenOf() {
        String genesis = project.genesisHash();
        assertThat(verifier.verify(project, 0, genesis).intact()).isTrue();
        assertThat(ExportVerifier.run(exported(), "0", genesis).code()).isZero();
        Project empty = ledger.create(Caller.OPEN, "Civic library");
        assertThat(verifier.verify(empty))
                .isEqualTo(new Verification(true, 0, empty.genesisHash(), null, null, null));
        assertThat(verifier.verify(empty, 0, genesis).intact()).isFalse();
        assertThat(verifier.verify(empty, 0, empty.genesisHash()).intact()).isTrue();
        project = empty;
        assertThat(ExportVerifier.run(exported()).code()).isZero();
        assertThat(ExportVerifier.run(exported(), "0", genesis).code()).isEqualTo(1);
        assertThat(ExportVerifier.run(exported(), "0", empty.genesisHash()).code()).isZero();
    }

    /** By the service and by the verifier of the file; a project that is gone is found so. */
    private void assertBroken(int firstBroken) {
        Optional<Project> asStored = store.project("local", project.id());
        if (asStored.isEmpty()) {
            assertThat(firstBroken).as("the project is gone").isEqualTo(1);
            return;
        }
        project = asStored.get();
        Verification found = verifier.verify(project);
        assertThat(found.intact()).isFalse();
        assertThat(found.firstBroken()).as(found.reason()).isEqualTo(firstBroken);
        assertThat(found.reason()).isNotBlank();

        ExportVerifier.Finding inTheFile = ExportVerifier.run(exported());
        assertThat(inTheFile.code()).as(inTheFile.output()).isEqualTo(1);
        assertThat(inTheFile.firstBroken()).as(inTheFile.output()).isEqualTo(firstBroken);
    }

    private Path exported() {
        Path file = folder.resolve("export.ndjson");
        try (OutputStream out = Files.newOutputStream(file)) {
            exporter.write(project, out);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
        return file;
    }

    /** Records a revision whose every part is its own. */
    private Revision record(int seed) {
        String body =
                LedgerClient.body(
                        "A. Reviewer",
                        "issue " + seed,
                        "{\"name\":\"%s\",\"bays\":[{\"id\":\"N-01\",\"load\":0.%d,\"note\":\"%s\"},{\"id\":\"N-02\",\"load\":0.5%d}]}"
                                .formatted(
                                        project.id() + "/" + seed,
                                        seed,
                                        project.id() + "/" + seed,
                                        seed)
                                .replace("N-0", project.id() + "/" + "N-0"));
        String head = store.head(project).entityTag();
        return ledger.record(
                Caller.OPEN,
                project,
                RawJson.read(body.getBytes(UTF_8)),
                "key-" + seed,
                () -> Precondition.of(head, null));
    }

    private void cutAfter(int number) throws SQLException {
        for (String table : List.of("idempotency", "bay_change", "revision")) {
            attack(
                    "DELETE FROM "
                            + table
                            + " WHERE project_id = '"
                            + project.id()
                            + "' AND number > "
                            + number);
        }
    }

    private String rows(String sql) {
        return sql.replace(":third", THIRD).replace(":project", "'" + project.id() + "'");
    }

    /** Runs SQL with every right, without triggers and without foreign keys. */
    private static void attack(String sql) throws SQLException {
        try (Connection connection = DATABASE.connect();
                Statement statement = connection.createStatement()) {
            statement.execute("SET session_replication_role = replica; SET search_path = ledger");
            statement.execute(sql);
        }
    }
}
