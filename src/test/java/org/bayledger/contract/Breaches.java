package org.bayledger.contract;

import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.Logger;
import java.io.ByteArrayOutputStream;
import java.io.OutputStreamWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.openapitools.openapidiff.core.OpenApiCompare;
import org.openapitools.openapidiff.core.model.ChangedOpenApi;
import org.openapitools.openapidiff.core.output.ConsoleRender;
import org.slf4j.LoggerFactory;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * What in a contract breaks callers of an earlier one.
 *
 * <p>openapi-diff compares the two. It reads OpenAPI 3.1, but does not look into types that are
 * lists of names, nor through arrays and references beside them, so it is given both contracts in
 * the older form of OpenAPI 3.0, which says the same of our schemas except that null may stand.
 * That and what else it passes over is compared here: see {@link #ofSchemas} and {@link
 * #ofOperations}.
 *
 * <p>Not seen by either: what only descriptions say; a null that may or may not stand in a schema
 * whose name changed, or inside lists; header fields of requests that are refused; behaviour.
 */
final class Breaches {

    private static final List<String> METHODS = List.of("get", "put", "post", "delete", "patch");

    static {
        // at its finest level the comparison says several lines of every schema
        for (String name : List.of("org.openapitools", "io.swagger")) {
            ((Logger) LoggerFactory.getLogger(name)).setLevel(Level.WARN);
        }
    }

    private Breaches() {}

    /** Every breach, in words; empty where no caller has to change anything. */
    static List<String> between(JsonNode released, JsonNode current) {
        List<String> breaches = new ArrayList<>();
        ChangedOpenApi difference = OpenApiCompare.fromContents(older(released), older(current));
        if (difference.isIncompatible()) {
            ByteArrayOutputStream report = new ByteArrayOutputStream();
            new ConsoleRender()
                    .render(difference, new OutputStreamWriter(report, StandardCharsets.UTF_8));
            breaches.add(report.toString(StandardCharsets.UTF_8));
        }
        ofSchemas(released.at("/components/schemas"), current.at("/components/schemas"), breaches);
        ofOperations(released.get("paths"), current.get("paths"), breaches);
        return breaches;
    }

    /** Properties that requests may no longer have, and nulls. */
    private static void ofSchemas(JsonNode released, JsonNode current, List<String> breaches) {
        for (Map.Entry<String, JsonNode> schema : released.properties()) {
            JsonNode now = current.path(schema.getKey());
            if (now.isMissingNode()) {
                continue;
            }
            boolean closed = schema.getValue().path("additionalProperties").isBoolean();
            for (Map.Entry<String, JsonNode> property :
                    schema.getValue().path("properties").properties()) {
                String where = schema.getKey() + "." + property.getKey();
                JsonNode later = now.path("properties").path(property.getKey());
                if (later.isMissingNode()) {
                    if (closed) {
                        breaches.add(where + " is refused in requests and was not");
                    }
                } else if (closed && takesNull(property.getValue()) && !takesNull(later)) {
                    breaches.add(where + " may not be null in requests and might be");
                } else if (!closed && !takesNull(property.getValue()) && takesNull(later)) {
                    breaches.add(where + " may be null in answers and was not");
                }
            }
        }
    }

    /** The names that generated clients call operations by, and what a caller has to be allowed. */
    private static void ofOperations(JsonNode released, JsonNode current, List<String> breaches) {
        for (Map.Entry<String, JsonNode> path : released.properties()) {
            for (String method : METHODS) {
                JsonNode before = path.getValue().path(method);
                JsonNode now = current.path(path.getKey()).path(method);
                if (before.isMissingNode() || now.isMissingNode()) {
                    continue;
                }
                String where = method + " " + path.getKey();
                for (String part : List.of("operationId", "security", "tags")) {
                    if (!before.path(part).equals(now.path(part))) {
                        breaches.add(
                                "%s: %s was %s and is %s"
                                        .formatted(where, part, before.path(part), now.path(part)));
                    }
                }
            }
        }
    }

    private static boolean takesNull(JsonNode schema) {
        for (JsonNode type : schema.path("type")) {
            if (type.asString().equals("null")) {
                return true;
            }
        }
        for (JsonNode one : schema.path("anyOf")) {
            if (one.path("type").isString() && one.get("type").asString().equals("null")) {
                return true;
            }
        }
        return false;
    }

    /** The contract in the form of OpenAPI 3.0, without examples. */
    private static String older(JsonNode contract) {
        ObjectNode copy = ((ObjectNode) contract).deepCopy();
        copy.put("openapi", "3.0.3");
        ((ObjectNode) copy.get("info")).remove("license");
        lower(copy);
        return copy.toString();
    }

    private static void lower(JsonNode node) {
        if (node instanceof ObjectNode object) {
            if (object.has("schema")) {
                object.remove("example");
            }
            if (object.get("type") instanceof ArrayNode types) {
                object.set("type", only(types));
            }
            if (object.get("anyOf") instanceof ArrayNode any && takesNull(object)) {
                any.removeIf(one -> one.path("type").asString("").equals("null"));
                if (any.size() == 1) {
                    object.remove("anyOf");
                    object.setAll((ObjectNode) any.get(0));
                }
            }
            if (object.path("exclusiveMinimum").isNumber()) {
                object.set("minimum", object.get("exclusiveMinimum"));
                object.put("exclusiveMinimum", true);
            }
            if (object.path("exclusiveMaximum").isNumber()) {
                object.set("maximum", object.get("exclusiveMaximum"));
                object.put("exclusiveMaximum", true);
            }
        }
        node.forEach(Breaches::lower);
    }

    /** The one type beside null. */
    private static JsonNode only(ArrayNode types) {
        List<JsonNode> others = new ArrayList<>();
        types.forEach(others::add);
        others.removeIf(type -> type.asString().equals("null"));
        if (others.size() != 1) {
            throw new AssertionError("OpenAPI 3.0 can't say of a value that it is one of " + types);
        }
        return others.get(0);
    }
}
