package org.bayledger.review;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.anchorage.Anchor;
import org.bayledger.anchorage.AnchorForceResult;
import org.bayledger.anchorage.AnchorageMovementCheck;
import org.bayledger.anchorage.AnchorageMovementRequest;
import org.bayledger.anchorage.AnchorageMovementResult;
import org.bayledger.anchorage.DriftClearance;
import org.bayledger.anchorage.Movement;
import org.bayledger.anchorage.SlotResult;
import org.bayledger.check.Finding;
import org.bayledger.check.Verdict;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/** The anchorage of one bay, with the reactions that its verticals put on each anchor. */
final class AnchorageReview {

    private static final String NAME = "anchorage-movement";

    /** By how much the module of a lite may exceed the glass in it. */
    private static final double SAME_LITE = 1.1;

    private final ReviewContext context;
    private final Bay bay;
    private final String pointer;
    private final VerticalReview verticals;
    private final SharedAnchors shared;
    private final List<Finding> own = new ArrayList<>();

    AnchorageReview(
            ReviewContext context,
            Bay bay,
            String pointer,
            VerticalReview verticals,
            VerticalRuns runs) {
        this.context = context;
        this.bay = bay;
        this.pointer = pointer;
        this.verticals = verticals;
        this.shared = new SharedAnchors(context, bay, pointer, verticals, runs);
    }

    List<Checked> items() {
        String id = bay.id() + "/anchorage";
        List<Anchor> given = bay.anchors() == null ? List.of() : bay.anchors();
        if (given.isEmpty()) {
            return List.of(
                    Checked.missing(
                            id,
                            NAME,
                            "ANCHORS_NOT_GIVEN",
                            pointer + "/anchors",
                            "No anchors were given for this bay."));
        }
        List<Anchor> loaded = new ArrayList<>();
        for (int i = 0; i < given.size(); i++) {
            loaded.add(loaded(given.get(i), pointer + "/anchors/" + i));
        }
        List<Checked> items = new ArrayList<>();
        Movement movement = bay.movement() == null ? Movement.NOTHING_SAID : bay.movement();
        boolean anotherLite = driftLeavesOutALite(movement.drift());
        if (anotherLite) {
            own.add(
                    Finding.action(
                            "DRIFT_OF_A_LARGER_LITE_NOT_CHECKED",
                            pointer + "/movement/drift",
                            "The lite given for the drift is not the one of this bay that the drift"
                                    + " squeezes most: give the largest."));
        }
        List<Finding> through = shared.heldTwice();
        own.addAll(through);
        boolean heldTwice = !through.isEmpty();
        Checked whole =
                Checked.run(
                        id,
                        NAME,
                        pointer,
                        null,
                        own,
                        () -> {
                            AnchorageMovementRequest request =
                                    new AnchorageMovementRequest(
                                            loaded,
                                            bay.stackJoints(),
                                            movement,
                                            bay.expansionJoints());
                            AnchorageMovementResult result =
                                    AnchorageMovementCheck.run(request, context.reporting);
                            return new Checked.Ran(request, result, result.outcome());
                        });
        items.add(anotherLite || heldTwice ? whole.atLeast(Verdict.UNDETERMINED) : whole);
        if (whole.item().result() instanceof AnchorageMovementResult result) {
            for (int i = 0; i < loaded.size(); i++) {
                if (MullionLine.onPiece(bay, loaded.get(i))) {
                    items.add(anchor(loaded.get(i), pointer + "/anchors/" + i, result));
                }
            }
        }
        return items;
    }

    private Checked anchor(Anchor anchor, String at, AnchorageMovementResult result) {
        AnchorForceResult force =
                result.anchors().stream()
                        .filter(found -> found.anchor().equals(anchor.id()))
                        .findFirst()
                        .orElse(null);
        SlotResult slot =
                result.slots().stream()
                        .filter(found -> found.anchor().equals(anchor.id()))
                        .findFirst()
                        .orElse(null);
        List<Finding> said = open(anchor, at, force);
        said.addAll(shared.findings(anchor, at));
        boolean open =
                said.stream().anyMatch(finding -> finding.severity() == Finding.Severity.ACTION);
        Verdict verdict = open ? Verdict.UNDETERMINED : Verdict.SATISFIED;
        Double utilization = null;
        if (force != null) {
            verdict = verdict.and(force.verdict());
            utilization = greater(force.windUtilization(), force.deadLoadUtilization());
        }
        if (slot != null) {
            verdict = verdict.and(slot.verdict());
            utilization = greater(utilization, slot.utilization());
        }
        return new Checked(
                new ReviewItem(
                        bay.id() + "/anchor/" + anchor.id(),
                        NAME,
                        verdict,
                        utilization,
                        verticals.wind(anchor),
                        anchor,
                        new AnchorItem(anchor.role(), force, slot),
                        said),
                List.of());
    }

    /**
     * Whether the bay has a lite that does less in a drift than the one given: with the same
     * clearances demand over capacity is proportional to hp / (c1 + c2 hp / bp).
     */
    private boolean driftLeavesOutALite(@Nullable DriftClearance given) {
        if (given == null) {
            return false;
        }
        double worst = squeezed(given, given.glassWidth(), given.glassHeight());
        return bay.columns().stream()
                .anyMatch(
                        width ->
                                bay.rows().stream()
                                        .anyMatch(
                                                height ->
                                                        squeezed(given, width, height)
                                                                > worst * SAME_LITE));
    }

    private static double squeezed(DriftClearance clearance, double width, double height) {
        return height
                / (clearance.sideClearance() + clearance.topBottomClearance() * height / width);
    }

    /** What keeps an anchor's forces from being judged. */
    private List<Finding> open(Anchor anchor, String at, @Nullable AnchorForceResult force) {
        List<Finding> open = new ArrayList<>();
        if (force == null || force.windUtilization() == null) {
            open.add(
                    Finding.action(
                            "ANCHOR_NOT_CHECKED_FOR_WIND",
                            at + "/allowableWindForce",
                            "This anchor was not checked for wind: what it carries or what it may"
                                    + " carry is not known."));
        }
        boolean fixed = anchor.role() == Anchor.Role.DEAD_LOAD;
        if (fixed && (force == null || force.deadLoadUtilization() == null)) {
            open.add(
                    Finding.action(
                            "ANCHOR_NOT_CHECKED_FOR_WEIGHT",
                            at + "/allowableDeadLoadForce",
                            "This dead-load anchor was not checked for weight: what it carries or"
                                    + " what it may carry is not known."));
        }
        if (verticals.isOpenAtCorner()) {
            open.add(corner(anchor, fixed));
        }
        if (verticals.isOpenAbove()) {
            open.add(
                    Finding.action(
                            "CARRIES_PIECE_ABOVE",
                            pointer + "/stackJoints",
                            "The verticals above stand in the stack joint on top of these: what"
                                    + " wind puts on this anchor from there is not known or not"
                                    + " all in the numbers."));
        }
        return open;
    }

    /** That wind round a corner pushes an anchor parallel to the wall as well. */
    private Finding corner(Anchor anchor, boolean fixed) {
        Double force = verticals.sideways(anchor);
        String weight =
                fixed ? " Nor is the weight of the wall round the corner in what it carries." : "";
        return Finding.action(
                "CORNER_FORCE_NOT_IN_THE_NUMBERS",
                pointer + "/cornerReturns",
                force == null
                        ? "A vertical of this bay stands at a corner of the building and carries,"
                                + " or may carry, the wall round the corner: its force on this"
                                + " anchor parallel to the wall is not in the numbers."
                                + weight
                        : "A vertical of this bay carries the wall round a corner of the building:"
                                + " wind there pushes this anchor parallel to the wall with up to "
                                + context.reporting.text(Dimension.FORCE, force)
                                + ", at the same time as the wind on this elevation. What the"
                                + " anchor may carry in that direction, and in both at once, was"
                                + " not given: have it designed for both."
                                + weight);
    }

    private static @Nullable Double greater(@Nullable Double one, @Nullable Double other) {
        if (one == null) {
            return other;
        }
        return other == null ? one : (Double) Math.max(one, other);
    }

    /** The anchor with the greater of the reactions found and those that the document gives. */
    private Anchor loaded(Anchor anchor, String at) {
        VerticalRun.Force force = shared.force(anchor);
        Double positive = anchor.windReactionPositive();
        Double negative = anchor.windReactionNegative();
        if (force != null) {
            positive = worse(positive, force.underPositive(), at + "/windReactionPositive");
            negative = worse(negative, force.underNegative(), at + "/windReactionNegative");
        }
        Double dead = anchor.deadLoadReaction();
        if (anchor.role() == Anchor.Role.DEAD_LOAD && MullionLine.onPiece(bay, anchor)) {
            Double found = shared.weight(anchor, VerticalWeight.of(context, bay));
            if (found != null) {
                dead = worse(dead, found, at + "/deadLoadReaction");
            }
        }
        return anchor.withReactions(positive, negative, dead);
    }

    private double worse(@Nullable Double given, double found, String at) {
        if (given == null) {
            return found;
        }
        if (Math.abs(given) < Math.abs(found) * (1 - 1e-3)) {
            own.add(
                    Finding.action(
                            "GIVEN_REACTION_IS_TOO_SMALL",
                            at,
                            "The reaction given for this anchor is smaller than what this review"
                                    + " finds; the greater one was used."));
        }
        return Math.abs(given) >= Math.abs(found) ? given : found;
    }
}
