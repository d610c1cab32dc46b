package org.bayledger.framing;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.check.FaultsException;
import org.bayledger.check.Measured;
import org.bayledger.check.Measured.Sign;
import org.bayledger.quantity.Dimension;

/**
 * A lite on four edges whose edge along the member brings wind onto it in two directions: what lies
 * within lines at 45 degrees from its corners, a triangle along the shorter edge and a trapezoid
 * along the longer (yield-line pattern of a square corner; common practice, no source).
 *
 * @param from where its edge begins, m from the member's start
 * @param to where it ends, m
 * @param across size of the lite at right angles to the member, m
 */
public record TributaryLite(
        @Measured(value = Dimension.DISTANCE, sign = Sign.NOT_NEGATIVE) double from,
        @Measured(value = Dimension.DISTANCE, sign = Sign.POSITIVE) double to,
        @Measured(value = Dimension.DISTANCE, sign = Sign.POSITIVE, max = 100) double across) {

    /** Share of the edge under which a level part is rounding. */
    private static final double LEVEL = 1e-6;

    public TributaryLite {
        if (to <= from) {
            throw FaultsException.outOfRange("/to", "must lie beyond from");
        }
    }

    /** The strips that it loads: it rises at 45 degrees, is level, and falls. */
    List<TributaryStrip> strips() {
        double length = to - from;
        double depth = Math.min(across, length) / 2;
        List<TributaryStrip> strips = new ArrayList<>();
        strips.add(new TributaryStrip(from, from + depth, 0, depth));
        if (length - 2 * depth > LEVEL * length) {
            strips.add(new TributaryStrip(from + depth, to - depth, depth, depth));
        }
        strips.add(new TributaryStrip(to - depth, to, depth, 0));
        return strips;
    }
}
