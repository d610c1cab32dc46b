package org.bayledger.ledger;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.bayledger.check.RawJson;
import org.bayledger.platform.TestDatabase;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.context.annotation.Import;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;

/** A revision takes rows for what changed and for nothing else. */
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.NONE)
@Import(StandInReview.class)
class StoredOnceTest {

    private static final TestDatabase DATABASE = TestDatabase.create();
    private static final int BAYS = 50;

    @Autowired private Ledger ledger;
    @Autowired private LedgerStore store;
    @Autowired private Verifier verifier;
    @Autowired private JdbcClient database;

    @DynamicPropertySource
    static void database(DynamicPropertyRegistry registry) {
        DATABASE.register(registry);
    }

    @Test
    void tenRevisionsWithOneBayChangedEachTake() {
        Project project = ledger.create(Caller.OPEN, "Civic library");
        int[] loads = new int[BAYS];
        record(project, loads);
        // the two shells, and fifty bays with their results
        assertThat(rows("content")).isEqualTo(2 + 2 * BAYS);
        assertThat(rows("bay_change")).isEqualTo(BAYS);
        for (int i = 1; i < 10; i++) {
            loads[7 * i % BAYS] = i;
            record(project, loads);
            assertThat(rows("content")).as("a bay and its results").isEqualTo(2 + 2 * (BAYS + i));
            assertThat(rows("bay_change")).as("one place").isEqualTo(BAYS + i);
        }
        record(project, loads);
        assertThat(rows("content")).as("nothing changed").isEqualTo(2 + 2 * (BAYS + 9));
        assertThat(rows("bay_change")).isEqualTo(BAYS + 9);
        assertThat(rows("revision")).isEqualTo(11);

        assertThat(verifier.verify(project).intact()).isTrue();
        for (int number = 1; number <= 11; number++) {
            Revision revision = store.revision(project, number).orElseThrow();
            assertThat(revision.manifest(project, store.bays(project, number)).hash())
                    .isEqualTo(revision.hash());
        }
    }

    private void record(Project project, int[] loads) {
        String bays =
                IntStream.range(0, loads.length)
                        .mapToObj(i -> "{\"id\":\"N-%02d\",\"load\":0.%d}".formatted(i, loads[i]))
                        .collect(Collectors.joining(","));
        byte[] body =
                LedgerClient.body("A. Reviewer", "issue", "{\"bays\":[" + bays + "]}")
                        .getBytes(UTF_8);
        String head = store.head(project).entityTag();
        ledger.record(
                Caller.OPEN, project, RawJson.read(body), null, () -> Precondition.of(head, null));
    }

    private long rows(String table) {
        return database.sql("SELECT count(*) FROM ledger." + table).query(Long.class).single();
    }
}
