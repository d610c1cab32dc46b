package org.bayledger.check;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What every check answers beside its own numbers.
 *
 * @param verdict what the check concludes
 * @param utilization governing demand over its limit; null where the check has no limit
 * @param findings what a reviewer should read
 * @param remedies changes that were computed and do pass, when a limit is exceeded
 * @param trace the sums, to be redone by hand
 * @param cautions what the numbers do not replace
 */
public record Outcome(
        Verdict verdict,
        @Nullable Double utilization,
        List<Finding> findings,
        List<Remedy> remedies,
        List<TraceStep> trace,
        List<String> cautions) {

    public Outcome {
        findings = List.copyOf(findings);
        remedies = List.copyOf(remedies);
        trace = List.copyOf(trace);
        cautions = List.copyOf(cautions);
    }
}
