package org.bayledger.check;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.json.JsonFactory;

/**
 * Reads JSON text to a tree of maps, lists, strings, {@link BigDecimal}, booleans and nulls,
 * without leniency: one value, no duplicate property, bounded nesting, bounded numbers and names.
 */
public final class StrictJson {

    private static final int MAX_DEPTH = 32;

    private static final JsonFactory FACTORY =
            JsonFactory.builder()
                    .streamReadConstraints(
                            StreamReadConstraints.builder()
                                    .maxNestingDepth(MAX_DEPTH)
                                    .maxNumberLength(100)
                                    .maxNameLength(200)
                                    .maxStringLength(100_000)
                                    .build())
                    .build();

    private final Faults faults = new Faults();

    private StrictJson() {}

    /**
     * The tree of a JSON text.
     *
     * @param utf8 the text in UTF-8
     * @throws FaultsException where the text is not one JSON value or names a property twice
     */
    public static @Nullable Object read(byte[] utf8) {
        StrictJson reader = new StrictJson();
        Object tree;
        try (JsonParser parser = FACTORY.createParser(ObjectReadContext.empty(), utf8)) {
            if (parser.nextToken() == null) {
                throw unreadable("the body is empty; send one JSON object");
            }
            tree = reader.value(parser, "");
            if (parser.nextToken() != null) {
                throw unreadable("there is more than one JSON value in the body");
            }
        } catch (JacksonException e) {
            throw unreadable(
                    "not valid JSON at line %d, column %d: %s"
                            .formatted(
                                    e.getLocation() == null ? 0 : e.getLocation().getLineNr(),
                                    e.getLocation() == null ? 0 : e.getLocation().getColumnNr(),
                                    e.getOriginalMessage()));
        }
        reader.faults.throwIfAny();
        return tree;
    }

    private static FaultsException unreadable(String detail) {
        return new FaultsException(List.of(new Fault("", detail, Fault.Kind.MALFORMED)));
    }

    private @Nullable Object value(JsonParser parser, String pointer) {
        JsonToken token = parser.currentToken();
        return switch (token) {
            case START_OBJECT -> object(parser, pointer);
            case START_ARRAY -> array(parser, pointer);
            case VALUE_STRING -> text(parser.getString(), pointer);
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> parser.getDecimalValue();
            case VALUE_TRUE -> true;
            case VALUE_FALSE -> false;
            case VALUE_NULL -> null;
            default -> throw unreadable("unexpected " + token);
        };
    }

    private Map<String, @Nullable Object> object(JsonParser parser, String pointer) {
        Map<String, @Nullable Object> properties = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String name = text(parser.currentName(), pointer);
            String at = Pointer.child(pointer, name);
            parser.nextToken();
            Object value = value(parser, at);
            if (properties.containsKey(name)) {
                faults.malformed(at, "the property is given twice");
            }
            properties.put(name, value);
        }
        return properties;
    }

    private List<@Nullable Object> array(JsonParser parser, String pointer) {
        List<@Nullable Object> elements = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            elements.add(value(parser, Pointer.child(pointer, elements.size())));
        }
        return elements;
    }

    /** Half of a surrogate pair is no character: it could neither be stored nor sent back. */
    private String text(String text, String pointer) {
        for (int i = 0; i < text.length(); i++) {
            if (Character.isHighSurrogate(text.charAt(i))
                    && i + 1 < text.length()
                    && Character.isLowSurrogate(text.charAt(i + 1))) {
                i++;
            } else if (Character.isSurrogate(text.charAt(i))) {
                faults.malformed(pointer, "holds half of a surrogate pair, which is no character");
                return text;
            }
        }
        return text;
    }
}
