package org.bayledger.story;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import org.bayledger.contract.Contract;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Talks to the service as a reviewer would from a shell, and holds every answer against the
 * contract.
 */
final class Curl {

    static final JsonMapper JSON = JsonMapper.shared();

    private final HttpClient http = HttpClient.newHttpClient();
    private final String base;

    Curl(int port) {
        this.base = "http://127.0.0.1:" + port;
    }

    /** What came back. */
    record Answer(int status, String etag, String location, JsonNode body) {

        /** A value of the body, by JSON pointer. */
        JsonNode at(String pointer) {
            return body.at(pointer);
        }

        String text(String pointer) {
            return body.at(pointer).asString();
        }
    }

    Answer get(String path) {
        return send("GET", path, "");
    }

    Answer post(String path, String body, String... headers) {
        return send("POST", path, body, headers);
    }

    /**
     * Sends a request.
     *
     * @param headers each as "Name: value"
     */
    Answer send(String method, String path, String body, String... headers) {
        HttpRequest.Builder request =
                HttpRequest.newBuilder(URI.create(base + path))
                        .header("Content-Type", "application/json")
                        .method(method, HttpRequest.BodyPublishers.ofString(body));
        for (String header : headers) {
            int colon = header.indexOf(": ");
            request.header(header.substring(0, colon), header.substring(colon + 2));
        }
        HttpResponse<String> answer = answer(method, path, request);
        return new Answer(
                answer.statusCode(),
                answer.headers().firstValue("ETag").orElse(""),
                answer.headers().firstValue("Location").orElse(""),
                JSON.readTree(answer.body()));
    }

    /** What is at an address that answers with something else than one JSON value. */
    String download(String path) {
        return answer("GET", path, HttpRequest.newBuilder(URI.create(base + path))).body();
    }

    private HttpResponse<String> answer(String method, String path, HttpRequest.Builder request) {
        try {
            HttpResponse<String> answer =
                    http.send(request.build(), HttpResponse.BodyHandlers.ofString());
            Contract.validateAnswer(method, path, answer.statusCode(), answer.body());
            return answer;
        } catch (IOException e) {
            throw new IllegalStateException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }
}
