package org.bayledger.ledger;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.lang.reflect.Method;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.tools.ToolProvider;

/**
 * The verifier of exports that is shipped as source, compiled with every warning and run where it
 * sees nothing but the JDK.
 */
public final class ExportVerifier {

    static final Path SOURCE = Path.of("src", "verifier", "VerifyExport.java");

    private static final Pattern BROKEN = Pattern.compile("broken at revision ([0-9]+): ");

    private static final Method RUN = compiled();

    private ExportVerifier() {}

    /** What it said. */
    public record Finding(int code, String output) {

        /** The first revision that is not what was recorded; 0 where it names none. */
        public int firstBroken() {
            Matcher broken = BROKEN.matcher(output);
            return broken.lookingAt() ? Integer.parseInt(broken.group(1)) : 0;
        }
    }

    static Finding run(Path export, String... checkpoint) {
        List<String> arguments = new ArrayList<>(List.of(export.toString()));
        arguments.addAll(List.of(checkpoint));
        ByteArrayOutputStream output = new ByteArrayOutputStream();
        try (PrintStream out = new PrintStream(output, true, UTF_8)) {
            Object code = RUN.invoke(null, arguments.toArray(String[]::new), out);
            return new Finding((Integer) code, output.toString(UTF_8));
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    /** As an auditor runs it: by the JDK's launcher, from the source. */
    public static Finding launch(Path export, String... checkpoint) {
        List<String> command =
                new ArrayList<>(
                        List.of(
                                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                                SOURCE.toString(),
                                export.toString()));
        command.addAll(List.of(checkpoint));
        try {
            Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
            String output = new String(process.getInputStream().readAllBytes(), UTF_8);
            return new Finding(process.waitFor(), output);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    private static Method compiled() {
        try {
            Path classes = Files.createTempDirectory("verifier");
            ByteArrayOutputStream complaints = new ByteArrayOutputStream();
            int code =
                    ToolProvider.getSystemJavaCompiler()
                            .run(
                                    null,
                                    complaints,
                                    complaints,
                                    "--release",
                                    "17",
                                    "-Xlint:all",
                                    "-Werror",
                                    "-classpath",
                                    classes.toString(),
                                    "-d",
                                    classes.toString(),
                                    SOURCE.toString());
            assertThat(code).as(complaints.toString(UTF_8)).isZero();
            ClassLoader onlyTheJdk =
                    new URLClassLoader(
                            new URL[] {classes.toUri().toURL()},
                            ClassLoader.getPlatformClassLoader());
            return onlyTheJdk
                    .loadClass("VerifyExport")
                    .getMethod("run", String[].class, PrintStream.class);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }
}
