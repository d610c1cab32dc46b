package org.bayledger.bench;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * What the ledger's tables and indexes take for revisions that change one bay each, in a PostgreSQL
 * of its own, against as many copies of the first revision. The documents go through the service
 * and its review, as a caller's do.
 */
final class LedgerStorage {

    static final String NAME = "ledger-storage";

    private static final int REVISIONS = 200;

    /** Steps through the bays so that neighbors do not follow each other; shares no divisor. */
    private static final int STRIDE = 7;

    private static final Path DOCUMENT = Path.of("demo-seed", "quillmoor-library-1.json");

    private final HttpClient http = HttpClient.newHttpClient();
    private final String address;
    private final JdbcClient database;

    private LedgerStorage(ConfigurableApplicationContext service) {
        this.address =
                "http://127.0.0.1:" + service.getEnvironment().getProperty("local.server.port");
        this.database = service.getBean(JdbcClient.class);
    }

    /** Records the revisions and prints the figure. */
    static void run() throws IOException {
        InProcess.run(service -> new LedgerStorage(service).measure());
    }

    private void measure() throws IOException {
        Facade facade = new Facade(Files.readString(DOCUMENT));
        List<Long> sizes = new ArrayList<>();
        sizes.add(bytes());
        HttpResponse<String> answer =
                post("/v1/projects", "{\"name\":\"Five stories of ten bays\"}");
        String revisions = answer.headers().firstValue("Location").orElseThrow() + "/revisions";
        for (int revision = 1; revision <= REVISIONS; revision++) {
            if (revision > 1) {
                facade.change(revision * STRIDE % facade.size(), revision);
            }
            answer =
                    post(
                            revisions,
                            "{\"author\":\"benchmark\",\"reason\":\"revision %d\",\"document\":%s}"
                                    .formatted(revision, facade.document()),
                            "If-Match",
                            answer.headers().firstValue("ETag").orElseThrow());
            sizes.add(bytes());
        }
        long copy = sizes.get(1) - sizes.get(0);
        long all = sizes.get(REVISIONS) - sizes.get(0);
        System.out.printf(
                Locale.ROOT,
                "%s: %d revisions of %d lites with one bay changed each time: %,d bytes of tables"
                        + " and indexes; one copy %,d bytes; %.2f %% of %d copies (target: less"
                        + " than %.0f %%)%n",
                NAME,
                REVISIONS,
                Facade.LITES,
                all,
                copy,
                100.0 * all / copy / REVISIONS,
                REVISIONS,
                Targets.STORAGE_PERCENT);
        database.sql(
                        """
                        SELECT relname || ': ' || pg_total_relation_size(c.oid)
                        FROM pg_class c JOIN pg_namespace n ON n.oid = c.relnamespace
                        WHERE n.nspname = 'ledger' AND c.relkind = 'r'
                          AND relname NOT LIKE 'flyway%'
                        ORDER BY relname
                        """)
                .query(String.class)
                .list()
                .forEach(table -> System.out.println("  " + table + " bytes"));
    }

    /** Bytes of every table of the ledger, with its indexes and what is kept beside it. */
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

    private HttpResponse<String> post(String path, String body, String... headers)
            throws IOException {
        HttpRequest.Builder request =
                HttpRequest.newBuilder(URI.create(address + path))
                        .header("Content-Type", "application/json")
                        .POST(HttpRequest.BodyPublishers.ofString(body));
        if (headers.length > 0) {
            request.headers(headers);
        }
        try {
            HttpResponse<String> answer =
                    http.send(request.build(), HttpResponse.BodyHandlers.ofString());
            if (answer.statusCode() != 201) {
                throw new IllegalStateException(answer.statusCode() + ": " + answer.body());
            }
            return answer;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }
}
