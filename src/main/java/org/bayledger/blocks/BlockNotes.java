package org.bayledger.blocks;

import org.bayledger.check.Reporting;

/**
 * The sentences that a glazier reads on the shop drawing, dimensioned from the glass corner to the
 * center of the block.
 */
final class BlockNotes {

    private BlockNotes() {}

    /**
     * The note for a recommended place; none at the quarter points.
     *
     * @param cutLength of each block, m
     */
    static ShopDrawingNote of(
            BlockPlace place, double cutLength, boolean approved, Reporting reporting) {
        if (place.atQuarterPoints()) {
            return ShopDrawingNote.none();
        }
        String set =
                blocks(cutLength, reporting)
                        + reporting.dimensioned(place.distanceFromCorner().si())
                        + " from its glass corner"
                        + (place.point() == BlockPoint.CHOSEN
                                ? ""
                                : " (" + place.point().words() + ")")
                        + ", not at the quarter points";
        String text;
        if (!place.beyondEighthPoints()) {
            text = "Set " + set + ".";
        } else if (approved) {
            text = "Set " + set + ", as the glass fabricator has agreed in writing.";
        } else {
            text = "HOLD until the glass fabricator agrees in writing, then set " + set + ".";
        }
        return new ShopDrawingNote(true, "*", text);
    }

    /**
     * The note for a sill that is shimmed.
     *
     * @param cutLength of each block, m
     */
    static String shims(BlockPlace place, double cutLength, Reporting reporting) {
        return "Set "
                + blocks(cutLength, reporting)
                + reporting.dimensioned(place.distanceFromCorner().si())
                + " from its glass corner (quarter points), with solid shims under the sill below"
                + " the full length of each block.";
    }

    private static String blocks(double cutLength, Reporting reporting) {
        return "two setting blocks, each "
                + reporting.dimensioned(cutLength)
                + " long, with the center of each ";
    }
}
