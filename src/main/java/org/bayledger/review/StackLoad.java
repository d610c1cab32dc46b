package org.bayledger.review;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.check.AllowableLoad;
import org.bayledger.check.Finding;
import org.bayledger.check.Reporting;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * What the piece above puts on top of a vertical, in whose stack joint it stands.
 *
 * <p>It is taken as an area of wall whose wind comes on at the joint, A = max(R+/p+, R-/p-), with R
 * the reaction of the piece above and p the pressure on this one. A vertical is checked with it and
 * without, and its reactions are linear in A: whatever the piece above puts on it, up to R, lies
 * between the two.
 *
 * @param area A, m2; 0 where nothing stands there
 * @param findings what to say of it
 * @param known whether all that stands on the vertical is in the area
 */
record StackLoad(double area, List<Finding> findings, boolean known) {

    static StackLoad on(
            ReviewContext context,
            Bay bay,
            Layout.Vertical vertical,
            VerticalRuns runs,
            AllowableLoad load,
            String pointer) {
        int columns = bay.columns().size();
        double before =
                vertical.number() == 1 ? vertical.at() : bay.columnStart(vertical.number() - 1);
        double after =
                vertical.number() > columns
                        ? vertical.at()
                        : bay.columnStart(vertical.number() + 1);
        // the vertical at the right edge is that of the next bay, which must end at the same level
        boolean rightEdge =
                vertical.number() == columns
                        && context.layout.continuesRight(bay)
                        && context.layout.rightOf(bay).stream()
                                .noneMatch(
                                        next -> Math.abs(next.top() - bay.top()) <= Layout.TOUCH);
        double area = 0;
        boolean known = true;
        List<Finding> findings = new ArrayList<>();
        for (VerticalRuns.Foot foot : runs.feet(bay, before - Layout.TOUCH, after + Layout.TOUCH)) {
            boolean here = Math.abs(foot.at() - vertical.at()) <= Layout.TOUCH;
            boolean next =
                    Math.abs(foot.at() - before) <= Layout.TOUCH
                            || (!rightEdge && Math.abs(foot.at() - after) <= Layout.TOUCH);
            if (here) {
                Double found = foot.force() == null ? null : area(foot.force(), load);
                known &= found != null;
                area = Math.max(area, found == null ? 0 : found);
                findings.add(
                        found == null
                                ? unknown(foot, pointer)
                                : carried(foot, pointer, context.reporting));
            } else if (!next) {
                known = false;
                findings.add(elsewhere(foot, pointer));
            }
        }
        return new StackLoad(area, findings.stream().distinct().toList(), known);
    }

    /** A, or null where a pressure is missing or the foot pulls at the joint against the wind. */
    private static @Nullable Double area(VerticalRun.Force foot, AllowableLoad load) {
        Double positive = load.positive();
        Double negative = load.negative();
        if (positive == null
                || negative == null
                || positive <= 0
                || negative >= 0
                || foot.underPositive() < 0
                || foot.underNegative() < 0) {
            return null;
        }
        return Math.max(foot.underPositive() / positive, foot.underNegative() / -negative);
    }

    private static Finding carried(VerticalRuns.Foot foot, String pointer, Reporting reporting) {
        VerticalRun.Force force = foot.force();
        return Finding.note(
                "CARRIES_PIECE_ABOVE",
                pointer + "/stackJoints",
                "The vertical of bay "
                        + foot.bay()
                        + " above stands in the stack joint on top of this one and puts "
                        + reporting.text(Dimension.FORCE, force == null ? 0 : force.underPositive())
                        + " on it under pressure and "
                        + reporting.text(Dimension.FORCE, force == null ? 0 : force.underNegative())
                        + " under suction: it was checked with that at its top and without, and"
                        + " the worse is given.");
    }

    private static Finding unknown(VerticalRuns.Foot foot, String pointer) {
        return Finding.action(
                "CARRIES_PIECE_ABOVE",
                pointer + "/stackJoints",
                "The verticals of bay "
                        + foot.bay()
                        + " above stand in the stack joint on top of these, and what wind puts on"
                        + " them there is not known: it comes on these verticals and their anchors"
                        + " as well, and is not in the numbers. Complete bay "
                        + foot.bay()
                        + ".");
    }

    private static Finding elsewhere(VerticalRuns.Foot foot, String pointer) {
        return Finding.action(
                "FOOT_ABOVE_STANDS_BETWEEN_VERTICALS",
                pointer + "/columns",
                "A vertical of bay "
                        + foot.bay()
                        + " above stands in the stack joint where no vertical of this bay is: what"
                        + " wind puts on it comes onto the horizontal there, and from it onto the"
                        + " verticals and anchors beside it, and is not in the numbers. Put the"
                        + " verticals in line, or have an engineer follow that force.");
    }
}
