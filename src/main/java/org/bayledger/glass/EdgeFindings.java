package org.bayledger.glass;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.bayledger.check.Finding;
import org.bayledger.check.Reporting;
import org.bayledger.check.Verdict;
import org.bayledger.quantity.Dimension;

/** What a reviewer should read about the framing under the held edges. */
final class EdgeFindings {

    private EdgeFindings() {}

    /** Adds them to a list and gives the verdict on the edges. */
    static Verdict add(
            GlassRequest request, LiteSums sums, Reporting reporting, List<Finding> findings) {
        Verdict verdict = Verdict.SATISFIED;
        List<HeldEdge> unknown = new ArrayList<>();
        for (HeldEdge edge : sums.edges()) {
            Double utilization = edge.utilization();
            if (utilization == null) {
                unknown.add(edge);
            } else if (utilization > 1) {
                verdict = Verdict.EXCEEDED;
                findings.add(tooSoft(edge, reporting));
            }
        }
        if (unknown.isEmpty()) {
            return verdict;
        }
        String which =
                unknown.stream()
                        .map(
                                edge ->
                                        edge.edge().words()
                                                + " "
                                                + reporting.text(Dimension.LENGTH, edge.limit()))
                        .collect(Collectors.joining(", "));
        findings.add(
                Finding.note(
                        "EDGE_SUPPORT_TO_BE_PROVEN",
                        request.edgeSupport() == null ? "" : "/edgeSupport",
                        "The resistance holds only where the framing under each held edge bends no"
                                + " further than L/175 and 3/4 in (19 mm) across the glass under"
                                + " the design pressure (IBC 2403.3, from memory). Not given for: "
                                + which
                                + ". The framing check has to show it."));
        return verdict;
    }

    private static Finding tooSoft(HeldEdge edge, Reporting reporting) {
        Double deflection = edge.deflection();
        return Finding.action(
                "EDGE_SUPPORT_TOO_SOFT",
                EdgeSupport.pointer(edge.edge()),
                ("The support of the %s bends by %s; the resistance of the glass holds"
                                + " up to %s, the smaller of L/175 and 3/4 in (IBC 2403.3,"
                                + " from memory). Stiffen the framing there.")
                        .formatted(
                                edge.edge().words(),
                                reporting.text(
                                        Dimension.LENGTH, deflection == null ? 0 : deflection),
                                reporting.text(Dimension.LENGTH, edge.limit())));
    }
}
