package org.bayledger.platform;

import io.swagger.v3.oas.annotations.Hidden;
import java.util.Arrays;
import java.util.stream.Collectors;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.server.ResponseStatusException;
import org.springframework.web.util.HtmlUtils;

/** The pages for people: where to go from the root, and what each kind of problem means. */
@Hidden
@RestController
class IndexEndpoint {

    private static final String PAGE =
            """
            <!DOCTYPE html>
            <html lang="en">
            <head>
            <meta charset="utf-8">
            <meta name="viewport" content="width=device-width, initial-scale=1">
            <title>%1$s</title>
            <style>
            body { font: 1rem/1.5 system-ui, sans-serif; margin: 3rem auto; max-width: 44rem;
                   padding: 0 1rem; color: #222; background: #fdfdfb; }
            dt { font-weight: 600; margin-top: 1rem; }
            dd { margin: 0; }
            h2 { font-size: 1.1rem; margin-bottom: 0; }
            h2 + p { margin-top: 0.2rem; }
            pre { white-space: pre-wrap; overflow-wrap: anywhere; }
            </style>
            </head>
            <body>
            <h1>%1$s</h1>
            %2$s
            </body>
            </html>
            """;

    private static final String INDEX =
            """
            <p>Curtain-wall checks, bay by bay and revision by revision, and a ledger that shows
            later what was checked. Results support, and never replace, the judgement of a licensed
            professional.</p>
            <dl>
            <dt><a href="/swagger-ui.html">/swagger-ui.html</a></dt>
            <dd>every operation with examples, to be tried from the browser</dd>
            <dt><a href="/v3/api-docs.yaml">/v3/api-docs.yaml</a></dt>
            <dd>the contract (OpenAPI 3.1), to generate clients from; also as
            <a href="/v3/api-docs">JSON</a></dd>
            <dt><a href="/v1/projects">/v1/projects</a></dt>
            <dd>the projects in the ledger</dd>
            <dt><a href="/problems">/problems</a></dt>
            <dd>what each kind of refusal means</dd>
            <dt><a href="/actuator/health">/actuator/health</a></dt>
            <dd>whether the service is well</dd>
            </dl>
            """;

    private static final String PROBLEM =
            """
            <p>HTTP status %d.</p>
            <h2>What was wrong, and where</h2>
            <p>%s</p>
            <h2>What to do</h2>
            <p>%s</p>
            <h2>An example</h2>
            <pre>%s</pre>
            <p><a href="/problems">All problems</a>;
            <a href="/swagger-ui.html">all operations, with examples</a></p>
            """;

    @GetMapping(path = "/", produces = MediaType.TEXT_HTML_VALUE)
    ResponseEntity<String> index() {
        return page("Bayledger", INDEX);
    }

    @GetMapping(path = "/problems", produces = MediaType.TEXT_HTML_VALUE)
    ResponseEntity<String> problems() {
        String kinds =
                Arrays.stream(ProblemKind.values())
                        .map(
                                kind ->
                                        "<dt><a href=\"/problems/%1$s\">%1$s</a> (%2$d)</dt>\n<dd>%3$s</dd>"
                                                .formatted(
                                                        kind.slug(), kind.status(), kind.title()))
                        .collect(Collectors.joining("\n", "<dl>\n", "\n</dl>"));
        return page("Problems", kinds);
    }

    /** A page for people, and the same as data for programs that ask for JSON. */
    @GetMapping(
            path = "/problems/{slug}",
            produces = {MediaType.TEXT_HTML_VALUE, MediaType.APPLICATION_JSON_VALUE})
    ResponseEntity<?> problem(
            @PathVariable String slug,
            @RequestHeader(name = "Accept", defaultValue = MediaType.TEXT_HTML_VALUE)
                    String accept) {
        ProblemKind kind =
                Arrays.stream(ProblemKind.values())
                        .filter(candidate -> candidate.slug().equals(slug))
                        .findAny()
                        .orElseThrow(
                                () ->
                                        new ResponseStatusException(
                                                org.springframework.http.HttpStatus.NOT_FOUND,
                                                "There is no such kind of problem; /problems lists"
                                                        + " them."));
        if (accept.contains("json") && !accept.contains("html")) {
            return ResponseEntity.ok()
                    .contentType(MediaType.APPLICATION_JSON)
                    .body(
                            new Described(
                                    kind.type().toString(),
                                    kind.title(),
                                    kind.status(),
                                    kind.meaning(),
                                    kind.advice()));
        }
        return page(
                kind.title(),
                PROBLEM.formatted(
                        kind.status(),
                        kind.meaning(),
                        kind.advice(),
                        HtmlUtils.htmlEscape(ProblemExamples.of(kind).toPrettyString(), "UTF-8")));
    }

    /**
     * A kind of problem as data.
     *
     * @param type what a problem of this kind names as its type
     * @param title the kind in a few words
     * @param status the HTTP status
     * @param meaning what was wrong, and where
     * @param advice what to do
     */
    private record Described(
            String type, String title, int status, String meaning, String advice) {}

    private static ResponseEntity<String> page(String title, String content) {
        return ResponseEntity.ok()
                .contentType(
                        new MediaType(MediaType.TEXT_HTML, java.nio.charset.StandardCharsets.UTF_8))
                .body(PAGE.formatted(title, content));
    }
}
