package org.bayledger.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.bayledger.platform.StoppableDatabase;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * PostgreSQL is stopped and started again under load: callers are told to come back, nobody hangs,
 * and nothing that was acknowledged is lost.
 */
class DatabaseAwayTest {

    private static final int WRITERS = 3;

    @Test
    void callersAreToldToComeBackAndNothingIsLost(@TempDir Path folder) throws Exception {
        try (StoppableDatabase server = new StoppableDatabase(folder);
                ServiceProcess service = ServiceProcess.on(server.database())) {
            List<Load> loads = new ArrayList<>();
            for (int i = 0; i < WRITERS; i++) {
                loads.add(new Load(new Writer(service.port()), service.port()));
            }
            ExecutorService threads = Executors.newFixedThreadPool(WRITERS);
            try {
                List<Future<?>> running = new ArrayList<>();
                loads.forEach(load -> running.add(threads.submit(load::run)));
                for (Load load : loads) {
                    load.before.await();
                }
                server.stop();
                for (Load load : loads) {
                    load.refused.await();
                }
                assertThat(loads.get(0).writer.get(service.port(), "/actuator/health/liveness"))
                        .as("the service itself lives")
                        .extracting(HttpResponse::statusCode)
                        .isEqualTo(200);
                assertThat(loads.get(0).writer.get(service.port(), "/actuator/health/readiness"))
                        .as("it is not ready without its database")
                        .extracting(HttpResponse::statusCode)
                        .isEqualTo(503);
                server.startAgain();
                for (Future<?> load : running) {
                    load.get();
                }
                for (Load load : loads) {
                    load.writer.everythingStands(service.port());
                    assertThat(load.wrong).as("answers other than 201 and 503").isEmpty();
                }
            } finally {
                threads.shutdownNow();
            }
        }
    }

    /** Writes, tries again what was refused, and ends some revisions after the server is back. */
    private static final class Load {

        private static final int BEFORE = 3;
        private static final int AFTER = 3;

        private final Writer writer;
        private final int port;
        private final CountDownLatch before = new CountDownLatch(BEFORE);
        private final CountDownLatch refused = new CountDownLatch(2);
        private final List<String> wrong = new ArrayList<>();

        Load(Writer writer, int port) {
            this.writer = writer;
            this.port = port;
        }

        Void run() throws Exception {
            int after = 0;
            while (after < AFTER) {
                HttpResponse<String> answer =
                        writer.isOpen() ? writer.again(port) : writer.append(port);
                if (answer.statusCode() == 201) {
                    before.countDown();
                    after += refused.getCount() == 0 ? 1 : 0;
                } else if (answer.statusCode() == 503
                        && answer.headers().firstValue("Retry-After").isPresent()) {
                    refused.countDown();
                } else {
                    wrong.add(answer.statusCode() + " " + answer.body());
                    refused.countDown();
                }
            }
            return null;
        }
    }
}
