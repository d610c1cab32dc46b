package org.bayledger.contract;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.bayledger.faults.Tools;

/**
 * Programs of Node.js in target/node, with exactly the packages that
 * src/test/node/package-lock.json names, by their hashes.
 */
final class Node {

    /** Where programs run. */
    static final Path FOLDER = Path.of("target", "node");

    private static final Path SOURCES = Path.of("src", "test", "node");
    private static final int OLDEST = 18;

    /**
     * How a program ended.
     *
     * @param exit its exit status
     * @param output what it printed
     * @param errors what it printed as errors
     */
    record Run(int exit, String output, String errors) {

        @Override
        public String toString() {
            return "exit status %d%n%s%n%s".formatted(exit, output, errors);
        }
    }

    private Node() {}

    /** Goes on only where Node.js, npm and the packages are there. */
    static synchronized void require() throws IOException, InterruptedException {
        Files.createDirectories(FOLDER);
        try (Stream<Path> files = Files.list(SOURCES)) {
            for (Path file : files.toList()) {
                Files.copy(
                        file,
                        FOLDER.resolve(file.getFileName()),
                        StandardCopyOption.REPLACE_EXISTING);
            }
        }
        Tools.require("Node.js " + OLDEST + " or newer", newEnough(run("node", "--version")));
        Tools.require("npm", run("npm", "--version").exit() == 0);
        Path installed = FOLDER.resolve("installed.json");
        Path lock = FOLDER.resolve("package-lock.json");
        if (!Files.exists(installed) || Files.mismatch(installed, lock) >= 0) {
            Run install =
                    run("npm", "ci", "--ignore-scripts", "--no-audit", "--no-fund", "--silent");
            Tools.require("npm package registry: " + install, install.exit() == 0);
            Files.copy(lock, installed, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    /** Runs a script of an installed package, or one that was compiled. */
    static Run script(String... scriptAndArguments) throws IOException, InterruptedException {
        return run(
                Stream.concat(Stream.of("node"), Arrays.stream(scriptAndArguments))
                        .toArray(String[]::new));
    }

    private static Run run(String... command) throws IOException, InterruptedException {
        Path output = FOLDER.resolve("output.txt");
        Path errors = FOLDER.resolve("errors.txt");
        ProcessBuilder builder =
                new ProcessBuilder(command)
                        .directory(FOLDER.toFile())
                        .redirectOutput(output.toFile())
                        .redirectError(errors.toFile());
        // the linter says nothing to its makers, and asks them nothing
        builder.environment().put("REDOCLY_TELEMETRY", "off");
        builder.environment().put("REDOCLY_SUPPRESS_UPDATE_NOTICE", "true");
        Process process;
        try {
            process = builder.start();
        } catch (IOException e) {
            return new Run(-1, "", List.of(command) + ": " + e.getMessage());
        }
        if (!process.waitFor(5, TimeUnit.MINUTES)) {
            process.destroyForcibly().waitFor();
            throw new AssertionError(List.of(command) + " did not end within five minutes");
        }
        return new Run(process.exitValue(), Files.readString(output), Files.readString(errors));
    }

    private static boolean newEnough(Run version) {
        String digits = version.output().strip().replaceFirst("^v(\\d+)\\..*", "$1");
        return version.exit() == 0 && Integer.parseInt(digits) >= OLDEST;
    }
}
