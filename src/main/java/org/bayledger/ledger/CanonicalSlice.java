package org.bayledger.ledger;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BiConsumer;
import org.bayledger.check.StrictJson;
import org.jspecify.annotations.Nullable;

/**
 * A value within canonical JSON, found by stepping over what is not asked for instead of reading
 * all of it to a tree. Canonical JSON has no white space and is well-formed; nothing is checked.
 */
final class CanonicalSlice {

    private final byte[] json;
    private final int from;
    private final int to;

    private CanonicalSlice(byte[] json, int from, int to) {
        this.json = json;
        this.from = from;
        this.to = to;
    }

    /** All of a canonical text. */
    static CanonicalSlice of(byte[] canonical) {
        return new CanonicalSlice(canonical, 0, canonical.length);
    }

    /**
     * A property's value; null where this is no object, or has none, or an explicit null.
     *
     * @param name letters and digits
     */
    @Nullable CanonicalSlice get(String name) {
        byte[] wanted = ('"' + name + '"').getBytes(UTF_8);
        List<CanonicalSlice> found = new ArrayList<>(1);
        if (json[from] == '{') {
            members(
                    (key, value) -> {
                        if (Arrays.equals(json, key.from, key.to, wanted, 0, wanted.length)) {
                            found.add(value);
                        }
                    });
        }
        return found.isEmpty() ? null : found.get(0);
    }

    /** The elements of a list; none where this is none. */
    List<CanonicalSlice> elements() {
        List<CanonicalSlice> elements = new ArrayList<>();
        if (json[from] == '[') {
            for (int at = from + 1; json[at] != ']'; at += json[at] == ',' ? 1 : 0) {
                int end = end(at);
                elements.add(new CanonicalSlice(json, at, end));
                at = end;
            }
        }
        return elements;
    }

    /** A property's value, read; null where there is none. */
    @Nullable Object value(String name) {
        CanonicalSlice found = get(name);
        return found == null
                ? null
                : StrictJson.read(Arrays.copyOfRange(json, found.from, found.to));
    }

    /**
     * SHA-256 of what it says, in hexadecimal: two values have the same exactly where {@link
     * Trees#same} finds them the same, for which a property that is null is as good as none.
     */
    String hash() {
        MessageDigest digest = Sha256.digest();
        update(digest);
        return Sha256.hexOf(digest.digest());
    }

    private void update(MessageDigest digest) {
        if (json[from] == '{') {
            digest.update((byte) '{');
            members(
                    (key, value) -> {
                        digest.update(json, key.from, key.to - key.from);
                        value.update(digest);
                    });
            digest.update((byte) '}');
        } else if (json[from] == '[') {
            digest.update((byte) '[');
            for (CanonicalSlice element : elements()) {
                element.update(digest);
                digest.update((byte) ',');
            }
            digest.update((byte) ']');
        } else {
            digest.update(json, from, to - from);
        }
    }

    /** The properties of an object that are not null. */
    private void members(BiConsumer<CanonicalSlice, CanonicalSlice> take) {
        for (int at = from + 1; json[at] != '}'; at += json[at] == ',' ? 1 : 0) {
            int keyEnd = end(at);
            int valueEnd = end(keyEnd + 1);
            if (json[keyEnd + 1] != 'n') {
                take.accept(
                        new CanonicalSlice(json, at, keyEnd),
                        new CanonicalSlice(json, keyEnd + 1, valueEnd));
            }
            at = valueEnd;
        }
    }

    /** Where the value ends that begins at an index. */
    private int end(int begin) {
        int depth = 0;
        int at = begin;
        do {
            switch (json[at]) {
                case '"' -> at = endOfText(at);
                case '{', '[' -> {
                    depth++;
                    at++;
                }
                case '}', ']' -> {
                    depth--;
                    at++;
                }
                default -> at++;
            }
        } while (at < json.length && (depth > 0 || !endsValue(begin, at)));
        return at;
    }

    /** Whether a value that is not within another is over: a text and a bracket end themselves. */
    private boolean endsValue(int begin, int at) {
        return switch (json[begin]) {
            case '"', '{', '[' -> true;
            default -> json[at] == ',' || json[at] == '}' || json[at] == ']';
        };
    }

    private int endOfText(int quote) {
        int at = quote + 1;
        while (json[at] != '"') {
            at += json[at] == '\\' ? 2 : 1;
        }
        return at + 1;
    }
}
