package org.bayledger.bench;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.bayledger.BayledgerApplication;

/** A service in a process of its own, from its command to its first answers. */
final class Service implements AutoCloseable {

    private static final String READY = "Bayledger answers.";

    private final Process process;
    private final int port;
    private final double seconds;

    private Service(Process process, int port, double seconds) {
        this.process = process;
        this.port = port;
        this.seconds = seconds;
    }

    /** What java is told to start the classes that this program was started with. */
    static List<String> classes() {
        return List.of(
                "-cp", System.getProperty("java.class.path"), BayledgerApplication.class.getName());
    }

    /**
     * Starts one and waits until it answers.
     *
     * @param options of the virtual machine
     * @param program what it is to run
     * @param arguments of the service, beside its port
     */
    static Service start(List<String> options, List<String> program, List<String> arguments)
            throws IOException {
        int port;
        try (ServerSocket free = new ServerSocket(0)) {
            port = free.getLocalPort();
        }
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(options);
        command.addAll(program);
        command.addAll(
                List.of(
                        "--server.port=" + port,
                        "--bayledger.demo.enabled=false",
                        "--logging.level.root=error"));
        command.addAll(arguments);
        long begin = System.nanoTime();
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        BufferedReader lines =
                new BufferedReader(
                        new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
        String line = "";
        while (!line.contains(READY)) {
            line = Objects.requireNonNull(lines.readLine(), "the service did not start");
        }
        double seconds = (System.nanoTime() - begin) / 1e9;
        Thread reading = new Thread(() -> readOn(lines));
        reading.setDaemon(true);
        reading.start();
        return new Service(process, port, seconds);
    }

    /** What nobody reads would stop the service once it fills the pipe. */
    private static void readOn(BufferedReader lines) {
        try {
            while (lines.readLine() != null) {
                // its log
            }
        } catch (IOException stopped) {
            // the service is closed
        }
    }

    int port() {
        return port;
    }

    /** From the command to the first answers, s. */
    double seconds() {
        return seconds;
    }

    /** Time that its threads have spent on processors, s. */
    double cpu() {
        return process.toHandle().info().totalCpuDuration().orElseThrow().toNanos() / 1e9;
    }

    @Override
    public void close() {
        process.destroy();
        try {
            process.waitFor();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
