package org.bayledger.blocks;

import org.bayledger.check.Reporting;

/**
 * The sentences that a glazier reads on the shop drawing, dimensioned from the glass corner to the
 * center of the block.
 */
final class BlockNotes {

    private BlockNotes() {}

    /** The note for a recommended place; none at the quarter points. */
    static ShopDrawingNote of(BlockPlace place, boolean approved, Reporting reporting) {
        if (place.point() == BlockPoint.QUARTER) {
            return ShopDrawingNote.none();
        }
        String set =
                "two setting blocks with the center of each "
                        + reporting.dimensioned(place.distanceFromCorner().si())
                        + " from its glass corner ("
                        + place.point().words()
                        + "), not at the quarter points";
        String text;
        if (place.point() != BlockPoint.TENTH) {
            text = "Set " + set + ".";
        } else if (approved) {
            text = "Set " + set + ", as the glass fabricator has agreed in writing.";
        } else {
            text = "HOLD until the glass fabricator agrees in writing, then set " + set + ".";
        }
        return new ShopDrawingNote(true, "*", text);
    }

    /** The note for a sill that is shimmed. */
    static String shims(BlockPlace place, Reporting reporting) {
        return "Set two setting blocks with the center of each "
                + reporting.dimensioned(place.distanceFromCorner().si())
                + " from its glass corner (quarter points), with solid shims under the sill below"
                + " the full length of each block.";
    }
}
