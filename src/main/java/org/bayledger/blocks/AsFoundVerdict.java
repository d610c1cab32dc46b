package org.bayledger.blocks;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.check.Finding;
import org.bayledger.check.Verdict;
import org.jspecify.annotations.Nullable;

/** Gathers what is found of the blocks on site and what it does to the verdict. */
final class AsFoundVerdict {

    /** Share of a measure that a conversion of units may round off. */
    private static final double ROUNDING = 1e-9;

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

    /**
     * A measure held against a rule of thumb, such as a least length; whether the rule is kept. It
     * counts as utilization only where it is not: a block cut to the rule is no limit used up.
     */
    boolean keeps(double demand, double limit) {
        return demand / limit <= 1 + ROUNDING || counts(demand / limit);
    }

    /** A ratio of a demand to its limit; whether the limit is kept. */
    boolean counts(double ratio) {
        utilization = utilization == null ? ratio : Math.max(utilization, ratio);
        verdict = verdict.and(Verdict.ofUtilization(ratio));
        return ratio <= 1;
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
