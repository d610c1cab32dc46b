package org.bayledger.contract;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.nio.file.Path;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;
import tools.jackson.dataformat.yaml.YAMLMapper;

/**
 * The contract breaks no caller of the last released one, api-spec/released.yaml.
 *
 * <p>A release renews it: api-spec/openapi.yaml is copied over it in the release's own commit, and
 * at no other time. Until 0.1.0 is released it holds the contract as it was first promised. What
 * has to break callers gets a path and names of its own beside the old ones.
 */
class ReleasedContractTest {

    private static final JsonNode RELEASED =
            new YAMLMapper().readTree(Path.of("api-spec", "released.yaml"));

    @Test
    void theContractBreaksNobody() {
        JsonNode current = new YAMLMapper().readTree(Contract.FILE);
        assertThat(String.join("\n", Breaches.between(RELEASED, current))).isEmpty();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource
    void whatBreaksCallersIsSeen(String what, Consumer<ObjectNode> change) {
        ObjectNode changed = (ObjectNode) RELEASED.deepCopy();
        change.accept(changed);
        assertThat(changed).isNotEqualTo(RELEASED);
        assertThat(Breaches.between(RELEASED, changed)).isNotEmpty();
    }

    static Stream<Arguments> whatBreaksCallersIsSeen() {
        return Stream.of(
                planted("a path is gone", c -> at(c, "/paths").remove("/v1/checks/glass")),
                planted("a method is gone", c -> at(c, "/paths/~1v1~1projects").remove("get")),
                planted(
                        "a property of an answer is gone",
                        c -> properties(c, "FramingResult").remove("maxDeflection")),
                planted(
                        "a property deep in an answer's lists is gone",
                        c -> properties(c, "TraceStep").remove("symbol")),
                planted(
                        "a property of an answer may be missing",
                        c -> required(c, "FramingResult").remove(0)),
                planted(
                        "a property of an answer may be null",
                        c ->
                                at(c, "/components/schemas/TraceStep/properties/symbol")
                                        .putArray("type")
                                        .add("string")
                                        .add("null")),
                planted(
                        "a property of an answer has another type",
                        c ->
                                at(c, "/components/schemas/TraceStep/properties/symbol")
                                        .put("type", "number")),
                planted(
                        "items of an answer's list have another type",
                        c ->
                                at(c, "/components/schemas/FramingResult/properties/reactions")
                                        .putObject("items")
                                        .put("type", "string")),
                planted(
                        "a request needs a new property",
                        c -> {
                            properties(c, "FramingRequest")
                                    .putObject("novel")
                                    .put("type", "string");
                            required(c, "FramingRequest").add("novel");
                        }),
                planted(
                        "a request needs a property that was optional",
                        c -> required(c, "FramingRequest").add("concurrentBendingStress")),
                planted(
                        "a property is refused in requests",
                        c -> properties(c, "FramingRequest").remove("concurrentBendingStress")),
                planted(
                        "a property of a request may not be null",
                        c ->
                                at(c, "/components/schemas/ReviewDocument/properties/sections")
                                        .put("type", "array")),
                planted(
                        "a value is refused in requests",
                        c -> ((ArrayNode) c.at("/components/schemas/Axis/enum")).remove(0)),
                planted(
                        "a query parameter takes fewer values",
                        c ->
                                ((ArrayNode)
                                                c.at(
                                                        "/paths/~1v1~1checks~1framing/post"
                                                                + "/parameters/0/schema/enum"))
                                        .remove(0)),
                planted(
                        "a query parameter is needed",
                        c -> at(c, "/paths/~1v1~1projects/get/parameters/0").put("required", true)),
                planted(
                        "a text in requests has to be shorter",
                        c ->
                                at(c, "/components/schemas/ProjectRequest/properties/name")
                                        .put("maxLength", 3)),
                planted(
                        "a text in requests has to look otherwise",
                        c ->
                                at(c, "/components/schemas/Bay/properties/id")
                                        .put("pattern", "[a-z]")),
                planted(
                        "an answer has another media type",
                        c -> {
                            ObjectNode content =
                                    at(c, "/paths/~1v1~1projects/get/responses/200/content");
                            content.set(
                                    "application/other+json", content.remove("application/json"));
                        }),
                planted(
                        "success has another status",
                        c -> {
                            ObjectNode responses = at(c, "/paths/~1v1~1projects/post/responses");
                            responses.set("200", responses.remove("201"));
                        }),
                planted(
                        "a header field of an answer is gone",
                        c ->
                                at(c, "/paths/~1v1~1projects/post/responses/201/headers")
                                        .remove("ETag")),
                planted(
                        "generated clients call an operation otherwise",
                        c -> at(c, "/paths/~1v1~1projects/get").put("operationId", "other")),
                planted(
                        "a caller needs another scope",
                        c -> at(c, "/paths/~1v1~1projects/get").putArray("security")));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource
    void whatBreaksNobodyIsLetPass(String what, Consumer<ObjectNode> change) {
        ObjectNode changed = (ObjectNode) RELEASED.deepCopy();
        change.accept(changed);
        assertThat(changed).isNotEqualTo(RELEASED);
        assertThat(Breaches.between(RELEASED, changed)).isEmpty();
    }

    static Stream<Arguments> whatBreaksNobodyIsLetPass() {
        return Stream.of(
                planted(
                        "a new path",
                        c ->
                                at(c, "/paths")
                                        .set(
                                                "/v1/checks/novel",
                                                c.at("/paths/~1v1~1checks~1glass"))),
                planted(
                        "a new property of answers",
                        c ->
                                properties(c, "FramingResult")
                                        .putObject("novel")
                                        .put("type", "string")),
                planted(
                        "a new property that requests may have",
                        c ->
                                properties(c, "FramingRequest")
                                        .putObject("novel")
                                        .put("type", "string")),
                planted(
                        "a new value in requests",
                        c -> ((ArrayNode) c.at("/components/schemas/Axis/enum")).add("NOVEL")),
                planted(
                        "other words",
                        c -> at(c, "/paths/~1v1~1projects/get").put("summary", "Other words")));
    }

    private static Arguments planted(String what, Consumer<ObjectNode> change) {
        return arguments(what, change);
    }

    private static ObjectNode at(JsonNode contract, String pointer) {
        return (ObjectNode) contract.at(pointer);
    }

    private static ObjectNode properties(JsonNode contract, String schema) {
        return at(contract, "/components/schemas/" + schema + "/properties");
    }

    private static ArrayNode required(JsonNode contract, String schema) {
        return (ArrayNode) contract.at("/components/schemas/" + schema + "/required");
    }
}
