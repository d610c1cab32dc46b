package org.bayledger.seals;

import org.bayledger.check.Reporting;

/**
 * Counts the joints of a frame.
 *
 * <p>A frame of n columns and m rows has n + 1 verticals and m + 1 horizontals. Where the wall goes
 * on, the vertical at a shared edge belongs to the frame on its right and the horizontal to the
 * frame above it, so that the frames of a wall add up.
 */
final class JointCounts {

    private JointCounts() {}

    static JointTally of(SealsRequest request, Reporting reporting) {
        JointTally tally = new JointTally(request, reporting);
        switch (tally.details.systemOrDefault()) {
            case STICK_BUILT -> new StickJoints(tally).count();
            case UNITIZED -> new UnitizedJoints(tally).count();
            case WINDOW_WALL -> new WindowWallJoints(tally).count();
        }
        tally.given(
                JointType.ANCHOR_PENETRATION,
                tally.details.anchorPenetrations(),
                "anchorPenetrations");
        return tally;
    }

    /** Head, jambs and sill of a frame that meets the building with its edges. */
    static void perimeter(JointTally tally) {
        int dams =
                tally.details.continues(Edge.BOTTOM)
                        ? 0
                        : tally.open(Edge.LEFT) + tally.open(Edge.RIGHT);
        tally.each(JointType.END_DAM, dams, "ends of the sill where the wall ends: " + dams);
        tally.run(
                JointType.PERIMETER_SILL,
                tally.open(Edge.BOTTOM),
                "sills against the building:",
                tally.request.width());
        tally.run(
                JointType.PERIMETER_JAMB,
                tally.open(Edge.LEFT) + tally.open(Edge.RIGHT),
                "jambs against the building:",
                tally.request.height());
        tally.run(
                JointType.PERIMETER_HEAD,
                tally.open(Edge.TOP),
                "heads against the building:",
                tally.request.width());
    }
}
