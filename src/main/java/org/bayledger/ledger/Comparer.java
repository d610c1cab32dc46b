package org.bayledger.ledger;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.bayledger.check.FaultsException;
import org.bayledger.check.StrictJson;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Compares two recorded revisions. Bays that both share are the same and are not read. */
@Component
public class Comparer {

    private final Ledger ledger;
    private final LedgerStore store;
    private final VerdictStore verdicts;
    private final Wholes wholes;
    private final Engine engine;

    Comparer(
            Ledger ledger, LedgerStore store, VerdictStore verdicts, Wholes wholes, Engine engine) {
        this.ledger = ledger;
        this.store = store;
        this.verdicts = verdicts;
        this.wholes = wholes;
        this.engine = engine;
    }

    /**
     * Compares two revisions of a project.
     *
     * @param projectId as it stands in the address
     * @param base number of the revision compared from
     * @param head number of the revision compared to
     * @param recompute whether today's engine runs on both documents
     */
    public Comparison compare(String projectId, int base, int head, boolean recompute) {
        Project project = ledger.project(Caller.current(), projectId);
        Side from = side(project, ledger.revision(project, base));
        Side to = side(project, ledger.revision(project, head));
        return new Comparison(
                base,
                head,
                InputChanges.between(document(from, to), document(to, from)),
                ResultChanges.verdicts(
                        verdicts(from, shared(from, to, Manifest.Bay::result)),
                        verdicts(to, shared(from, to, Manifest.Bay::result))),
                ResultChanges.notes(
                        content(project, from.revision().resultShell()),
                        content(project, to.revision().resultShell())),
                !from.revision().engineVersion().equals(to.revision().engineVersion()),
                recompute ? recomputed(from, to) : null);
    }

    /** A revision and the hashes of its bays. */
    private record Side(Project project, Revision revision, List<Manifest.Bay> bays) {}

    private Side side(Project project, Revision revision) {
        return new Side(project, revision, store.bays(project, revision.number()));
    }

    /** Identifiers of the bays that are the same in both. */
    private static Set<String> shared(Side base, Side head, Function<Manifest.Bay, String> hashOf) {
        Map<String, String> from =
                base.bays().stream().collect(Collectors.toMap(Manifest.Bay::id, hashOf));
        return head.bays().stream()
                .filter(bay -> hashOf.apply(bay).equals(from.get(bay.id())))
                .map(Manifest.Bay::id)
                .collect(Collectors.toSet());
    }

    /** A side's document; of a bay that the other side has just so, the identifier alone. */
    private Map<?, ?> document(Side side, Side other) {
        Set<String> shared = shared(side, other, Manifest.Bay::input);
        Map<String, byte[]> inputs =
                store.contents(
                        side.project().organisation(),
                        side.bays().stream()
                                .filter(bay -> !shared.contains(bay.id()))
                                .map(Manifest.Bay::input)
                                .toList());
        List<Object> bays = new ArrayList<>();
        for (Manifest.Bay bay : side.bays()) {
            bays.add(
                    shared.contains(bay.id())
                            ? Map.of("id", bay.id())
                            : tree(Wholes.content(inputs, bay.input())));
        }
        Map<Object, @Nullable Object> document =
                new LinkedHashMap<>(content(side.project(), side.revision().documentShell()));
        document.put("bays", bays);
        return document;
    }

    private Map<?, ?> content(Project project, String hash) {
        return tree(Wholes.content(store.contents(project.organisation(), List.of(hash)), hash));
    }

    /** A side's recorded verdicts, those of some bays left out. */
    private List<ItemVerdict> verdicts(Side side, Set<String> without) {
        List<String> results =
                side.bays().stream()
                        .filter(bay -> !without.contains(bay.id()))
                        .map(Manifest.Bay::result)
                        .toList();
        Map<String, List<ItemVerdict>> found =
                verdicts.verdicts(side.project().organisation(), results);
        return results.stream()
                .flatMap(hash -> found.getOrDefault(hash, List.of()).stream())
                .toList();
    }

    private static Map<?, ?> tree(byte[] canonical) {
        if (StrictJson.read(canonical) instanceof Map<?, ?> tree) {
            return tree;
        }
        throw new IllegalStateException("What was recorded is not a JSON object");
    }

    private Comparison.Recomputed recomputed(Side base, Side head) {
        List<Comparison.Refusal> refusals = new ArrayList<>();
        Reviewed baseToday = today(base, refusals);
        Reviewed headToday = today(head, refusals);
        return new Comparison.Recomputed(
                engine.version(),
                baseToday == null ? null : engineEffect(base, baseToday),
                baseToday == null || headToday == null
                        ? null
                        : ResultChanges.between(baseToday, headToday),
                refusals);
    }

    private Comparison.Effect engineEffect(Side base, Reviewed today) {
        return new Comparison.Effect(
                ResultChanges.verdicts(verdicts(base, Set.of()), today.verdicts()),
                ResultChanges.notes(
                        content(base.project(), base.revision().resultShell()), today.shell()));
    }

    private @Nullable Reviewed today(Side side, List<Comparison.Refusal> refusals) {
        try {
            return engine.run(tree(wholes.document(side.project(), side.revision(), side.bays())));
        } catch (FaultsException refused) {
            refused.faults().stream()
                    .map(
                            fault ->
                                    new Comparison.Refusal(
                                            side.revision().number(),
                                            fault.pointer(),
                                            fault.detail()))
                    .forEach(refusals::add);
            return null;
        }
    }
}
