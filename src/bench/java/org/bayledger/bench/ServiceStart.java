package org.bayledger.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.springframework.util.FileSystemUtils;

/**
 * How long the packaged service takes from its command to its first answers: on a database of its
 * own, which the first start makes and the others find, and on one that is there; as one file, and
 * as README.md unpacks it, with an archive of its classes.
 */
final class ServiceStart {

    static final String NAME = "service-start";

    private static final Path JAR = Path.of("target", "bayledger.jar");
    private static final int STARTS = 5;

    private ServiceStart() {}

    /** Prints the figures. */
    static void run() throws IOException {
        if (!Files.exists(JAR)) {
            System.out.println(NAME + ": there is no " + JAR + "; mvn package makes it");
            return;
        }
        Path folder = Files.createTempDirectory("bayledger-bench");
        try (Database database = Database.start(folder.resolve("external"))) {
            List<String> own =
                    List.of("--bayledger.embedded-database.directory=" + folder.resolve("own"));
            List<String> jar = List.of("-jar", JAR.toString());
            first("embedded", jar, own);
            first("external", jar, database.arguments());
            starts("embedded, one file", jar, own, Targets.START_SECONDS);
            starts("external, one file", jar, database.arguments(), Targets.START_SECONDS_EXTERNAL);
            List<String> unpacked = unpack(folder, database.arguments());
            starts("embedded, unpacked with archive", unpacked, own, Targets.START_SECONDS);
            starts(
                    "external, unpacked with archive",
                    unpacked,
                    database.arguments(),
                    Targets.START_SECONDS_EXTERNAL);
        } finally {
            FileSystemUtils.deleteRecursively(folder);
        }
    }

    private static void first(String how, List<String> program, List<String> arguments)
            throws IOException {
        try (Service service = start(program, arguments)) {
            System.out.printf(
                    Locale.ROOT,
                    "%s: %s, first start: ready in %.1f s%n",
                    NAME,
                    how,
                    service.seconds());
        }
    }

    private static void starts(
            String how, List<String> program, List<String> arguments, double target)
            throws IOException {
        List<Double> seconds = new ArrayList<>();
        List<Double> processors = new ArrayList<>();
        for (int start = 0; start < STARTS; start++) {
            try (Service service = start(program, arguments)) {
                seconds.add(service.seconds());
                processors.add(service.cpu());
            }
        }
        System.out.printf(
                Locale.ROOT,
                "%s: %s: ready in %.1f s (target: %.0f s), %.1f s on processors%n",
                NAME,
                how,
                Medians.of(seconds),
                target,
                Medians.of(processors));
    }

    private static Service start(List<String> program, List<String> arguments) throws IOException {
        return Service.start(List.of("-Xmx256m"), program, arguments);
    }

    /** Unpacks the jar and lets one start write down the classes that it loaded. */
    private static List<String> unpack(Path folder, List<String> database) throws IOException {
        Path unpacked = folder.resolve("unpacked");
        java("-Djarmode=tools", "-jar", JAR.toString(), "extract", "--destination", "" + unpacked);
        String jar = unpacked.resolve(JAR.getFileName()).toString();
        String archive = unpacked.resolve("bayledger.jsa").toString();
        List<String> training =
                new ArrayList<>(
                        List.of(
                                "-XX:ArchiveClassesAtExit=" + archive,
                                "-Dspring.context.exit=onRefresh",
                                "-jar",
                                jar,
                                "--server.port=0"));
        training.addAll(database);
        java(training.toArray(String[]::new));
        return List.of("-XX:SharedArchiveFile=" + archive, "-jar", jar);
    }

    private static void java(String... arguments) throws IOException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(List.of(arguments));
        Process process =
                new ProcessBuilder(command)
                        .redirectErrorStream(true)
                        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                        .start();
        try {
            if (process.waitFor() != 0) {
                throw new IOException(command + " ended with " + process.exitValue());
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }
}
