package org.bayledger.ledger;

import java.math.BigDecimal;
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

    /** Whole sets of results. */
    static Comparison.Effect between(Reviewed base, Reviewed head) {
        return new Comparison.Effect(
                verdicts(base.verdicts(), head.verdicts()), notes(base.shell(), head.shell()));
    }

    /** Verdicts and utilizations that moved. */
    static List<Comparison.VerdictChange> verdicts(List<ItemVerdict> base, List<ItemVerdict> head) {
        Map<Key, ItemVerdict> from = byKey(base);
        Map<Key, ItemVerdict> to = byKey(head);
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
            Key key, @Nullable ItemVerdict from, @Nullable ItemVerdict to) {
        BigDecimal before = from == null ? null : from.utilization();
        BigDecimal after = to == null ? null : to.utilization();
        return new Comparison.VerdictChange(
                key.item(),
                key.check(),
                from == null ? null : from.verdict(),
                to == null ? null : to.verdict(),
                before,
                after,
                before == null || after == null ? null : after.subtract(before));
    }

    private static Map<Key, ItemVerdict> byKey(List<ItemVerdict> verdicts) {
        Map<Key, ItemVerdict> byKey = new LinkedHashMap<>();
        verdicts.forEach(v -> byKey.put(new Key(v.item(), v.check()), v));
        return byKey;
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
