package org.bayledger.bench;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.springframework.util.FileSystemUtils;

/**
 * How long the packaged service takes from its command to its first answers, on a database of its
 * own: the first start makes it, the others find it. The last has little memory and reviews a
 * tower.
 */
final class ServiceStart {

    static final String NAME = "service-start";

    private static final Path JAR = Path.of("target", "bayledger.jar");
    private static final int STARTS = 4;
    private static final int LITES = 10_000;
    private static final String READY = "Bayledger answers.";

    private ServiceStart() {}

    /** Prints the figures. */
    static void run() throws IOException {
        if (!Files.exists(JAR)) {
            System.out.println(NAME + ": there is no " + JAR + "; mvn package makes it");
            return;
        }
        Path folder = Files.createTempDirectory("bayledger-bench");
        try {
            for (int start = 1; start <= STARTS; start++) {
                start(folder, start);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        } finally {
            FileSystemUtils.deleteRecursively(folder);
        }
    }

    private static void start(Path folder, int start) throws IOException, InterruptedException {
        int port;
        try (ServerSocket free = new ServerSocket(0)) {
            port = free.getLocalPort();
        }
        long begin = System.nanoTime();
        Process service =
                new ProcessBuilder(
                                List.of(
                                        Path.of(System.getProperty("java.home"), "bin", "java")
                                                .toString(),
                                        "-Xmx256m",
                                        "-jar",
                                        JAR.toString(),
                                        "--server.port=" + port,
                                        "--bayledger.demo.enabled=false",
                                        "--bayledger.embedded-database.directory=" + folder))
                        .redirectErrorStream(true)
                        .start();
        try (BufferedReader lines =
                new BufferedReader(
                        new InputStreamReader(service.getInputStream(), StandardCharsets.UTF_8))) {
            String line = "";
            while (!line.contains(READY)) {
                line = Objects.requireNonNull(lines.readLine(), "the service did not start");
            }
            System.out.printf(
                    Locale.ROOT,
                    "%s: start %d on the embedded database: ready in %.1f s%s%n",
                    NAME,
                    start,
                    (System.nanoTime() - begin) / 1e9,
                    start == 1 ? "" : " (target: %.0f s)".formatted(Targets.START_SECONDS));
            if (start == STARTS) {
                review(port);
            }
        } finally {
            service.destroy();
            service.waitFor();
        }
    }

    private static void review(int port) throws IOException {
        byte[] document = new Tower(LITES).document().getBytes(StandardCharsets.UTF_8);
        try (Connection connection = new Connection(port)) {
            long bytes = connection.send(Connection.post("/v1/reviews", document));
            System.out.printf(
                    Locale.ROOT,
                    "%s: with -Xmx256m it reviews %,d lites: answer of %,d bytes%n",
                    NAME,
                    LITES,
                    bytes);
        }
    }
}
