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
 *     where the file says $ or *; a single value with its type stands as the value alone, a list
 *     with its type as {@link Typed}
 */
record StepEntity(int id, String type, List<@Nullable Object> arguments) {

    /** Another instance, by its number. */
    record Reference(int id) {}

    /** A value of an enumeration, without its dots. */
    record Keyword(String name) {}

    /** A list with the type that the file names before it, such as IFCARCINDEX. */
    record Typed(String type, List<?> values) {}

    StepEntity {
        arguments = Collections.unmodifiableList(arguments);
    }

    @Override
    public String toString() {
        return "#" + id + (type.isEmpty() ? "" : " " + type);
    }

    @Nullable Object argument(int index) {
        return index < arguments.size() ? arguments.get(index) : null;
    }

    List<?> list(int index) {
        return argument(index) instanceof List<?> elements ? elements : List.of();
    }

    /** Whether an argument is a value of an enumeration. */
    boolean says(int index, String keyword) {
        return new Keyword(keyword).equals(argument(index));
    }

    /** A text; empty where there is none. */
    String text(int index) {
        return argument(index) instanceof String text ? text : "";
    }
}
