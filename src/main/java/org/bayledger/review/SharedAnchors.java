package org.bayledger.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.bayledger.anchorage.Anchor;
import org.bayledger.check.Finding;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * Anchors at which the verticals of a bay meet those of the bay above or below: one anchor carries
 * both.
 */
final class SharedAnchors {

    private final ReviewContext context;
    private final Bay bay;
    private final String pointer;
    private final VerticalReview verticals;

    /** For each vertical of the bay, those of other bays in line with it. */
    private final List<List<VerticalRun>> inLine;

    SharedAnchors(
            ReviewContext context,
            Bay bay,
            String pointer,
            VerticalReview verticals,
            VerticalRuns runs) {
        this.context = context;
        this.bay = bay;
        this.pointer = pointer;
        this.verticals = verticals;
        inLine = verticals.runs().stream().map(runs::inLine).toList();
    }

    /**
     * The greatest wind that any vertical puts on an anchor, with that of the vertical that goes on
     * at it, as if both ran through; null where it was not found.
     */
    VerticalRun.@Nullable Force force(Anchor anchor) {
        VerticalRun.Force greatest = null;
        for (int i = 0; i < inLine.size(); i++) {
            VerticalRun run = verticals.runs().get(i);
            VerticalRun.Force own = run.forces().get(anchor.id());
            if (own == null) {
                continue;
            }
            VerticalRun.Force both = own;
            for (VerticalRun other : inLine.get(i)) {
                VerticalRun.Force theirs = theirs(other, anchor);
                if (theirs != null) {
                    both =
                            both.orGreater(
                                    run.runningThrough(own, other, theirs, anchor.elevation()));
                }
            }
            greatest = greatest == null ? both : greatest.orGreater(both);
        }
        return greatest;
    }

    private static VerticalRun.@Nullable Force theirs(VerticalRun other, Anchor anchor) {
        Anchor same = other.anchorAt(anchor.elevation());
        return same == null ? null : other.forces().get(same.id());
    }

    /**
     * The weight on a dead-load anchor, N, with that of the bays which it carries as well; null
     * where one is not known.
     */
    @Nullable Double weight(Anchor anchor, @Nullable Double own) {
        Double sum = own;
        for (Bay other : sharing(anchor)) {
            boolean carries =
                    anchors(other, anchor.elevation()).stream()
                            .anyMatch(theirs -> theirs.role() == Anchor.Role.DEAD_LOAD);
            if (carries && sum != null) {
                Double theirs = VerticalWeight.of(context, other);
                sum = theirs == null ? null : (Double) (sum + theirs);
            }
        }
        return sum;
    }

    /** What to say of an anchor at which another bay has one as well. */
    List<Finding> findings(Anchor anchor, String at) {
        List<Finding> findings = new ArrayList<>();
        for (Bay other : sharing(anchor)) {
            boolean known =
                    inLine.stream()
                            .flatMap(List::stream)
                            .filter(run -> run.at() >= other.offset() - Layout.TOUCH)
                            .filter(run -> run.at() <= other.right() + Layout.TOUCH)
                            .anyMatch(run -> theirs(run, anchor) != null);
            String shared =
                    "Bay " + other.id() + " has an anchor at the same level, taken as this one: ";
            VerticalRun.Force alone = verticals.force(anchor);
            VerticalRun.Force both = force(anchor);
            findings.add(
                    known && alone != null && both != null
                            ? Finding.note(
                                    "ANCHOR_SHARED_BETWEEN_BAYS",
                                    at + "/elevation",
                                    shared
                                            + "it carries the verticals of both, the wind as if"
                                            + " they ran through over it, "
                                            + text(both)
                                            + " instead of "
                                            + text(alone)
                                            + " from this bay alone. Where there are two anchors,"
                                            + " give each its own level.")
                            : Finding.action(
                                    "ANCHOR_SHARED_BETWEEN_BAYS",
                                    at + "/elevation",
                                    shared
                                            + "what its verticals put on it is not known, and is"
                                            + " not in the numbers. Complete bay "
                                            + other.id()
                                            + ", and put the verticals in line."));
        }
        return findings;
    }

    private String text(VerticalRun.Force force) {
        return context.reporting.text(
                Dimension.FORCE,
                Math.max(Math.abs(force.underPositive()), Math.abs(force.underNegative())));
    }

    /**
     * A piece of vertical without a joint between the dead-load anchors of two bays is held twice,
     * or its joint was not given.
     */
    List<Finding> heldTwice() {
        List<Finding> findings = new ArrayList<>();
        for (Bay other : stacked()) {
            if (bay.stackJoints() == null || other.stackJoints() == null) {
                continue;
            }
            Double mine = fixed(bay);
            Double theirs = fixed(other);
            if (mine == null || theirs == null || Math.abs(mine - theirs) <= Layout.TOUCH) {
                continue;
            }
            double low = Math.min(mine, theirs) - Layout.TOUCH;
            double high = Math.max(mine, theirs) + Layout.TOUCH;
            boolean jointed =
                    Stream.of(bay, other)
                            .map(Bay::stackJoints)
                            .filter(Objects::nonNull)
                            .flatMap(List::stream)
                            .anyMatch(joint -> joint.elevation() > low && joint.elevation() < high);
            if (!jointed) {
                findings.add(
                        Finding.action(
                                "NO_JOINT_BETWEEN_DEAD_LOAD_ANCHORS",
                                pointer + "/stackJoints",
                                "Between the dead-load anchors of bays "
                                        + String.join(" and ", ids(other))
                                        + " no stack joint was given: their verticals are one piece"
                                        + " that is fixed twice and can't move with temperature, or"
                                        + " their joint is not looked at. Give the joint, or slot"
                                        + " one of the anchors."));
            }
        }
        return findings;
    }

    private Set<String> ids(Bay other) {
        return new TreeSet<>(Set.of(bay.id(), other.id()));
    }

    private static @Nullable Double fixed(Bay of) {
        if (of.anchors() == null) {
            return null;
        }
        return of.anchors().stream()
                .filter(anchor -> anchor.role() == Anchor.Role.DEAD_LOAD)
                .filter(anchor -> MullionLine.onPiece(of, anchor))
                .map(Anchor::elevation)
                .findFirst()
                .orElse(null);
    }

    private List<Bay> stacked() {
        List<Bay> stacked = new ArrayList<>(context.layout.above(bay));
        stacked.addAll(context.layout.below(bay));
        return stacked;
    }

    /** The bays above and below with an anchor at the same level. */
    private List<Bay> sharing(Anchor anchor) {
        return stacked().stream()
                .filter(other -> !anchors(other, anchor.elevation()).isEmpty())
                .toList();
    }

    private static List<Anchor> anchors(Bay of, double elevation) {
        return of.anchors() == null
                ? List.of()
                : of.anchors().stream()
                        .filter(anchor -> MullionLine.onPiece(of, anchor))
                        .filter(anchor -> Math.abs(anchor.elevation() - elevation) <= Layout.TOUCH)
                        .toList();
    }
}
