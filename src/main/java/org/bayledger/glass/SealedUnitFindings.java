package org.bayledger.glass;

import java.util.List;
import org.bayledger.check.Finding;
import org.bayledger.check.Reporting;
import org.bayledger.check.Verdict;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/** What a reviewer should read about the sealed-cavity model. */
final class SealedUnitFindings {

    private SealedUnitFindings() {}

    /** What the model leaves of the verdict; it never exceeds a limit by itself. */
    static Verdict verdict(@Nullable SealedUnitResult sealed) {
        if (sealed == null) {
            return Verdict.SATISFIED;
        }
        for (SealedUnitResult.Case each : sealed.cases()) {
            Double utilization = each.utilization();
            if (each.touches() || utilization == null || utilization > 1) {
                return Verdict.UNDETERMINED;
            }
        }
        return Verdict.SATISFIED;
    }

    /** Adds them to a list and gives {@link #verdict}. */
    static Verdict add(
            @Nullable SealedUnitResult sealed, Reporting reporting, List<Finding> findings) {
        if (sealed == null) {
            return Verdict.SATISFIED;
        }
        for (SealedUnitResult.Case each : sealed.cases()) {
            if (each.touches()) {
                findings.add(
                        Finding.action(
                                "PANES_TOUCH",
                                "/sealedUnit",
                                "The middles of two panes touch (%s); neither model holds then."
                                        .formatted(SealedUnitTrace.words(each))));
            } else if (each.utilization() == null) {
                findings.add(
                        Finding.action(
                                "SEALED_CAVITY_BEYOND_SOLUTION",
                                "/sealedUnit",
                                "The pressure on a pane (%s) is beyond what the plate solution covers."
                                        .formatted(SealedUnitTrace.words(each))));
            }
        }
        SealedUnitResult.Case worst = SealedUnitCheck.worst(sealed);
        if (worst == null || worst.utilization() == null) {
            return verdict(sealed);
        }
        String text =
                "By the sealed-cavity model a pane reaches %s of its resistance (%s)."
                        .formatted(
                                reporting.text(Dimension.NONE, worst.utilization()),
                                SealedUnitTrace.words(worst));
        if (worst.utilization() > 1) {
            findings.add(
                    Finding.action(
                            "SEALED_CAVITY_EXCEEDS_RESISTANCE",
                            "/sealedUnit",
                            text
                                    + " The practice's load sharing and glass type factors give the"
                                    + " verdict, but this is more than they allow for. A person has to"
                                    + " decide; stiffer or heat-treated panes or a narrower cavity help."));
        } else {
            findings.add(
                    Finding.note(
                            "SEALED_CAVITY_STANDS_BESIDE",
                            "/sealedUnit",
                            text
                                    + " The verdict is that of the practice's load sharing and"
                                    + " glass type factors, which allow for the sealed cavity in"
                                    + " general."));
        }
        return verdict(sealed);
    }
}
