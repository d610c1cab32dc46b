package org.bayledger.wind;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.check.Cautions;
import org.bayledger.check.Finding;
import org.bayledger.check.Outcome;
import org.bayledger.check.Reporting;
import org.bayledger.check.Trace;
import org.bayledger.check.Verdict;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * Specified wind pressures of every component in every zone of its wall: those of the heights in
 * which its top lies, compared with the site's standard where there is a site.
 */
final class SpecifiedCheck {

    private static final String POINTER = "/specifiedPressures";

    private final WindRequest request;
    private final SpecifiedPressures specified;
    private final Reporting reporting;
    private final @Nullable SitePressures site;
    private final SpecifiedComparison comparison;
    private final List<Finding> findings = new ArrayList<>();

    private SpecifiedCheck(WindRequest request, SpecifiedPressures specified, Reporting reporting) {
        this.request = request;
        this.specified = specified;
        this.reporting = reporting;
        site = request.site() == null ? null : SitePressures.of(request.site());
        comparison = new SpecifiedComparison(specified, reporting);
    }

    static WindResult run(WindRequest request, SpecifiedPressures specified, Reporting reporting) {
        return new SpecifiedCheck(request, specified, reporting).run();
    }

    private WindResult run() {
        findings.add(comparison.govern().below(POINTER));
        if (site != null && comparison.factor(site.basis()) == null) {
            findings.add(comparison.notCompared(site.basis()).below(POINTER));
        }
        Trace trace = new Trace(reporting.trace());
        if (site != null) {
            site.explain(trace);
        }
        List<WindResult.ComponentPressures> results =
                request.components().stream().map(this::component).toList();
        boolean open = findings.stream().anyMatch(f -> f.severity() == Finding.Severity.ACTION);
        Double width =
                specified.zoneWidth() != null || site == null
                        ? specified.zoneWidth()
                        : (Double) site.zoneWidth();
        return new WindResult(
                new Outcome(
                        open ? Verdict.UNDETERMINED : Verdict.SATISFIED,
                        null,
                        findings,
                        List.of(),
                        trace.steps(),
                        Cautions.with(
                                "Specified pressures are taken as they were given. Whether they are"
                                        + " those of this building is for who gave them to say.")),
                width == null ? null : Quantity.of(Dimension.DISTANCE, width),
                site == null
                        ? null
                        : Quantity.of(Dimension.PRESSURE, site.velocityPressureAtRoof()),
                results);
    }

    private WindResult.ComponentPressures component(Component component) {
        double area = component.area(specified.scheme());
        List<WindResult.Zone> zones = new ArrayList<>();
        for (String zone : specified.scheme().inward().stream().sorted().toList()) {
            double under = Math.max(0, component.height() - 2 * SpecifiedPressure.TOUCH);
            SpecifiedPick pick = specified.pick(null, zone, area, under, component.height());
            for (SpecifiedPick.Missing missing : pick.missing()) {
                Finding finding = missing.finding(null, reporting).below(POINTER);
                if (!findings.contains(finding)) {
                    findings.add(finding);
                }
            }
            if (site != null) {
                compare(component, zone, area, pick, site);
            }
            zones.add(
                    new WindResult.Zone(
                            zone,
                            quantity(pick.positive()),
                            quantity(pick.negative()),
                            specified.basis()));
        }
        return new WindResult.ComponentPressures(
                component.id(),
                Quantity.of(Dimension.AREA, area),
                Quantity.of(Dimension.DISTANCE, component.height()),
                zones);
    }

    private void compare(
            Component component, String zone, double area, SpecifiedPick pick, SitePressures by) {
        GoverningPressure computed = by.governing(List.of(zone), area, component.height());
        for (SpecifiedComparison.Pair pair : comparison.below(pick, computed)) {
            findings.add(
                    comparison
                            .finding(pair, "zone " + zone + " at " + component.id(), component.id())
                            .below(POINTER));
        }
    }

    private static @Nullable Quantity quantity(SpecifiedPick.@Nullable Line line) {
        return line == null ? null : Quantity.of(Dimension.PRESSURE, line.pressure());
    }
}
