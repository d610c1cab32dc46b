package org.bayledger.bench;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** A run of CalculiX on the mesh of the plates' oracle. */
final class FiniteElements {

    /** Benchmark that it is compared with, and the plate, by its name in the oracle. */
    static final String COMPARED = "solve";

    static final String PLATE = "aspect-1.5-load-150";

    private static final String MESHES = "src/test/oracle/plate/plates.py";

    private FiniteElements() {}

    /** Seconds that the solver takes, without making the mesh; NaN where it is not installed. */
    static double seconds() throws IOException {
        if (!onPath("ccx") || !onPath("python3")) {
            return Double.NaN;
        }
        Path folder = Files.createTempDirectory("bayledger-bench");
        try {
            String input = folder.resolve("plate.inp").toString();
            run(Path.of("."), List.of("python3", MESHES, "--case", PLATE, "--write-input", input));
            long start = System.nanoTime();
            run(folder, List.of("ccx", "plate"));
            return (System.nanoTime() - start) / 1e9;
        } finally {
            try (Stream<Path> files = Files.walk(folder)) {
                for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(file);
                }
            }
        }
    }

    private static void run(Path folder, List<String> command) throws IOException {
        Process process =
                new ProcessBuilder(command)
                        .directory(folder.toFile())
                        .redirectErrorStream(true)
                        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                        .start();
        try {
            if (process.waitFor() != 0) {
                throw new IOException(command + " ended with " + process.exitValue());
            }
        } catch (InterruptedException e) {
            process.destroy();
            Thread.currentThread().interrupt();
            throw new IOException(e);
        }
    }

    private static boolean onPath(String program) {
        return Stream.of(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator))
                .anyMatch(folder -> Files.isExecutable(Path.of(folder, program)));
    }
}
