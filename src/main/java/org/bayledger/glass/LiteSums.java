package org.bayledger.glass;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.bayledger.check.AllowableLoad;
import org.bayledger.glazing.HeatTreatment;
import org.jspecify.annotations.Nullable;

/**
 * The whole lite under its design pressure.
 *
 * @param panes its panes, outermost first
 * @param deflections deflection of the middle of each pane, m; null where no pressure was called
 *     out or the deflection is beyond what is tabulated
 * @param pullIns how far an edge of each pane moves in, m; null likewise
 * @param biteLosses what bending draws out of the bite of the worst edge of each pane, m; null
 *     likewise
 * @param probabilities probability of breakage of each pane as if annealed; null likewise
 * @param load the pressures at the level at which glass is checked
 * @param governingPane index of the pane of least resistance
 * @param askedProbability probability of breakage at the load resistance
 * @param duration load duration, s
 * @param deflectionLimit the caller's limit on the middle's deflection, m; null where there is none
 * @param bite depth by which the framing covers the edge, m; null where it was not given
 * @param minimumBite least of it that must be left, m; null likewise
 * @param edges its held edges
 */
record LiteSums(
        List<PaneSums> panes,
        List<@Nullable Double> deflections,
        List<@Nullable Double> pullIns,
        List<@Nullable Double> biteLosses,
        List<@Nullable Double> probabilities,
        AllowableLoad load,
        int governingPane,
        double askedProbability,
        double duration,
        @Nullable Double deflectionLimit,
        @Nullable Double bite,
        @Nullable Double minimumBite,
        List<HeldEdge> edges) {

    /** By how much two ways to the same probability may differ in rounding. */
    private static final double ROUNDING = 1.05;

    static LiteSums of(GlassRequest request, AllowableLoad load) {
        GlassModel model = GlassModel.of(request);
        List<PaneSums> panes = PaneSums.of(request, model);
        int governing = 0;
        List<@Nullable Double> deflections = new ArrayList<>(panes.size());
        List<@Nullable Double> pullIns = new ArrayList<>(panes.size());
        List<@Nullable Double> biteLosses = new ArrayList<>(panes.size());
        List<@Nullable Double> probabilities = new ArrayList<>(panes.size());
        boolean called = load.positive() != null || load.negative() != null;
        for (int i = 0; i < panes.size(); i++) {
            PaneSums pane = panes.get(i);
            if (pane.loadResistance() < panes.get(governing).loadResistance()) {
                governing = i;
            }
            PaneSums.Bent bent =
                    called
                            ? pane.under(model, load.greatest(), request.load().durationOrShort())
                            : PaneSums.Bent.UNKNOWN;
            deflections.add(bent.deflection());
            pullIns.add(bent.pullIn());
            biteLosses.add(bent.biteLoss());
            probabilities.add(bent.probability());
        }
        return new LiteSums(
                panes,
                deflections,
                pullIns,
                biteLosses,
                probabilities,
                load,
                governing,
                request.probability(),
                request.load().durationOrShort(),
                request.centerDeflectionLimit(),
                request.bite(),
                request.minimumBite(),
                HeldEdge.of(request));
    }

    /** Pressure that the lite resists in either direction, Pa. */
    double loadResistance() {
        return panes.get(governingPane).loadResistance();
    }

    /** Whether any pressure was called out. */
    boolean isLoaded() {
        return load.positive() != null || load.negative() != null;
    }

    /** Greater design pressure over resistance. */
    double strengthUtilization() {
        return load.greatest() / loadResistance();
    }

    /** Greatest deflection of a pane's middle over the caller's limit; 0 without either. */
    double deflectionUtilization() {
        double greatest = 0;
        for (Double deflection : deflections) {
            greatest = Math.max(greatest, deflection == null ? 0 : deflection);
        }
        return deflectionLimit == null ? 0 : greatest / deflectionLimit;
    }

    /** What bending draws out of the bite of the worst edge, m; 0 where none is known. */
    double greatestBiteLoss() {
        double greatest = 0;
        for (Double loss : biteLosses) {
            greatest = Math.max(greatest, loss == null ? 0 : loss);
        }
        return greatest;
    }

    /** Greatest deflection of an edge's support over its limit; 0 where none was given. */
    double edgeUtilization() {
        double greatest = 0;
        for (HeldEdge edge : edges) {
            Double own = edge.utilization();
            greatest = Math.max(greatest, own == null ? 0 : own);
        }
        return greatest;
    }

    /** Bite that the pockets need: what has to be left and what bending draws out, m. */
    double biteNeeded() {
        return (minimumBite == null ? 0 : minimumBite) + greatestBiteLoss();
    }

    /**
     * Bite needed over bite; 0 where no bite was given, or where no least bite was and something is
     * left.
     */
    double biteUtilization() {
        if (bite == null || !isLoaded()) {
            return 0;
        }
        double utilization = biteNeeded() / bite;
        return minimumBite == null && utilization <= 1 ? 0 : utilization;
    }

    /** The greatest of the four. */
    double utilization() {
        return Math.max(
                Math.max(strengthUtilization(), deflectionUtilization()),
                Math.max(edgeUtilization(), biteUtilization()));
    }

    /** Whether a deflection under the design pressure is beyond what is tabulated. */
    boolean isBeyondTable() {
        return isLoaded() && (deflections.contains(null) || probabilities.contains(null));
    }

    /**
     * Whether an annealed pane breaks, under a load longer than 3 s, with a greater probability
     * than asked for, by the failure model itself. The practice lowers the load by the 1/16 law;
     * the model lowers the stress, and where membrane action carries much of the load the load
     * falls further than the stress.
     */
    boolean isDoubted(int index) {
        Double probability = probabilities.get(index);
        return probability != null
                && !LoadDuration.isShort(duration)
                && panes.get(index).pane().heatTreatment() == HeatTreatment.ANNEALED
                && probability > askedProbability * ROUNDING;
    }

    /** Whether every limit is kept and nothing about it is in doubt. */
    boolean passes() {
        return utilization() <= 1
                && !isBeyondTable()
                && IntStream.range(0, panes.size()).noneMatch(this::isDoubted);
    }

    /** Direction of the greater pressure, positive where both are equal; null without any. */
    @Nullable PressureSign governingSign() {
        if (!isLoaded()) {
            return null;
        }
        Double toward = load.positive();
        return toward != null && toward >= load.greatest()
                ? PressureSign.POSITIVE
                : PressureSign.NEGATIVE;
    }
}
