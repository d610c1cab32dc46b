package org.bayledger.blocks;

import org.jspecify.annotations.Nullable;

/**
 * What the shop drawings must say because the blocks are not where the field expects them.
 *
 * @param required whether the drawings need the note
 * @param mark the mark that ties the lite to the note, or null where none is needed
 * @param text the note, one sentence, or null where none is needed
 */
public record ShopDrawingNote(boolean required, @Nullable String mark, @Nullable String text) {

    /** Blocks at the quarter points: the field expects nothing else. */
    static ShopDrawingNote none() {
        return new ShopDrawingNote(false, null, null);
    }
}
