package org.bayledger.drawing;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.bayledger.faults.Tools;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A headless Chromium, told what to do through its driver by the W3C WebDriver protocol. */
final class Browser implements AutoCloseable {

    private static final Pattern PORT = Pattern.compile("started successfully on port (\\d+)");

    private static final List<String> ARGUMENTS =
            List.of(
                    "--headless",
                    "--no-sandbox",
                    "--disable-gpu",
                    "--disable-quic",
                    "--no-first-run",
                    "--disable-background-networking",
                    "--disable-component-update",
                    "--disable-sync",
                    "--disable-dev-shm-usage");

    private final HttpClient http = HttpClient.newHttpClient();
    private final Process driver;
    private final URI session;

    private Browser(Process driver, String port, Path profile) throws Exception {
        this.driver = driver;
        URI sessions = URI.create("http://127.0.0.1:" + port + "/session");
        List<String> arguments =
                Stream.concat(ARGUMENTS.stream(), Stream.of("--user-data-dir=" + profile)).toList();
        JsonNode made =
                send(
                        sessions,
                        Map.of(
                                "capabilities",
                                Map.of(
                                        "alwaysMatch",
                                        Map.of(
                                                "goog:chromeOptions",
                                                Map.of(
                                                        "binary",
                                                        onPath("chromium").toString(),
                                                        "args",
                                                        arguments)))));
        session = URI.create(sessions + "/" + made.path("sessionId").asString());
    }

    /** Goes on only where this machine has them. */
    static void require() {
        Tools.require(
                "Chromium and its driver",
                onPath("chromium") != null && onPath("chromedriver") != null);
    }

    static Browser start(Path profile) throws Exception {
        Process driver =
                new ProcessBuilder(onPath("chromedriver").toString(), "--port=0")
                        .redirectErrorStream(true)
                        .start();
        BufferedReader said =
                new BufferedReader(new InputStreamReader(driver.getInputStream(), UTF_8));
        StringBuilder all = new StringBuilder();
        for (String line = said.readLine(); line != null; line = said.readLine()) {
            Matcher port = PORT.matcher(line);
            if (port.find()) {
                Thread reader = new Thread(() -> said.lines().forEach(rest -> {}), "driver");
                reader.setDaemon(true);
                reader.start();
                return new Browser(driver, port.group(1), profile);
            }
            all.append(line).append('\n');
        }
        throw new IllegalStateException("the driver did not start: " + all);
    }

    /** Shows a page in a window of that width. */
    void show(String address, int width) {
        tell(
                "Emulation.setDeviceMetricsOverride",
                Map.of(
                        "width",
                        width,
                        "height",
                        900,
                        "deviceScaleFactor",
                        1,
                        "mobile",
                        width < 600));
        command("url", Map.of("url", address));
    }

    /** What a script returns. */
    JsonNode run(String script) {
        return command("execute/sync", Map.of("script", script, "args", List.of()));
    }

    /** What a script hands to the function that is its last argument. */
    JsonNode await(String script) {
        return command("execute/async", Map.of("script", script, "args", List.of()));
    }

    /** The page printed; on the paper that it asks for itself, or on another. */
    byte[] print(Map<String, Object> options) {
        return Base64.getDecoder().decode(tell("Page.printToPDF", options).path("data").asString());
    }

    private JsonNode tell(String command, Map<String, Object> parameters) {
        return command("goog/cdp/execute", Map.of("cmd", command, "params", parameters));
    }

    private JsonNode command(String name, Map<String, Object> body) {
        try {
            return send(URI.create(session + "/" + name), body);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    private JsonNode send(URI to, Map<String, Object> body)
            throws IOException, InterruptedException {
        HttpResponse<String> answer =
                http.send(
                        HttpRequest.newBuilder(to)
                                .header("Content-Type", "application/json")
                                .POST(
                                        HttpRequest.BodyPublishers.ofString(
                                                JsonMapper.shared().writeValueAsString(body)))
                                .build(),
                        HttpResponse.BodyHandlers.ofString());
        if (answer.statusCode() != 200) {
            throw new IllegalStateException(to + ": " + answer.body());
        }
        return JsonMapper.shared().readTree(answer.body()).path("value");
    }

    @Override
    public void close() throws IOException {
        try {
            http.send(
                    HttpRequest.newBuilder(session).DELETE().build(),
                    HttpResponse.BodyHandlers.discarding());
            driver.destroy();
            driver.waitFor();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } finally {
            driver.destroy();
        }
    }

    private static Path onPath(String name) {
        return Stream.of(System.getenv("PATH").split(File.pathSeparator))
                .map(folder -> Path.of(folder, name))
                .filter(Files::isExecutable)
                .findFirst()
                .orElse(null);
    }
}
