package org.bayledger.ledger;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.erdtman.jcs.NumberToJSON;
import tools.jackson.databind.json.JsonMapper;

/**
 * Brings JSON into the form of RFC 8785, byte by byte: a review's answer has hundreds of megabytes,
 * nearly all of which is in that form already. Strings without escapes and short numbers are copied
 * as they stand; the properties of an object are copied as they come and then put in order, so that
 * no tree is built.
 */
final class Canonicalizer {

    private static final JsonMapper JSON = JsonMapper.shared();

    /** Up to so many digits a decimal is the shortest one of its double. */
    private static final int EXACT_DIGITS = 15;

    /** Zeros after the point beyond which ECMAScript writes an exponent. */
    private static final int MOST_ZEROS = 5;

    private final byte[] in;
    private int at;
    private byte[] out;
    private int size;

    /** What is being put in order, at the same places as in {@link #out}. */
    private byte[] unordered = {};

    private Canonicalizer(byte[] json) {
        in = json;
        out = new byte[json.length + 16];
    }

    /** The canonical form of one JSON value that holds no property twice. */
    static byte[] canonical(byte[] json) throws IOException {
        Canonicalizer canonical = new Canonicalizer(json);
        canonical.value();
        canonical.space();
        if (canonical.at < json.length) {
            throw new IOException("more than one value");
        }
        return Arrays.copyOf(canonical.out, canonical.size);
    }

    private void value() throws IOException {
        switch (next()) {
            case '{' -> object();
            case '[' -> array();
            case '"' -> text();
            case 't' -> literal("true");
            case 'f' -> literal("false");
            case 'n' -> literal("null");
            default -> number();
        }
    }

    /** The next byte that is not white space, which is not passed. */
    private byte next() throws IOException {
        space();
        if (at == in.length) {
            throw new IOException("it ends too early");
        }
        return in[at];
    }

    private void space() {
        while (at < in.length
                && (in[at] == ' ' || in[at] == '\n' || in[at] == '\r' || in[at] == '\t')) {
            at++;
        }
    }

    private void pass(char expected) throws IOException {
        if (next() != expected) {
            throw new IOException("not " + expected + " at byte " + at);
        }
        at++;
        put(expected);
    }

    private void literal(String word) throws IOException {
        for (int i = 0; i < word.length(); i++, at++) {
            if (at == in.length || in[at] != word.charAt(i)) {
                throw new IOException("not " + word + " at byte " + at);
            }
            put(word.charAt(i));
        }
    }

    private void array() throws IOException {
        pass('[');
        if (next() != ']') {
            value();
            while (next() == ',') {
                pass(',');
                value();
            }
        }
        pass(']');
    }

    /** A property that has been written: where it begins, where its name ends and where it ends. */
    private record Property(int from, int name, int to) {}

    private void object() throws IOException {
        pass('{');
        int first = size;
        boolean inOrder = true;
        List<Property> properties = new ArrayList<>();
        if (next() != '}') {
            Property before = property();
            properties.add(before);
            while (next() == ',') {
                pass(',');
                Property property = property();
                inOrder &= compare(out, before, property) < 0;
                properties.add(property);
                before = property;
            }
        }
        if (!inOrder) {
            sort(properties, first);
        }
        pass('}');
    }

    private Property property() throws IOException {
        int from = size;
        next();
        text();
        int name = size;
        pass(':');
        value();
        return new Property(from, name, size);
    }

    /** By the UTF-16 code units of their names. */
    private static int compare(byte[] written, Property one, Property other) {
        int mismatch =
                Arrays.mismatch(written, one.from, one.name, written, other.from, other.name);
        if (mismatch < 0) {
            return 0;
        }
        byte a = written[one.from + mismatch];
        byte b = written[other.from + mismatch];
        // bytes are in the order of code units where both are plain ASCII; a quote ends a name
        return a >= 0 && b >= 0 && a != '\\' && b != '\\' && !inEscape(written, one, mismatch)
                ? (a == '"' ? -1 : b == '"' ? 1 : Byte.compare(a, b))
                : name(written, one).compareTo(name(written, other));
    }

    /** Whether a place in a name is part of an escape that begins before it. */
    private static boolean inEscape(byte[] written, Property property, int place) {
        for (int i = 0; i < place; i++) {
            if (written[property.from + i] == '\\') {
                return true;
            }
        }
        return false;
    }

    private static String name(byte[] written, Property property) {
        return JSON.readValue(written, property.from, property.name - property.from, String.class);
    }

    /** Writes the properties once more, in order. */
    private void sort(List<Property> properties, int first) throws IOException {
        if (unordered.length < size) {
            unordered = new byte[out.length];
        }
        System.arraycopy(out, first, unordered, first, size - first);
        byte[] written = unordered;
        properties.sort((one, other) -> compare(written, one, other));
        size = first;
        Property before = null;
        for (Property property : properties) {
            if (before != null) {
                put(',');
                if (compare(written, before, property) == 0) {
                    throw new IOException("a property twice: " + name(written, property));
                }
            }
            before = property;
            int length = property.to - property.from;
            System.arraycopy(written, property.from, out, size, length);
            size += length;
        }
    }

    private void text() throws IOException {
        byte[] json = in; // a local, for this loop sees nearly every byte
        int from = at;
        if (json[from] != '"') {
            throw new IOException("not a string at byte " + from);
        }
        boolean escaped = false;
        int end = from + 1;
        while (end < json.length && json[end] != '"') {
            byte c = json[end];
            if (c == '\\') {
                escaped = true;
                end++;
            } else if (c >= 0 && c < ' ') {
                throw new IOException("a control character at byte " + end);
            }
            end++;
        }
        if (end >= json.length) {
            throw new IOException("a string without an end");
        }
        at = end + 1;
        if (escaped) {
            String text = JSON.readValue(in, from, at - from, String.class);
            StringBuilder canonical = new StringBuilder(text.length() + 16).append('"');
            text.chars().forEach(c -> escape((char) c, canonical));
            byte[] bytes = canonical.append('"').toString().getBytes(StandardCharsets.UTF_8);
            copy(bytes, 0, bytes.length);
        } else {
            copy(in, from, at);
        }
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

    private void number() throws IOException {
        int from = at;
        while (at < in.length && isOfNumber(in[at])) {
            at++;
        }
        if (at == from) {
            throw new IOException("no value at byte " + at);
        }
        if (isCanonical(from, at)) {
            copy(in, from, at);
        } else {
            String number = new String(in, from, at - from, StandardCharsets.US_ASCII);
            double value = Double.parseDouble(number);
            if (!Double.isFinite(value)) {
                throw new IOException("a number that no double holds: " + number);
            }
            String written = NumberToJSON.serializeNumber(value);
            copy(written.getBytes(StandardCharsets.US_ASCII), 0, written.length());
        }
    }

    private static boolean isOfNumber(byte c) {
        return (c >= '0' && c <= '9') || c == '.' || c == '-' || c == '+' || c == 'e' || c == 'E';
    }

    /**
     * Whether a number is certainly written as ECMAScript writes its double: a whole number, or a
     * decimal that ends in no zero, of so few digits that no shorter one means the same double.
     */
    private boolean isCanonical(int start, int end) {
        boolean negative = in[start] == '-';
        int from = negative ? start + 1 : start;
        if (end - from > EXACT_DIGITS + 1) {
            return false;
        }
        int point = -1;
        for (int i = from; i < end; i++) {
            if (in[i] == '.' && point < 0) {
                point = i;
            } else if (in[i] < '0' || in[i] > '9') {
                return false;
            }
        }
        if (point < 0) {
            return end - from <= EXACT_DIGITS && !(negative && in[from] == '0');
        }
        if (in[end - 1] == '0' || in[end - 1] == '.') {
            return false;
        }
        int zeros = 0;
        while (in[point + 1 + zeros] == '0') {
            zeros++;
        }
        return in[from] != '0' || zeros <= MOST_ZEROS;
    }

    private void copy(byte[] bytes, int from, int to) {
        require(to - from);
        System.arraycopy(bytes, from, out, size, to - from);
        size += to - from;
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
