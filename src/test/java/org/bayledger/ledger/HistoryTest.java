package org.bayledger.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.bayledger.ledger.LedgerClient.Answer;
import org.bayledger.platform.TestDatabase;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.annotation.Import;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;

/** An auditor's questions about one item, over HTTP. */
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
@Import(StandInReview.class)
class HistoryTest {

    private static final TestDatabase DATABASE = TestDatabase.create();

    private static final String ITEM = "N-03/mullion/1";
    private static final String THIN = "6 mm";
    private static final String THICK = "8 mm";

    @LocalServerPort private int port;
    private LedgerClient client = new LedgerClient(0);
    private String project = "";
    private String etag = "";
    private int recorded;

    @DynamicPropertySource
    static void database(DynamicPropertyRegistry registry) {
        DATABASE.register(registry);
    }

    @BeforeEach
    void nineRevisions() {
        client = new LedgerClient(port);
        project = client.newProject();
        etag = client.get(project).etag();
        recorded = 0;
        record(bay("N-03", "0.5", THIN), bay("N-04", "0.5", THIN));
        record(bay("N-03", "0.5", THIN), bay("N-04", "1.5", THIN)); // 2: only its neighbor
        record(bay("N-03", "1.25", THIN), bay("N-04", "1.5", THIN)); // 3: fails
        record(bay("N-03", "1.1", THICK), bay("N-04", "0.5", THIN)); // 4: other glass, fails still
        record(bay("N-03", "0.9", THICK), bay("N-04", "0.5", THIN)); // 5: passes
        record(bay("N-04", "0.5", THIN)); // 6: gone
        record(bay("N-04", "0.5", THIN)); // 7: nothing changed
        record(bay("N-04", "0.5", THIN), bay("N-03", "1.5", THICK)); // 8: back, elsewhere
        record(bay("N-02", "0.5", THIN), bay("N-04", "0.5", THIN), bay("N-03", "1.5", THICK)); // 9
    }

    @Test
    void answersWhatAnAuditorAsks() {
        Answer history = history("bay=N-03&item=" + ITEM);
        assertThat(numbers(history)).containsExactly("1", "3", "4", "5", "6", "8");
        assertThat(verdicts(history))
                .containsExactly(
                        "null > SATISFIED",
                        "SATISFIED > EXCEEDED",
                        "EXCEEDED > EXCEEDED",
                        "EXCEEDED > SATISFIED",
                        "SATISFIED > null",
                        "null > EXCEEDED");

        assertThat(history.text("/firstExceeded/number")).isEqualTo("3");
        assertThat(history.text("/firstExceeded/author")).isEqualTo("author 3");
        assertThat(history.text("/firstExceeded/recordedBy")).isEqualTo("local");
        assertThat(history.text("/firstExceeded/reason")).isEqualTo("reason 3");
        assertThat(history.text("/firstExceeded/utilization")).isEqualTo("1.25");
        assertThat(history.text("/firstExceeded/utilizationBefore")).isEqualTo("0.5");
        Answer third = client.get(project + "/revisions/3");
        assertThat(history.text("/firstExceeded/hash")).isEqualTo(third.text("/hash"));
        assertThat(history.text("/firstExceeded/recordedAt")).isEqualTo(third.text("/recordedAt"));

        assertThat(history.text("/lastGlassChange/number")).isEqualTo("4");
        assertThat(history.text("/lastGlassChange/inputsChanged"))
                .isEqualTo(
                        "[{pointer=/glass/panes/0/nominalThickness, from=6 mm, to=8 mm},"
                                + " {pointer=/load, from=1.25, to=1.1}]");
        assertThat(history.text("/exceeded"))
                .isEqualTo(
                        "[{item=N-03/mullion/1, check=FRAMING, from=3, to=4},"
                                + " {item=N-03/mullion/1, check=FRAMING, from=8, to=null}]");
        assertThat(history.at("/items/2/verdictChanged")).isEqualTo(false);
        assertThat(history.at("/nextCursor")).isNull();
    }

    @Test
    void followsAllItemsOfABay() {
        Answer history = history("bay=N-04");
        assertThat(numbers(history)).containsExactly("1", "2", "4");
        assertThat(history.at("/item")).isNull();
        assertThat(history.text("/exceeded"))
                .isEqualTo("[{item=N-04/mullion/1, check=FRAMING, from=2, to=3}]");
        assertThat(history.at("/lastGlassChange")).isNull();
    }

    @Test
    void listsWhatCameOutOneWayInPagesAndAnswersForAllOfIt() {
        String question = "bay=N-03&check=FRAMING&verdict=EXCEEDED&limit=2";
        Answer first = history(question);
        assertThat(numbers(first)).containsExactly("3", "4");
        Answer second = history(question + "&cursor=" + first.text("/nextCursor"));
        assertThat(numbers(second)).containsExactly("8");
        assertThat(second.at("/nextCursor")).isNull();
        assertThat(second.text("/firstExceeded/number")).isEqualTo("3");
        assertThat(history("bay=N-03&verdict=UNDETERMINED").text("/items")).isEqualTo("[]");
    }

    @Test
    void saysWhatThereIsWhereWhatIsAskedForIsNot() {
        assertProblem(
                client.get(project + "/history?bay=N-99"),
                404,
                "No revision of the project has a bay N-99. Bays of its newest revision: N-02,"
                        + " N-04, N-03.");
        assertProblem(
                client.get(client.newProject() + "/history?bay=N-99"),
                404,
                "No revision of the project has a bay N-99. Its newest revision has none.");
        assertProblem(
                client.get(project + "/history?bay=N-03&item=N-03/lite/9-9"),
                404,
                "Bay N-03 has an item N-03/lite/9-9 in no revision. Items of the bay:"
                        + " N-03/mullion/1.");
        assertProblem(
                client.get(project + "/history?bay=N-03&check=glass"),
                404,
                "N-03 has no check glass in any revision. Its checks: FRAMING.");
        assertThat(client.get(project + "/history").status()).isEqualTo(400);
        for (String wrong :
                List.of("verdict=FAILED", "limit=0", "limit=201", "cursor=QQ", "cursor=%21")) {
            assertThat(client.get(project + "/history?bay=N-03&" + wrong).status())
                    .as(wrong)
                    .isEqualTo(400);
        }
        assertThat(
                        client.get(
                                        "/v1/projects/00000000-0000-4000-8000-000000000000/history"
                                                + "?bay=N-03")
                                .status())
                .isEqualTo(404);
    }

    private Answer history(String query) {
        Answer answer = client.get(project + "/history?" + query);
        assertThat(answer.status()).as(answer.body()).isEqualTo(200);
        return answer;
    }

    private static List<String> numbers(Answer history) {
        return Trees.list(history.tree(), "items").stream()
                .map(entry -> String.valueOf(Trees.get(entry, "number")))
                .toList();
    }

    private static List<String> verdicts(Answer history) {
        return Trees.list(history.tree(), "items").stream()
                .map(
                        entry ->
                                Trees.get(entry, "verdictBefore")
                                        + " > "
                                        + Trees.get(entry, "verdict"))
                .toList();
    }

    private static void assertProblem(Answer answer, int status, String detail) {
        assertThat(answer.status()).as(answer.body()).isEqualTo(status);
        assertThat(answer.text("/detail")).isEqualTo(detail);
    }

    private static String bay(String id, String load, String thickness) {
        return "{\"id\":\"%s\",\"load\":%s,\"glass\":{\"panes\":[{\"nominalThickness\":\"%s\"}]}}"
                .formatted(id, load, thickness);
    }

    private void record(String... bays) {
        recorded++;
        Answer made =
                client.post(
                        project + "/revisions",
                        LedgerClient.body(
                                "author " + recorded,
                                "reason " + recorded,
                                "{\"bays\":[" + String.join(",", bays) + "]}"),
                        "If-Match: " + etag);
        assertThat(made.status()).as(made.body()).isEqualTo(201);
        etag = made.etag();
    }
}
