package org.bayledger.framing;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.bayledger.check.Cautions;
import org.bayledger.check.Finding;
import org.bayledger.check.Load;
import org.bayledger.check.Outcome;
import org.bayledger.check.Reporting;
import org.bayledger.check.Trace;
import org.bayledger.check.Verdict;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;

/**
 * Greatest spans by bisection on the framing check itself: deflection and stress over their limits
 * rise with the span, deflection over its limit with its third power and the moment with its
 * square, and IBC's limit falls slightly where its rule changes at 13 ft 6 in, so that there is one
 * greatest span.
 */
public final class SpanTable {

    /** Share of the greatest span at which the search begins. */
    private static final double LEAST = 1e-3;

    private static final int STEPS = 45;

    private static final int DIGITS = 4;

    /** What every span but the greatest would say. */
    private static final Set<String> OF_THE_SPAN = Set.of("DEFLECTION_EXCEEDED", "STRESS_EXCEEDED");

    private final SpanTableRequest request;
    private final Reporting reporting;
    private final Set<Finding> findings = new LinkedHashSet<>();
    private Verdict verdict = Verdict.SATISFIED;

    private SpanTable(SpanTableRequest request, Reporting reporting) {
        this.request = request;
        this.reporting = reporting;
    }

    /** Fills the table. */
    public static SpanTableResult run(SpanTableRequest request, Reporting reporting) {
        return new SpanTable(request, reporting).fill();
    }

    private SpanTableResult fill() {
        Trace trace = new Trace(reporting.trace());
        List<SpanTableResult.Row> rows = new ArrayList<>();
        for (double pressure : request.pressures()) {
            List<SpanTableResult.Cell> cells = new ArrayList<>();
            for (double spacing : request.spacings()) {
                cells.add(cell(pressure, spacing, trace));
            }
            rows.add(new SpanTableResult.Row(Quantity.of(Dimension.PRESSURE, pressure), cells));
        }
        return new SpanTableResult(
                new Outcome(
                        verdict,
                        null,
                        List.copyOf(findings),
                        List.of(),
                        trace.steps(),
                        Cautions.with(
                                "Spans are those of wind alone on equal spans without overhangs or"
                                        + " splices. Dead load, connections, anchors and glass are"
                                        + " checked elsewhere; an unbraced length given with the"
                                        + " section stays as it is.")),
                rows);
    }

    private SpanTableResult.Cell cell(double pressure, double spacing, Trace trace) {
        double most = request.greatest();
        FramingResult longest = check(pressure, spacing, most);
        double span = most;
        if (used(longest) > 1) {
            double fits = most * LEAST;
            double fails = most;
            for (int i = 0; i < STEPS; i++) {
                double middle = (fits + fails) / 2;
                if (used(check(pressure, spacing, middle)) > 1) {
                    fails = middle;
                } else {
                    fits = middle;
                }
            }
            span = fits;
        }
        Quantity rounded =
                span == most
                        ? Quantity.of(Dimension.DISTANCE, most)
                        : Quantity.roundedDown(Dimension.DISTANCE, span, reporting.units(), DIGITS);
        FramingResult at = check(pressure, spacing, rounded.si());
        verdict = verdict.and(at.outcome().verdict());
        at.outcome().findings().stream()
                .filter(finding -> finding.severity() != Finding.Severity.INFO)
                .filter(finding -> !OF_THE_SPAN.contains(finding.code()))
                .forEach(findings::add);
        Double stress = at.stressUtilization();
        boolean stressed = stress != null && stress > at.deflectionUtilization();
        trace.detail(
                "u",
                "utilization at the greatest span under "
                        + reporting.text(Dimension.PRESSURE, pressure)
                        + ", spaced "
                        + reporting.text(Dimension.DISTANCE, spacing),
                Dimension.NONE,
                used(at),
                "greater of deflection and stress over their limits",
                "the framing check at that span");
        return new SpanTableResult.Cell(
                Quantity.of(Dimension.DISTANCE, spacing),
                rounded,
                span == most
                        ? SpanTableResult.Limit.GREATEST_SPAN
                        : stressed
                                ? SpanTableResult.Limit.STRESS
                                : SpanTableResult.Limit.DEFLECTION);
    }

    private FramingResult check(double pressure, double spacing, double span) {
        int spans = request.spans();
        return FramingCheck.withoutRemedies(
                SelectionMember.underWind(
                        IntStream.rangeClosed(0, spans).mapToObj(i -> i * span).toList(),
                        null,
                        spans * span,
                        spacing,
                        request.section(),
                        new Load(pressure, -pressure, request.basis()),
                        request.deflectionRule()),
                reporting);
    }

    private static double used(FramingResult result) {
        Double utilization = result.outcome().utilization();
        return utilization == null ? 0 : utilization;
    }
}
