package org.bayledger.ledger;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.bayledger.platform.TestDatabase;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.context.annotation.Import;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;

/**
 * Reading takes as many pages of the database from a project of 10,000 revisions as from one of
 * 100, give or take the depth of an index: PostgreSQL's own account of the statements.
 */
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.NONE)
@Import(StandInReview.class)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class FlatReadsTest {

    private static final TestDatabase DATABASE = TestDatabase.create();

    private static final int BAYS = 50;
    private static final UUID SMALL = UUID.fromString("11111111-1111-4111-8111-111111111111");
    private static final UUID LARGE = UUID.fromString("22222222-2222-4222-8222-222222222222");
    private static final int FEW = 100;
    private static final int MANY = 10_000;

    private static final Pattern PAGES = Pattern.compile("shared hit=(\\d+)(?: read=(\\d+))?");

    /** Levels of an index that grew, and the page or two that a range of it starts in. */
    private static final int GIVE_OR_TAKE = 2;

    private static final int HASHES = 10;

    /** Levels of the index, and the page of the row. */
    private static final int PAGES_OF_A_STEP = 5;

    @Autowired private JdbcClient database;
    @Autowired private AuditStore audit;
    @Autowired private LedgerStore store;

    @DynamicPropertySource
    static void database(DynamicPropertyRegistry registry) {
        DATABASE.register(registry);
    }

    /** Every revision changes one bay; N-07 changes ten times, early, in either project. */
    @BeforeAll
    void twoProjects(@Autowired LedgerStore migrated) throws SQLException {
        assertThat(migrated).isNotNull();
        try (Connection connection = DATABASE.connect();
                Statement statement = connection.createStatement()) {
            statement.execute("SET session_replication_role = replica; SET search_path = ledger");
            for (Map.Entry<UUID, Integer> project : Map.of(SMALL, FEW, LARGE, MANY).entrySet()) {
                String id = "'" + project.getKey() + "'";
                statement.execute(
                        "INSERT INTO project VALUES ('local', %s, 'x', now(), 'y')".formatted(id));
                statement.execute(
                        """
                        INSERT INTO revision
                        SELECT 'local', %1$s::uuid, n, sha256((%1$s || n)::bytea),
                            sha256((%1$s || n + 1)::bytea), 'author', 'local', 'reason', '0.1.0',
                            now(), 'SATISFIED', sha256('document'), sha256('result')
                        FROM generate_series(1, %2$d) AS n
                        """
                                .formatted(id, project.getValue()));
                statement.execute(
                        """
                        INSERT INTO bay_change
                        SELECT 'local', %1$s::uuid, 1, n, 'N-' || lpad(n::text, 2, '0'),
                            sha256('input'), sha256('result')
                        FROM generate_series(0, %3$d - 1) AS n
                        UNION ALL
                        SELECT 'local', %1$s::uuid, n, CASE WHEN n <= 10 THEN 7 ELSE 8 + n %% 42 END,
                            'N-' || lpad((CASE WHEN n <= 10 THEN 7 ELSE 8 + n %% 42 END)::text, 2, '0'),
                            sha256(n::text::bytea), sha256((n || 'r')::bytea)
                        FROM generate_series(2, %2$d) AS n
                        """
                                .formatted(id, project.getValue(), BAYS));
            }
            statement.execute(
                    """
                    INSERT INTO content
                    SELECT 'local', sha256(text::bytea), text::bytea
                    FROM generate_series(2, %d) AS n, LATERAL (VALUES (n::text), (n || 'r')) AS t(text)
                    """
                            .formatted(MANY));
            statement.execute(
                    """
                    INSERT INTO result_verdicts
                    SELECT 'local', sha256((n || 'r')::bytea), '[]' FROM generate_series(2, %d) AS n
                    """
                            .formatted(MANY));
            statement.execute(
                    "ANALYZE project; ANALYZE revision; ANALYZE bay_change; ANALYZE content;"
                            + " ANALYZE result_verdicts");
        }
    }

    @Test
    void listingRevisionsReadsItsPageOfThem() {
        flat(
                LedgerStore.REVISIONS,
                "revision_pkey",
                Map.of("after", FEW / 2, "count", 20),
                Map.of("after", MANY / 2, "count", 20));
        flat(LedgerStore.NEWEST, "revision_pkey", Map.of(), Map.of());
    }

    @Test
    void aRevisionsBaysTakeAStepIntoTheIndexEach() {
        flat(
                LedgerStore.BAYS,
                "bay_change_at_place",
                Map.of("number", FEW - 1),
                Map.of("number", MANY - 1));
        Project large = new Project("local", LARGE, "x", Instant.EPOCH, "y");
        assertThat(store.bays(large, MANY)).hasSize(BAYS);
    }

    @Test
    void theHistoryOfABayReadsItsOwnChanges() {
        flat(
                AuditStore.STANDINGS,
                "bay_change_of_bay",
                Map.of("bay", "N-07"),
                Map.of("bay", "N-07"));
        flat(
                AuditStore.NUMBERED,
                "revision_pkey",
                Map.of("numbers", List.of(3, 9)),
                Map.of("numbers", List.of(3, 9)));
        for (UUID id : List.of(SMALL, LARGE)) {
            Project project = new Project("local", id, "x", Instant.EPOCH, "y");
            assertThat(audit.standings(project, "N-07")).hasSize(10);
        }
    }

    /** What a comparison and a history read besides: contents and digests by their hashes. */
    @Test
    void contentsAndDigestsTakeAStepIntoTheIndexEach() {
        List<byte[]> hashes =
                IntStream.range(0, HASHES)
                        .mapToObj(i -> Sha256.digest((MANY / 2 + i + "r").getBytes(UTF_8)))
                        .toList();
        for (Map.Entry<String, String> read :
                Map.of(
                                LedgerStore.CONTENTS, "content_pkey",
                                VerdictStore.STORED, "result_verdicts_pkey")
                        .entrySet()) {
            List<String> plan = plan(read.getKey(), LARGE, Map.of("hashes", hashes));
            String told = String.join("\n", plan);
            assertThat(told).contains(read.getValue(), "rows=" + HASHES).doesNotContain("Seq Scan");
            assertThat(pages(plan)).as(told).isLessThanOrEqualTo(HASHES * PAGES_OF_A_STEP);
        }
    }

    private void flat(
            String sql, String index, Map<String, Object> small, Map<String, Object> large) {
        List<String> few = plan(sql, SMALL, small);
        List<String> many = plan(sql, LARGE, large);
        String told = String.join("\n", many);
        assertThat(told).contains(index).doesNotContain("Seq Scan");
        assertThat(pages(many))
                .as("%s\n%s", String.join("\n", few), told)
                .isLessThanOrEqualTo(pages(few) * GIVE_OR_TAKE);
    }

    private List<String> plan(String sql, UUID project, Map<String, Object> parameters) {
        return database.sql("EXPLAIN (ANALYZE, BUFFERS, TIMING OFF) " + sql)
                .params(parameters)
                .param("organisation", "local")
                .param("id", project)
                .query(String.class)
                .list();
    }

    /** Pages that the whole statement touched: those of its topmost node. */
    private static int pages(List<String> plan) {
        for (String line : plan) {
            Matcher pages = PAGES.matcher(line);
            if (pages.find()) {
                String read = pages.group(2);
                return Integer.parseInt(pages.group(1))
                        + (read == null ? 0 : Integer.parseInt(read));
            }
        }
        throw new AssertionError(String.join("\n", plan));
    }
}
