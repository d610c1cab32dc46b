package org.bayledger.ledger;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.Map;
import org.bayledger.check.StrictJson;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.json.JsonMapper;

/** Talks to the service under test as any caller would. */
final class LedgerClient {

    static final String FIRST = "If-None-Match: *";

    private final HttpClient http = HttpClient.newHttpClient();
    private final String base;

    LedgerClient(int port) {
        this.base = "http://127.0.0.1:" + port;
    }

    /** An answer as it came. */
    record Answer(int status, String body, Map<String, java.util.List<String>> headers) {

        @Nullable Object tree() {
            return StrictJson.read(body.getBytes(UTF_8));
        }

        /** A value of the answer, by a pointer without escapes. */
        @Nullable Object at(String pointer) {
            Object value = tree();
            for (String step : pointer.substring(1).split("/", -1)) {
                value =
                        value instanceof java.util.List<?> elements
                                ? elements.get(Integer.parseInt(step))
                                : Trees.get(value, step);
            }
            return value;
        }

        String text(String pointer) {
            return String.valueOf(at(pointer));
        }

        @Nullable String header(String name) {
            java.util.List<String> values = headers.get(name);
            return values == null ? null : values.get(0);
        }

        String etag() {
            return String.valueOf(header("etag"));
        }
    }

    Answer get(String path, String... headers) {
        return send(request(path, headers).GET());
    }

    Answer post(String path, String body, String... headers) {
        return send(
                request(path, headers)
                        .header("Content-Type", "application/json")
                        .POST(HttpRequest.BodyPublishers.ofString(body)));
    }

    Answer send(String method, String path) {
        return send(request(path).method(method, HttpRequest.BodyPublishers.noBody()));
    }

    /** Creates a project and gives its path. */
    String newProject() {
        return String.valueOf(
                post("/v1/projects", "{\"name\":\"Civic library\"}").header("location"));
    }

    /** Records a revision with a document. */
    Answer record(String project, String document, String... headers) {
        return post(project + "/revisions", body("A. Reviewer", "first issue", document), headers);
    }

    static String body(String author, String reason, String document) {
        JsonMapper json = JsonMapper.shared();
        return "{\"author\":"
                + json.writeValueAsString(author)
                + ",\"reason\":"
                + json.writeValueAsString(reason)
                + ",\"document\":"
                + document
                + "}";
    }

    private HttpRequest.Builder request(String path, String... headers) {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(base + path));
        for (String header : headers) {
            int colon = header.indexOf(": ");
            request.header(header.substring(0, colon), header.substring(colon + 2));
        }
        return request;
    }

    private Answer send(HttpRequest.Builder request) {
        try {
            HttpResponse<String> response =
                    http.send(request.build(), HttpResponse.BodyHandlers.ofString());
            return new Answer(response.statusCode(), response.body(), response.headers().map());
        } catch (IOException e) {
            throw new IllegalStateException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }
}
