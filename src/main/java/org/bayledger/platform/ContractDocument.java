package org.bayledger.platform;

import com.fasterxml.jackson.databind.JavaType;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import io.swagger.v3.oas.models.Components;
import io.swagger.v3.oas.models.OpenAPI;
import io.swagger.v3.oas.models.Operation;
import io.swagger.v3.oas.models.PathItem;
import io.swagger.v3.oas.models.Paths;
import io.swagger.v3.oas.models.media.Content;
import io.swagger.v3.oas.models.media.MediaType;
import io.swagger.v3.oas.models.media.Schema;
import io.swagger.v3.oas.models.parameters.Parameter;
import io.swagger.v3.oas.models.responses.ApiResponse;
import io.swagger.v3.oas.models.responses.ApiResponses;
import io.swagger.v3.oas.models.security.SecurityRequirement;
import io.swagger.v3.oas.models.security.SecurityScheme;
import io.swagger.v3.oas.models.tags.Tag;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.bayledger.check.TraceLevel;
import org.bayledger.platform.RecordSchemas.Direction;
import org.bayledger.quantity.UnitSystem;
import org.bayledger.review.ReviewDetail;
import org.jspecify.annotations.Nullable;
import org.springdoc.core.customizers.OpenApiCustomizer;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.http.HttpMethod;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;

/**
 * Finishes the contract that springdoc gathers: schemas from our records, examples from the
 * resources, the problems each operation can answer with, everything in a fixed order.
 */
final class ContractDocument implements OpenApiCustomizer {

    private static final String BEARER = "bearerAuth";
    private static final String JSON = "application/json";

    /** Kinds of text beside JSON that have examples, with the suffix of their files. */
    private static final Map<String, String> TEXTS =
            Map.of(
                    "image/svg+xml", "svg",
                    "text/csv", "csv",
                    "application/x-ndjson", "ndjson",
                    "application/x-step", "ifc",
                    "model/step", "ifc");

    /** Parameters that mean the same in every operation; an endpoint's own words come first. */
    private static final Map<String, String> SHARED_PARAMETERS =
            Map.ofEntries(
                    Map.entry(
                            "units",
                            "Units of the computed values:\n"
                                    + Javadocs.constants(UnitSystem.class)),
                    Map.entry(
                            "trace",
                            "How much derivation to give:\n"
                                    + Javadocs.constants(TraceLevel.class)),
                    Map.entry(
                            "detail",
                            "How much of each item to answer:\n"
                                    + Javadocs.constants(ReviewDetail.class)),
                    Map.entry("projectId", "Identifier of the project."),
                    Map.entry("number", "Number of the revision, 1 for the first."),
                    Map.entry("limit", "How many items at most, 1 to 200; 50 where absent."),
                    Map.entry(
                            "cursor",
                            "Where the list goes on: a nextCursor that was answered, as it is."),
                    Map.entry("base", "Number of the revision that is compared from."),
                    Map.entry("head", "Number of the revision that is compared to."),
                    Map.entry("recompute", "Whether today's engine works out both anew."),
                    Map.entry("size", "Size of a checkpoint kept elsewhere; with headHash."),
                    Map.entry("headHash", "Hash of a checkpoint kept elsewhere; with size."),
                    Map.entry(
                            "If-Match",
                            "ETag of the project or of its newest revision: what the new revision"
                                    + " follows."),
                    Map.entry("If-None-Match", "An asterisk, for a project's first revision."),
                    Map.entry(
                            "Idempotency-Key",
                            "A text of the caller's own. The same key with the same body is"
                                    + " answered as the first time and records nothing more."));

    private final ObjectMapper json = JsonMapper.builder().build();
    private final ObjectProvider<RequestMappingHandlerMapping> mapping;

    /**
     * @param mapping asked for when the contract is; without a web server there is none
     */
    ContractDocument(ObjectProvider<RequestMappingHandlerMapping> mapping) {
        this.mapping = mapping;
    }

    @Override
    public void customise(OpenAPI document) {
        Variants variants = new Variants(mapping.getObject());
        RecordSchemas schemas = new RecordSchemas();
        Paths sorted = new Paths();
        new TreeMap<>(document.getPaths()).forEach(sorted::addPathItem);
        document.setPaths(sorted);
        sorted.values().forEach(path -> path.readOperations().forEach(o -> request(o, schemas)));
        sorted.forEach(
                (path, item) ->
                        item.readOperationsMap()
                                .forEach(
                                        (method, operation) ->
                                                VariantsInContract.add(
                                                        operation,
                                                        variants.of(path, method.name()))));
        ProblemResponses problems = new ProblemResponses(schemas);
        sorted.forEach((path, item) -> answers(path, item, schemas, problems));
        document.setComponents(
                new Components()
                        .responses(problems.shared())
                        .schemas(raw(schemas.components()))
                        .addSecuritySchemes(BEARER, bearer()));
        if (document.getTags() != null) {
            document.setTags(
                    document.getTags().stream()
                            .sorted(Comparator.comparing(Tag::getName))
                            .toList());
        }
    }

    @SuppressWarnings({"rawtypes", "unchecked"})
    private static Map<String, Schema> raw(Map<String, Schema<?>> schemas) {
        return (Map) schemas;
    }

    /** The one way of saying who is asking; an open service takes requests without it as well. */
    private static SecurityScheme bearer() {
        String scopes =
                Arrays.stream(Scope.values())
                        .map(scope -> "- `" + scope.text() + "`: " + scope.allows())
                        .collect(Collectors.joining("\n"));
        return new SecurityScheme()
                .type(SecurityScheme.Type.HTTP)
                .scheme("bearer")
                .bearerFormat("JWT")
                .description(
                        "A token of the issuer that the service trusts (OAuth 2.0, RFC 6750),"
                                + " with the scope that the operation names. A service that is"
                                + " open, on its own machine's address alone, needs none.\n"
                                + scopes);
    }

    private void request(Operation operation, RecordSchemas schemas) {
        if (operation.getParameters() != null) {
            operation.getParameters().forEach(ContractDocument::describe);
        }
        if (operation.getRequestBody() != null) {
            Content content = operation.getRequestBody().getContent();
            replace(content, Direction.REQUEST, schemas);
            example(content, operation.getOperationId() + ".request");
        }
    }

    private static void describe(Parameter parameter) {
        String shared = SHARED_PARAMETERS.get(parameter.getName());
        if (parameter.getDescription() == null && shared != null) {
            parameter.setDescription(shared);
        }
    }

    private void answers(
            String path, PathItem item, RecordSchemas schemas, ProblemResponses problems) {
        for (Map.Entry<PathItem.HttpMethod, Operation> entry :
                item.readOperationsMap().entrySet()) {
            Operation operation = entry.getValue();
            Scope scope = Scope.of(HttpMethod.valueOf(entry.getKey().name()), path);
            operation.setSecurity(List.of(new SecurityRequirement().addList(BEARER, scope.text())));
            ApiResponses responses = operation.getResponses();
            responses.forEach(
                    (status, response) -> {
                        replace(response.getContent(), Direction.ANSWER, schemas);
                        if (status.startsWith("2")) {
                            example(
                                    response.getContent(),
                                    operation.getOperationId() + ".response");
                        }
                    });
            problems.addTo(path, operation);
            ApiResponses sorted = new ApiResponses();
            new TreeMap<String, ApiResponse>(responses).forEach(sorted::addApiResponse);
            operation.setResponses(sorted);
        }
    }

    private static void replace(
            @Nullable Content content, Direction direction, RecordSchemas schemas) {
        if (content == null) {
            return;
        }
        for (MediaType media : content.values()) {
            if (media.getSchema() != null) {
                media.setSchema(replaced(media.getSchema(), direction, schemas));
            }
        }
    }

    private static Schema<?> replaced(
            Schema<?> schema, Direction direction, RecordSchemas schemas) {
        JavaType type = RecordConverter.type(schema.get$ref());
        if (type != null) {
            return schemas.of(type, direction);
        }
        if (schema.getItems() != null) {
            schema.setItems(replaced(schema.getItems(), direction, schemas));
        }
        return schema;
    }

    private void example(@Nullable Content content, String resource) {
        if (content == null) {
            return;
        }
        content.forEach(
                (type, media) -> {
                    String suffix = type.equals(JSON) ? "json" : TEXTS.get(type);
                    byte[] example = suffix == null ? null : resource(resource + "." + suffix);
                    if (example != null) {
                        media.setExample(
                                type.equals(JSON)
                                        ? tree(example)
                                        : new String(example, StandardCharsets.UTF_8));
                    }
                });
    }

    private JsonNode tree(byte[] example) {
        try {
            return json.readTree(example);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private byte @Nullable [] resource(String name) {
        try (InputStream in = getClass().getResourceAsStream("/contract/" + name)) {
            return in == null ? null : in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
