package org.bayledger.ledger;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.bayledger.check.Pointer;
import org.jspecify.annotations.Nullable;

/**
 * One check of one item, with all that the results hold of it.
 *
 * @param tree its part of the results
 */
record CheckedItem(Map<?, ?> tree) {

    /** What a bay's results are told apart by. */
    record Key(String item, String check) {}

    /** The checks in a bay's results, in their order. */
    static Map<Key, CheckedItem> of(@Nullable Object bay) {
        Map<Key, CheckedItem> items = new LinkedHashMap<>();
        for (Object item : Trees.present(Trees.list(bay, "items"))) {
            if (item instanceof Map<?, ?> tree) {
                items.put(
                        new Key(Trees.text(item, "id"), Trees.text(item, "check")),
                        new CheckedItem(tree));
            }
        }
        return items;
    }

    /** What changed in its inputs since another revision. */
    List<History.CheckedInput> inputsChangedSince(CheckedItem before) {
        List<History.CheckedInput> changes = new ArrayList<>();
        compare("", Trees.get(before.tree, "inputs"), Trees.get(tree, "inputs"), changes);
        return changes;
    }

    private static void compare(
            String pointer,
            @Nullable Object from,
            @Nullable Object to,
            List<History.CheckedInput> changes) {
        if (Trees.same(from, to)) {
            return;
        }
        if (from instanceof Map<?, ?> a && to instanceof Map<?, ?> b && !isQuantity(b)) {
            for (String name : Trees.names(a, b)) {
                compare(Pointer.child(pointer, name), a.get(name), b.get(name), changes);
            }
        } else if (from instanceof List<?> a && to instanceof List<?> b && a.size() == b.size()) {
            for (int i = 0; i < a.size(); i++) {
                compare(Pointer.child(pointer, i), a.get(i), b.get(i), changes);
            }
        } else {
            changes.add(new History.CheckedInput(pointer, from, to));
        }
    }

    /** A quantity is one value, though it is written as two properties. */
    private static boolean isQuantity(Map<?, ?> tree) {
        return tree.keySet().equals(Set.of("value", "unit"));
    }
}
