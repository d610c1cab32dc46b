package org.bayledger.check;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;

/** Gathers the steps of one check in the order in which a person would redo them. */
public final class Trace {

    private final TraceLevel level;
    private final List<TraceStep> steps = new ArrayList<>();

    public Trace(TraceLevel level) {
        this.level = level;
    }

    /**
     * A step that the governing result rests on.
     *
     * @param si value in the SI unit of the dimension
     */
    public Trace step(
            String symbol,
            String meaning,
            Dimension dimension,
            double si,
            String formula,
            String source) {
        steps.add(new TraceStep(symbol, meaning, Quantity.of(dimension, si), formula, source));
        return this;
    }

    /** A step that is left out when only the governing ones are asked for. */
    public Trace detail(
            String symbol,
            String meaning,
            Dimension dimension,
            double si,
            String formula,
            String source) {
        return detailed() ? step(symbol, meaning, dimension, si, formula, source) : this;
    }

    /** Whether steps are kept that the governing result does not rest on. */
    public boolean detailed() {
        return level == TraceLevel.ALL;
    }

    public List<TraceStep> steps() {
        return List.copyOf(steps);
    }
}
