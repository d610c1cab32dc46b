package org.bayledger.platform;

import io.zonky.test.db.postgres.util.LinuxUtils;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/**
 * The server process that an earlier run may have left on a data directory.
 *
 * <p>A service that was killed cannot stop its database: the server lives on and would block the
 * next start. Only a process whose program file lies in the service's own folder counts as its own;
 * no other is ever touched.
 */
final class Postmaster {

    private static final int STOP_SECONDS = 60;

    private Postmaster() {}

    /**
     * Stops a server left over on this data directory. The caller holds the folder's lock.
     *
     * @param folder the embedded database's folder, its real path: program files lie below it
     * @param data the data directory
     */
    static void stopLeftOver(Path folder, Path data) throws IOException, InterruptedException {
        Path pidFile = data.resolve("postmaster.pid");
        Optional<ProcessHandle> process = process(pidFile);
        if (process.isEmpty()) {
            return; // no server, or a dead one: PostgreSQL clears its own stale file
        }
        Optional<Path> program = ownProgram(folder, process.get());
        if (program.isPresent()) {
            stop(program.get(), data);
        } else {
            // The number now belongs to some other program (after a reboot, say), which PostgreSQL
            // would take for a running server.
            Files.deleteIfExists(pidFile);
        }
    }

    /** The living process that a postmaster.pid names. */
    static Optional<ProcessHandle> process(Path pidFile) throws IOException {
        if (!Files.exists(pidFile)) {
            return Optional.empty();
        }
        List<String> lines = Files.readAllLines(pidFile);
        try {
            return lines.isEmpty()
                    ? Optional.empty()
                    : ProcessHandle.of(Long.parseLong(lines.get(0).strip()))
                            .filter(ProcessHandle::isAlive);
        } catch (NumberFormatException notAPid) {
            return Optional.empty();
        }
    }

    private static Optional<Path> ownProgram(Path folder, ProcessHandle process) {
        return process.info()
                .command()
                .map(Path::of)
                .filter(program -> program.startsWith(folder))
                .filter(program -> program.getFileName().toString().startsWith("postgres"));
    }

    private static void stop(Path program, Path data) throws IOException, InterruptedException {
        String suffix = program.getFileName().toString().endsWith(".exe") ? ".exe" : "";
        List<String> command = new ArrayList<>();
        if (LinuxUtils.isUnshareAvailable()) {
            command.addAll(List.of("unshare", "-U")); // pg_ctl refuses to run as root
        }
        command.addAll(
                List.of(
                        program.resolveSibling("pg_ctl" + suffix).toString(),
                        "stop",
                        "-D",
                        data.toString(),
                        "-m",
                        "fast",
                        "-w",
                        "-t",
                        Integer.toString(STOP_SECONDS)));
        Process stopping =
                new ProcessBuilder(command)
                        .redirectErrorStream(true)
                        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                        .start();
        if (!stopping.waitFor(2L * STOP_SECONDS, TimeUnit.SECONDS) || stopping.exitValue() != 0) {
            stopping.destroy();
            throw new StartupRefusedException(
                    "A database server left over from an earlier run still uses "
                            + data
                            + " and would not stop.",
                    "See the newest file in "
                            + data.resolve("log")
                            + ", stop that server, then start again.");
        }
    }
}
