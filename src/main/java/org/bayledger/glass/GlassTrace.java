package org.bayledger.glass;

import org.bayledger.check.Trace;
import org.bayledger.quantity.Dimension;

/** The sums of the glass check, in the order in which a person would redo them. */
final class GlassTrace {

    static final String EDITION = "ASTM E1300-16 (from memory)";

    private GlassTrace() {}

    static void write(GlassRequest request, LiteSums sums, Trace trace) {
        trace.step(
                "td",
                "duration of the load",
                Dimension.TIME,
                sums.duration(),
                request.load().duration() == null ? "not given: 3 s, the shortest" : "input",
                "input");
        trace.detail(
                "A",
                "area of the lite",
                Dimension.AREA,
                request.width() * request.height(),
                "width x height",
                "geometry");
        trace.detail(
                "m",
                "mass of the lite",
                Dimension.MASS,
                request.glass().areaMass() * request.width() * request.height(),
                "A x (2500 kg/m3 x sum of nominal thicknesses"
                        + (request.glass().panes().stream()
                                        .anyMatch(pane -> pane.interlayer() != null)
                                ? " + interlayers)"
                                : ")"),
                "density of soda-lime glass (ASTM E1300-16, from memory)");
        for (int i = 0; i < sums.panes().size(); i++) {
            boolean governs = i == sums.governingPane();
            boolean shares = governs || sums.panes().size() > 1;
            PaneTrace.write(request, sums, i, new PaneTrace.Steps(trace, i + 1, governs, shares));
        }
        trace.step(
                "LR",
                "load resistance of the lite",
                Dimension.PRESSURE,
                sums.loadResistance(),
                sums.panes().size() == 1 ? "LR1" : "least of the panes'",
                EDITION);
        if (sums.isLoaded()) {
            trace.step(
                    "p/LR",
                    "greater design pressure over resistance",
                    Dimension.NONE,
                    sums.strengthUtilization(),
                    "max(p+, -p-) / LR",
                    EDITION);
        }
        Double limit = sums.deflectionLimit();
        if (limit != null && sums.isLoaded()) {
            trace.step(
                    "w/wlim",
                    "greatest deflection of a middle over its limit",
                    Dimension.NONE,
                    sums.deflectionUtilization(),
                    "max(w) / centerDeflectionLimit",
                    "input");
        }
        for (HeldEdge edge : sums.edges()) {
            edge(edge, trace);
        }
    }

    private static void edge(HeldEdge edge, Trace trace) {
        Double utilization = edge.utilization();
        if (utilization == null) {
            return;
        }
        String of = " of the support of the " + edge.edge().words();
        trace.step(
                "dlim," + edge.edge().words(),
                "greatest deflection" + of,
                Dimension.LENGTH,
                edge.limit(),
                "min(L/175, 3/4 in)",
                "IBC 2021, 2403.3 (from memory)");
        trace.step(
                "d/dlim," + edge.edge().words(),
                "deflection over its limit" + of,
                Dimension.NONE,
                utilization,
                "edgeSupport / dlim",
                "input");
    }
}
