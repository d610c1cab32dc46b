package org.bayledger.platform;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.MissingNode;

/** What the service prints once it answers: one screen of at most 100 columns. */
final class Welcome {

    private static final int COLUMNS = 100;

    private final String address;
    private final List<String> lines = new ArrayList<>();

    /**
     * Starts with where everything can be tried.
     *
     * @param address where the service answers
     */
    Welcome(String address) {
        this.address = address;
        lines.add("");
        lines.add("Bayledger answers. Try");
        lines.add(address + "/swagger-ui.html");
    }

    /**
     * Adds a project: its addresses, and what its first revisions' reviews found.
     *
     * @param results recorded results, first revision first
     */
    void add(String projectId, String name, List<JsonNode> results) {
        String project = address + "/v1/projects/" + projectId;
        lines.add(project);
        lines.add(project + "/revisions/1");
        lines.add(project + "/comparisons?base=1&head=2");
        lines.add(project + "/verification");
        lines.add("");
        lines.add(name + ", a demo: its review");
        row("", results, result -> "revision " + (results.indexOf(result) + 1));
        JsonNode first = results.get(0);
        for (JsonNode bay : first.path("bays")) {
            String id = bay.path("id").asString();
            row("  bay " + id, results, result -> text(with(result, "bays", "id", id), "verdict"));
        }
        lines.add("Governing items, with utilization");
        for (JsonNode governing : first.path("governing")) {
            String check = governing.path("check").asString();
            row(
                    "  " + check,
                    results,
                    result -> governing(with(result, "governing", "check", check)));
        }
        lines.add("To call out on the shop drawings");
        results.get(results.size() - 1).path("notes").forEach(this::note);
        lines.add("");
        lines.add("Results support, and never replace, the judgement of a licensed professional.");
    }

    /** The screen, with the end of its last line. */
    String text() {
        return lines.stream()
                .map(line -> line.stripTrailing() + System.lineSeparator())
                .collect(Collectors.joining());
    }

    private void row(String label, List<JsonNode> results, Function<JsonNode, String> of) {
        String cells =
                results.stream().map(of).map("%-39s"::formatted).collect(Collectors.joining(" "));
        lines.add("%-20s %s".formatted(label, cells));
    }

    /** The element of a list that has this value. */
    private static JsonNode with(JsonNode result, String list, String property, String value) {
        for (JsonNode element : result.path(list)) {
            if (text(element, property).equals(value)) {
                return element;
            }
        }
        return MissingNode.getInstance();
    }

    private static String governing(JsonNode governing) {
        JsonNode utilization = governing.path("utilization");
        return "%s %s %s"
                .formatted(
                        text(governing, "item"),
                        text(governing, "verdict"),
                        utilization.isNumber()
                                ? String.format(Locale.ROOT, "%.3f", utilization.asDouble())
                                : "");
    }

    private void note(JsonNode note) {
        List<String> items = new ArrayList<>();
        note.path("items").forEach(item -> items.add(item.asString()));
        String mark = text(note, "mark").isEmpty() ? "" : text(note, "mark") + " ";
        String places =
                items.size() < 4
                        ? String.join(", ", items)
                        : items.get(0) + " and " + (items.size() - 1) + " more lites";
        StringBuilder line = new StringBuilder("  " + mark + places + ":");
        for (String word : text(note, "text").split(" ", -1)) {
            if (line.length() + 1 + word.length() > COLUMNS) {
                lines.add(line.toString());
                line = new StringBuilder("   ");
            }
            line.append(' ').append(word);
        }
        lines.add(line.toString());
    }

    private static String text(JsonNode node, String property) {
        return node.path(property).asString("");
    }
}
