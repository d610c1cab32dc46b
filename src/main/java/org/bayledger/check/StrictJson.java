package org.bayledger.check;

import java.math.BigDecimal;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.exc.StreamConstraintsException;
import tools.jackson.core.json.JsonFactory;

/**
 * Reads JSON text to a tree of maps, lists, strings, {@link BigDecimal}, booleans and nulls,
 * without leniency: UTF-8, one value, no duplicate property, bounded nesting, numbers, names, texts
 * and count of values.
 */
public final class StrictJson {

    private static final int MAX_DEPTH = 32;
    private static final int MAX_NUMBER = 100;
    private static final int MAX_NAME = 200;
    private static final int MAX_TEXT = 100_000;
    private static final int MAX_VALUES = 1_000_000;

    /**
     * Beyond the exponents of a double: such a number has no use here, and is dear to write out.
     */
    private static final int MAX_EXPONENT = 400;

    private static final Pattern ADVICE =
            Pattern.compile("(?:: enable `| \\(not recognized).*$", Pattern.DOTALL);

    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private static final JsonFactory FACTORY =
            JsonFactory.builder()
                    .streamReadConstraints(
                            StreamReadConstraints.builder()
                                    .maxNestingDepth(MAX_DEPTH)
                                    .maxNumberLength(MAX_NUMBER)
                                    .maxNameLength(MAX_NAME)
                                    .maxStringLength(MAX_TEXT)
                                    .build())
                    .build();

    private final Faults faults = new Faults();
    private int values;

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
        try (JsonParser parser = FACTORY.createParser(ObjectReadContext.empty(), decode(utf8))) {
            if (parser.nextToken() == null) {
                throw unreadable("the body is empty; send one JSON object");
            }
            tree = reader.value(parser);
            if (parser.nextToken() != null) {
                throw unreadable("there is more than one JSON value in the body");
            }
        } catch (StreamConstraintsException e) {
            throw unreadable(
                    "%s: more than is accepted; nesting at most %d deep, numbers at most %d, names %d and texts %d characters"
                            .formatted(place(e), MAX_DEPTH, MAX_NUMBER, MAX_NAME, MAX_TEXT));
        } catch (JacksonException e) {
            throw unreadable("not valid JSON at %s: %s".formatted(place(e), reason(e)));
        }
        reader.faults.throwIfAny();
        return tree;
    }

    private static String decode(byte[] utf8) {
        try {
            String text =
                    StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(utf8)).toString();
            return !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
        } catch (CharacterCodingException e) {
            throw unreadable("the body is not UTF-8");
        }
    }

    private static String place(JacksonException e) {
        return e.getLocation() == null
                ? "an unknown place"
                : "line %d, column %d"
                        .formatted(e.getLocation().getLineNr(), e.getLocation().getColumnNr());
    }

    /** The parser's words without its advice on how to configure it. */
    private static String reason(JacksonException e) {
        return ADVICE.matcher(String.valueOf(e.getOriginalMessage())).replaceFirst("");
    }

    private static FaultsException unreadable(String detail) {
        return new FaultsException(List.of(new Fault("", detail, Fault.Kind.MALFORMED)));
    }

    private @Nullable Object value(JsonParser parser) {
        if (++values > MAX_VALUES) {
            throw unreadable("there are more than " + MAX_VALUES + " values in the body");
        }
        JsonToken token = parser.currentToken();
        return switch (token) {
            case START_OBJECT -> object(parser);
            case START_ARRAY -> array(parser);
            case VALUE_STRING -> text(parser);
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> number(parser);
            case VALUE_TRUE -> true;
            case VALUE_FALSE -> false;
            case VALUE_NULL -> null;
            default -> throw unreadable("unexpected " + token);
        };
    }

    private BigDecimal number(JsonParser parser) {
        BigDecimal number;
        try {
            number = parser.getDecimalValue();
        } catch (NumberFormatException | ArithmeticException e) {
            number = null;
        }
        if (number == null || Math.abs((long) number.precision() - number.scale()) > MAX_EXPONENT) {
            faults.malformed(at(parser), "is too large or too small for a number");
            return BigDecimal.ZERO;
        }
        return number;
    }

    private String text(JsonParser parser) {
        String text = parser.getString();
        if (hasLoneSurrogate(text)) {
            faults.malformed(at(parser), "holds half of a surrogate pair, which is no character");
        }
        return text;
    }

    private Map<String, @Nullable Object> object(JsonParser parser) {
        Map<String, @Nullable Object> properties = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String name = parser.currentName();
            if (properties.containsKey(name)) {
                faults.malformed(at(parser), "the property is given twice");
            }
            if (hasLoneSurrogate(name)) {
                throw unreadable("a name holds half of a surrogate pair, which is no character");
            }
            parser.nextToken();
            properties.put(name, value(parser));
        }
        return properties;
    }

    private List<@Nullable Object> array(JsonParser parser) {
        List<@Nullable Object> elements = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            elements.add(value(parser));
        }
        return elements;
    }

    private static String at(JsonParser parser) {
        return parser.streamReadContext().pathAsPointer().toString();
    }

    private static boolean hasLoneSurrogate(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (Character.isHighSurrogate(c)) {
                if (i + 1 == text.length() || !Character.isLowSurrogate(text.charAt(i + 1))) {
                    return true;
                }
                i++;
            } else if (Character.isLowSurrogate(c)) {
                return true;
            }
        }
        return false;
    }
}
