package org.bayledger.ledger;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.bayledger.platform.TestDatabase;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.core.io.ClassPathResource;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.DriverManagerDataSource;

/** What was recorded with a row for every bay of every revision verifies as before. */
class BayChangeMigrationTest {

    private static final Project PROJECT =
            new Project(
                    "local", UUID.randomUUID(), "Civic library", Instant.ofEpochSecond(9), "local");

    private static final Content SHELL = content("{\"bays\":[],\"verdict\":\"SATISFIED\"}");
    private static final Content A = content("{\"id\":\"A\"}");
    private static final Content A2 = content("{\"id\":\"A\",\"load\":1}");
    private static final Content B = content("{\"id\":\"B\"}");
    private static final Content C = content("{\"id\":\"C\"}");

    private static final List<List<Manifest.Bay>> REVISIONS =
            List.of(
                    List.of(bay("A", A), bay("B", B)),
                    List.of(bay("A", A2), bay("B", B)),
                    List.of(bay("A", A2)),
                    List.of(bay("A", A2), bay("B", B), bay("C", C)),
                    List.of());

    @TempDir private Path folder = Path.of("");

    @Test
    void anOldChainVerifiesAndKeepsItsManifests() throws IOException {
        TestDatabase database = TestDatabase.create();
        for (String migration : List.of("V1__ledger.sql", "V2__result_verdicts.sql")) {
            Files.write(
                    folder.resolve(migration),
                    new ClassPathResource("db/migration/" + migration).getContentAsByteArray());
        }
        migrate(database, "filesystem:" + folder);
        JdbcClient owner = client(database, TestDatabase.OWNER);
        recordAsBefore(owner);
        migrate(database, "classpath:db/migration");

        DriverManagerDataSource source = source(database, TestDatabase.SERVICE);
        JdbcClient service = JdbcClient.create(source);
        LedgerStore store = new LedgerStore(service);
        for (int i = 0; i < REVISIONS.size(); i++) {
            assertThat(store.bays(PROJECT, i + 1)).isEqualTo(REVISIONS.get(i));
        }
        Verification found =
                new Verifier(
                                store,
                                new AuditStore(service),
                                new VerdictStore(new JdbcTemplate(source), store))
                        .verify(PROJECT);
        assertThat(found.intact()).as(found.reason()).isTrue();
        assertThat(found.size()).isEqualTo(REVISIONS.size());
        assertThat(
                        service.sql(
                                        """
                                        SELECT number || ' ' || place || ' ' || coalesce(bay_id, '-')
                                        FROM ledger.bay_change ORDER BY number, place
                                        """)
                                .query(String.class)
                                .list())
                .containsExactly(
                        "1 0 A", "1 1 B", "2 0 A", "3 1 -", "4 1 B", "4 2 C", "5 0 -", "5 1 -",
                        "5 2 -");
    }

    private static void recordAsBefore(JdbcClient owner) {
        owner.sql("INSERT INTO ledger.project VALUES ('local', ?, 'Civic library', ?, 'local')")
                .params(PROJECT.id(), Rows.utc(PROJECT.createdAt()))
                .update();
        for (Content content : List.of(SHELL, A, A2, B, C)) {
            owner.sql("INSERT INTO ledger.content VALUES ('local', ?, ?)")
                    .params(Sha256.bytes(content.hash()), content.bytes())
                    .update();
        }
        String previous = PROJECT.genesisHash();
        for (int number = 1; number <= REVISIONS.size(); number++) {
            List<Manifest.Bay> bays = REVISIONS.get(number - 1);
            Revision revision =
                    new Revision(
                                    number,
                                    "",
                                    previous,
                                    "A. Reviewer",
                                    "local",
                                    "issue",
                                    "0.1.0",
                                    Instant.ofEpochSecond(10 + number),
                                    "SATISFIED",
                                    SHELL.hash(),
                                    SHELL.hash())
                            .sealed(PROJECT, bays);
            owner.sql(
                            """
                            INSERT INTO ledger.revision
                            VALUES ('local', ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)
                            """)
                    .params(
                            PROJECT.id(),
                            number,
                            Sha256.bytes(previous),
                            Sha256.bytes(revision.hash()),
                            revision.author(),
                            revision.recordedBy(),
                            revision.reason(),
                            revision.engineVersion(),
                            Rows.utc(revision.recordedAt()),
                            revision.verdict(),
                            Sha256.bytes(revision.documentShell()),
                            Sha256.bytes(revision.resultShell()))
                    .update();
            for (int position = 0; position < bays.size(); position++) {
                owner.sql("INSERT INTO ledger.revision_bay VALUES ('local', ?, ?, ?, ?, ?, ?)")
                        .params(
                                PROJECT.id(),
                                number,
                                position,
                                bays.get(position).id(),
                                Sha256.bytes(bays.get(position).input()),
                                Sha256.bytes(bays.get(position).result()))
                        .update();
            }
            previous = revision.hash();
        }
    }

    private static void migrate(TestDatabase database, String location) {
        Flyway.configure()
                .dataSource(database.url(), TestDatabase.OWNER, TestDatabase.PASSWORD)
                .defaultSchema("ledger")
                .placeholders(Map.of("serviceRole", TestDatabase.SERVICE))
                .locations(location)
                .load()
                .migrate();
    }

    private static DriverManagerDataSource source(TestDatabase database, String role) {
        return new DriverManagerDataSource(database.url(), role, TestDatabase.PASSWORD);
    }

    private static JdbcClient client(TestDatabase database, String role) {
        return JdbcClient.create(source(database, role));
    }

    private static Content content(String json) {
        return new Content(json.getBytes(UTF_8));
    }

    private static Manifest.Bay bay(String id, Content content) {
        return new Manifest.Bay(id, content.hash(), content.hash());
    }
}
