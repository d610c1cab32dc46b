package org.bayledger.contract;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.dataformat.yaml.YAMLMapper;

/** Holds bodies against api-spec/openapi.yaml. */
public final class Contract {

    /** The committed contract. */
    public static final Path FILE = Path.of("api-spec", "openapi.yaml");

    private static final String IRI = "https://bayledger.example/openapi.json";
    private static final List<String> METHODS =
            List.of("get", "put", "post", "delete", "options", "head", "patch", "trace");
    private static final JsonMapper JSON = JsonMapper.shared();

    /** Read on first use, so that it may be written anew before. */
    private static final class Committed {
        private static final Contract CONTRACT = new Contract(new YAMLMapper().readTree(FILE));
    }

    private final JsonNode document;
    private final SchemaRegistry schemas;

    Contract(JsonNode document) {
        this.document = document;
        this.schemas =
                SchemaRegistry.withDefaultDialect(
                        SpecificationVersion.DRAFT_2020_12,
                        builder -> builder.schemas(Map.of(IRI, JSON.writeValueAsString(document))));
    }

    /** The contract as it is committed. */
    static Contract committed() {
        return Committed.CONTRACT;
    }

    /**
     * Holds an answer against the contract. A problem that no operation can foresee (404 for an
     * unknown path, 405, a request line that can't be read) is held against the schema of problems.
     *
     * @param method HTTP method
     * @param pathTemplate path as the contract writes it: {@code /v1/projects/{projectId}}
     * @param status HTTP status of the answer
     * @param body the answer's body
     * @throws AssertionError where the contract has no such answer, or it looks otherwise
     */
    public static void validate(
            String method, String pathTemplate, int status, @Nullable String body) {
        committed().answer(method, pathTemplate, status, body);
    }

    /**
     * Holds an answer against the contract, whose path template is found by the path itself.
     *
     * @param path path as it was asked for, with or without a query
     */
    public static void validateAnswer(
            String method, String path, int status, @Nullable String body) {
        String asked = path.replaceFirst("\\?.*", "");
        for (String template : committed().document.path("paths").propertyNames()) {
            if (asked.matches(template.replaceAll("\\{[^/]+}", "[^/]+"))) {
                validate(method, template, status, body);
                return;
            }
        }
        validateProblem(body);
    }

    /** Holds a body against the schema of problems. */
    public static void validateProblem(@Nullable String body) {
        assertThat(committed().errors("/components/schemas/Problem", body)).as(body).isEmpty();
    }

    /** Holds a request's body against the contract; gives what is wrong with it. */
    public static List<String> faultsOfRequest(String method, String pathTemplate, String body) {
        return committed()
                .faults(
                        pointer(
                                "paths",
                                pathTemplate,
                                method.toLowerCase(Locale.ROOT),
                                "requestBody"),
                        body);
    }

    private void answer(String method, String path, int status, @Nullable String body) {
        String where = method + " " + path + " " + status;
        String pointer =
                pointer(
                        "paths",
                        path,
                        method.toLowerCase(Locale.ROOT),
                        "responses",
                        Integer.toString(status));
        JsonNode response = document.at(pointer);
        if (response.isMissingNode()) {
            boolean foreseen =
                    document.at(pointer("paths", path)).has(method.toLowerCase(Locale.ROOT));
            assertThat(foreseen && status < 400)
                    .as("the contract has no answer %s", where)
                    .isFalse();
            assertThat(status).as(where).isIn(400, 404, 405, 406, 414, 431);
            validateProblem(body);
            return;
        }
        if (response.has("$ref")) {
            pointer = response.get("$ref").asString().substring(1);
        }
        assertThat(faults(pointer, String.valueOf(body))).as("%s: %s", where, body).isEmpty();
    }

    private List<String> faults(String pointer, String body) {
        JsonNode content = document.at(pointer + "/content");
        assertThat(content.propertyNames()).as(pointer).isNotEmpty();
        String type = content.propertyNames().iterator().next();
        Media media = Media.of(type);
        return switch (media) {
            case SVG -> faultsOfDrawing(body);
            case NDJSON -> faultsOfLines(body);
            case JSON, PROBLEM -> errors(pointer + "/content" + pointer(type) + "/schema", body);
            default -> media.faults(body.getBytes(StandardCharsets.UTF_8));
        };
    }

    private List<String> errors(String pointer, @Nullable String body) {
        return schemas
                .getSchema(SchemaLocation.of(IRI + "#" + pointer))
                .validate(
                        JSON.readTree(String.valueOf(body)),
                        context ->
                                context.executionConfig(
                                        config -> config.formatAssertionsEnabled(true)))
                .stream()
                .map(error -> error.getInstanceLocation() + " " + error.getMessage())
                .toList();
    }

    /** Every line has to be an object that says of which type it is. */
    private static List<String> faultsOfLines(String body) {
        return body.lines()
                .filter(line -> !JSON.readTree(line).path("type").isString())
                .map(line -> "is no line of an export: " + line)
                .toList();
    }

    /** A drawing has to be XML that names itself SVG; any schema of texts would let more pass. */
    private static List<String> faultsOfDrawing(String body) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultNSInstance();
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            Element root =
                    factory.newDocumentBuilder()
                            .parse(new InputSource(new StringReader(body)))
                            .getDocumentElement();
            return "http://www.w3.org/2000/svg".equals(root.getNamespaceURI())
                            && "svg".equals(root.getLocalName())
                    ? List.of()
                    : List.of("is no SVG but " + root.getNodeName());
        } catch (ParserConfigurationException | SAXException e) {
            return List.of("is no XML: " + e.getMessage());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Schemas and properties without a description. */
    List<String> undescribed() {
        return document.at("/components/schemas").properties().stream()
                .flatMap(
                        schema ->
                                Stream.concat(
                                                Stream.of(schema),
                                                schema
                                                        .getValue()
                                                        .path("properties")
                                                        .properties()
                                                        .stream())
                                        .filter(
                                                part ->
                                                        part.getValue()
                                                                .path("description")
                                                                .asString("")
                                                                .isBlank())
                                        .map(part -> schema.getKey() + ": " + part.getKey()))
                .toList();
    }

    /** The example of a response that is a problem. */
    JsonNode problemExample(JsonNode response) {
        JsonNode resolved =
                response.has("$ref")
                        ? document.at(response.get("$ref").asString().substring(1))
                        : response;
        return resolved.at("/content/application~1problem+json/example");
    }

    /** Every operation of the contract, in its order. */
    List<Operation> operations() {
        return document.get("paths").properties().stream()
                .flatMap(
                        path ->
                                path.getValue().properties().stream()
                                        .filter(method -> METHODS.contains(method.getKey()))
                                        .map(
                                                method ->
                                                        new Operation(
                                                                method.getKey()
                                                                        .toUpperCase(Locale.ROOT),
                                                                path.getKey(),
                                                                method.getValue())))
                .toList();
    }

    /**
     * One operation.
     *
     * @param method HTTP method
     * @param path path template
     * @param node what the contract says of it
     */
    record Operation(String method, String path, JsonNode node) {

        String id() {
            return node.path("operationId").asString();
        }

        /** The status of success. */
        int success() {
            return node.get("responses").propertyNames().stream()
                    .filter(status -> status.startsWith("2"))
                    .mapToInt(Integer::parseInt)
                    .findFirst()
                    .orElseThrow();
        }

        /** The kinds of its successful answer, in the contract's order. */
        List<Media> answers() {
            return node.at("/responses/" + success() + "/content").propertyNames().stream()
                    .map(Media::of)
                    .toList();
        }

        /** Whether it answers with JSON. */
        boolean answersJson() {
            return answers().contains(Media.JSON);
        }

        /** The kind of body that it takes, the first where it takes several. */
        Media takes() {
            return taken().get(0);
        }

        /** The kinds of bodies that it takes, in the contract's order; none where it takes none. */
        List<Media> taken() {
            return node.at("/requestBody/content").propertyNames().stream().map(Media::of).toList();
        }

        /** Whether it takes a body of JSON. */
        boolean takesJson() {
            return takesBody() && takes() == Media.JSON;
        }

        /** Name of the file with the example of an answer. */
        String exampleOfAnAnswer(Media media) {
            return id() + ".response." + media.suffix();
        }

        /** Name of the file with the example of its request. */
        String exampleOfARequest() {
            return id() + ".request." + takes().suffix();
        }

        boolean takesBody() {
            return node.has("requestBody");
        }

        @Override
        public String toString() {
            return method + " " + path;
        }
    }

    private static String pointer(String... names) {
        StringBuilder pointer = new StringBuilder();
        for (String name : names) {
            pointer.append('/').append(name.replace("~", "~0").replace("/", "~1"));
        }
        return pointer.toString();
    }
}
