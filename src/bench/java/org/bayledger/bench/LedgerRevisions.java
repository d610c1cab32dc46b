package org.bayledger.bench;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Recording and comparing revisions of a tower: one bay changed, and every bay changed. */
final class LedgerRevisions {

    static final String NAME = "ledger-revisions";

    private static final int LITES = 10_000;
    private static final int CHANGED_BAY = 5;

    /** The first ones warm the service up. */
    private static final int WARM_UP = 6;

    private static final int REVISIONS = 16;

    private final Map<String, List<Double>> seconds = new TreeMap<>();
    private final Map<String, Long> sizes = new TreeMap<>();
    private final HttpClient http = HttpClient.newHttpClient();
    private final String address;
    private final JdbcClient database;

    private LedgerRevisions(ConfigurableApplicationContext service) {
        this.address =
                "http://127.0.0.1:" + service.getEnvironment().getProperty("local.server.port");
        this.database = service.getBean(JdbcClient.class);
    }

    /** Prints the figures. */
    static void run() throws IOException {
        InProcess.run(service -> new LedgerRevisions(service).measure());
    }

    private void measure() throws IOException, InterruptedException {
        Tower tower = new Tower(LITES);
        HttpResponse<String> head = post("/v1/projects", "{\"name\":\"Tower\"}", null);
        String project = head.headers().firstValue("Location").orElseThrow();
        long size = bytes();
        for (int revision = 1; revision <= REVISIONS; revision++) {
            boolean one = revision % 2 == 0;
            for (int bay = 0; bay < tower.bays() && revision > 1; bay++) {
                if (!one || bay == CHANGED_BAY) {
                    tower.change(bay, revision);
                }
            }
            String body =
                    "{\"author\":\"benchmark\",\"reason\":\"measured\",\"document\":"
                            + tower.document()
                            + "}";
            long begin = System.nanoTime();
            head = post(project + "/revisions", body, head);
            long recorded = System.nanoTime();
            long grown = bytes() - size;
            size += grown;
            note(
                    revision,
                    one,
                    "recorded, with so many bytes of tables and indexes",
                    recorded - begin,
                    grown);
            if (revision > 1) {
                begin = System.nanoTime();
                HttpResponse<String> compared =
                        send(
                                HttpRequest.newBuilder(
                                                URI.create(
                                                        address
                                                                + project
                                                                + "/comparisons?base="
                                                                + (revision - 1)
                                                                + "&head="
                                                                + revision))
                                        .build());
                long answer = compared.body().length();
                note(
                        revision,
                        one,
                        "compared, with so many characters of answer",
                        System.nanoTime() - begin,
                        answer);
            }
        }
        print();
    }

    private void note(int revision, boolean one, String what, long nanoseconds, long size) {
        if (revision > WARM_UP) {
            String figure = (one ? "one bay changed: " : "every bay new: ") + what;
            seconds.computeIfAbsent(figure, name -> new ArrayList<>()).add(nanoseconds / 1e9);
            sizes.put(figure, size);
        }
    }

    private void print() {
        seconds.forEach(
                (figure, times) ->
                        System.out.printf(
                                Locale.ROOT,
                                "%s: %,d lites, %s (%,d): %.2f s (target: %.0f s)%n",
                                NAME,
                                LITES,
                                figure,
                                sizes.get(figure),
                                Medians.of(times),
                                Targets.LEDGER_SECONDS));
    }

    private long bytes() {
        return database.sql(
                        """
                        SELECT sum(pg_total_relation_size(c.oid))
                        FROM pg_class c JOIN pg_namespace n ON n.oid = c.relnamespace
                        WHERE n.nspname = 'ledger' AND c.relkind = 'r'
                        """)
                .query(Long.class)
                .single();
    }

    private HttpResponse<String> post(String path, String body, HttpResponse<String> head)
            throws IOException, InterruptedException {
        HttpRequest.Builder request =
                HttpRequest.newBuilder(URI.create(address + path))
                        .header("Content-Type", "application/json")
                        .POST(HttpRequest.BodyPublishers.ofString(body));
        if (head != null) {
            request.header("If-Match", head.headers().firstValue("ETag").orElseThrow());
        }
        return send(request.build());
    }

    private HttpResponse<String> send(HttpRequest request)
            throws IOException, InterruptedException {
        HttpResponse<String> answer = http.send(request, HttpResponse.BodyHandlers.ofString());
        if (answer.statusCode() >= 300) {
            throw new IOException(answer.statusCode() + ": " + answer.body());
        }
        return answer;
    }
}
