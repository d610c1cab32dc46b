package org.bayledger.contract;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.bayledger.contract.Contract.Operation;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * One pass through all operations in an order in which each finds what it needs: what is written
 * before what is read, and the path's variables from earlier answers.
 */
final class Story {

    private static final Pattern VARIABLE = Pattern.compile("\\{(\\w+)}");

    private static final Pattern CHANGING =
            Pattern.compile(
                    "[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}" // an identifier
                            + "|[0-9a-f]{64}" // a hash
                            + "|hash [0-9a-f]{12}\\b" // the first digits of one
                            + "|\\d{4}-\\d\\d-\\d\\dT\\d\\d:\\d\\d:\\d\\d(?:\\.\\d+)?Z"); // an

    // instant

    /** Characters of a text that are enough to see what it is. */
    private static final int SHOWN = 160;

    private Story() {}

    static List<Operation> inOrder(List<Operation> operations) {
        List<Operation> ordered = new ArrayList<>(operations);
        ordered.sort(
                Comparator.<Operation, Boolean>comparing(o -> !o.method().equals("POST"))
                        .thenComparing(o -> o.path().split("\\{", -1).length)
                        .thenComparing(Operation::path));
        return ordered;
    }

    /** Keeps what an answer names and later paths need. */
    static void learn(JsonNode answer, Map<String, String> variables) {
        for (String name : List.of("projectId", "number")) {
            if (answer.path(name).isValueNode()) {
                variables.putIfAbsent(name, answer.get(name).asString());
            }
        }
    }

    /** An answer without the projects of other tests on the same service. */
    static JsonNode own(JsonNode answer, Map<String, String> variables) {
        if (answer.path("items") instanceof ArrayNode items) {
            items.removeIf(
                    item ->
                            item.has("projectId")
                                    && !item.get("projectId")
                                            .asString()
                                            .equals(variables.get("projectId")));
        }
        return answer;
    }

    /**
     * The path with its variables, and the query parameters that are required or have an example.
     */
    static String path(Operation operation, Map<String, String> variables) {
        String path =
                VARIABLE.matcher(operation.path())
                        .replaceAll(
                                match ->
                                        Matcher.quoteReplacement(
                                                variables.getOrDefault(
                                                        match.group(1), match.group())));
        List<String> query = new ArrayList<>();
        for (JsonNode parameter : operation.node().path("parameters")) {
            if (parameter.get("in").asString().equals("query")
                    && (parameter.path("required").asBoolean(false) || parameter.has("example"))) {
                query.add(
                        parameter.get("name").asString()
                                + "="
                                + parameter.get("example").asString());
            }
        }
        return query.isEmpty() ? path : path + "?" + String.join("&", query);
    }

    /** The precondition of a first revision, where one is taken. */
    static List<String> headers(Operation operation) {
        for (JsonNode parameter : operation.node().path("parameters")) {
            if (parameter.get("name").asString().equals("If-None-Match")) {
                return List.of("If-None-Match", "*");
            }
        }
        return List.of();
    }

    /** An answer without what differs from run to run. */
    static JsonNode stable(JsonNode answer) {
        return JsonMapper.shared().readTree(stable(answer.toString()));
    }

    /** A drawing without what differs from run to run, and without the room that its words take. */
    static String stableDrawing(String drawing) {
        return stable(drawing).replaceAll(" (x|x1|x2|width)=\"[0-9.]+\"", "");
    }

    /** An export whose long texts are cut, to be read by people. */
    static String abridged(String export) {
        return export.lines().map(Story::abridgedLine).collect(Collectors.joining("\n")) + "\n";
    }

    private static String abridgedLine(String line) {
        ObjectNode object = (ObjectNode) JsonMapper.shared().readTree(line);
        String text = object.path("text").asString("");
        if (text.length() > SHOWN) {
            object.put("text", text.substring(0, SHOWN) + " ...");
        }
        return object.toString();
    }

    /** A text without what differs from run to run. */
    static String stable(String answer) {
        return CHANGING.matcher(answer).replaceAll("changing");
    }
}
