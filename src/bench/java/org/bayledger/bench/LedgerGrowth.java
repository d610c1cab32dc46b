package org.bayledger.bench;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * Reading a project as its revisions grow in number, and what each adds to the database. Every
 * revision changes one of three bays; what is followed is a bay that changed once.
 */
final class LedgerGrowth {

    static final String NAME = "ledger-growth";

    private static final List<Integer> SIZES = List.of(100, 1_000, 10_000);
    private static final int LITES = 18;
    private static final int READS = 41;
    private static final Pattern CURSOR = Pattern.compile("\"nextCursor\":\"([^\"]+)\"");

    /** The tower's first bay, which every other revision changes, and its last. */
    private static final String CHANGING = "F0-0-0";

    private static final String STILL = "F2-0-0";

    private final Client client;
    private final JdbcClient database;
    private final Map<String, List<Double>> times = new LinkedHashMap<>();

    private LedgerGrowth(ConfigurableApplicationContext service) {
        String port = service.getEnvironment().getProperty("local.server.port");
        this.client = new Client(List.of(Integer.valueOf(String.valueOf(port))));
        this.database = service.getBean(JdbcClient.class);
    }

    private interface Read {
        void run() throws IOException;
    }

    /** Prints the figures. */
    static void run() throws IOException {
        InProcess.run(service -> new LedgerGrowth(service).measure());
    }

    private void measure() throws IOException {
        Tower tower = new Tower(LITES);
        String project = client.project("Growing");
        String head = null;
        int number = 0;
        long before = bytes();
        for (int size : SIZES) {
            int from = number;
            long begin = System.nanoTime();
            while (number < size) {
                // the last bay is left alone after its first change
                tower.change(number == 1 ? tower.bays() - 1 : number % (tower.bays() - 1), number);
                head = client.recorded(project, tower.document(), head);
                number++;
            }
            double each = (System.nanoTime() - begin) / 1e6 / (size - from);
            long grown = bytes() - before;
            before += grown;
            System.out.printf(
                    Locale.ROOT,
                    "%s: revisions %,d to %,d of %d lites: %.1f ms and %,d bytes of tables and"
                            + " indexes each%n",
                    NAME,
                    from + 1,
                    size,
                    tower.lites(),
                    each,
                    grown / (size - from));
            read(project, size);
        }
        times.forEach(
                (what, medians) ->
                        System.out.printf(
                                Locale.ROOT,
                                "%s: %s: %s ms at %s revisions; most over first %.2f%n",
                                NAME,
                                what,
                                medians.stream()
                                        .map(time -> String.format(Locale.ROOT, "%.2f", time))
                                        .toList(),
                                SIZES,
                                medians.stream()
                                                .mapToDouble(Double::doubleValue)
                                                .max()
                                                .orElseThrow()
                                        / medians.get(0)));
    }

    private void read(String project, int size) throws IOException {
        String revisions = project + "/revisions";
        String last = beforeLast(revisions);
        String oftenChanged = project + "/history?bay=" + CHANGING + "&limit=20";
        String onceChanged = project + "/history?bay=" + STILL + "&limit=20";
        time("list, first page", () -> client.read(revisions + "?limit=20"));
        time("list, last page", () -> client.read(revisions + "?limit=20&cursor=" + last));
        time("first revision", () -> client.read(revisions + "/1"));
        time("newest revision", () -> client.read(revisions + "/" + size));
        time("project", () -> client.read(project));
        time(
                "comparison of the last two",
                () -> client.read(project + "/comparisons?base=" + (size - 1) + "&head=" + size));
        time("history of a bay changed once", () -> client.read(onceChanged));
        time("history of a bay changed in every other", () -> client.read(oftenChanged));
    }

    /** The cursor of the list's last page. */
    private String beforeLast(String revisions) throws IOException {
        String cursor = "";
        Matcher next = CURSOR.matcher(client.read(revisions + "?limit=90"));
        while (next.find()) {
            cursor = next.group(1);
            next = CURSOR.matcher(client.read(revisions + "?limit=90&cursor=" + cursor));
        }
        return cursor;
    }

    private void time(String what, Read read) throws IOException {
        List<Double> measured = new ArrayList<>();
        double until = System.nanoTime() + 10e9;
        for (int i = -READS / 4; i < READS; i++) {
            long begin = System.nanoTime();
            read.run();
            if (i >= 0) {
                measured.add((System.nanoTime() - begin) / 1e6);
            }
            if (System.nanoTime() > until && !measured.isEmpty()) {
                break;
            }
        }
        times.computeIfAbsent(what, name -> new ArrayList<>()).add(Medians.of(measured));
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
}
