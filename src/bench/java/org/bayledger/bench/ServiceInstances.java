package org.bayledger.bench;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.springframework.util.FileSystemUtils;

/**
 * One service and two on the same database: what a request costs, whether both write one ledger
 * rightly, and what they share first. Callers, services and database share the machine, so that
 * rates are not those of two machines; time on processors is.
 */
final class ServiceInstances {

    static final String NAME = "service-instances";

    private static final int CALLERS = 4;
    private static final int ROUNDS = 5;

    /** Compiling goes on for some ten thousand requests, and would be counted. */
    private static final int WARM_UPS = 15;

    private static final int TURNS = 40;
    private static final int CHECKS_A_TURN = 6;
    private static final int RACES = 40;
    private static final double SECONDS = 6;
    private static final Path CHECK =
            Path.of("src", "main", "resources", "contract", "checkGlass.request.json");

    private final Database database;
    private final List<Service> services;
    private final String check;
    private final List<Caller> callers = new ArrayList<>();
    private final ExecutorService threads = Executors.newCachedThreadPool();

    private ServiceInstances(Database database, List<Service> services) throws IOException {
        this.database = database;
        this.services = services;
        this.check = Files.readString(CHECK, StandardCharsets.UTF_8);
        for (int i = 0; i < CALLERS; i++) {
            callers.add(new Caller("Job " + i));
        }
    }

    /** Prints the figures. */
    static void run() throws IOException {
        Path folder = Files.createTempDirectory("bayledger-bench");
        List<String> options = List.of("-Xmx512m");
        try (Database database = Database.start(folder);
                Service one = Service.start(options, Service.classes(), arguments(database));
                Service two = Service.start(options, Service.classes(), arguments(database))) {
            ServiceInstances bench = new ServiceInstances(database, List.of(one, two));
            bench.cost();
            bench.races();
            bench.limits();
            bench.verify();
            bench.threads.shutdownNow();
        } finally {
            FileSystemUtils.deleteRecursively(folder);
        }
    }

    /** Nobody is turned away on a machine that has other things to do. */
    private static List<String> arguments(Database database) {
        List<String> arguments = new ArrayList<>(database.arguments());
        arguments.add("--bayledger.limits.calculation-wait=120s");
        return arguments;
    }

    private final class Caller {

        private final Tower tower = new Tower(6);
        private final String project;
        private String head;
        private int revisions;

        Caller(String name) throws IOException {
            project = new Client(ports(1)).project(name);
        }

        /** Records a revision on whichever service's turn it is. */
        void record(Client client) throws IOException {
            tower.change(0, revisions);
            head = client.recorded(project, tower.document(), head);
            revisions++;
        }

        /** Small checks, a revision recorded and read, a page of the list. */
        int turn(Client client) throws IOException {
            for (int i = 0; i < CHECKS_A_TURN; i++) {
                HttpResponse<String> answer = client.post("/v1/checks/glass", check);
                if (answer.statusCode() != 200) {
                    throw new IOException(answer.body());
                }
            }
            record(client);
            client.read(project + "/revisions/" + revisions);
            client.read(project + "/revisions?limit=10");
            return CHECKS_A_TURN + 3;
        }
    }

    private List<Integer> ports(int instances) {
        return services.subList(0, instances).stream().map(Service::port).toList();
    }

    private double cpu() {
        return services.stream().mapToDouble(Service::cpu).sum();
    }

    private void cost() throws IOException {
        for (int round = 0; round < WARM_UPS; round++) {
            load(2);
        }
        List<Double> with = new ArrayList<>();
        List<Double> alone = new ArrayList<>();
        List<Double> ratios = new ArrayList<>();
        for (int round = 0; round < ROUNDS; round++) {
            double one = load(1);
            double two = load(2);
            alone.add(1000 * one);
            with.add(1000 * two);
            ratios.add(two / one);
        }
        System.out.printf(
                Locale.ROOT,
                "%s: six small checks, a revision recorded, read and listed: %.2f ms on processors"
                        + " per request with one service, %.2f with two; ratio %.2f (target: within"
                        + " %.2f)%n",
                NAME,
                Medians.of(alone),
                Medians.of(with),
                Medians.of(ratios),
                Targets.INSTANCES);
    }

    /** The same requests to so many services; s on processors per request. */
    private double load(int instances) throws IOException {
        double begin = cpu();
        List<Callable<Integer>> work = new ArrayList<>();
        for (Caller caller : callers) {
            work.add(
                    () -> {
                        Client client = new Client(ports(instances));
                        int requests = 0;
                        for (int turn = 0; turn < TURNS; turn++) {
                            requests += caller.turn(client);
                        }
                        return requests;
                    });
        }
        int requests = all(work).stream().mapToInt(Integer::intValue).sum();
        return (cpu() - begin) / requests;
    }

    /** Two callers follow one head on two services at once: one may, the other is told. */
    private void races() throws IOException {
        Caller caller = callers.get(0);
        Client first = new Client(List.of(services.get(0).port()));
        Client second = new Client(List.of(services.get(1).port()));
        Map<String, Integer> outcomes = new TreeMap<>();
        for (int race = 0; race < RACES; race++) {
            caller.tower.change(0, 1000 + race);
            String document = caller.tower.document();
            List<Callable<HttpResponse<String>>> both =
                    List.of(
                            () -> first.record(caller.project, document, caller.head),
                            () -> second.record(caller.project, document, caller.head));
            List<HttpResponse<String>> answers = all(both);
            outcomes.merge(
                    answers.stream().map(HttpResponse::statusCode).sorted().toList().toString(),
                    1,
                    Integer::sum);
            caller.head =
                    answers.stream()
                            .filter(answer -> answer.statusCode() == 201)
                            .map(Client::tag)
                            .findFirst()
                            .orElseThrow();
            caller.revisions++;
        }
        System.out.printf(
                Locale.ROOT,
                "%s: two callers follow one head on two services, %d times: %s%n",
                NAME,
                RACES,
                outcomes);
    }

    private void limits() throws IOException {
        for (int instances = 1; instances <= services.size(); instances++) {
            for (int projects : new int[] {1, CALLERS}) {
                System.out.printf(
                        Locale.ROOT,
                        "%s: services: %d, projects written at once: %d: %.0f revisions of 6 lites"
                                + " a second%n",
                        NAME,
                        instances,
                        projects,
                        recordings(projects, instances));
            }
        }
        System.out.printf(
                Locale.ROOT,
                "%s: the services keep %d connections of the %d that the database takes%n",
                NAME,
                database.number(
                        "SELECT count(*) FROM pg_stat_activity WHERE application_name ="
                                + " 'bayledger'"),
                database.number(
                        "SELECT setting::int FROM pg_settings WHERE name = 'max_connections'"));
    }

    private double recordings(int projects, int instances) throws IOException {
        long begin = System.nanoTime();
        long end = begin + (long) (SECONDS * 1e9);
        List<Callable<Integer>> work = new ArrayList<>();
        for (Caller caller : callers.subList(0, projects)) {
            work.add(
                    () -> {
                        Client client = new Client(ports(instances));
                        int recorded = 0;
                        while (System.nanoTime() < end) {
                            caller.record(client);
                            recorded++;
                        }
                        return recorded;
                    });
        }
        int recorded = all(work).stream().mapToInt(Integer::intValue).sum();
        return recorded / ((System.nanoTime() - begin) / 1e9);
    }

    private void verify() throws IOException {
        Client client = new Client(ports(2));
        int revisions = 0;
        for (Caller caller : callers) {
            String chain = client.read(caller.project + "/verification");
            if (!chain.contains("\"intact\":true")
                    || !chain.contains("\"size\":" + caller.revisions + ",")) {
                throw new IOException(caller.revisions + " revisions, but " + chain);
            }
            revisions += caller.revisions;
        }
        System.out.printf(
                Locale.ROOT,
                "%s: all %d chains are intact, with the %,d revisions that were acknowledged%n",
                NAME,
                callers.size(),
                revisions);
    }

    private <T> List<T> all(List<Callable<T>> work) throws IOException {
        try {
            List<T> done = new ArrayList<>();
            for (Future<T> one : threads.invokeAll(work)) {
                done.add(one.get());
            }
            return done;
        } catch (ExecutionException e) {
            throw new IOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }
}
