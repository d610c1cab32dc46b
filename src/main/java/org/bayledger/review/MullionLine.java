package org.bayledger.review;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.anchorage.Anchor;
import org.bayledger.anchorage.StackJoint;
import org.bayledger.check.Finding;
import org.bayledger.check.Reporting;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * How a bay's verticals are held, from its anchors or, without them, from the supports that the
 * document gives.
 *
 * @param start where the vertical starts, above the bay's sill, m; zero or below it
 * @param length length of the vertical, m
 * @param supports positions from its start, m
 * @param hinges positions of splices from its start, m
 * @param findings what to say of it, with pointers into the document
 * @param certain false where the model may not be that of the wall, so that no verdict can rest on
 *     it
 */
record MullionLine(
        double start,
        double length,
        List<Double> supports,
        List<Double> hinges,
        List<Finding> findings,
        boolean certain) {

    /** How far an anchor may be off the support that the document gives for it, m. */
    private static final double AGREES = 0.003;

    /**
     * The line of a bay's verticals, or null where it is not known how they are held.
     *
     * @param pointer pointer to the bay
     */
    static @Nullable MullionLine of(Bay bay, String pointer, Reporting reporting) {
        Mullion mullion = bay.mullion();
        List<Double> given =
                mullion == null || mullion.supports() == null
                        ? List.of()
                        : mullion.supports().stream().sorted().toList();
        List<Finding> findings = new ArrayList<>();
        List<Double> held = anchored(bay, findings, pointer);
        boolean anchored = true;
        if (held.size() < 2) {
            anchored = held.isEmpty() || agree(given, held);
            held = given;
            if (!anchored && !given.isEmpty()) {
                findings.add(
                        Finding.action(
                                "SUPPORT_WITHOUT_ANCHOR",
                                pointer + "/anchors",
                                "The supports given for the verticals are at "
                                        + words(given, reporting)
                                        + " above the sill, and not at each of them an anchor was"
                                        + " given: what holds the verticals there was not"
                                        + " checked."));
            }
        } else if (!given.isEmpty() && !agree(given, held)) {
            findings.add(
                    Finding.action(
                            "SUPPORTS_DISAGREE_WITH_ANCHORS",
                            pointer + "/mullion/supports",
                            "The supports given for the verticals are not where the anchors are;"
                                    + " the anchors were used, at "
                                    + words(held, reporting)
                                    + " above the sill."));
        }
        if (held.isEmpty()) {
            return null;
        }
        double start = Math.min(0, held.get(0));
        double end = Math.max(bay.height(), held.get(held.size() - 1));
        if (start < -Layout.TOUCH || end > bay.height() + Layout.TOUCH) {
            findings.add(
                    Finding.note(
                            "VERTICAL_RUNS_BEYOND_BAY",
                            pointer + "/anchors",
                            "The verticals are taken from anchor to anchor, beyond the bay's own"
                                    + " height, under the same pressure over their whole length."));
        }
        List<Double> hinges = new ArrayList<>();
        if (mullion != null && mullion.hinges() != null) {
            mullion.hinges().stream().sorted().forEach(hinge -> hinges.add(hinge - start));
        }
        boolean certain = jointsAreHinges(bay, pointer, start, end, hinges, reporting, findings);
        return new MullionLine(
                start,
                end - start,
                held.stream().map(at -> at - start).toList(),
                List.copyOf(hinges),
                List.copyOf(findings),
                certain && anchored);
    }

    /**
     * Positions of the anchors above the sill; a stack joint at the sill holds the foot as well.
     */
    private static List<Double> anchored(Bay bay, List<Finding> findings, String pointer) {
        List<Double> held = new ArrayList<>();
        if (bay.anchors() == null) {
            return held;
        }
        bay.anchors().stream()
                .filter(anchor -> onPiece(bay, anchor))
                .map(anchor -> anchor.elevation() - bay.sill())
                .sorted()
                .forEach(
                        at -> {
                            if (held.isEmpty() || at - held.get(held.size() - 1) > Layout.TOUCH) {
                                held.add(at);
                            }
                        });
        if (standsInJoint(bay)) {
            held.add(0, 0.0);
            findings.add(
                    Finding.note(
                            "FOOT_HELD_IN_STACK_JOINT",
                            pointer + "/stackJoints",
                            "The foot of the verticals is taken as held against wind by the stack"
                                    + " joint at the sill."));
        }
        return held;
    }

    /**
     * Whether only the stack joint at its sill holds the foot of a bay's verticals, so that the
     * piece below carries what comes down there.
     */
    static boolean standsInJoint(Bay bay) {
        if (bay.anchors() == null || bay.stackJoints() == null) {
            return false;
        }
        double lowest =
                bay.anchors().stream()
                        .filter(anchor -> onPiece(bay, anchor))
                        .mapToDouble(Anchor::elevation)
                        .min()
                        .orElse(bay.sill());
        return lowest > bay.sill() + Layout.TOUCH
                && bay.stackJoints().stream()
                        .anyMatch(joint -> Math.abs(joint.elevation() - bay.sill()) < Layout.TOUCH);
    }

    /**
     * Whether an anchor holds the piece of vertical that stands in the bay, and not one beyond a
     * stack joint below its sill or above its top.
     */
    static boolean onPiece(Bay bay, Anchor anchor) {
        double at = anchor.elevation();
        if (bay.stackJoints() != null) {
            for (StackJoint joint : bay.stackJoints()) {
                boolean below = joint.elevation() <= bay.sill() + Layout.TOUCH;
                boolean above = joint.elevation() >= bay.top() - Layout.TOUCH;
                if ((below && at < joint.elevation()) || (above && at > joint.elevation())) {
                    return false;
                }
            }
        }
        return true;
    }

    private static boolean agree(List<Double> given, List<Double> held) {
        if (given.size() != held.size()) {
            return false;
        }
        for (int i = 0; i < given.size(); i++) {
            if (Math.abs(given.get(i) - held.get(i)) > AGREES) {
                return false;
            }
        }
        return true;
    }

    /** A joint inside the vertical that carries no moment must be in the model as a hinge. */
    private static boolean jointsAreHinges(
            Bay bay,
            String pointer,
            double start,
            double end,
            List<Double> hinges,
            Reporting reporting,
            List<Finding> findings) {
        boolean all = true;
        List<StackJoint> joints = bay.stackJoints() == null ? List.of() : bay.stackJoints();
        for (int i = 0; i < joints.size(); i++) {
            double at = joints.get(i).elevation() - bay.sill();
            boolean inside = at > start + Layout.TOUCH && at < end - Layout.TOUCH;
            boolean hinge = hinges.stream().anyMatch(h -> Math.abs(h + start - at) < AGREES);
            if (inside && !hinge) {
                all = false;
                findings.add(
                        Finding.action(
                                "STACK_JOINT_IS_NOT_A_HINGE",
                                pointer + "/stackJoints/" + i,
                                "A stack joint lies inside the verticals, "
                                        + reporting.text(Dimension.DISTANCE, at)
                                        + " above the sill, and mullion.hinges does not name it:"
                                        + " the verticals were checked as if they ran through."));
            }
        }
        return all;
    }

    /** The anchor at a support of the line, or null where there is none. */
    @Nullable Anchor anchorAt(Bay bay, double support) {
        if (bay.anchors() != null) {
            for (Anchor anchor : bay.anchors()) {
                if (Math.abs(anchor.elevation() - bay.sill() - start - support) <= Layout.TOUCH) {
                    return anchor;
                }
            }
        }
        return null;
    }

    /** Shortest span between two supports, m; the length where there is only one. */
    double shortestSpan() {
        double shortest = length;
        for (int i = 1; i < supports.size(); i++) {
            shortest = Math.min(shortest, supports.get(i) - supports.get(i - 1));
        }
        return shortest;
    }

    /** Length of the span that ends at a place above the bay's sill, m; the longer where two do. */
    double spanAt(double above) {
        double longest = 0;
        for (int i = 1; i < supports.size(); i++) {
            boolean ends =
                    Math.abs(supports.get(i) + start - above) <= Layout.TOUCH
                            || Math.abs(supports.get(i - 1) + start - above) <= Layout.TOUCH;
            if (ends) {
                longest = Math.max(longest, supports.get(i) - supports.get(i - 1));
            }
        }
        return longest == 0 ? length : longest;
    }

    private static String words(List<Double> positions, Reporting reporting) {
        return String.join(
                ", ",
                positions.stream().map(at -> reporting.text(Dimension.DISTANCE, at)).toList());
    }
}
