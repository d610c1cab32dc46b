package org.bayledger.ledger;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.erdtman.jcs.NumberToJSON;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.json.JsonFactory;

/**
 * Brings JSON into the form of RFC 8785 token by token. The properties of an object are written as
 * they come and then put in order, so that no tree is built: a review's answer has hundreds of
 * thousands of them.
 */
final class Canonicalizer {

    private static final JsonFactory FACTORY = new JsonFactory();

    /** Up to so many digits a decimal is the shortest one of its double. */
    private static final int EXACT_DIGITS = 15;

    /** Zeros after the point beyond which ECMAScript writes an exponent. */
    private static final int MOST_ZEROS = 5;

    private final JsonParser parser;
    private byte[] out;
    private int size;

    private Canonicalizer(JsonParser parser, int length) {
        this.parser = parser;
        this.out = new byte[length + 16];
    }

    /** The canonical form of one JSON value that holds no property twice. */
    static byte[] canonical(byte[] json) throws IOException {
        try (JsonParser parser = FACTORY.createParser(ObjectReadContext.empty(), json)) {
            Canonicalizer canonical = new Canonicalizer(parser, json.length);
            canonical.value(parser.nextToken());
            if (parser.nextToken() != null) {
                throw new IOException("more than one value");
            }
            return Arrays.copyOf(canonical.out, canonical.size);
        }
    }

    private void value(JsonToken token) throws IOException {
        switch (token) {
            case START_OBJECT -> object();
            case START_ARRAY -> array();
            case VALUE_STRING -> text(parser.getString());
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> number(parser.getString());
            case VALUE_TRUE -> ascii("true");
            case VALUE_FALSE -> ascii("false");
            case VALUE_NULL -> ascii("null");
            default -> throw new IOException("unexpected " + token);
        }
    }

    private void array() throws IOException {
        put('[');
        int first = size;
        for (JsonToken token = parser.nextToken();
                token != JsonToken.END_ARRAY;
                token = parser.nextToken()) {
            if (size > first) {
                put(',');
            }
            value(token);
        }
        put(']');
    }

    /** A property that has been written, and where. */
    private record Property(String name, int from, int to) {}

    private void object() throws IOException {
        put('{');
        int first = size;
        boolean inOrder = true;
        List<Property> properties = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            if (size > first) {
                put(',');
            }
            int from = size;
            String name = parser.currentName();
            text(name);
            put(':');
            value(parser.nextToken());
            inOrder &=
                    properties.isEmpty()
                            || properties.get(properties.size() - 1).name().compareTo(name) < 0;
            properties.add(new Property(name, from, size));
        }
        if (!inOrder) {
            sort(properties, first);
        }
        put('}');
    }

    /** Writes the properties once more, by the UTF-16 code units of their names. */
    private void sort(List<Property> properties, int first) throws IOException {
        byte[] written = Arrays.copyOfRange(out, first, size);
        properties.sort(Comparator.comparing(Property::name));
        size = first;
        for (int i = 0; i < properties.size(); i++) {
            Property property = properties.get(i);
            if (i > 0) {
                put(',');
                if (property.name().equals(properties.get(i - 1).name())) {
                    throw new IOException("a property twice: " + property.name());
                }
            }
            int length = property.to() - property.from();
            System.arraycopy(written, property.from() - first, out, size, length);
            size += length;
        }
    }

    private void text(String text) {
        put('"');
        int plain = 0;
        while (plain < text.length() && isPlain(text.charAt(plain))) {
            plain++;
        }
        if (plain == text.length()) {
            ascii(text);
        } else {
            StringBuilder escaped = new StringBuilder(text.length() + 16);
            text.chars().forEach(c -> escape((char) c, escaped));
            byte[] bytes = escaped.toString().getBytes(StandardCharsets.UTF_8);
            require(bytes.length);
            System.arraycopy(bytes, 0, out, size, bytes.length);
            size += bytes.length;
        }
        put('"');
    }

    private static boolean isPlain(char c) {
        return c >= ' ' && c < 0x7f && c != '"' && c != '\\';
    }

    private static void escape(char c, StringBuilder to) {
        switch (c) {
            case '"' -> to.append("\\\"");
            case '\\' -> to.append("\\\\");
            case '\b' -> to.append("\\b");
            case '\t' -> to.append("\\t");
            case '\n' -> to.append("\\n");
            case '\f' -> to.append("\\f");
            case '\r' -> to.append("\\r");
            default -> {
                if (c < ' ') {
                    to.append(String.format("\\u%04x", (int) c));
                } else {
                    to.append(c);
                }
            }
        }
    }

    private void number(String number) throws IOException {
        ascii(isCanonical(number) ? number : NumberToJSON.serializeNumber(parsed(number)));
    }

    private static double parsed(String number) throws IOException {
        double value = Double.parseDouble(number);
        if (!Double.isFinite(value)) {
            throw new IOException("a number that no double holds: " + number);
        }
        return value;
    }

    /**
     * Whether a number is certainly written as ECMAScript writes its double: a whole number, or a
     * decimal that ends in no zero, of so few digits that no shorter one means the same double.
     */
    private static boolean isCanonical(String number) {
        int from = number.charAt(0) == '-' ? 1 : 0;
        int point = number.indexOf('.');
        if (number.length() - from > EXACT_DIGITS + 1) {
            return false;
        }
        for (int i = from; i < number.length(); i++) {
            char c = number.charAt(i);
            if (i != point && (c < '0' || c > '9')) {
                return false;
            }
        }
        if (point < 0) {
            return number.length() - from <= EXACT_DIGITS && !number.equals("-0");
        }
        if (number.charAt(number.length() - 1) == '0') {
            return false;
        }
        boolean fraction = number.charAt(from) == '0';
        int zeros = 0;
        while (number.charAt(point + 1 + zeros) == '0') {
            zeros++;
        }
        return !fraction || zeros <= MOST_ZEROS;
    }

    private void ascii(String text) {
        int length = text.length();
        require(length);
        for (int i = 0; i < length; i++) {
            out[size + i] = (byte) text.charAt(i);
        }
        size += length;
    }

    private void put(char c) {
        require(1);
        out[size++] = (byte) c;
    }

    private void require(int more) {
        if (size + more > out.length) {
            out = Arrays.copyOf(out, Math.max(size + more, out.length + out.length / 2));
        }
    }
}
