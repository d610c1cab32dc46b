package org.bayledger.bench;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.bayledger.BayledgerApplication;
import org.bayledger.check.Reporting;
import org.bayledger.check.TraceLevel;
import org.bayledger.quantity.UnitSystem;
import org.bayledger.review.Review;
import org.bayledger.review.ReviewDocument;
import org.springframework.boot.SpringApplication;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.util.FileSystemUtils;

/**
 * A small check over many connections beside an endpoint that only reads and answers, and a large
 * review over one beside the engine's own time. Caller and service share the machine.
 */
final class ServiceLoad {

    static final String NAME = "service-load";

    private static final int CONNECTIONS = 64;
    private static final double SECONDS = 4;
    private static final int ROUNDS = 5;
    private static final int WARM_UP = 6;
    private static final int LITES = 10_000;
    private static final Path REQUEST =
            Path.of("src", "main", "resources", "contract", "checkGlass.request.json");
    private static final String CHECK = "/v1/checks/glass";

    private final int port;

    private ServiceLoad(int port) {
        this.port = port;
    }

    /** Prints the figures. */
    static void run() throws IOException {
        Path folder = Files.createTempDirectory("bayledger-bench");
        Class<?>[] sources = {BayledgerApplication.class, CannedEndpoint.class};
        String[] arguments = {
            "--server.port=0",
            "--bayledger.demo.enabled=false",
            "--logging.level.root=warn",
            "--bayledger.embedded-database.directory=" + folder
        };
        try (ConfigurableApplicationContext service = SpringApplication.run(sources, arguments)) {
            String port = service.getEnvironment().getProperty("local.server.port");
            ServiceLoad load = new ServiceLoad(Integer.parseInt(String.valueOf(port)));
            load.small();
            load.large();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        } finally {
            FileSystemUtils.deleteRecursively(folder);
        }
    }

    /**
     * What some seconds of load came to.
     *
     * @param perSecond answers per second
     * @param p99 time within which 99 of 100 came, s
     */
    private record Load(double perSecond, double p99) {}

    private void small() throws IOException, InterruptedException {
        byte[] body = Files.readAllBytes(REQUEST);
        HttpResponse<byte[]> answer =
                HttpClient.newHttpClient()
                        .send(
                                HttpRequest.newBuilder(
                                                URI.create("http://127.0.0.1:" + port + CHECK))
                                        .header("Content-Type", "application/json")
                                        .POST(HttpRequest.BodyPublishers.ofByteArray(body))
                                        .build(),
                                HttpResponse.BodyHandlers.ofByteArray());
        CannedEndpoint.ANSWER.set(answer.body());
        byte[] check = Connection.post(CHECK, body);
        byte[] canned = Connection.post(CannedEndpoint.PATH, body);
        List<Double> throughputs = new ArrayList<>();
        List<Double> tails = new ArrayList<>();
        List<Double> rates = new ArrayList<>();
        List<Double> latencies = new ArrayList<>();
        load(check);
        load(canned);
        for (int round = 0; round < ROUNDS; round++) {
            Load with = load(check);
            Load without = load(canned);
            throughputs.add(with.perSecond() / without.perSecond());
            tails.add(with.p99() / without.p99());
            rates.add(with.perSecond());
            latencies.add(with.p99());
        }
        System.out.printf(
                Locale.ROOT,
                "%s: %s, %d connections, answer of %,d bytes: %,.0f/s, p99 %.1f ms; of the"
                        + " throughput of a canned answer %.2f (target: %.1f), p99 over its p99"
                        + " %.2f (target: less than %.0f)%n",
                NAME,
                CHECK,
                CONNECTIONS,
                answer.body().length,
                Medians.of(rates),
                1000 * Medians.of(latencies),
                Medians.of(throughputs),
                Targets.SHARE_OF_CANNED,
                Medians.of(tails),
                Targets.TAIL_OF_CANNED);
    }

    private Load load(byte[] request) throws InterruptedException, IOException {
        ExecutorService callers = Executors.newFixedThreadPool(CONNECTIONS);
        long begin = System.nanoTime();
        long end = begin + (long) (SECONDS * 1e9);
        Callable<List<Double>> caller =
                () -> {
                    List<Double> times = new ArrayList<>();
                    try (Connection connection = new Connection(port)) {
                        for (long now = System.nanoTime(); now < end; ) {
                            connection.send(request);
                            long done = System.nanoTime();
                            times.add((done - now) / 1e9);
                            now = done;
                        }
                    }
                    return times;
                };
        List<Future<List<Double>>> started = new ArrayList<>();
        for (int i = 0; i < CONNECTIONS; i++) {
            started.add(callers.submit(caller));
        }
        List<Double> all = new ArrayList<>();
        try {
            for (Future<List<Double>> one : started) {
                all.addAll(one.get());
            }
        } catch (ExecutionException e) {
            throw new IOException(e);
        } finally {
            callers.shutdownNow();
        }
        double seconds = (System.nanoTime() - begin) / 1e9;
        all.sort(Double::compare);
        return new Load(all.size() / seconds, all.get((int) (all.size() * 0.99)));
    }

    /** The whole answer, and the verdicts alone, in turns with the engine by itself. */
    private void large() throws IOException {
        Tower tower = new Tower(LITES);
        ReviewDocument document = tower.bound();
        byte[] body = tower.document().getBytes(StandardCharsets.UTF_8);
        List<String> paths = List.of("/v1/reviews", "/v1/reviews?detail=VERDICTS");
        List<Double> engine = new ArrayList<>();
        List<List<Double>> ratios = List.of(new ArrayList<>(), new ArrayList<>());
        long[] bytes = new long[paths.size()];
        try (Connection connection = new Connection(port)) {
            for (int round = -WARM_UP; round < ROUNDS; round++) {
                long begin = System.nanoTime();
                Review.run(document, new Reporting(UnitSystem.SI, TraceLevel.GOVERNING));
                long reviewed = System.nanoTime();
                if (round >= 0) {
                    engine.add((reviewed - begin) / 1e9);
                }
                for (int i = 0; i < paths.size(); i++) {
                    byte[] request = Connection.post(paths.get(i), body);
                    long asked = System.nanoTime();
                    bytes[i] = connection.send(request);
                    long answered = System.nanoTime();
                    if (round >= 0) {
                        ratios.get(i).add((double) (answered - asked) / (reviewed - begin));
                    }
                }
            }
        }
        for (int i = 0; i < paths.size(); i++) {
            System.out.printf(
                    Locale.ROOT,
                    "%s: %s of %,d lites over HTTP, request of %,d bytes, answer of %,d: %.2f times"
                            + " the engine's own %.2f s (target: %.1f)%n",
                    NAME,
                    paths.get(i),
                    tower.lites(),
                    body.length,
                    bytes[i],
                    Medians.of(ratios.get(i)),
                    Medians.of(engine),
                    Targets.OVER_HTTP);
        }
    }
}
