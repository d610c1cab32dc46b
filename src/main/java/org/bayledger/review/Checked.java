package org.bayledger.review;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.bayledger.check.FaultsException;
import org.bayledger.check.Finding;
import org.bayledger.check.Outcome;
import org.bayledger.check.Verdict;
import org.jspecify.annotations.Nullable;

/**
 * An item with the findings that its check made, whose pointers lead into the item's own inputs.
 *
 * @param item the item
 * @param findings findings of the check
 */
record Checked(ReviewItem item, List<Finding> findings) {

    /** A check's request, its answer and its outcome. */
    record Ran(Object inputs, Object result, Outcome outcome) {}

    /**
     * Runs a check on an item.
     *
     * @param pointer pointer into the document to what the item rests on
     * @param seen the wind on it, or null where it sees none
     * @param own what the review itself has to say, which leaves the verdict as it is
     * @param check makes the request and runs it; a request that the check refuses leaves the item
     *     undetermined, with what the check said
     */
    static Checked run(
            String id,
            String name,
            String pointer,
            WallWind.@Nullable Seen seen,
            List<Finding> own,
            Supplier<Ran> check) {
        List<Finding> said = new ArrayList<>(own);
        ReviewItem.Wind wind = seen == null ? null : seen.wind();
        if (seen != null) {
            said.addAll(seen.findings());
        }
        Ran ran;
        try {
            ran = check.get();
        } catch (FaultsException refused) {
            refused.faults()
                    .forEach(
                            fault ->
                                    said.add(
                                            Finding.action(
                                                    "NOT_COVERED_BY_THE_CHECK",
                                                    pointer,
                                                    fault.pointer() + " " + fault.detail())));
            return new Checked(
                    new ReviewItem(id, name, Verdict.UNDETERMINED, null, wind, null, null, said),
                    List.of());
        }
        return new Checked(
                new ReviewItem(
                        id,
                        name,
                        ran.outcome().verdict(),
                        ran.outcome().utilization(),
                        wind,
                        ran.inputs(),
                        ran.result(),
                        said),
                ran.outcome().findings());
    }

    /** An item for which the document left out what its check needs. */
    static Checked missing(String id, String name, String code, String pointer, String text) {
        return new Checked(
                new ReviewItem(
                        id,
                        name,
                        Verdict.UNDETERMINED,
                        null,
                        null,
                        null,
                        null,
                        List.of(Finding.action(code, pointer, text))),
                List.of());
    }

    /** The same with a verdict at least as bad. */
    Checked atLeast(Verdict verdict) {
        return new Checked(
                new ReviewItem(
                        item.id(),
                        item.check(),
                        item.verdict().and(verdict),
                        item.utilization(),
                        item.wind(),
                        item.inputs(),
                        item.result(),
                        item.findings()),
                findings);
    }

    /** Whether this one governs over another of the same check. */
    boolean governsOver(Checked other) {
        return item.governsOver(other.item);
    }

    /** The governing one of several. */
    static Checked governing(List<Checked> several) {
        Checked governing = several.get(0);
        for (Checked checked : several) {
            if (checked.governsOver(governing)) {
                governing = checked;
            }
        }
        return governing;
    }
}
