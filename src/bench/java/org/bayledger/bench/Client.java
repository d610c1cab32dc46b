package org.bayledger.bench;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.List;

/** Asks services that share a ledger, each in its turn. */
final class Client {

    private final HttpClient http = HttpClient.newHttpClient();
    private final List<String> addresses;
    private int turn;

    Client(List<Integer> ports) {
        this.addresses = ports.stream().map(port -> "http://127.0.0.1:" + port).toList();
    }

    private HttpRequest.Builder to(String path) {
        return HttpRequest.newBuilder(URI.create(addresses.get(turn++ % addresses.size()) + path));
    }

    HttpResponse<String> get(String path) throws IOException {
        return send(to(path).build());
    }

    /** The same, but fails on anything but what was asked for. */
    String read(String path) throws IOException {
        HttpResponse<String> answer = get(path);
        if (answer.statusCode() != 200) {
            throw new IOException(answer.statusCode() + ": " + answer.body());
        }
        return answer.body();
    }

    HttpResponse<String> post(String path, String body) throws IOException {
        return send(posting(path, body).build());
    }

    /** Makes a project and says where it is. */
    String project(String name) throws IOException {
        return post("/v1/projects", "{\"name\":\"" + name + "\"}")
                .headers()
                .firstValue("Location")
                .orElseThrow();
    }

    /**
     * Posts a revision.
     *
     * @param tag the head that it is to follow; null for the first
     */
    HttpResponse<String> record(String project, String document, String tag) throws IOException {
        HttpRequest.Builder request =
                posting(
                        project + "/revisions",
                        "{\"author\":\"benchmark\",\"reason\":\"measured\",\"document\":"
                                + document
                                + "}");
        return send(
                (tag == null
                                ? request.header("If-None-Match", "*")
                                : request.header("If-Match", tag))
                        .build());
    }

    /** Records a revision and gives the new head. */
    String recorded(String project, String document, String tag) throws IOException {
        HttpResponse<String> answer = record(project, document, tag);
        if (answer.statusCode() != 201) {
            throw new IOException(answer.statusCode() + ": " + answer.body());
        }
        return tag(answer);
    }

    static String tag(HttpResponse<String> answer) {
        return answer.headers().firstValue("ETag").orElseThrow();
    }

    private HttpRequest.Builder posting(String path, String body) {
        return to(path).header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(body));
    }

    private HttpResponse<String> send(HttpRequest request) throws IOException {
        try {
            return http.send(request, HttpResponse.BodyHandlers.ofString());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }
}
