package org.bayledger.review;

import static org.bayledger.quantity.Constants.STANDARD_GRAVITY;

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
import org.bayledger.framing.Section;
import org.bayledger.glazing.GlassBuildUp;
import org.jspecify.annotations.Nullable;

/** The anchorage of one bay, with the reactions that its verticals put on each anchor. */
final class AnchorageReview {

    private static final String NAME = "anchorage-movement";

    /** By how much the module of a lite may exceed the glass in it. */
    private static final double SAME_LITE = 1.1;

    private static final Movement NOTHING_SAID =
            new Movement(null, null, null, null, null, null, null, null, null);

    private final ReviewContext context;
    private final Bay bay;
    private final String pointer;
    private final VerticalReview verticals;
    private final List<Finding> own = new ArrayList<>();

    AnchorageReview(ReviewContext context, Bay bay, String pointer, VerticalReview verticals) {
        this.context = context;
        this.bay = bay;
        this.pointer = pointer;
        this.verticals = verticals;
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
        Movement movement = bay.movement() == null ? NOTHING_SAID : bay.movement();
        boolean anotherLite = driftLeavesOutALite(movement.drift());
        if (anotherLite) {
            own.add(
                    Finding.action(
                            "DRIFT_OF_A_LARGER_LITE_NOT_CHECKED",
                            pointer + "/movement/drift",
                            "The lite given for the drift is not the one of this bay that the drift"
                                    + " squeezes most: give the largest."));
        }
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
                                            loaded, bay.stackJoints(), movement);
                            AnchorageMovementResult result =
                                    AnchorageMovementCheck.run(request, context.reporting);
                            return new Checked.Ran(request, result, result.outcome());
                        });
        items.add(anotherLite ? whole.atLeast(Verdict.UNDETERMINED) : whole);
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
        List<Finding> open = open(anchor, at, force);
        VerticalReview.Force reaction = verticals.force(anchor);
        Verdict verdict = open.isEmpty() ? Verdict.SATISFIED : Verdict.UNDETERMINED;
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
                        reaction == null ? null : reaction.wind(),
                        anchor,
                        new AnchorItem(anchor.role(), force, slot),
                        open),
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
        if (verticals.carriesPieceAbove()) {
            open.add(
                    Finding.action(
                            "CARRIES_PIECE_ABOVE",
                            pointer + "/stackJoints",
                            "The verticals above stand in the stack joint on top of these: what"
                                    + " wind puts on this anchor from there is not in the"
                                    + " numbers."));
        }
        List<Bay> stacked = new ArrayList<>(context.layout.above(bay));
        stacked.addAll(context.layout.below(bay));
        for (Bay other : stacked) {
            if (other.anchors() != null
                    && other.anchors().stream()
                            .filter(theirs -> MullionLine.onPiece(other, theirs))
                            .anyMatch(
                                    theirs ->
                                            Math.abs(theirs.elevation() - anchor.elevation())
                                                    <= Layout.TOUCH)) {
                open.add(
                        Finding.action(
                                "ANCHOR_SHARED_BETWEEN_BAYS",
                                at + "/elevation",
                                "Bay "
                                        + other.id()
                                        + " has an anchor at the same level: where they are one, it"
                                        + " carries the verticals of both, and the forces were not"
                                        + " added. Give both bays as one."));
            }
        }
        return open;
    }

    private static @Nullable Double greater(@Nullable Double one, @Nullable Double other) {
        if (one == null) {
            return other;
        }
        return other == null ? one : (Double) Math.max(one, other);
    }

    /** The anchor with the greater of the reactions found and those that the document gives. */
    private Anchor loaded(Anchor anchor, String at) {
        VerticalReview.Force force = verticals.force(anchor);
        Double positive = anchor.windReactionPositive();
        Double negative = anchor.windReactionNegative();
        if (force != null) {
            positive = worse(positive, force.underPositive(), at + "/windReactionPositive");
            negative = worse(negative, force.underNegative(), at + "/windReactionNegative");
        }
        Double dead = anchor.deadLoadReaction();
        if (anchor.role() == Anchor.Role.DEAD_LOAD && MullionLine.onPiece(bay, anchor)) {
            Double found = deadLoad();
            if (found != null) {
                dead = worse(dead, found, at + "/deadLoadReaction");
            }
        }
        return new Anchor(
                anchor.id(),
                anchor.elevation(),
                anchor.role(),
                anchor.slabLiveLoadDeflection(),
                anchor.slotUp(),
                anchor.slotDown(),
                positive,
                negative,
                dead,
                anchor.allowableWindForce(),
                anchor.allowableDeadLoadForce());
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

    /**
     * Weight that the heaviest vertical of the bay hands to its dead-load anchor, N: half of each
     * lite and horizontal beside it and its own, over the bay's height; null where a glass type or
     * a mass is not known, or where the bay has more than one dead-load anchor.
     */
    private @Nullable Double deadLoad() {
        long fixed =
                bay.anchors() == null
                        ? 0
                        : bay.anchors().stream()
                                .filter(anchor -> anchor.role() == Anchor.Role.DEAD_LOAD)
                                .filter(anchor -> MullionLine.onPiece(bay, anchor))
                                .count();
        Mullion mullion = bay.mullion();
        Horizontal horizontal = bay.horizontal();
        Section upright = context.section(mullion == null ? null : mullion.section());
        Section across = context.section(horizontal == null ? null : horizontal.section());
        MullionLine line = verticals.line();
        if (fixed != 1
                || upright == null
                || across == null
                || line == null
                || upright.massPerLength() == null
                || across.massPerLength() == null) {
            return null;
        }
        double heaviest = 0;
        for (Layout.Vertical vertical : context.layout.verticals(bay)) {
            double mass =
                    upright.massPerLength() * line.length()
                            + across.massPerLength()
                                    * vertical.tributaryWidth()
                                    * (bay.rows().size() + 1);
            Double right =
                    vertical.number() > bay.columns().size()
                            ? heaviest(context.layout.rightOf(bay), true)
                            : columnMass(bay, vertical.number());
            Double left = leftMass(vertical);
            if (right == null || left == null) {
                return null;
            }
            heaviest = Math.max(heaviest, mass + (left + right) / 2);
        }
        return heaviest * STANDARD_GRAVITY;
    }

    private @Nullable Double leftMass(Layout.Vertical vertical) {
        return vertical.number() > 1
                ? columnMass(bay, vertical.number() - 1)
                : heaviest(context.layout.leftOf(bay), false);
    }

    /**
     * Mass of the heaviest first or last column of some bays, kg, or null where one is not known.
     */
    private @Nullable Double heaviest(List<Bay> neighbours, boolean first) {
        double heaviest = 0;
        for (Bay neighbour : neighbours) {
            Double mass = columnMass(neighbour, first ? 1 : neighbour.columns().size());
            if (mass == null) {
                return null;
            }
            heaviest = Math.max(heaviest, mass);
        }
        return heaviest;
    }

    private @Nullable Double columnMass(Bay of, int column) {
        double mass = 0;
        for (int row = 1; row <= of.rows().size(); row++) {
            GlassBuildUp glass = context.glass(of.glassTypeOf(column, row));
            if (glass == null) {
                return null;
            }
            mass += glass.areaMass() * of.columns().get(column - 1) * of.rows().get(row - 1);
        }
        return mass;
    }
}
