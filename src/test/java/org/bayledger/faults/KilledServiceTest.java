package org.bayledger.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Supplier;
import org.bayledger.platform.TestDatabase;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The service is killed in the middle of writes (SIGKILL): what it acknowledged is there, nothing
 * is there by half, the chain verifies, and a retry gets the first answer. Five kills, or as many
 * as the property bayledger.test.kills says.
 */
class KilledServiceTest {

    private static final int KILLS = Integer.getInteger("bayledger.test.kills", 5);
    private static final int WRITERS = 3;

    /** After so many kills new projects are written to; a chain is verified after every kill. */
    private static final int KILLS_OF_A_PROJECT = 20;

    /** When to kill is drawn from this seed; where exactly that meets a write is the machine's. */
    private static final long SEED = 20_260_914;

    @Test
    void keepsWhatItAcknowledgedOnAServerOfItsOwn() throws Exception {
        TestDatabase database = TestDatabase.create();
        killAgainAndAgain(KILLS, () -> ServiceProcess.on(database), kill -> {});
    }

    @Test
    void keepsWhatItAcknowledgedOnTheEmbeddedServer(@TempDir Path folder) throws Exception {
        // every second time the database server is killed as well
        killAgainAndAgain(
                KILLS,
                () -> ServiceProcess.embedded(folder),
                kill -> {
                    if (kill % 2 == 1) {
                        postmaster(folder).ifPresent(ProcessHandle::destroyForcibly);
                    }
                });
    }

    private interface Also {
        void kill(int count);
    }

    private static void killAgainAndAgain(int kills, Supplier<ServiceProcess> start, Also also)
            throws Exception {
        SplittableRandom random = new SplittableRandom(SEED);
        List<Writer> all = new ArrayList<>();
        List<Writer> writers = new ArrayList<>();
        int leftOpen = 0;
        for (int kill = 0; kill < kills; kill++) {
            ServiceProcess service = start.get();
            try {
                for (Writer writer : writers) {
                    writer.newestStands(service.port());
                    writer.retryIsAnsweredOnce(service.port());
                }
                if (kill % KILLS_OF_A_PROJECT == 0) {
                    writers.clear();
                    for (int i = 0; i < WRITERS; i++) {
                        writers.add(new Writer(service.port()));
                    }
                    all.addAll(writers);
                }
                writeUntilKilled(service, writers, 1 + random.nextInt(12), also, kill);
            } finally {
                service.kill();
            }
            leftOpen += (int) writers.stream().filter(Writer::isOpen).count();
        }
        assertThat(leftOpen).as("kills met requests in the air").isPositive();
        try (ServiceProcess service = start.get()) {
            for (Writer writer : all) {
                writer.newestStands(service.port());
                writer.retryIsAnsweredOnce(service.port());
                writer.everythingStands(service.port());
                assertThat(writer.acknowledged()).isNotEmpty();
            }
        }
    }

    /** All write at once; after so many acknowledgements, with requests in the air, the kill. */
    private static void writeUntilKilled(
            ServiceProcess service, List<Writer> writers, int acknowledgements, Also also, int kill)
            throws Exception {
        CountDownLatch enough = new CountDownLatch(acknowledgements);
        ExecutorService threads = Executors.newFixedThreadPool(writers.size());
        try {
            List<Future<?>> writing = new ArrayList<>();
            for (Writer writer : writers) {
                writing.add(threads.submit(() -> write(service.port(), writer, enough)));
            }
            enough.await();
            also.kill(kill);
            service.kill();
            for (Future<?> writer : writing) {
                writer.get();
            }
        } finally {
            threads.shutdownNow();
        }
    }

    private static Void write(int port, Writer writer, CountDownLatch acknowledgements)
            throws InterruptedException {
        try {
            while (true) {
                HttpResponse<String> answer = writer.append(port);
                if (answer.statusCode() != 201) {
                    assertThat(answer.statusCode())
                            .as("the database went first, the attempt stays open: " + answer.body())
                            .isEqualTo(503);
                    return null;
                }
                acknowledgements.countDown();
            }
        } catch (IOException killed) {
            return null;
        } finally {
            // a writer that has stopped keeps nobody waiting
            while (acknowledgements.getCount() > 0) {
                acknowledgements.countDown();
            }
        }
    }

    private static Optional<ProcessHandle> postmaster(Path folder) {
        try {
            String pid = Files.readAllLines(folder.resolve("data/postmaster.pid")).get(0);
            return ProcessHandle.of(Long.parseLong(pid.strip()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
