package org.bayledger.ledger;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.bayledger.check.Pointer;
import org.jspecify.annotations.Nullable;

/**
 * Finds what changed between two documents, item by item: bays, glass types, sections, elevations
 * and anchors are matched by their identifiers, lites by their column and row, so that inserting
 * one does not make all that follow it look changed.
 */
final class InputChanges {

    /** Item of what belongs to the document as a whole. */
    static final String DOCUMENT = "document";

    /** What an identified element of a list is called, by the list's name. */
    private static final Map<String, String> ELEMENTS =
            Map.of(
                    "glassTypes", "glassType/",
                    "sections", "section/",
                    "elevations", "elevation/",
                    "anchors", "anchor/",
                    "lites", "lite/",
                    "stackJoints", "stackJoint/",
                    "bays", "");

    private final List<Comparison.InputChange> changes = new ArrayList<>();

    private InputChanges() {}

    /** The changes from one document's tree to another's. */
    static List<Comparison.InputChange> between(Map<?, ?> base, Map<?, ?> head) {
        InputChanges found = new InputChanges();
        found.objects(DOCUMENT, "", "", base, head);
        return found.changes;
    }

    private void objects(
            String item, String basePointer, String headPointer, Map<?, ?> base, Map<?, ?> head) {
        for (String name : Trees.names(base, head)) {
            compare(
                    name,
                    nested(item, name, base.get(name), head.get(name)),
                    Pointer.child(basePointer, name),
                    Pointer.child(headPointer, name),
                    base.get(name),
                    head.get(name));
        }
    }

    /** Objects of the document and of a bay are items of their own; deeper ones are not. */
    private static String nested(
            String item, String name, @Nullable Object base, @Nullable Object head) {
        boolean object = base instanceof Map<?, ?> || head instanceof Map<?, ?>;
        if (DOCUMENT.equals(item)) {
            return object ? name : item;
        }
        boolean ownItem = object && !item.contains("/") && !"site".equals(item);
        return ownItem ? item + "/" + name : item;
    }

    private void compare(
            String name,
            String item,
            String basePointer,
            String headPointer,
            @Nullable Object base,
            @Nullable Object head) {
        if (Trees.same(base, head)) {
            return;
        }
        if (base instanceof Map<?, ?> from && head instanceof Map<?, ?> to) {
            objects(item, basePointer, headPointer, from, to);
        } else if (isList(base) && isList(head)) {
            lists(name, item, basePointer, headPointer, elements(base), elements(head));
        } else {
            add(item, basePointer, headPointer, base, head);
        }
    }

    /** A list, or nothing where a list may stand: an absent list is an empty one. */
    private static boolean isList(@Nullable Object value) {
        return value == null || value instanceof List<?>;
    }

    private static List<?> elements(@Nullable Object value) {
        return value instanceof List<?> elements ? elements : List.of();
    }

    private static boolean objects(List<?> elements) {
        return elements.stream().allMatch(Map.class::isInstance);
    }

    private void lists(
            String name,
            String item,
            String basePointer,
            String headPointer,
            List<?> base,
            List<?> head) {
        Keys keys = Keys.of(name, base, head);
        if (keys == null) {
            if (ELEMENTS.containsKey(name) || (base.size() == head.size() && objects(base))) {
                byPosition(name, item, basePointer, headPointer, base, head);
            } else {
                add(item, basePointer, headPointer, base, head);
            }
            return;
        }
        for (String key : keys.all()) {
            Integer from = keys.base().get(key);
            Integer to = keys.head().get(key);
            compare(
                    "",
                    element(item, name, key),
                    Pointer.child(basePointer, from == null ? -1 : from),
                    Pointer.child(headPointer, to == null ? -1 : to),
                    from == null ? null : base.get(from),
                    to == null ? null : head.get(to));
        }
        if (keys.reordered()) {
            add(
                    item,
                    basePointer,
                    headPointer,
                    List.copyOf(keys.base().keySet()),
                    List.copyOf(keys.head().keySet()));
        }
    }

    private void byPosition(
            String name,
            String item,
            String basePointer,
            String headPointer,
            List<?> base,
            List<?> head) {
        for (int i = 0; i < Math.max(base.size(), head.size()); i++) {
            compare(
                    "",
                    ELEMENTS.containsKey(name)
                            ? element(item, name, Integer.toString(i + 1))
                            : item,
                    Pointer.child(basePointer, i),
                    Pointer.child(headPointer, i),
                    i < base.size() ? base.get(i) : null,
                    i < head.size() ? head.get(i) : null);
        }
    }

    private static String element(String item, String list, String key) {
        String own = ELEMENTS.getOrDefault(list, list + "/") + key;
        return DOCUMENT.equals(item) ? own : item + "/" + own;
    }

    private void add(
            String item,
            String basePointer,
            String headPointer,
            @Nullable Object base,
            @Nullable Object head) {
        changes.add(
                new Comparison.InputChange(
                        item, head == null ? basePointer : headPointer, base, head));
    }

    /** Where the elements of two lists stand, by what identifies them. */
    private record Keys(Map<String, Integer> base, Map<String, Integer> head) {

        /** Null where the elements have nothing that identifies them. */
        static @Nullable Keys of(String list, List<?> base, List<?> head) {
            Map<String, Integer> from = positions(list, base);
            Map<String, Integer> to = positions(list, head);
            return from == null || to == null ? null : new Keys(from, to);
        }

        private static @Nullable Map<String, Integer> positions(String list, List<?> elements) {
            return "lites".equals(list)
                    ? Trees.positions(
                            elements,
                            lite -> Trees.get(lite, "column") + "-" + Trees.get(lite, "row"))
                    : Trees.positions(elements, element -> Trees.text(element, "id"));
        }

        Set<String> all() {
            Set<String> all = new LinkedHashSet<>(base.keySet());
            all.addAll(head.keySet());
            return all;
        }

        /** Whether what both lists have stands in another order. */
        boolean reordered() {
            List<String> from = new ArrayList<>(base.keySet());
            List<String> to = new ArrayList<>(head.keySet());
            from.retainAll(head.keySet());
            to.retainAll(base.keySet());
            return !from.equals(to);
        }
    }
}
