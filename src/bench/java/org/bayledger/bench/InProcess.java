package org.bayledger.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.bayledger.BayledgerApplication;
import org.springframework.boot.SpringApplication;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.util.FileSystemUtils;

/** A service in this process, on an embedded database of its own that goes again. */
final class InProcess {

    private InProcess() {}

    /** What is done with it. */
    interface Use {
        void with(ConfigurableApplicationContext service) throws IOException, InterruptedException;
    }

    /** Starts one, uses it and stops it. */
    static void run(Use use) throws IOException {
        Path folder = Files.createTempDirectory("bayledger-bench");
        try (ConfigurableApplicationContext service =
                SpringApplication.run(
                        BayledgerApplication.class,
                        "--server.port=0",
                        "--bayledger.demo.enabled=false",
                        "--logging.level.root=warn",
                        "--bayledger.embedded-database.directory=" + folder)) {
            use.with(service);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        } finally {
            FileSystemUtils.deleteRecursively(folder);
        }
    }
}
