package org.bayledger.platform;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bayledger.BayledgerApplication;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The service as it is started from a command line, on a port and a database of its own. */
final class RunningCopy implements AutoCloseable {

    private final HttpClient http = HttpClient.newHttpClient();
    private final ConfigurableApplicationContext context;

    RunningCopy(TestDatabase database, String... settings) {
        this(List.of(), database, settings);
    }

    RunningCopy(List<Class<?>> besides, TestDatabase database, String... settings) {
        List<String> arguments =
                new ArrayList<>(
                        List.of(
                                "--server.port=0",
                                "--spring.datasource.url=" + database.url(),
                                "--spring.datasource.username=" + TestDatabase.SERVICE,
                                "--spring.datasource.password=" + TestDatabase.PASSWORD,
                                "--spring.flyway.user=" + TestDatabase.OWNER,
                                "--spring.flyway.password=" + TestDatabase.PASSWORD));
        for (String setting : settings) {
            arguments.add("--" + setting);
        }
        context =
                new SpringApplicationBuilder(BayledgerApplication.class)
                        .sources(besides.toArray(Class[]::new))
                        .run(arguments.toArray(String[]::new));
    }

    /** An answer as it came. */
    record Answer(HttpResponse<String> response) {

        int status() {
            return response.statusCode();
        }

        String body() {
            return response.body();
        }

        String header(String name) {
            Optional<String> value = response.headers().firstValue(name);
            return value.orElse("");
        }

        JsonNode json() {
            return JsonMapper.shared().readTree(body());
        }
    }

    ConfigurableApplicationContext context() {
        return context;
    }

    int port() {
        return Integer.parseInt(
                String.valueOf(context.getEnvironment().getProperty("local.server.port")));
    }

    Answer get(String path, String... headers) throws IOException, InterruptedException {
        return send("GET", path, null, headers);
    }

    Answer post(String path, String body, String... headers)
            throws IOException, InterruptedException {
        return send("POST", path, body, headers);
    }

    /**
     * @param headers "Name: value"
     */
    Answer send(String method, String path, String body, String... headers)
            throws IOException, InterruptedException {
        HttpRequest.Builder request =
                HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port() + path))
                        .method(
                                method,
                                body == null
                                        ? HttpRequest.BodyPublishers.noBody()
                                        : HttpRequest.BodyPublishers.ofString(body));
        if (body != null) {
            request.header("Content-Type", "application/json");
        }
        for (String header : headers) {
            int colon = header.indexOf(": ");
            request.header(header.substring(0, colon), header.substring(colon + 2));
        }
        return new Answer(http.send(request.build(), HttpResponse.BodyHandlers.ofString()));
    }

    @Override
    public void close() {
        context.close();
    }
}
