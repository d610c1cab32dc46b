package org.bayledger.drawing;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What a comparison holds, in words: values as they were posted, notes with mark and items. */
final class ComparedValue {

    private ComparedValue() {}

    /** A value of a document on one line; empty where it is absent. */
    static String text(@Nullable Object value) {
        if (value == null) {
            return "";
        }
        if (value instanceof BigDecimal number) {
            return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
        }
        if (value instanceof List<?> elements) {
            return elements.stream()
                    .map(ComparedValue::text)
                    .collect(Collectors.joining(", ", "[", "]"));
        }
        if (value instanceof Map<?, ?> properties) {
            return properties.entrySet().stream()
                    .map(property -> property.getKey() + ": " + text(property.getValue()))
                    .collect(Collectors.joining(", ", "{", "}"));
        }
        return value.toString();
    }

    /** A note's mark and sentence. */
    static String note(@Nullable Object note) {
        if (note instanceof Map<?, ?> properties) {
            String mark = text(properties.get("mark"));
            String sentence = text(properties.get("text"));
            return mark.isEmpty() ? sentence : mark + " " + sentence;
        }
        return "";
    }

    /** The items that a note is on. */
    static String items(@Nullable Object note) {
        return note instanceof Map<?, ?> properties
                        && properties.get("items") instanceof List<?> items
                ? items.stream().map(String::valueOf).collect(Collectors.joining(" "))
                : "";
    }
}
