package org.bayledger.ledger;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.bayledger.check.Faults;
import org.bayledger.check.Pointer;
import org.erdtman.jcs.NumberToJSON;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;

/**
 * JSON in the one form that RFC 8785 allows: no white space, properties sorted, numbers as
 * ECMAScript writes an IEEE 754 double, UTF-8.
 *
 * <p>Trees are maps, lists, strings, {@link BigDecimal}, booleans and nulls.
 */
final class CanonicalJson {

    private static final JsonMapper MAPPER = JsonMapper.shared();

    private CanonicalJson() {}

    /** The canonical bytes of a tree. */
    static byte[] bytes(@Nullable Object tree) {
        return bytes(MAPPER.writeValueAsBytes(tree));
    }

    /** The canonical bytes of JSON that this service wrote itself. */
    static byte[] bytes(byte[] json) {
        try {
            return Canonicalizer.canonical(json);
        } catch (IOException | JacksonException e) {
            throw new IllegalStateException("What was written as JSON is not JSON", e);
        }
    }

    /**
     * Collects every number that the canonical form would change: more digits than a double holds,
     * too large, or a whole number that no double equals. The sign of zero and trailing zeros are
     * not a number's value.
     */
    static void requireExactNumbers(@Nullable Object tree, String pointer, Faults faults) {
        if (tree instanceof Map<?, ?> properties) {
            properties.forEach(
                    (name, value) ->
                            requireExactNumbers(
                                    value, Pointer.child(pointer, String.valueOf(name)), faults));
        } else if (tree instanceof List<?> elements) {
            for (int i = 0; i < elements.size(); i++) {
                requireExactNumbers(elements.get(i), Pointer.child(pointer, i), faults);
            }
        } else if (tree instanceof BigDecimal number && !isExact(number)) {
            faults.outOfRange(
                    pointer,
                    "is a number that a double cannot hold without changing it, so it cannot be"
                            + " recorded; give fewer digits");
        }
    }

    private static boolean isExact(BigDecimal number) {
        try {
            String canonical = NumberToJSON.serializeNumber(number.doubleValue());
            return new BigDecimal(canonical).compareTo(number) == 0;
        } catch (IOException notFinite) {
            return false;
        }
    }
}
