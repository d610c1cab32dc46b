package org.bayledger.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.bayledger.platform.TestDatabase;
import org.junit.jupiter.api.Test;

/** Two services on one database behave as one. */
class TwoInstancesTest {

    @Test
    void oneChainWhoeverWrites() throws Exception {
        TestDatabase database = TestDatabase.create();
        try (ServiceProcess one = ServiceProcess.on(database);
                ServiceProcess two = ServiceProcess.on(database)) {
            Writer writer = new Writer(one.port());
            for (int i = 0; i < 6; i++) {
                int port = i % 2 == 0 ? one.port() : two.port();
                assertThat(writer.append(port).statusCode()).isEqualTo(201);
            }
            writer.everythingStands(one.port());
            writer.everythingStands(two.port());
            String revisions = writer.project() + "/revisions?limit=100";
            assertThat(writer.get(two.port(), revisions).body())
                    .isEqualTo(writer.get(one.port(), revisions).body());

            raceForOneHead(one, two, new Writer(two.port()));
            sameKeyAtBoth(one, two, new Writer(one.port()));
        }
    }

    /** Of two writers with the same head one records and the other is told that it was stale. */
    private static void raceForOneHead(ServiceProcess one, ServiceProcess two, Writer writer)
            throws Exception {
        Writer other = writer.besides("other");
        List<Integer> statuses =
                atOnce(() -> writer.append(one.port()), () -> other.append(two.port())).stream()
                        .map(HttpResponse::statusCode)
                        .sorted()
                        .toList();
        assertThat(statuses).containsExactly(201, 412);
    }

    /** The same key and body at both is one revision, or the second is told to wait. */
    private static void sameKeyAtBoth(ServiceProcess one, ServiceProcess two, Writer writer)
            throws Exception {
        Writer same = writer.besides("attempt");
        List<HttpResponse<String>> answers =
                atOnce(() -> writer.append(one.port()), () -> same.append(two.port()));
        assertThat(answers).extracting(HttpResponse::statusCode).contains(201).isSubsetOf(201, 409);
        List<String> made =
                answers.stream()
                        .filter(answer -> answer.statusCode() == 201)
                        .map(HttpResponse::body)
                        .distinct()
                        .toList();
        assertThat(made).hasSize(1);
    }

    private static <T> List<T> atOnce(Callable<T> first, Callable<T> second) throws Exception {
        ExecutorService threads = Executors.newFixedThreadPool(2);
        CyclicBarrier together = new CyclicBarrier(2);
        try {
            List<Future<T>> both = new ArrayList<>();
            for (Callable<T> each : List.of(first, second)) {
                both.add(
                        threads.submit(
                                () -> {
                                    together.await();
                                    return each.call();
                                }));
            }
            return List.of(both.get(0).get(), both.get(1).get());
        } finally {
            threads.shutdownNow();
        }
    }
}
