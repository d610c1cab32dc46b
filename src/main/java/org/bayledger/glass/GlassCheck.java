package org.bayledger.glass;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.check.AllowableLoad;
import org.bayledger.check.Cautions;
import org.bayledger.check.Outcome;
import org.bayledger.check.Remedy;
import org.bayledger.check.Reporting;
import org.bayledger.check.Trace;
import org.bayledger.check.Verdict;
import org.bayledger.glazing.HeatTreatment;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * Whether a lite of glass resists its design pressure in both directions.
 *
 * <p>The resistance of each pane is its non-factored load times the factors for glass type and load
 * share ({@link PaneSums}); the non-factored load comes from the glass failure prediction model on
 * the plate that the pane is ({@link GlassModel}). The lite resists the least of its panes. The
 * plate is the same either way round, so one resistance meets the greater of the two pressures.
 *
 * <p>Source: ASTM E1300-16, from memory. Limits: vertical rectangular glass of the thickness table,
 * uniform load, four edges or two opposite edges held, aspect ratio to 10.
 */
public final class GlassCheck {

    private static final List<String> CAUTIONS =
            Cautions.with(
                    "The resistance holds for rectangular glass with sound edges, glazed in the"
                            + " plane, vertical or within 15 degrees of it, under uniform"
                            + " pressure; patterned, wired, etched, sandblasted, drilled, notched"
                            + " or beveled glass, ceramic frit and damaged surfaces are outside"
                            + " the practice and weaker.",
                    "Not part of this check: safety glazing, guards, thermal stress, debris impact,"
                            + " retention of the edges.");

    private GlassCheck() {}

    /**
     * Checks one lite.
     *
     * @param request the lite and its load
     * @param reporting units of the sentences and detail of the trace; it changes no number
     * @throws org.bayledger.check.FaultsException where a pane at this size is outside what the
     *     plate solution covers
     */
    public static GlassResult run(GlassRequest request, Reporting reporting) {
        Trace trace = new Trace(reporting.trace());
        AllowableLoad load = request.load().pressure().allowable(trace);
        LiteSums sums = LiteSums.of(request, load);
        GlassTrace.write(request, sums, trace);
        SealedUnitResult sealed = SealedUnitCheck.of(request, load, trace);
        GlassFindings.Conclusion conclusion =
                GlassFindings.of(request, sums, sealed, load, reporting);
        List<Remedy> remedies =
                conclusion.verdict() == Verdict.EXCEEDED
                        ? GlassRemedies.of(request, sums, load, reporting)
                        : List.of();
        Outcome outcome =
                new Outcome(
                        conclusion.verdict(),
                        sums.isLoaded() || sums.edgeUtilization() > 1
                                ? (Double) sums.utilization()
                                : null,
                        conclusion.findings(),
                        remedies,
                        trace.steps(),
                        CAUTIONS);
        double area = request.width() * request.height();
        return new GlassResult(
                outcome,
                panes(sums),
                Quantity.of(Dimension.PRESSURE, sums.loadResistance()),
                sums.governingPane(),
                sums.governingSign(),
                sums.isLoaded() ? Quantity.of(Dimension.PRESSURE, load.greatest()) : null,
                sums.edges().stream().map(HeldEdge::result).toList(),
                Quantity.of(Dimension.MASS, request.glass().areaMass() * area),
                Quantity.of(Dimension.AREA, area),
                biteLeft(request, sums),
                sealed,
                GlassModel.of(request).aspectRatio());
    }

    private static List<PaneResult> panes(LiteSums sums) {
        List<PaneResult> panes = new ArrayList<>(sums.panes().size());
        for (int i = 0; i < sums.panes().size(); i++) {
            PaneSums pane = sums.panes().get(i);
            boolean annealed = pane.pane().heatTreatment() == HeatTreatment.ANNEALED;
            panes.add(
                    new PaneResult(
                            length(pane.glass()),
                            length(pane.thickness().deflection()),
                            length(pane.thickness().stress()),
                            Quantity.of(Dimension.PRESSURE, pane.nonFactoredLoad()),
                            pane.probabilityFactor(),
                            pane.glassTypeFactor(),
                            pane.loadShareFactor(),
                            Quantity.of(Dimension.PRESSURE, pane.loadResistance()),
                            optional(sums.deflections().get(i)),
                            optional(sums.pullIns().get(i)),
                            annealed ? sums.probabilities().get(i) : null));
        }
        return panes;
    }

    private static @Nullable Quantity biteLeft(GlassRequest request, LiteSums sums) {
        Double bite = request.bite();
        return bite == null || !sums.isLoaded() || sums.pullIns().contains(null)
                ? null
                : length(bite - sums.greatestBiteLoss());
    }

    private static Quantity length(double metres) {
        return Quantity.of(Dimension.LENGTH, metres);
    }

    private static @Nullable Quantity optional(@Nullable Double metres) {
        return metres == null ? null : length(metres);
    }
}
