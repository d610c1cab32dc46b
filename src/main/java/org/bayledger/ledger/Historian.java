package org.bayledger.ledger;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.bayledger.check.StrictJson;
import org.bayledger.check.Verdict;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/**
 * Follows a bay through the revisions. It reads where the bay's results became others, by an index,
 * and each of these results once; revisions that left the bay as it was cost nothing.
 */
@Component
class Historian {

    /** Results that are in memory at once. */
    private static final int AT_ONCE = 10;

    private final LedgerStore store;
    private final AuditStore audit;

    Historian(LedgerStore store, AuditStore audit) {
        this.store = store;
        this.audit = audit;
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
    private record Stage(int number, @Nullable String result) {}

    /** A check that changed from one stage to the next. */
    private record Change(
            int number,
            CheckedItem.Key key,
            @Nullable CheckedItem before,
            @Nullable CheckedItem after) {

        boolean exceeds() {
            return after != null && Verdict.EXCEEDED.name().equals(after.verdict());
        }

        boolean changesGlass() {
            return before != null && after != null && !after.sameGlass(before);
        }
    }

    History history(Project project, Question question) {
        List<AuditStore.Standing> standings = audit.standings(project, question.bay());
        if (standings.isEmpty()) {
            throw LedgerProblem.unknownBay(question.bay(), newestBays(project));
        }
        Walk walk = new Walk(question);
        List<Stage> stages = stages(standings);
        for (int from = 0; from < stages.size(); from += AT_ONCE) {
            List<Stage> some = stages.subList(from, Math.min(from + AT_ONCE, stages.size()));
            Map<String, byte[]> results =
                    store.contents(
                            project.organisation(),
                            some.stream().map(Stage::result).filter(Objects::nonNull).toList());
            for (Stage stage : some) {
                walk.step(stage.number(), items(stage.result(), results));
            }
        }
        return walk.history(project, audit);
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

    private static Map<CheckedItem.Key, CheckedItem> items(
            @Nullable String hash, Map<String, byte[]> results) {
        return hash == null
                ? Map.of()
                : CheckedItem.of(StrictJson.read(Wholes.content(results, hash)));
    }

    private List<String> newestBays(Project project) {
        return store.bays(project, store.head(project).size()).stream()
                .map(Manifest.Bay::id)
                .toList();
    }

    /** One walk through the stages. */
    private static final class Walk {

        private final Question question;
        private final Map<CheckedItem.Key, History.Range> ranges = new LinkedHashMap<>();
        private final List<History.Range> exceeded = new ArrayList<>();
        private final List<Change> listed = new ArrayList<>();

        /** Everything that was ever checked, for the advice where what was asked for was not. */
        private final Set<CheckedItem.Key> seen = new LinkedHashSet<>();

        private Map<CheckedItem.Key, CheckedItem> before = Map.of();
        private int matching;
        private @Nullable Change firstExceeded;
        private @Nullable Change lastGlassChange;

        Walk(Question question) {
            this.question = question;
        }

        void step(int number, Map<CheckedItem.Key, CheckedItem> after) {
            Set<CheckedItem.Key> keys = new LinkedHashSet<>(after.keySet());
            keys.addAll(before.keySet());
            seen.addAll(keys);
            for (CheckedItem.Key key : keys) {
                CheckedItem was = before.get(key);
                CheckedItem is = after.get(key);
                boolean same = is == null ? was == null : is.same(was);
                if (!same && question.isAbout(key)) {
                    note(new Change(number, key, was, is));
                }
            }
            before = after;
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
                        new History.Range(
                                open.item(), open.check(), open.from(), change.number() - 1));
            }
            if (firstExceeded == null && change.exceeds()) {
                firstExceeded = change;
            }
            if (change.changesGlass()) {
                lastGlassChange = change;
            }
            if (question.verdict() == null
                    || (change.after() != null
                            && question.verdict().name().equals(change.after().verdict()))) {
                // one more than asked for tells that the list goes on
                if (matching >= question.skipped() && listed.size() <= question.limit()) {
                    listed.add(change);
                }
                matching++;
            }
        }

        History history(Project project, AuditStore audit) {
            if (seen.stream().noneMatch(question::isAbout)) {
                throw unknown();
            }
            Map<Integer, Revision> revisions =
                    audit.numbered(
                            project,
                            Stream.concat(
                                            listed.stream(),
                                            Stream.of(firstExceeded, lastGlassChange)
                                                    .filter(Objects::nonNull))
                                    .map(Change::number)
                                    .collect(Collectors.toSet()));
            exceeded.addAll(ranges.values());
            Page<History.Entry> page =
                    Page.of(
                            listed.stream().map(change -> entry(change, revisions)).toList(),
                            question.limit(),
                            last -> Integer.toString(question.skipped() + question.limit()));
            return new History(
                    question.bay(),
                    question.item(),
                    firstExceeded == null ? null : entry(firstExceeded, revisions),
                    lastGlassChange == null ? null : entry(lastGlassChange, revisions),
                    exceeded,
                    page.items(),
                    page.nextCursor());
        }

        private RuntimeException unknown() {
            String item = question.item();
            Predicate<CheckedItem.Key> ofItem = key -> item == null || key.item().equals(item);
            if (item != null && seen.stream().noneMatch(ofItem)) {
                return LedgerProblem.unknownItem(
                        question.bay(),
                        item,
                        seen.stream().map(CheckedItem.Key::item).distinct().toList());
            }
            return LedgerProblem.unknownCheck(
                    item == null ? question.bay() : item,
                    String.valueOf(question.check()),
                    seen.stream().filter(ofItem).map(CheckedItem.Key::check).distinct().toList());
        }

        private static History.Entry entry(Change change, Map<Integer, Revision> revisions) {
            Revision revision = revisions.get(change.number());
            if (revision == null) {
                throw new IllegalStateException(
                        "Revision " + change.number() + " is missing from the ledger");
            }
            CheckedItem was = change.before();
            CheckedItem is = change.after();
            String verdict = is == null ? null : is.verdict();
            String verdictBefore = was == null ? null : was.verdict();
            return new History.Entry(
                    revision.number(),
                    revision.hash(),
                    Instants.text(revision.recordedAt()),
                    revision.author(),
                    revision.recordedBy(),
                    revision.reason(),
                    revision.engineVersion(),
                    change.key().item(),
                    change.key().check(),
                    verdict,
                    is == null ? null : is.utilization(),
                    verdictBefore,
                    was == null ? null : was.utilization(),
                    !Objects.equals(verdict, verdictBefore),
                    is == null || was == null ? List.of() : is.inputsChangedSince(was));
        }
    }
}
