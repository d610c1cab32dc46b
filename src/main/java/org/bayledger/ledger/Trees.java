package org.bayledger.ledger;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Looking into JSON trees. */
final class Trees {

    private Trees() {}

    /** A property's value; null where it is absent, which is the same as an explicit null. */
    static @Nullable Object get(@Nullable Object tree, String name) {
        return tree instanceof Map<?, ?> properties ? properties.get(name) : null;
    }

    /** A property's elements; none where it is no list. */
    static List<?> list(@Nullable Object tree, String name) {
        return get(tree, name) instanceof List<?> elements ? elements : List.of();
    }

    /** A property that is a string; empty where it is not. */
    static String text(@Nullable Object tree, String name) {
        return get(tree, name) instanceof String text ? text : "";
    }

    /** The names of two objects' properties, in order. */
    static Set<String> names(Map<?, ?> first, Map<?, ?> second) {
        Set<String> names = new LinkedHashSet<>();
        first.keySet().forEach(name -> names.add(String.valueOf(name)));
        second.keySet().forEach(name -> names.add(String.valueOf(name)));
        return names;
    }

    /** Positions of elements by what identifies them; null unless each has a key of its own. */
    static @Nullable Map<String, Integer> positions(
            List<?> elements, Function<@Nullable Object, String> keyOf) {
        Map<String, Integer> positions = new LinkedHashMap<>();
        for (int i = 0; i < elements.size(); i++) {
            String key = keyOf.apply(elements.get(i));
            if (key.isEmpty() || positions.put(key, i) != null) {
                return null;
            }
        }
        return positions;
    }

    /** Whether two trees say the same: 1.0 is 1, and an explicit null is as good as nothing. */
    static boolean same(@Nullable Object first, @Nullable Object second) {
        if (first instanceof BigDecimal a && second instanceof BigDecimal b) {
            return a.compareTo(b) == 0;
        }
        if (first instanceof Map<?, ?> a && second instanceof Map<?, ?> b) {
            return names(a, b).stream().allMatch(name -> same(a.get(name), b.get(name)));
        }
        if (first instanceof List<?> a && second instanceof List<?> b) {
            return a.size() == b.size() && sameElements(a, b);
        }
        return first == null ? second == null : first.equals(second);
    }

    private static boolean sameElements(List<?> first, List<?> second) {
        for (int i = 0; i < first.size(); i++) {
            if (!same(first.get(i), second.get(i))) {
                return false;
            }
        }
        return true;
    }

    /** The elements of a list that are not null. */
    static List<Object> present(List<?> elements) {
        List<Object> present = new ArrayList<>();
        for (Object element : elements) {
            if (element != null) {
                present.add(element);
            }
        }
        return present;
    }
}
