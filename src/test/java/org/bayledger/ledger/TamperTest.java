package org.bayledger.ledger;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import org.bayledger.check.RawJson;
import org.bayledger.platform.TestDatabase;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.context.annotation.Import;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;

/**
 * Somebody with every right in the database changes rows, with all triggers and constraints out of
 * the way: the verification finds it, at the right revision.
 */
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.NONE)
@Import(StandInReview.class)
class TamperTest {

    private static final TestDatabase DATABASE = TestDatabase.create();

    private static final int SIZE = 5;

    /** The attacker's shorthand: rows of revision 3 of this test's project. */
    private static final String THIRD = "project_id = :project AND number = 3";

    @Autowired private Ledger ledger;
    @Autowired private LedgerStore store;
    @Autowired private Verifier verifier;

    private Project project =
            new Project("", new java.util.UUID(0, 0), "", java.time.Instant.EPOCH, "");
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
        attack("ALTER TABLE revision_bay DROP CONSTRAINT revision_bay_pkey");
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
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    1 | UPDATE project SET name = 'y' WHERE project_id = :project
                    1 | UPDATE project SET created_at = created_at + interval '1 microsecond' WHERE project_id = :project
                    1 | UPDATE project SET created_by = 'y' WHERE project_id = :project
                    3 | UPDATE revision SET author = 'B. Other' WHERE :third
                    3 | UPDATE revision SET recorded_by = 'y' WHERE :third
                    3 | UPDATE revision SET reason = 'y' WHERE :third
                    3 | UPDATE revision SET engine_version = '0.0.1' WHERE :third
                    3 | UPDATE revision SET recorded_at = recorded_at + interval '1 microsecond' WHERE :third
                    3 | UPDATE revision SET verdict = 'EXCEEDED' WHERE :third
                    3 | UPDATE revision SET hash = sha256('x') WHERE :third
                    3 | UPDATE revision SET previous_hash = sha256('x') WHERE :third
                    3 | UPDATE revision SET document_shell = result_shell WHERE :third
                    3 | UPDATE revision SET result_shell = document_shell WHERE :third
                    3 | UPDATE revision SET number = 30 WHERE :third
                    3 | UPDATE revision SET organisation = 'other' WHERE :third
                    3 | UPDATE revision SET project_id = gen_random_uuid() WHERE :third
                    3 | DELETE FROM revision WHERE :third
                    2 | UPDATE revision SET number = CASE number WHEN 2 THEN 3 ELSE 2 END WHERE project_id = :project AND number IN (2, 3)
                    1 | DELETE FROM revision WHERE project_id = :project AND number = 1
                    3 | UPDATE revision_bay SET bay_id = 'N-99' WHERE :third AND position = 0
                    3 | UPDATE revision_bay SET input_hash = result_hash WHERE :third AND position = 0
                    3 | UPDATE revision_bay SET result_hash = input_hash WHERE :third AND position = 0
                    3 | UPDATE revision_bay SET position = position + 1 WHERE :third
                    3 | UPDATE revision_bay SET position = 1 - position WHERE :third
                    3 | UPDATE revision_bay SET organisation = 'other' WHERE :third
                    3 | DELETE FROM revision_bay WHERE :third AND position = 1
                    3 | INSERT INTO revision_bay SELECT organisation, project_id, number, 2, bay_id, input_hash, result_hash FROM revision_bay WHERE :third AND position = 1
                    3 | UPDATE content SET bytes = 'x' WHERE hash = (SELECT input_hash FROM revision_bay WHERE :third AND position = 0)
                    3 | UPDATE content SET bytes = 'x' WHERE hash = (SELECT result_hash FROM revision_bay WHERE :third AND position = 0)
                    3 | UPDATE content SET bytes = 'x' WHERE hash = (SELECT document_shell FROM revision WHERE :third)
                    3 | UPDATE content SET bytes = 'x' WHERE hash = (SELECT result_shell FROM revision WHERE :third)
                    3 | UPDATE content SET hash = sha256(random()::text::bytea) WHERE hash = (SELECT input_hash FROM revision_bay WHERE :third AND position = 0)
                    3 | UPDATE result_verdicts SET bytes = convert_to(replace(convert_from(bytes, 'UTF8'), 'SATISFIED', 'EXCEEDED'), 'UTF8') WHERE result_hash = (SELECT result_hash FROM revision_bay WHERE :third AND position = 0)
                    3 | DELETE FROM content WHERE hash = (SELECT input_hash FROM revision_bay WHERE :third AND position = 0)
                    """)
    void findsTheFirstRevisionThatIsNotWhatWasRecorded(int firstBroken, String sql)
            throws SQLException {
        attack(sql.replace(":third", THIRD).replace(":project", "'" + project.id() + "'"));

        Project asStored = store.project("local", project.id()).orElseThrow();
        Verification found = verifier.verify(asStored);
        assertThat(found.intact()).isFalse();
        assertThat(found.firstBroken()).as(found.reason()).isEqualTo(firstBroken);
        assertThat(found.reason()).isNotBlank();
    }

    @Test
    void aRevisionRewrittenWithAHashOfItsOwnBreaksTheLinkOfTheNext() throws SQLException {
        Revision third = chain.get(2);
        Revision forged =
                new Revision(
                                third.number(),
                                "",
                                third.previousHash(),
                                "B. Other",
                                third.recordedBy(),
                                third.reason(),
                                third.engineVersion(),
                                third.recordedAt(),
                                third.verdict(),
                                third.documentShell(),
                                third.resultShell())
                        .sealed(project, store.bays(project, 3));
        attack(
                "UPDATE revision SET author = 'B. Other', hash = decode('"
                        + forged.hash()
                        + "', 'hex') WHERE project_id = '"
                        + project.id()
                        + "' AND number = 3");
        assertThat(verifier.verify(project).firstBroken()).isEqualTo(4);
    }

    @Test
    void aHeldCheckpointShowsATruncatedChain() throws SQLException {
        cutAfter(4);
        assertThat(verifier.verify(project).intact()).as("a chain alone can't show it").isTrue();

        Verification found = verifier.verify(project, SIZE, chain.get(4).hash());
        assertThat(found.intact()).isFalse();
        assertThat(found.firstBroken()).isEqualTo(5);
        assertThat(found.size()).isEqualTo(4);
        assertThat(found.checkpoint())
                .isEqualTo(new Verification.HeldCheckpoint(SIZE, chain.get(4).hash(), false));
        assertThat(verifier.verify(project, 4, chain.get(3).hash()).intact()).isTrue();
    }

    @Test
    void aHeldCheckpointShowsAChainRewrittenFromSomewhereOn() throws SQLException {
        cutAfter(2);
        for (int i = 3; i <= SIZE; i++) {
            record(10 + i);
        }
        assertThat(verifier.verify(project).intact()).as("a chain alone can't show it").isTrue();

        Verification found = verifier.verify(project, 4, chain.get(3).hash());
        assertThat(found.intact()).isFalse();
        assertThat(found.firstBroken()).isEqualTo(4);
        assertThat(found.reason()).contains("or an earlier one was replaced");
        assertThat(verifier.verify(project, 2, chain.get(1).hash()).intact())
                .as("what came before is as it was")
                .isTrue();
    }

    @Test
    void theEmptyCheckpointHoldsForTheProjectItWasTakenOf() throws SQLException {
        String genesis = project.genesisHash();
        assertThat(verifier.verify(project, 0, genesis).intact()).isTrue();
        Project empty = ledger.create(Caller.OPEN, "Civic library");
        assertThat(verifier.verify(empty))
                .isEqualTo(new Verification(true, 0, empty.genesisHash(), null, null, null));
        assertThat(verifier.verify(empty, 0, genesis).intact()).isFalse();
        assertThat(verifier.verify(empty, 0, empty.genesisHash()).intact()).isTrue();
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
                null,
                () -> Precondition.of(head, null));
    }

    private void cutAfter(int number) throws SQLException {
        for (String table : List.of("revision_bay", "revision")) {
            attack(
                    "DELETE FROM "
                            + table
                            + " WHERE project_id = '"
                            + project.id()
                            + "' AND number > "
                            + number);
        }
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
