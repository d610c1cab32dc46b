package org.bayledger.blocks;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.check.Finding;
import org.bayledger.check.Verdict;
import org.jspecify.annotations.Nullable;

/** Gathers what is found of the blocks on site and what it does to the verdict. */
final class AsFoundVerdict {

    private final List<Finding> findings = new ArrayList<>();
    private Verdict verdict = Verdict.SATISFIED;
    private @Nullable Double utilization;

    /** Something to read that leaves the verdict as it is. */
    void says(Finding finding) {
        findings.add(finding);
    }

    /** Something that a person has to judge. */
    void open(String code, String pointer, String text) {
        findings.add(Finding.action(code, pointer, text));
        verdict = verdict.and(Verdict.UNDETERMINED);
    }

    /** Something that is not known and that another finding names. */
    void unknown() {
        verdict = verdict.and(Verdict.UNDETERMINED);
    }

    /** A rule that is broken and has no measure. */
    void broken(String code, String pointer, String text) {
        findings.add(Finding.action(code, pointer, text));
        verdict = Verdict.EXCEEDED;
    }

    /** A demand held against its limit; whether the limit is kept. */
    boolean keeps(double demand, double limit) {
        return counts(demand / limit);
    }

    /** A ratio of a demand to its limit; whether the limit is kept. */
    boolean counts(double ratio) {
        // what a conversion of units rounds is not a limit exceeded
        double kept = Math.abs(ratio - 1) < 1e-9 ? 1 : ratio;
        utilization = utilization == null ? kept : Math.max(utilization, kept);
        verdict = verdict.and(Verdict.ofUtilization(kept));
        return kept <= 1;
    }

    List<Finding> findings() {
        return findings;
    }

    Verdict verdict() {
        return verdict;
    }

    @Nullable Double utilization() {
        return utilization;
    }
}
