package org.bayledger.framing;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.util.List;
import org.bayledger.check.Outcome;
import org.bayledger.quantity.Quantity;

/**
 * Greatest spans of a section.
 *
 * @param outcome UNDETERMINED where something about the section was not given, so that a span may
 *     be too long; the table has no utilization of its own
 * @param rows one for each pressure, in the order of the request
 */
public record SpanTableResult(@JsonUnwrapped Outcome outcome, List<SpanTableResult.Row> rows) {

    public SpanTableResult {
        rows = List.copyOf(rows);
    }

    /**
     * The spans under one pressure.
     *
     * @param pressure the pressure of the request
     * @param cells one for each spacing, in the order of the request
     */
    public record Row(Quantity pressure, List<SpanTableResult.Cell> cells) {

        public Row {
            cells = List.copyOf(cells);
        }
    }

    /** What stops a span from being longer. */
    public enum Limit {
        /** Deflection. */
        DEFLECTION,
        /** Bending stress. */
        STRESS,
        /** The end of the table. */
        GREATEST_SPAN
    }

    /**
     * One span.
     *
     * @param spacing spacing of the members
     * @param span greatest span that passes, rounded down to four digits
     * @param limit what stops it from being longer
     */
    public record Cell(Quantity spacing, Quantity span, SpanTableResult.Limit limit) {}
}
