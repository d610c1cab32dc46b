package org.bayledger.drawing;

import java.util.Objects;
import java.util.function.Function;
import org.bayledger.quantity.UnitSystem;

/**
 * A drawing on one size of paper.
 *
 * @param sheet what was drawn
 * @param lacks how much of what belongs on it found no room; 0 where all did
 */
record Attempt(Sheet sheet, int lacks) {

    /** A drawing on the smallest paper on which all of it has room, else as much as can be. */
    static Attempt best(UnitSystem units, Function<Paper, Attempt> draw) {
        Attempt best = null;
        for (Paper paper : Paper.sizes(units)) {
            Attempt attempt = draw.apply(paper);
            if (best == null || attempt.lacks < best.lacks) {
                best = attempt;
            }
            if (best.lacks == 0) {
                break;
            }
        }
        return Objects.requireNonNull(best);
    }

    /** The document. */
    byte[] finish() {
        return sheet.finish();
    }
}
