package org.bayledger.platform;

import com.fasterxml.jackson.databind.type.TypeFactory;
import io.swagger.v3.oas.models.Operation;
import io.swagger.v3.oas.models.headers.Header;
import io.swagger.v3.oas.models.media.Content;
import io.swagger.v3.oas.models.media.MediaType;
import io.swagger.v3.oas.models.media.Schema;
import io.swagger.v3.oas.models.media.StringSchema;
import io.swagger.v3.oas.models.parameters.Parameter;
import io.swagger.v3.oas.models.responses.ApiResponse;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.bayledger.platform.RecordSchemas.Direction;

/** The problems that each operation can answer with, derived from what the operation takes. */
final class ProblemResponses {

    /** Header fields that come with a kind of problem. */
    private static final Map<ProblemKind, Map<String, String>> HEADERS =
            Map.of(
                    ProblemKind.AUTHENTICATION_REQUIRED,
                    Map.of("WWW-Authenticate", "Bearer (RFC 6750)."),
                    ProblemKind.INSUFFICIENT_SCOPE,
                    Map.of("WWW-Authenticate", "Bearer (RFC 6750) with the scope that is needed."),
                    ProblemKind.SERVICE_UNAVAILABLE,
                    Map.of("Retry-After", "Seconds after which to try again."));

    private final Schema<?> schema;
    private final Map<String, ApiResponse> shared = new TreeMap<>();

    ProblemResponses(RecordSchemas schemas) {
        this.schema =
                schemas.of(
                        TypeFactory.defaultInstance().constructType(Problem.class),
                        Direction.ANSWER);
    }

    /** The responses that were referred to, by name. */
    Map<String, ApiResponse> shared() {
        return shared;
    }

    void addTo(String path, Operation operation) {
        add(operation, ProblemKind.MALFORMED_REQUEST);
        add(operation, ProblemKind.AUTHENTICATION_REQUIRED);
        add(operation, ProblemKind.INSUFFICIENT_SCOPE);
        add(operation, ProblemKind.NOT_ACCEPTABLE);
        add(operation, ProblemKind.INTERNAL_SERVER_ERROR);
        add(operation, ProblemKind.SERVICE_UNAVAILABLE);
        if (path.contains("{")) {
            add(operation, ProblemKind.NOT_FOUND);
        }
        if (operation.getRequestBody() != null) {
            add(operation, ProblemKind.CONTENT_TOO_LARGE);
            add(operation, ProblemKind.UNSUPPORTED_MEDIA_TYPE);
            add(operation, ProblemKind.OUT_OF_RANGE);
        }
        if (hasHeader(operation, "If-Match")) {
            add(operation, ProblemKind.PRECONDITION_FAILED);
            add(operation, ProblemKind.PRECONDITION_REQUIRED);
        }
        if (hasHeader(operation, "Idempotency-Key")) {
            add(operation, ProblemKind.CONFLICT);
        }
        operation
                .getResponses()
                .forEach(
                        (status, response) -> {
                            if (status.compareTo("400") >= 0 && response.get$ref() == null) {
                                describe(ProblemKind.of(Integer.parseInt(status)), response);
                            }
                        });
    }

    private static boolean hasHeader(Operation operation, String name) {
        List<Parameter> parameters = operation.getParameters();
        return parameters != null
                && parameters.stream()
                        .anyMatch(
                                parameter ->
                                        "header".equals(parameter.getIn())
                                                && name.equalsIgnoreCase(parameter.getName()));
    }

    /** Adds a shared response, unless the endpoint has its own words for that status. */
    private void add(Operation operation, ProblemKind kind) {
        String status = Integer.toString(kind.status());
        if (!operation.getResponses().containsKey(status)) {
            shared.computeIfAbsent(
                    kind.slug(),
                    slug ->
                            describe(
                                    kind,
                                    new ApiResponse()
                                            .description(kind.title() + ". " + kind.meaning())));
            operation
                    .getResponses()
                    .addApiResponse(
                            status,
                            new ApiResponse().$ref("#/components/responses/" + kind.slug()));
        }
    }

    private ApiResponse describe(ProblemKind kind, ApiResponse response) {
        HEADERS.getOrDefault(kind, Map.of())
                .forEach(
                        (name, meaning) ->
                                response.addHeaderObject(
                                        name,
                                        new Header()
                                                .description(meaning)
                                                .schema(new StringSchema())));
        return response.content(
                new Content()
                        .addMediaType(
                                "application/problem+json",
                                new MediaType().schema(schema).example(ProblemExamples.of(kind))));
    }
}
