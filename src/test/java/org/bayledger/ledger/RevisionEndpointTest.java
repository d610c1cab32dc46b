package org.bayledger.ledger;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.bayledger.ledger.LedgerClient.Answer;
import org.bayledger.platform.TestDatabase;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.annotation.Import;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;

/** Recording and reading revisions over HTTP, on a real PostgreSQL. */
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
@Import(StandInReview.class)
class RevisionEndpointTest {

    private static final TestDatabase DATABASE = TestDatabase.create();

    private static final String ONE_BAY = "{\"bays\":[{\"id\":\"N-01\",\"load\":0.5}]}";
    private static final String OTHER = "{\"bays\":[{\"id\":\"N-01\",\"load\":0.75}]}";

    @LocalServerPort private int port;
    @Autowired private JdbcClient database;
    private LedgerClient client = new LedgerClient(0);
    private String project = "";

    @DynamicPropertySource
    static void database(DynamicPropertyRegistry registry) {
        DATABASE.register(registry);
    }

    @BeforeEach
    void aNewProject() {
        client = new LedgerClient(port);
        project = client.newProject();
    }

    @Test
    void recordsAChainUnderItsHeadsEntityTag() {
        Answer empty = client.get(project);
        assertThat(empty.status()).isEqualTo(200);
        assertThat(empty.text("/head/size")).isEqualTo("0");
        assertThat(empty.at("/head/recordedAt")).isNull();

        Answer first = client.record(project, ONE_BAY, LedgerClient.FIRST);
        assertThat(first.status()).isEqualTo(201);
        assertThat(first.header("location")).isEqualTo(project + "/revisions/1");
        assertThat(first.text("/previousHash")).isEqualTo(empty.text("/head/headHash"));
        assertThat(first.text("/engineVersion")).isEqualTo(StandInReview.VERSION);
        assertThat(first.text("/verdict")).isEqualTo("SATISFIED");
        assertThat(first.text("/recordedBy")).isEqualTo("local");
        assertThat(first.text("/recordedAt"))
                .matches("\\d{4}-\\d\\d-\\d\\dT\\d\\d:\\d\\d:\\d\\d\\.\\d{6}Z");
        assertThat(first.etag()).isEqualTo("\"" + first.text("/hash") + "\"");
        assertThat(client.get(project).etag()).isEqualTo(first.etag());
        assertThat(client.get(project + "/revisions/1").etag()).isEqualTo(first.etag());

        Answer second = client.record(project, OTHER, "If-Match: " + first.etag());
        assertThat(second.status()).isEqualTo(201);
        assertThat(second.text("/number")).isEqualTo("2");
        assertThat(second.text("/previousHash")).isEqualTo(first.text("/hash"));

        Answer checkpoint = client.get(project + "/checkpoint");
        assertThat(checkpoint.text("/size")).isEqualTo("2");
        assertThat(checkpoint.text("/headHash")).isEqualTo(second.text("/hash"));
        assertThat(checkpoint.text("/recordedAt")).isEqualTo(second.text("/recordedAt"));
    }

    @Test
    void theFirstRevisionMayAlsoNameTheEmptyProjectsEntityTag() {
        String etag = client.get(project).etag();
        assertThat(client.record(project, ONE_BAY, "If-Match: " + etag).status()).isEqualTo(201);
    }

    @Test
    void refusesAWriterWhoHasNotSeenTheHead() {
        assertProblem(client.record(project, ONE_BAY), 428, "precondition-required");
        assertProblem(client.record(project, ONE_BAY, "If-Match: N-01"), 400, "malformed-request");
        assertProblem(client.record(project, ONE_BAY, "If-Match: *"), 400, "malformed-request");
        assertProblem(
                client.record(project, ONE_BAY, "If-None-Match: \"x\""), 400, "malformed-request");
        assertProblem(
                client.record(project, ONE_BAY, "If-Match: \"x\""), 412, "precondition-failed");

        Answer first = client.record(project, ONE_BAY, LedgerClient.FIRST);
        assertProblem(
                client.record(project, OTHER, LedgerClient.FIRST), 412, "precondition-failed");
        assertProblem(
                client.record(project, OTHER, "If-Match: W/" + first.etag()),
                412,
                "precondition-failed");
        client.record(project, OTHER, "If-Match: " + first.etag());
        assertProblem(
                client.record(project, OTHER, "If-Match: " + first.etag()),
                412,
                "precondition-failed");
        assertThat(client.get(project).text("/head/size")).isEqualTo("2");
    }

    @Test
    void ofTwelveWritersOnOneParentOneIsRecorded() throws Exception {
        for (String[] key : new String[][] {{}, {"Idempotency-Key"}}) {
            project = client.newProject();
            Answer first = client.record(project, ONE_BAY, LedgerClient.FIRST);
            CountDownLatch together = new CountDownLatch(1);
            List<Callable<Integer>> writers = new ArrayList<>();
            for (int writer = 0; writer < 12; writer++) {
                String document = "{\"bays\":[{\"id\":\"N-01\",\"load\":0." + (writer + 1) + "}]}";
                List<String> headers = new ArrayList<>(List.of("If-Match: " + first.etag()));
                if (key.length > 0) {
                    headers.add(key[0] + ": writer-" + writer);
                }
                writers.add(
                        () -> {
                            together.await();
                            return client.record(project, document, headers.toArray(String[]::new))
                                    .status();
                        });
            }
            List<Integer> statuses = new ArrayList<>();
            ExecutorService threads = Executors.newFixedThreadPool(12);
            try {
                List<Future<Integer>> running = writers.stream().map(threads::submit).toList();
                together.countDown();
                for (Future<Integer> one : running) {
                    statuses.add(one.get());
                }
            } finally {
                threads.shutdownNow();
            }
            assertThat(statuses).containsOnly(201, 412);
            assertThat(statuses.stream().filter(status -> status == 201)).hasSize(1);
            assertThat(client.get(project + "/verification").at("/intact")).isEqualTo(true);
            assertThat(client.get(project).text("/head/size")).isEqualTo("2");
        }
    }

    @Test
    void anIdempotencyKeyRecordsOnceAndAnswersAlikeEvenWhenTheHeadMovedOn() {
        String key = "Idempotency-Key: k-1";
        Answer first = client.record(project, ONE_BAY, LedgerClient.FIRST, key);
        client.record(project, OTHER, "If-Match: " + first.etag());

        Answer again = client.record(project, ONE_BAY, LedgerClient.FIRST, key);
        assertThat(again.status()).isEqualTo(201);
        assertThat(again.body()).isEqualTo(first.body());
        assertThat(again.etag()).isEqualTo(first.etag());
        assertThat(again.header("location")).isEqualTo(first.header("location"));
        assertThat(client.record(project, ONE_BAY, key).status())
                .as("the key comes before the precondition")
                .isEqualTo(201);

        assertProblem(
                client.record(project, OTHER, LedgerClient.FIRST, key),
                422,
                "idempotency-key-reused");
        assertThat(client.get(project).text("/head/size")).isEqualTo("2");

        String other = client.newProject();
        assertThat(client.record(other, OTHER, LedgerClient.FIRST, key).status())
                .as("a key belongs to one project")
                .isEqualTo(201);
        assertProblem(
                client.record(project, ONE_BAY, "Idempotency-Key: two words"),
                400,
                "malformed-request");
    }

    @Test
    void aRefusedRequestLeavesItsKeyFree() {
        String key = "Idempotency-Key: k-2";
        assertThat(client.record(project, "{\"refused\":true}", LedgerClient.FIRST, key).status())
                .isEqualTo(422);
        assertThat(client.record(project, ONE_BAY, LedgerClient.FIRST, key).status())
                .isEqualTo(201);
    }

    @Test
    void aRepeatedRequestWhoseFirstIsStillRunningIsAConflict() throws Exception {
        StandInReview.started = new CountDownLatch(1);
        StandInReview.released = new CountDownLatch(1);
        String waits = "{\"waits\":true,\"bays\":[]}";
        String key = "Idempotency-Key: k-3";
        ExecutorService thread = Executors.newSingleThreadExecutor();
        try {
            Future<Answer> running =
                    thread.submit(() -> client.record(project, waits, LedgerClient.FIRST, key));
            StandInReview.started.await();
            assertProblem(client.record(project, waits, LedgerClient.FIRST, key), 409, "conflict");
            StandInReview.released.countDown();
            assertThat(running.get().status()).isEqualTo(201);
            assertThat(client.record(project, waits, key).body()).isEqualTo(running.get().body());
        } finally {
            StandInReview.released.countDown();
            thread.shutdownNow();
        }
    }

    @Test
    void givesBackExactlyWhatWasPosted() {
        String document =
                """
                {"units":"US","site":{"meanRoofHeight":"13'-6 1/2\\"","topographicFactor":1.50},\
                "nested":{"bays":[]},"empty":null,\
                "bays":[{"load":0.5,"id":"\\u004e-03","span":"13 ft \\u00e9\\ud83c\\udfd7"},{"id":"N-04"}]}""";
        Answer recorded = client.record(project, document, LedgerClient.FIRST);
        assertThat(recorded.status()).isEqualTo(201);

        Answer read = client.get(project + "/revisions/1");
        assertThat(read.body())
                .contains(
                        """
                        "document":{"bays":[{"id":"N-03","load":0.5,"span":"13 ft é🏗"},{"id":"N-04"}],\
                        "empty":null,"nested":{"bays":[]},"site":{"meanRoofHeight":"13'-6 1/2\\"",\
                        "topographicFactor":1.5},"units":"US"},""");
        assertThat(read.text("/result/bays/0/items/0/id")).isEqualTo("N-03/mullion/1");

        // the published algorithm, with nothing of the ledger's
        String body = read.body();
        int from = body.indexOf("\"manifest\":") + "\"manifest\":".length();
        String manifest = body.substring(from, body.indexOf(",\"document\":", from));
        assertThat(Sha256.hex(manifest.getBytes(UTF_8))).isEqualTo(read.text("/hash"));
        assertThat(read.text("/manifest/bays/0/input"))
                .isEqualTo(
                        Sha256.hex(
                                "{\"id\":\"N-03\",\"load\":0.5,\"span\":\"13 ft é🏗\"}"
                                        .getBytes(UTF_8)));
    }

    @Test
    void refusesWhatItCouldNotKeepWithEveryPointer() {
        Answer refused =
                client.record(
                        project,
                        "{\"a\":12345678901234567890,\"b\":[0.1234567890123456789,1e2]}",
                        LedgerClient.FIRST);
        assertProblem(refused, 422, "out-of-range");
        assertThat(pointers(refused)).containsExactly("/document/a", "/document/b/0");
        Answer noNumber = client.record(project, "{\"b\":[1e400]}", LedgerClient.FIRST);
        assertProblem(noNumber, 400, "malformed-request");
        assertThat(pointers(noNumber)).containsExactly("/document/b/0");

        Answer surrogate =
                client.record(
                        project, "{\"a\":\"x\\ud800\",\"b\":\"\\udc00\"}", LedgerClient.FIRST);
        assertProblem(surrogate, 400, "malformed-request");
        assertThat(pointers(surrogate)).containsExactly("/document/a", "/document/b");
        assertThat(client.record(project, "{\"b\\udc00\":1}", LedgerClient.FIRST).status())
                .isEqualTo(400);

        assertThat(pointers(client.record(project, "{\"refused\":1}", LedgerClient.FIRST)))
                .containsExactly("/document/refused");
        assertThat(
                        pointers(
                                client.post(
                                        project + "/revisions",
                                        "{\"author\":\" \",\"document\":[]}",
                                        LedgerClient.FIRST)))
                .containsExactlyInAnyOrder("/author", "/reason", "/document");
        assertThat(pointers(client.record(project, "[]", LedgerClient.FIRST)))
                .containsExactly("/document");
        assertThat(client.get(project).text("/head/size")).isEqualTo("0");
    }

    @Test
    void listsInPages() {
        String etag = client.record(project, ONE_BAY, LedgerClient.FIRST).etag();
        for (int i = 2; i <= 5; i++) {
            etag = client.record(project, i % 2 == 0 ? OTHER : ONE_BAY, "If-Match: " + etag).etag();
        }
        List<String> numbers = new ArrayList<>();
        Object cursor = null;
        do {
            Answer page =
                    client.get(
                            project
                                    + "/revisions?limit=2"
                                    + (cursor == null ? "" : "&cursor=" + cursor));
            assertThat(page.status()).isEqualTo(200);
            for (Object item : Trees.list(page.tree(), "items")) {
                numbers.add(String.valueOf(Trees.get(item, "number")));
            }
            cursor = page.at("/nextCursor");
        } while (cursor != null);
        assertThat(numbers).containsExactly("1", "2", "3", "4", "5");

        for (String query : List.of("limit=0", "limit=201", "limit=x", "cursor=%21", "cursor=QQ")) {
            assertThat(client.get(project + "/revisions?" + query).status())
                    .as(query)
                    .isEqualTo(400);
            assertThat(client.get("/v1/projects?" + query).status()).as(query).isEqualTo(400);
        }
    }

    @Test
    void listsProjectsInPages() {
        List<String> made =
                IntStream.range(0, 3).mapToObj(i -> client.newProject()).map(this::id).toList();
        List<String> listed = new ArrayList<>();
        Object cursor = null;
        do {
            Answer page =
                    client.get(
                            "/v1/projects?limit=2" + (cursor == null ? "" : "&cursor=" + cursor));
            for (Object item : Trees.list(page.tree(), "items")) {
                listed.add(Trees.text(item, "projectId"));
            }
            cursor = page.at("/nextCursor");
        } while (cursor != null);
        assertThat(listed).doesNotHaveDuplicates().containsSubsequence(made);
        assertThat(listed.subList(listed.size() - 3, listed.size())).isEqualTo(made);
    }

    @Test
    void anUnknownProjectRevisionOrMethodIsAProblem() {
        String nobody = "/v1/projects/00000000-0000-4000-8000-000000000000";
        for (String path :
                List.of(
                        nobody,
                        nobody + "/revisions",
                        nobody + "/checkpoint",
                        nobody + "/verification",
                        nobody + "/comparisons?base=1&head=2",
                        "/v1/projects/N-01")) {
            assertProblem(client.get(path), 404, "not-found");
        }
        assertProblem(client.record(nobody, ONE_BAY), 404, "not-found");
        assertProblem(client.get(project + "/revisions/1"), 404, "not-found");
        assertProblem(client.get(project + "/revisions/one"), 404, "not-found");
        for (String method : List.of("PUT", "DELETE", "PATCH")) {
            assertProblem(client.send(method, project), 405, "method-not-allowed");
            assertProblem(client.send(method, project + "/revisions/1"), 405, "method-not-allowed");
        }
        assertThat(client.post("/v1/projects", "{\"name\":\"\"}").status()).isEqualTo(422);
        assertThat(client.post("/v1/projects", "{\"nom\":\"x\"}").status()).isEqualTo(400);
    }

    @Test
    void anotherOrganisationsProjectDoesNotExist() {
        database.sql(
                        """
                        INSERT INTO ledger.project
                        VALUES ('other', '11111111-1111-4111-8111-111111111111', 'x', now(), 'y')
                        """)
                .update();
        assertProblem(
                client.get("/v1/projects/11111111-1111-4111-8111-111111111111"), 404, "not-found");
        assertThat(client.get("/v1/projects?limit=200").body())
                .doesNotContain("11111111-1111-4111-8111-111111111111");
    }

    @Test
    void storesABayThatDidNotChangeOnce() {
        String first = "{\"bays\":[{\"id\":\"U-1\",\"load\":0.25},{\"id\":\"U-2\",\"load\":0.5}]}";
        String second =
                "{\"bays\":[{\"id\":\"U-1\",\"load\":0.25},{\"id\":\"U-2\",\"load\":0.75}]}";
        long before = contents();
        String etag = client.record(project, first, LedgerClient.FIRST).etag();
        long afterFirst = contents();
        etag = client.record(project, second, "If-Match: " + etag).etag();
        assertThat(contents() - afterFirst).as("one bay and its result").isEqualTo(2);
        client.record(project, first, "If-Match: " + etag);
        assertThat(contents() - afterFirst).as("nothing new").isEqualTo(2);
        // four parts of bays; the shells may be there from other tests
        assertThat(afterFirst - before).isBetween(4L, 6L);
    }

    @Test
    void comparesWhatChangedAndWhatMoved() {
        String etag =
                client.record(
                                project,
                                """
                                {"site":{"basicWindSpeed":"120 mph"},
                                 "bays":[{"id":"N-01","load":0.5,"note":"call out"},{"id":"N-02","load":0.9}]}""",
                                LedgerClient.FIRST)
                        .etag();
        client.record(
                project,
                """
                {"site":{"basicWindSpeed":"130 mph"},
                 "bays":[{"id":"N-01","load":0.5,"note":"call out"},{"id":"N-02","load":1.25}]}""",
                "If-Match: " + etag);

        Answer comparison = client.get(project + "/comparisons?base=1&head=2&recompute=true");
        assertThat(comparison.status()).isEqualTo(200);
        assertThat(comparison.at("/inputs"))
                .asString()
                .isEqualTo(
                        List.of(
                                        ordered(
                                                "item",
                                                "N-02",
                                                "pointer",
                                                "/bays/1/load",
                                                "from",
                                                "0.9",
                                                "to",
                                                "1.25"),
                                        ordered(
                                                "item",
                                                "site",
                                                "pointer",
                                                "/site/basicWindSpeed",
                                                "from",
                                                "120 mph",
                                                "to",
                                                "130 mph"))
                                .toString());
        assertThat(comparison.at("/verdicts"))
                .asString()
                .isEqualTo(
                        List.of(
                                        ordered(
                                                "item",
                                                "N-02/mullion/1",
                                                "check",
                                                "FRAMING",
                                                "from",
                                                "SATISFIED",
                                                "to",
                                                "EXCEEDED",
                                                "utilizationFrom",
                                                "0.9",
                                                "utilizationTo",
                                                "1.25",
                                                "utilizationChange",
                                                "0.35"))
                                .toString());
        assertThat(comparison.text("/notes")).isEqualTo("{added=[], removed=[], changed=[]}");
        assertThat(comparison.at("/engineChanged")).isEqualTo(false);
        assertThat(comparison.text("/recomputed/engineEffect/verdicts")).isEqualTo("[]");
        assertThat(comparison.text("/recomputed/inputEffect/verdicts/0/to")).isEqualTo("EXCEEDED");
        assertThat(client.get(project + "/comparisons?base=1&head=2").at("/recomputed")).isNull();
        Answer table = client.get(project + "/comparisons?base=1&head=2", "Accept: text/csv");
        assertThat(table.header("content-type")).startsWith("text/csv");
        assertThat(table.body())
                .contains("INPUT,N-02,,/bays/1/load,0.9,1.25")
                .contains("VERDICT,N-02/mullion/1,FRAMING,,SATISFIED,EXCEEDED,0.9,1.25,0.35");
        Answer page =
                client.get(
                        project + "/comparisons?base=1&head=2&recompute=true", "Accept: text/html");
        assertThat(page.header("content-type")).isEqualTo("text/html;charset=UTF-8");
        assertThat(page.body()).contains("N-02/mullion/1").contains("against what it makes of the base");
        assertProblem(
                client.get(project + "/comparisons?base=1&head=3", "Accept: text/html"),
                404,
                "not-found");
        assertProblem(client.get(project + "/comparisons?base=1&head=3"), 404, "not-found");
        assertThat(client.get(project + "/comparisons?base=1").status()).isEqualTo(400);
    }

    private static Map<String, String> ordered(String... pairs) {
        Map<String, String> map = new java.util.LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            map.put(pairs[i], pairs[i + 1]);
        }
        return map;
    }

    private long contents() {
        return database.sql("SELECT count(*) FROM ledger.content").query(Long.class).single();
    }

    private String id(String path) {
        return path.substring(path.lastIndexOf('/') + 1);
    }

    private static List<String> pointers(Answer problem) {
        return Trees.list(problem.tree(), "errors").stream()
                .map(error -> Trees.text(error, "pointer"))
                .toList();
    }

    private static void assertProblem(Answer answer, int status, String type) {
        assertThat(answer.status()).as(answer.body()).isEqualTo(status);
        assertThat(answer.header("content-type")).startsWith("application/problem+json");
        assertThat(answer.text("/type")).isEqualTo("/problems/" + type);
    }
}
