package org.bayledger.wind;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.bayledger.check.Cautions;
import org.bayledger.check.Finding;
import org.bayledger.check.Outcome;
import org.bayledger.check.Reporting;
import org.bayledger.check.Trace;
import org.bayledger.check.TraceLevel;
import org.bayledger.check.Verdict;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;

/**
 * Design wind pressures of every component in every zone of its wall, both signs.
 *
 * <p>A wind pressure has no limit: the verdict is SATISFIED when the pressures are complete and
 * UNDETERMINED while somebody still has to act on a finding.
 */
public final class WindCheck {

    private WindCheck() {}

    /** Runs the check. */
    public static WindResult run(WindRequest request, Reporting reporting) {
        if (request.specifiedPressures() != null) {
            return SpecifiedCheck.run(request, request.specifiedPressures(), reporting);
        }
        SitePressures pressures = SitePressures.of(Objects.requireNonNull(request.site()));
        Trace trace = new Trace(reporting.trace());
        pressures.explain(trace);
        List<Finding> findings = new ArrayList<>(pressures.findings());
        List<WindResult.ComponentPressures> results = new ArrayList<>();
        Component governing = governing(request.components(), pressures);
        for (int i = 0; i < request.components().size(); i++) {
            Component component = request.components().get(i);
            double area = component.area(pressures);
            results.add(result(component, area, pressures));
            findings.addAll(
                    pressures.heightFindings(
                            component.height(), "/components/" + i + "/height", component.id()));
            if (reporting.trace() == TraceLevel.ALL || component.equals(governing)) {
                pressures.explain(
                        trace, component.id(), pressures.zones(), area, component.height());
            }
        }
        boolean open = findings.stream().anyMatch(f -> f.severity() == Finding.Severity.ACTION);
        return new WindResult(
                new Outcome(
                        open ? Verdict.UNDETERMINED : Verdict.SATISFIED,
                        null,
                        findings,
                        List.of(),
                        trace.steps(),
                        Cautions.with(
                                "Pressures are for the walls of a regular building. Roofs, soffits,"
                                        + " canopies, parapets, open buildings, tornado loads and debris"
                                        + " impact are outside this check.",
                                "The effective wind area only picks the coefficient; the load acts"
                                        + " on the whole tributary area.")),
                Quantity.of(Dimension.DISTANCE, pressures.zoneWidth()),
                Quantity.of(Dimension.PRESSURE, pressures.velocityPressureAtRoof()),
                results);
    }

    /** The component with the greatest pressure away from the wall. */
    private static Component governing(List<Component> components, SitePressures pressures) {
        return components.stream()
                .min(
                        Comparator.comparingDouble(
                                (Component component) ->
                                        pressures
                                                .governing(
                                                        pressures.zones(),
                                                        component.area(pressures),
                                                        component.height())
                                                .negative()
                                                .negative()))
                .orElseThrow();
    }

    private static WindResult.ComponentPressures result(
            Component component, double area, SitePressures pressures) {
        return new WindResult.ComponentPressures(
                component.id(),
                Quantity.of(Dimension.AREA, area),
                Quantity.of(Dimension.DISTANCE, component.height()),
                pressures.zones().stream()
                        .map(zone -> zone(pressures.pressure(zone, area, component.height())))
                        .toList());
    }

    private static WindResult.Zone zone(ZonePressure pressure) {
        return new WindResult.Zone(
                pressure.zone(),
                Quantity.of(Dimension.PRESSURE, pressure.positive()),
                Quantity.of(Dimension.PRESSURE, pressure.negative()),
                pressure.basis());
    }
}
