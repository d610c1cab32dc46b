package org.bayledger.blocks;

import org.jspecify.annotations.Nullable;

/**
 * The places for the two setting blocks of a lite, in the order in which the trade accepts them
 * (glazing industry handbook rule, from memory), and the one that somebody has chosen.
 */
public enum BlockPoint {
    /** A quarter of the width from each corner: the default. */
    QUARTER(0.25, "quarter points"),
    /** An eighth of the width, with the near end of the block at least 6 in from the corner. */
    EIGHTH(0.125, "eighth points"),
    /** A tenth of the width: only with the glass fabricator's word. */
    TENTH(0.1, "tenth points"),
    /** Where the request puts them. */
    CHOSEN(Double.NaN, "chosen places");

    private final double fraction;
    private final String words;

    BlockPoint(double fraction, String words) {
        this.fraction = fraction;
        this.words = words;
    }

    /**
     * Distance from the glass corner to the block's center, as a part of the glass width; null for
     * CHOSEN where the request chose none.
     */
    @Nullable Double fraction(SettingBlocksRequest request) {
        if (this != CHOSEN) {
            return fraction;
        }
        Double chosen = request.blockDistance();
        return chosen == null ? null : (Double) (chosen / request.width());
    }

    /** The place as a sentence names it. */
    String words() {
        return words;
    }
}
