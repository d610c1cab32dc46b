package org.bayledger.check;

import java.util.Collection;

/** What a check concludes. */
public enum Verdict {
    /** Every limit that was checked is kept. */
    SATISFIED,
    /**
     * Something needed for the answer was not given or lies outside the rules: a person decides.
     */
    UNDETERMINED,
    /** A limit is exceeded. */
    EXCEEDED;

    /** The verdict on the whole: exceeded before undetermined before satisfied. */
    public Verdict and(Verdict other) {
        return compareTo(other) >= 0 ? this : other;
    }

    /** The verdict on all of several; satisfied where there are none. */
    public static Verdict ofAll(Collection<Verdict> verdicts) {
        return verdicts.stream().reduce(SATISFIED, Verdict::and);
    }

    /** The verdict on a utilization: exceeded above 1. */
    public static Verdict ofUtilization(double utilization) {
        return utilization > 1 ? EXCEEDED : SATISFIED;
    }
}
