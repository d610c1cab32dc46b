package org.bayledger.faults;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.bayledger.BayledgerApplication;
import org.bayledger.platform.TestDatabase;

/** The service as a process of its own, which can be killed without a word. */
final class ServiceProcess implements AutoCloseable {

    private static final String ANSWERS = "/swagger-ui.html";

    private final Process process;
    private final int port;

    private ServiceProcess(Process process, int port) {
        this.process = process;
        this.port = port;
    }

    /** Starts the service on a database that is there. */
    static ServiceProcess on(TestDatabase database) {
        return start(
                Map.of(
                        "spring.datasource.url", database.url(),
                        "spring.datasource.username", TestDatabase.SERVICE,
                        "spring.datasource.password", TestDatabase.PASSWORD,
                        "spring.flyway.user", TestDatabase.OWNER,
                        "spring.flyway.password", TestDatabase.PASSWORD));
    }

    /** Starts the service with the database that it makes for itself in a folder. */
    static ServiceProcess embedded(Path folder) {
        return start(
                Map.of(
                        "bayledger.embedded-database.directory",
                        folder.toString(),
                        "bayledger.demo.enabled",
                        "false"));
    }

    /** Starts the service and returns once it answers. */
    static ServiceProcess start(Map<String, String> properties) {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        // what starts in seconds; the sums are the same
        command.addAll(
                List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xshare:auto", "-Xmx512m"));
        command.addAll(List.of("-cp", System.getProperty("java.class.path")));
        command.add("-Dserver.port=0");
        properties.forEach((name, value) -> command.add("-D" + name + "=" + value));
        command.add(BayledgerApplication.class.getName());
        try {
            File log = File.createTempFile("service", ".log");
            log.deleteOnExit();
            Process process =
                    new ProcessBuilder(command)
                            .redirectError(ProcessBuilder.Redirect.to(log))
                            .start();
            return new ServiceProcess(process, port(process, log));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static int port(Process process, File log) throws IOException {
        StringBuilder said = new StringBuilder();
        BufferedReader lines = process.inputReader(UTF_8);
        for (String line = lines.readLine(); line != null; line = lines.readLine()) {
            if (line.startsWith("http://") && line.endsWith(ANSWERS)) {
                drain(lines);
                String address = line.substring(0, line.length() - ANSWERS.length());
                return Integer.parseInt(address.substring(address.lastIndexOf(':') + 1));
            }
            said.append(line).append('\n');
        }
        throw new IllegalStateException(
                "the service did not start: " + said + Files.readString(log.toPath()));
    }

    /** A process whose output nobody reads stands still. */
    private static void drain(BufferedReader lines) {
        Thread reader =
                new Thread(
                        () -> {
                            try {
                                while (lines.readLine() != null) {
                                    // nobody wants it
                                }
                            } catch (IOException killed) {
                                // and that is that
                            }
                        });
        reader.setDaemon(true);
        reader.start();
    }

    int port() {
        return port;
    }

    /** SIGKILL: no shutdown hook runs. */
    void kill() {
        process.destroyForcibly().onExit().join();
    }

    /** SIGTERM: the service finishes what it has begun. */
    @Override
    public void close() {
        process.destroy();
        process.onExit().join();
    }
}
