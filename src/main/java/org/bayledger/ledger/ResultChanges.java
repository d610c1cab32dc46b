package org.bayledger.ledger;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiPredicate;
import org.jspecify.annotations.Nullable;

/** Finds what moved between two sets of results. */
final class ResultChanges {

    private ResultChanges() {}

    /** One check of one item. */
    private record Key(String item, String check) {}

    static Comparison.Effect between(Map<?, ?> base, Map<?, ?> head) {
        return new Comparison.Effect(
                verdicts(Trees.list(base, "bays"), Trees.list(head, "bays")), notes(base, head));
    }

    /** Verdicts and utilizations that moved between two lists of bays' results. */
    static List<Comparison.VerdictChange> verdicts(List<?> base, List<?> head) {
        Map<Key, Object> from = items(base);
        Map<Key, Object> to = items(head);
        Set<Key> keys = new LinkedHashSet<>(from.keySet());
        keys.addAll(to.keySet());
        List<Comparison.VerdictChange> changes = new ArrayList<>();
        for (Key key : keys) {
            Comparison.VerdictChange change = change(key, from.get(key), to.get(key));
            if (!Trees.same(change.from(), change.to())
                    || !Trees.same(change.utilizationFrom(), change.utilizationTo())) {
                changes.add(change);
            }
        }
        return changes;
    }

    private static Comparison.VerdictChange change(
            Key key, @Nullable Object from, @Nullable Object to) {
        return new Comparison.VerdictChange(
                key.item(),
                key.check(),
                from == null ? null : Trees.text(from, "verdict"),
                to == null ? null : Trees.text(to, "verdict"),
                Trees.get(from, "utilization"),
                Trees.get(to, "utilization"));
    }

    private static Map<Key, Object> items(List<?> bays) {
        Map<Key, Object> items = new LinkedHashMap<>();
        for (Object bay : bays) {
            for (Object item : Trees.present(Trees.list(bay, "items"))) {
                items.put(new Key(Trees.text(item, "id"), Trees.text(item, "check")), item);
            }
        }
        return items;
    }

    /**
     * Notes that appeared, went or changed. Of the notes that differ, those on the same items
     * belong together first, then those with the same words.
     */
    static Comparison.NoteChanges notes(Map<?, ?> base, Map<?, ?> head) {
        List<Object> removed = Trees.present(Trees.list(base, "notes"));
        List<Object> added = Trees.present(Trees.list(head, "notes"));
        pairs(removed, added, Trees::same);
        List<Comparison.NoteChange> changed = new ArrayList<>();
        changed.addAll(pairs(removed, added, (from, to) -> sameIn("items", from, to)));
        changed.addAll(pairs(removed, added, (from, to) -> sameIn("text", from, to)));
        return new Comparison.NoteChanges(added, removed, changed);
    }

    private static boolean sameIn(String property, Object from, Object to) {
        return Trees.same(Trees.get(from, property), Trees.get(to, property));
    }

    /** Takes matching pairs out of both lists. */
    private static List<Comparison.NoteChange> pairs(
            List<Object> removed, List<Object> added, BiPredicate<Object, Object> match) {
        List<Comparison.NoteChange> pairs = new ArrayList<>();
        for (Object from : List.copyOf(removed)) {
            for (Object to : added) {
                if (match.test(from, to)) {
                    pairs.add(new Comparison.NoteChange(from, to));
                    removed.remove(from);
                    added.remove(to);
                    break;
                }
            }
        }
        return pairs;
    }
}
