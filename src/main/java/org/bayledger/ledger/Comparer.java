package org.bayledger.ledger;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.bayledger.check.FaultsException;
import org.bayledger.check.StrictJson;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Compares two recorded revisions. */
@Component
class Comparer {

    private final LedgerStore store;
    private final Wholes wholes;
    private final Engine engine;

    Comparer(LedgerStore store, Wholes wholes, Engine engine) {
        this.store = store;
        this.wholes = wholes;
        this.engine = engine;
    }

    Comparison compare(Project project, Revision base, Revision head, boolean recompute) {
        Side from = read(project, base);
        Side to = read(project, head);
        Comparison.Effect recorded = ResultChanges.between(from.result(), to.result());
        return new Comparison(
                base.number(),
                head.number(),
                InputChanges.between(from.document(), to.document()),
                recorded.verdicts(),
                recorded.notes(),
                !base.engineVersion().equals(head.engineVersion()),
                recompute ? recomputed(from, to) : null);
    }

    /** A revision's document and results, read back. */
    private record Side(int number, Map<?, ?> document, Map<?, ?> result) {}

    private Side read(Project project, Revision revision) {
        List<Manifest.Bay> bays = store.bays(project, revision.number());
        return new Side(
                revision.number(),
                tree(wholes.document(project, revision, bays)),
                tree(wholes.result(project, revision, bays)));
    }

    private static Map<?, ?> tree(byte[] canonical) {
        if (StrictJson.read(canonical) instanceof Map<?, ?> tree) {
            return tree;
        }
        throw new IllegalStateException("What was recorded is not a JSON object");
    }

    private Comparison.Recomputed recomputed(Side base, Side head) {
        List<Comparison.Refusal> refusals = new ArrayList<>();
        Map<?, ?> baseToday = today(base, refusals);
        Map<?, ?> headToday = today(head, refusals);
        return new Comparison.Recomputed(
                engine.version(),
                baseToday == null ? null : ResultChanges.between(base.result(), baseToday),
                baseToday == null || headToday == null
                        ? null
                        : ResultChanges.between(baseToday, headToday),
                refusals);
    }

    private @Nullable Map<?, ?> today(Side side, List<Comparison.Refusal> refusals) {
        try {
            return engine.run(side.document());
        } catch (FaultsException refused) {
            refused.faults().stream()
                    .map(
                            fault ->
                                    new Comparison.Refusal(
                                            side.number(), fault.pointer(), fault.detail()))
                    .forEach(refusals::add);
            return null;
        }
    }
}
