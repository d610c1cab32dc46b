package org.bayledger.review;

import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One instance of a STEP file.
 *
 * @param id its number
 * @param type its type in capitals, such as IFCPLATE; empty for an instance of several types
 * @param arguments strings, Doubles, {@link Reference}s, {@link Keyword}s, lists of these, and null
 *     where the file says $ or *; a value with its type stands as the value alone
 */
record StepEntity(int id, String type, List<@Nullable Object> arguments) {

    /** Another instance, by its number. */
    record Reference(int id) {}

    /** A value of an enumeration, without its dots. */
    record Keyword(String name) {}

    StepEntity {
        arguments = Collections.unmodifiableList(arguments);
    }

    @Nullable Object argument(int index) {
        return index < arguments.size() ? arguments.get(index) : null;
    }

    List<?> list(int index) {
        return argument(index) instanceof List<?> elements ? elements : List.of();
    }

    /** A text; empty where there is none. */
    String text(int index) {
        return argument(index) instanceof String text ? text : "";
    }
}
