package org.bayledger.ledger;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.bayledger.check.Verdict;
import org.jspecify.annotations.Nullable;

/** One walk through the stages of a bay, from the first one on, by their digests. */
final class HistoryWalk {

    private final Historian.Question question;
    private final Map<CheckedItem.Key, History.Range> ranges = new LinkedHashMap<>();
    private final List<History.Range> exceeded = new ArrayList<>();
    private final List<Change> listed = new ArrayList<>();

    /** Everything that was ever checked, for the advice where what was asked for was not. */
    private final Set<CheckedItem.Key> seen = new LinkedHashSet<>();

    private Map<CheckedItem.Key, ItemDigest> before = Map.of();
    private @Nullable String resultBefore;
    private int matching;
    private @Nullable Change firstExceeded;
    private @Nullable Change lastGlassChange;

    HistoryWalk(Historian.Question question) {
        this.question = question;
    }

    /**
     * A check that changed from one stage to the next.
     *
     * @param number revision from which on it is so
     * @param key which one
     * @param before what it was; null where it was not there
     * @param after what it is; null where it is no longer there
     * @param resultBefore hash of the bay's results before
     * @param resultAfter hash of the bay's results after
     */
    record Change(
            int number,
            CheckedItem.Key key,
            @Nullable ItemDigest before,
            @Nullable ItemDigest after,
            @Nullable String resultBefore,
            @Nullable String resultAfter) {

        private boolean exceeds() {
            return comesOut(Verdict.EXCEEDED);
        }

        private boolean comesOut(Verdict verdict) {
            return after != null && verdict.name().equals(after.verdict().verdict());
        }

        private boolean changesGlass() {
            return before != null && after != null && !after.sameGlass(before);
        }

        /** What a history shows of it. */
        History.Entry entry(@Nullable Revision revision, List<History.CheckedInput> inputsChanged) {
            if (revision == null) {
                throw new IllegalStateException(
                        "Revision " + number + " is missing from the ledger");
            }
            String verdict = after == null ? null : after.verdict().verdict();
            String verdictBefore = before == null ? null : before.verdict().verdict();
            return new History.Entry(
                    revision.number(),
                    revision.hash(),
                    Instants.text(revision.recordedAt()),
                    revision.author(),
                    revision.recordedBy(),
                    revision.reason(),
                    revision.engineVersion(),
                    key.item(),
                    key.check(),
                    verdict,
                    utilization(after),
                    verdictBefore,
                    utilization(before),
                    !Objects.equals(verdict, verdictBefore),
                    inputsChanged);
        }

        private static @Nullable BigDecimal utilization(@Nullable ItemDigest item) {
            return item == null ? null : item.verdict().utilization();
        }
    }

    /** Goes on to the next stage. */
    void step(Historian.Stage stage, Map<String, List<ItemDigest>> digests) {
        Map<CheckedItem.Key, ItemDigest> after = new LinkedHashMap<>();
        if (stage.result() != null) {
            digests.getOrDefault(stage.result(), List.of())
                    .forEach(item -> after.put(item.key(), item));
        }
        Set<CheckedItem.Key> keys = new LinkedHashSet<>(after.keySet());
        keys.addAll(before.keySet());
        seen.addAll(keys);
        for (CheckedItem.Key key : keys) {
            ItemDigest was = before.get(key);
            ItemDigest is = after.get(key);
            boolean same = is == null ? was == null : is.same(was);
            if (!same && question.isAbout(key)) {
                note(new Change(stage.number(), key, was, is, resultBefore, stage.result()));
            }
        }
        before = after;
        resultBefore = stage.result();
    }

    private void note(Change change) {
        History.Range open = ranges.get(change.key());
        if (change.exceeds() && open == null) {
            ranges.put(
                    change.key(),
                    new History.Range(
                            change.key().item(), change.key().check(), change.number(), null));
        } else if (!change.exceeds() && open != null) {
            ranges.remove(change.key());
            exceeded.add(
                    new History.Range(open.item(), open.check(), open.from(), change.number() - 1));
        }
        if (firstExceeded == null && change.exceeds()) {
            firstExceeded = change;
        }
        if (change.changesGlass()) {
            lastGlassChange = change;
        }
        if (question.verdict() == null || change.comesOut(question.verdict())) {
            // one more than asked for tells that the list goes on
            if (matching >= question.skipped() && listed.size() <= question.limit()) {
                listed.add(change);
            }
            matching++;
        }
    }

    /** Where a check first exceeded a limit. */
    @Nullable Change firstExceeded() {
        return firstExceeded;
    }

    /** Where the glass last became another one. */
    @Nullable Change lastGlassChange() {
        return lastGlassChange;
    }

    /** The changes of the page that was asked for, and one more where the list goes on. */
    List<Change> listed() {
        return listed;
    }

    /** Every change that the answer shows, in the order of the revisions as far as may be. */
    List<Change> shown() {
        return Stream.concat(listed.stream(), Stream.of(firstExceeded, lastGlassChange))
                .filter(Objects::nonNull)
                .distinct()
                .toList();
    }

    /** From where to where a check exceeded a limit; those that end nowhere last. */
    List<History.Range> exceeded() {
        return Stream.concat(exceeded.stream(), ranges.values().stream()).toList();
    }

    /** Refuses where what is asked for never was. */
    void requireWhatIsAskedFor() {
        if (seen.stream().anyMatch(question::isAbout)) {
            return;
        }
        String item = question.item();
        Predicate<CheckedItem.Key> ofItem = key -> item == null || key.item().equals(item);
        if (item != null && seen.stream().noneMatch(ofItem)) {
            throw LedgerProblem.unknownItem(
                    question.bay(),
                    item,
                    seen.stream().map(CheckedItem.Key::item).distinct().toList());
        }
        throw LedgerProblem.unknownCheck(
                item == null ? question.bay() : item,
                String.valueOf(question.check()),
                seen.stream().filter(ofItem).map(CheckedItem.Key::check).distinct().toList());
    }
}
