package org.bayledger.faults;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Makes rubbish of good requests, always the same from the same seed. */
final class Mutation {

    /** Begins a line of its own where a log does not guard against it. */
    static final String FORGED = "2026-01-01T00:00:00Z ERROR forged";

    private static final JsonMapper JSON = JsonMapper.shared();
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private static final List<String> STRINGS =
            List.of(
                    "",
                    " ",
                    "x\r\n" + FORGED,
                    "\u0000",
                    "\u202e\ufeff",
                    "'; DROP TABLE ledger.revision; --",
                    "<script>alert(1)</script>",
                    "${jndi:ldap://127.0.0.1/x}",
                    "../../../../etc/passwd",
                    "%s%s%n%d",
                    "{{constructor}}",
                    "9".repeat(400),
                    "NaN",
                    "-0 ft",
                    "1e308 ft",
                    "1e-320 mm",
                    "-1 mm",
                    "0 ft",
                    "1e6 km/h",
                    "12 parsecs",
                    "13'-6 1/0\"",
                    "13'-6 1/2\"",
                    "99999999999999999999 psf",
                    "-40 psf",
                    "0.0001 in4",
                    "1 kPa",
                    "120 degF",
                    "ALLOWABLE_STRESS",
                    "STRENGTH",
                    "EN_1991_1_4",
                    "N-01",
                    "DEAD");

    private static final List<JsonNode> VALUES =
            List.of(
                    NODES.nullNode(),
                    NODES.booleanNode(true),
                    NODES.numberNode(0),
                    NODES.numberNode(-1),
                    NODES.numberNode(1e308),
                    NODES.numberNode(4.9e-324),
                    NODES.numberNode(Long.MAX_VALUE),
                    NODES.numberNode(0.1 + 0.2),
                    NODES.arrayNode(),
                    NODES.objectNode(),
                    NODES.objectNode().put("value", 1e300).put("unit", "ft"),
                    NODES.objectNode().put("value", -3).put("unit", "psf"),
                    NODES.objectNode().put("value", "1").put("unit", ""));

    private final SplittableRandom random;

    Mutation(SplittableRandom random) {
        this.random = random;
    }

    int below(int bound) {
        return random.nextInt(bound);
    }

    <T> T oneOf(List<T> choices) {
        return choices.get(random.nextInt(choices.size()));
    }

    String string() {
        return oneOf(STRINGS);
    }

    /** A request's body with something wrong in it, or nothing. */
    byte[] body(JsonNode good) {
        JsonNode tree = good.deepCopy();
        for (int i = below(4); i > 0; i--) {
            change(tree);
        }
        byte[] bytes = JSON.writeValueAsBytes(tree);
        return switch (below(12)) {
            case 0 -> Arrays.copyOf(bytes, below(bytes.length + 1));
            case 1 -> {
                bytes[below(bytes.length)] = (byte) random.nextInt();
                yield bytes;
            }
            case 2 -> ("[" + new String(bytes, UTF_8) + "]").getBytes(UTF_8);
            case 3 ->
                    new String(bytes, UTF_8)
                            .replaceFirst("\\{", "{\"name\":1,\"name\":2,")
                            .getBytes(UTF_8);
            default -> bytes;
        };
    }

    private void change(JsonNode tree) {
        List<JsonNode> containers = new ArrayList<>();
        collect(tree, containers);
        if (containers.isEmpty()) {
            return;
        }
        if (oneOf(containers) instanceof ObjectNode object) {
            change(object);
        } else if (oneOf(containers) instanceof ArrayNode array) {
            change(array);
        }
    }

    private static void collect(JsonNode node, List<JsonNode> containers) {
        if (node.isContainer()) {
            containers.add(node);
            node.forEach(child -> collect(child, containers));
        }
    }

    private void change(ObjectNode object) {
        List<String> names = List.copyOf(object.propertyNames());
        if (names.isEmpty() || below(8) == 0) {
            object.set(below(2) == 0 ? string() : "mass", value());
            return;
        }
        String name = oneOf(names);
        switch (below(5)) {
            case 0 -> object.remove(name);
            case 1 -> object.set(name, object.get(oneOf(names)).deepCopy());
            default -> object.set(name, value());
        }
    }

    private void change(ArrayNode array) {
        if (array.isEmpty()) {
            array.add(value());
            return;
        }
        int place = below(array.size());
        switch (below(4)) {
            case 0 -> array.remove(place);
            case 1 -> {
                JsonNode element = array.get(place).deepCopy();
                for (int i = below(40); i > 0; i--) {
                    array.add(element);
                }
            }
            default -> array.set(place, value());
        }
    }

    private JsonNode value() {
        return below(2) == 0 ? NODES.stringNode(string()) : oneOf(VALUES).deepCopy();
    }
}
