package org.bayledger.ledger;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.bayledger.check.StrictJson;
import org.jspecify.annotations.Nullable;

/**
 * A value within canonical JSON, found by stepping over what is not asked for instead of reading
 * all of it to a tree. Canonical JSON has no white space and is well-formed; nothing is checked.
 */
final class CanonicalSlice {

    /** Length of a colon and a null. */
    private static final int NULL = 5;

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

    /** The properties of an object that are not null; none where this is no object. */
    Map<String, CanonicalSlice> properties() {
        Map<String, CanonicalSlice> properties = new HashMap<>();
        if (json[from] == '{') {
            for (int at = from + 1; json[at] != '}'; at += json[at] == ',' ? 1 : 0) {
                int nameEnd = endOfText(at);
                int end = end(nameEnd + 1);
                if (!isNull(nameEnd + 1)) {
                    properties.put(
                            new String(json, at + 1, nameEnd - at - 2, UTF_8),
                            new CanonicalSlice(json, nameEnd + 1, end));
                }
                at = end;
            }
        }
        return properties;
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

    /** What it says, read. */
    @Nullable Object value() {
        if (json[from] == '"' && !escapes()) {
            return new String(json, from + 1, to - from - 2, UTF_8);
        }
        return StrictJson.read(Arrays.copyOfRange(json, from, to));
    }

    /**
     * SHA-256 of what it says, in hexadecimal: two values have the same exactly where {@link
     * Trees#same} finds them the same, for which a property that is null is as good as none. So
     * these are left out of what is hashed, and the commas between properties with them.
     */
    String hash() {
        byte[] said = new byte[to - from];
        int length = 0;
        BitSet objects = new BitSet();
        int depth = 0;
        int taken = from;
        boolean name = false;
        for (int at = from; at < to; ) {
            switch (json[at]) {
                case '{', '[' -> {
                    name = json[at] == '{';
                    objects.set(++depth, name);
                    at++;
                }
                case '}', ']' -> {
                    depth--;
                    name = false;
                    at++;
                }
                case ',' -> {
                    name = objects.get(depth);
                    if (name) {
                        System.arraycopy(json, taken, said, length, at - taken);
                        length += at - taken;
                        taken = at + 1;
                    }
                    at++;
                }
                case '"' -> {
                    int end = endOfText(at);
                    if (name && isNull(end + 1)) {
                        System.arraycopy(json, taken, said, length, at - taken);
                        length += at - taken;
                        end += NULL;
                        taken = end;
                    }
                    name = false;
                    at = end;
                }
                default -> at++;
            }
        }
        System.arraycopy(json, taken, said, length, to - taken);
        length += to - taken;
        return Sha256.hex(Arrays.copyOf(said, length));
    }

    private boolean escapes() {
        for (int at = from; at < to; at++) {
            if (json[at] == '\\') {
                return true;
            }
        }
        return false;
    }

    private boolean isNull(int at) {
        return json[at] == 'n';
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
