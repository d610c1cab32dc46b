package org.bayledger.ledger;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.bayledger.check.StrictJson;
import org.bayledger.check.Verdict;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/**
 * Follows a bay through the revisions. It reads where the bay's results became others, by an index,
 * and the digest of each of these results; the results themselves only of the changes that the
 * answer shows. Revisions that left the bay as it was cost nothing.
 */
@Component
class Historian {

    /** Stages whose digests are in memory at once. */
    private static final int AT_ONCE = 200;

    /** Results that are in memory at once. */
    private static final int RESULTS_AT_ONCE = 10;

    private final LedgerStore store;
    private final AuditStore audit;
    private final VerdictStore verdicts;

    Historian(LedgerStore store, AuditStore audit, VerdictStore verdicts) {
        this.store = store;
        this.audit = audit;
        this.verdicts = verdicts;
    }

    /**
     * What is asked for.
     *
     * @param bay the bay
     * @param item the item; null for all of the bay
     * @param check the check; null for all
     * @param verdict what the listed entries have to have concluded; null for anything
     * @param limit how many entries to list at most
     * @param skipped how many were listed before
     */
    record Question(
            String bay,
            @Nullable String item,
            @Nullable String check,
            @Nullable Verdict verdict,
            int limit,
            int skipped) {

        boolean isAbout(CheckedItem.Key key) {
            return (item == null || item.equals(key.item()))
                    && (check == null || check.equals(key.check()));
        }
    }

    /** From a revision on a bay has these results, or is not there. */
    record Stage(int number, @Nullable String result) {}

    History history(Project project, Question question) {
        List<AuditStore.Standing> standings = audit.standings(project, question.bay());
        if (standings.isEmpty()) {
            throw LedgerProblem.unknownBay(question.bay(), newestBays(project));
        }
        HistoryWalk walk = new HistoryWalk(question);
        List<Stage> stages = stages(standings);
        for (int from = 0; from < stages.size(); from += AT_ONCE) {
            List<Stage> some = stages.subList(from, Math.min(from + AT_ONCE, stages.size()));
            Map<String, List<ItemDigest>> digests =
                    verdicts.digests(
                            project.organisation(),
                            some.stream().map(Stage::result).filter(Objects::nonNull).toList());
            for (Stage stage : some) {
                walk.step(stage, digests);
            }
        }
        walk.requireWhatIsAskedFor();
        return history(project, question, walk);
    }

    private History history(Project project, Question question, HistoryWalk walk) {
        List<HistoryWalk.Change> shown = walk.shown();
        Map<Integer, Revision> revisions =
                audit.numbered(
                        project,
                        shown.stream().map(HistoryWalk.Change::number).collect(Collectors.toSet()));
        Map<HistoryWalk.Change, List<History.CheckedInput>> inputs = inputsChanged(project, shown);
        Function<HistoryWalk.Change, History.Entry> entry =
                change ->
                        change.entry(
                                revisions.get(change.number()),
                                inputs.getOrDefault(change, List.of()));
        Page<History.Entry> page =
                Page.of(
                        walk.listed().stream().map(entry).toList(),
                        question.limit(),
                        last -> Integer.toString(question.skipped() + question.limit()));
        return new History(
                question.bay(),
                question.item(),
                walk.firstExceeded() == null ? null : entry.apply(walk.firstExceeded()),
                walk.lastGlassChange() == null ? null : entry.apply(walk.lastGlassChange()),
                walk.exceeded(),
                page.items(),
                page.nextCursor());
    }

    /** What changed in the inputs, from the results before and after, a few of them at a time. */
    private Map<HistoryWalk.Change, List<History.CheckedInput>> inputsChanged(
            Project project, List<HistoryWalk.Change> shown) {
        Map<HistoryWalk.Change, List<History.CheckedInput>> inputs = new HashMap<>();
        List<HistoryWalk.Change> some = new ArrayList<>();
        Set<String> wanted = new LinkedHashSet<>();
        for (HistoryWalk.Change change : shown) {
            if (wanted.size() >= RESULTS_AT_ONCE) {
                inputs.putAll(inputsChanged(project, some, wanted));
                some.clear();
                wanted.clear();
            }
            if (change.resultBefore() != null && change.resultAfter() != null) {
                some.add(change);
                wanted.add(change.resultBefore());
                wanted.add(change.resultAfter());
            }
        }
        inputs.putAll(inputsChanged(project, some, wanted));
        return inputs;
    }

    private Map<HistoryWalk.Change, List<History.CheckedInput>> inputsChanged(
            Project project, List<HistoryWalk.Change> some, Set<String> wanted) {
        Map<String, byte[]> results = store.contents(project.organisation(), wanted);
        Map<String, Map<CheckedItem.Key, CheckedItem>> items = new HashMap<>();
        for (String hash : wanted) {
            items.put(hash, CheckedItem.of(StrictJson.read(Wholes.content(results, hash))));
        }
        Map<HistoryWalk.Change, List<History.CheckedInput>> inputs = new HashMap<>();
        for (HistoryWalk.Change change : some) {
            CheckedItem was = items(items, change.resultBefore()).get(change.key());
            CheckedItem is = items(items, change.resultAfter()).get(change.key());
            if (was != null && is != null) {
                inputs.put(change, is.inputsChangedSince(was));
            }
        }
        return inputs;
    }

    private static Map<CheckedItem.Key, CheckedItem> items(
            Map<String, Map<CheckedItem.Key, CheckedItem>> items, @Nullable String result) {
        return result == null ? Map.of() : items.getOrDefault(result, Map.of());
    }

    /** Where the bay's results became others, or the bay went, or came back. */
    private static List<Stage> stages(List<AuditStore.Standing> standings) {
        TreeMap<Integer, Stage> stages = new TreeMap<>();
        for (AuditStore.Standing standing : standings) {
            if (standing.replaced() != null) {
                stages.put(standing.replaced(), new Stage(standing.replaced(), null));
            }
        }
        // a bay that moved to another place in the same revision did not go
        for (AuditStore.Standing standing : standings) {
            stages.put(standing.number(), new Stage(standing.number(), standing.result()));
        }
        List<Stage> different = new ArrayList<>();
        String before = null;
        for (Stage stage : stages.values()) {
            if (!Objects.equals(stage.result(), before)) {
                different.add(stage);
            }
            before = stage.result();
        }
        return different;
    }

    private List<String> newestBays(Project project) {
        return store.bays(project, store.head(project).size()).stream()
                .map(Manifest.Bay::id)
                .toList();
    }
}
