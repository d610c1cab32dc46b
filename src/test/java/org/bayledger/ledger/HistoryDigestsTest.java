package org.bayledger.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.bayledger.ledger.LedgerClient.Answer;
import org.bayledger.platform.TestDatabase;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.annotation.Import;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;

/** A history is read from digests, and answers the same where they have to be made anew. */
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
@Import(StandInReview.class)
class HistoryDigestsTest {

    private static final TestDatabase DATABASE = TestDatabase.create();

    /** More than the stages, and more than the results, that are in memory at once. */
    private static final int REVISIONS = 230;

    private static final int EXCEEDED_FROM = 4;
    private static final int EXCEEDED_TO = 200;
    private static final int OTHER_GLASS_FROM = 220;

    private static final String RESULTS =
            "SELECT DISTINCT result_hash FROM ledger.bay_change WHERE project_id = '%s'";

    @LocalServerPort private int port;
    @Autowired private LedgerStore store;

    private String project = "";
    private LedgerClient client = new LedgerClient(0);

    @DynamicPropertySource
    static void database(DynamicPropertyRegistry registry) {
        DATABASE.register(registry);
    }

    @BeforeEach
    void oneBayThatChangesInEveryRevision() {
        client = new LedgerClient(port);
        project = client.newProject();
        String etag = client.get(project).etag();
        // where the glass changes nothing else does, neither verdict nor utilization
        for (int i = 1; i <= REVISIONS; i++) {
            boolean exceeds = i >= EXCEEDED_FROM && i <= EXCEEDED_TO;
            String document =
                    "{\"bays\":[{\"id\":\"N-01\",\"load\":%d.%03d,\"glass\":{\"of\":\"%s\",\"thickness\":\"%d mm\"}}]}"
                            .formatted(
                                    exceeds ? 1 : 0,
                                    i == OTHER_GLASS_FROM ? i - 1 : i,
                                    project,
                                    i < OTHER_GLASS_FROM ? 6 : 8);
            etag = client.record(project, document, "If-Match: " + etag).etag();
        }
    }

    @Test
    void resultsAreReadOfTheChangesThatAreShownAlone() throws SQLException {
        List<String> hashes = new ArrayList<>();
        for (int i = 8; i < OTHER_GLASS_FROM - 1; i++) {
            hashes.add(store.bays(project(), i).get(0).result());
        }
        try (Connection connection = unguarded();
                PreparedStatement delete =
                        connection.prepareStatement("DELETE FROM ledger.content WHERE hash = ?")) {
            for (String hash : hashes) {
                delete.setBytes(1, Sha256.bytes(hash));
                assertThat(delete.executeUpdate()).isEqualTo(1);
            }
        }
        Answer history = history("&limit=5");
        assertThat(numbers(history)).containsExactly(1, 2, 3, 4, 5);
        assertThat(history.at("/firstExceeded/number")).hasToString("4");
        assertThat(history.text("/items/4/inputsChanged"))
                .isEqualTo("[{pointer=/load, from=1.004, to=1.005}]");
        assertThat(history.text("/exceeded"))
                .isEqualTo("[{item=N-01/mullion/1, check=FRAMING, from=4, to=200}]");
        assertThat(history.at("/lastGlassChange/number")).hasToString("220");
        assertThat(history.text("/lastGlassChange/inputsChanged"))
                .isEqualTo("[{pointer=/glass/thickness, from=6 mm, to=8 mm}]");
    }

    @Test
    void oldDigestsAndNoneAtAllMakeTheSameHistory() throws SQLException {
        List<String> pages = pages();
        assertThat(pages).hasSize(3);
        try (Connection connection = unguarded();
                Statement statement = connection.createStatement()) {
            int old =
                    statement.executeUpdate(
                            """
                            UPDATE ledger.result_verdicts SET bytes = convert_to(
                                (convert_from(bytes, 'UTF8')::jsonb #- '{0,5}' #- '{0,4}')::text, 'UTF8')
                            WHERE get_byte(result_hash, 0) >= 85 AND result_hash IN (%s)
                            """
                                    .formatted(RESULTS.formatted(project().id())));
            int none =
                    statement.executeUpdate(
                            """
                            DELETE FROM ledger.result_verdicts
                            WHERE get_byte(result_hash, 0) >= 170 AND result_hash IN (%s)
                            """
                                    .formatted(RESULTS.formatted(project().id())));
            assertThat(none).isBetween(REVISIONS / 5, REVISIONS / 2);
            assertThat(old).isBetween(none + REVISIONS / 5, REVISIONS);
        }
        assertThat(pages()).isEqualTo(pages);
    }

    /** The digests of four cells that a service stored once are as good as the results. */
    @Test
    void digestsOfFourCellsStandBeforeAVerification() throws SQLException {
        List<String> hashes =
                List.of(
                        store.bays(project(), 1).get(0).result(),
                        store.bays(project(), 2).get(0).result());
        try (Connection connection = unguarded();
                PreparedStatement update =
                        connection.prepareStatement(
                                "UPDATE ledger.result_verdicts SET bytes = ? WHERE result_hash = ?")) {
            for (String hash : hashes) {
                byte[] results = store.contents("local", List.of(hash)).get(hash);
                update.setBytes(
                        1,
                        ItemVerdict.digest(
                                ItemDigest.of(results).stream().map(ItemDigest::verdict).toList()));
                update.setBytes(2, Sha256.bytes(hash));
                assertThat(update.executeUpdate()).isEqualTo(1);
            }
        }
        assertThat(client.get(project + "/verification").at("/intact")).isEqualTo(true);
    }

    private List<String> pages() {
        List<String> pages = new ArrayList<>();
        Answer page = history("&limit=100");
        pages.add(page.body());
        while (page.at("/nextCursor") != null) {
            page = history("&limit=100&cursor=" + page.text("/nextCursor"));
            pages.add(page.body());
        }
        return pages;
    }

    private Answer history(String more) {
        Answer answer = client.get(project + "/history?bay=N-01" + more);
        assertThat(answer.status()).as(answer.body()).isEqualTo(200);
        return answer;
    }

    private static List<Integer> numbers(Answer history) {
        return Trees.list(history.tree(), "items").stream()
                .map(entry -> Integer.valueOf(String.valueOf(Trees.get(entry, "number"))))
                .toList();
    }

    private Project project() {
        UUID id = UUID.fromString(project.substring(project.lastIndexOf('/') + 1));
        return store.project("local", id).orElseThrow();
    }

    /** A connection that no trigger or key holds back. */
    private static Connection unguarded() throws SQLException {
        Connection connection = DATABASE.connect();
        try (Statement statement = connection.createStatement()) {
            statement.execute("SET session_replication_role = replica");
        }
        return connection;
    }
}
