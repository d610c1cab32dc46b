package org.bayledger.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.springframework.util.FileSystemUtils;

/**
 * The least memory, of some tried, with which a service reviews a tower over HTTP, three times in a
 * row. With too little it collects garbage for minutes before it gives up.
 */
final class ServiceMemory {

    static final String NAME = "service-memory";

    private static final int LITES = 10_000;
    private static final int REVIEWS = 3;
    private static final int[] MEGABYTES = {192, 224, 256, 288, 320, 384, 448, 512, 640, 768};

    private ServiceMemory() {}

    /** Prints the figures. */
    static void run() throws IOException {
        byte[] request =
                Connection.post(
                        "/v1/reviews",
                        new Tower(LITES).document().getBytes(StandardCharsets.UTF_8));
        Path folder = Files.createTempDirectory("bayledger-bench");
        try {
            for (int megabytes : MEGABYTES) {
                long bytes = reviewed(megabytes, request, folder);
                if (bytes > 0) {
                    System.out.printf(
                            Locale.ROOT,
                            "%s: a review of %,d lites over HTTP needs -Xmx%dm (target: %d):"
                                    + " request of %,d bytes, answer of %,d%n",
                            NAME,
                            LITES,
                            megabytes,
                            Targets.MEGABYTES,
                            request.length,
                            bytes);
                    return;
                }
            }
            System.out.println(NAME + ": more than " + MEGABYTES[MEGABYTES.length - 1] + " MB");
        } finally {
            FileSystemUtils.deleteRecursively(folder);
        }
    }

    /** Length of the answer, or 0 where the memory was not enough. */
    private static long reviewed(int megabytes, byte[] request, Path folder) throws IOException {
        try (Service service =
                        Service.start(
                                List.of("-Xmx" + megabytes + "m"),
                                Service.classes(),
                                List.of("--bayledger.embedded-database.directory=" + folder));
                Connection connection = new Connection(service.port())) {
            long bytes = 0;
            for (int review = 0; review < REVIEWS; review++) {
                try {
                    bytes = connection.send(request);
                } catch (IOException outOfMemory) {
                    return 0;
                }
            }
            return bytes;
        }
    }
}
