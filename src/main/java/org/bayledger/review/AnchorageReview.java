package org.bayledger.review;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.anchorage.Anchor;
import org.bayledger.anchorage.AnchorForceResult;
import org.bayledger.anchorage.AnchorageMovementCheck;
import org.bayledger.anchorage.AnchorageMovementRequest;
import org.bayledger.anchorage.AnchorageMovementResult;
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
    private static final double GRAVITY = 9.80665; // m/s2
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
        items.add(whole);
        if (whole.item().result() instanceof AnchorageMovementResult result) {
            loaded.stream()
                    .filter(anchor -> MullionLine.onPiece(bay, anchor))
                    .forEach(anchor -> items.add(anchor(anchor, result)));
        }
        return items;
    }

    private Checked anchor(Anchor anchor, AnchorageMovementResult result) {
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
        Verdict verdict = force == null ? Verdict.UNDETERMINED : force.verdict();
        Double utilization = null;
        if (force != null) {
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
                        null,
                        anchor,
                        new AnchorItem(anchor.role(), force, slot),
                        List.of()),
                List.of());
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
                            ? Double.valueOf(0)
                            : columnMass(bay, vertical.number());
            Double left = leftMass(vertical);
            if (right == null || left == null) {
                return null;
            }
            heaviest = Math.max(heaviest, mass + (left + right) / 2);
        }
        return heaviest * GRAVITY;
    }

    private @Nullable Double leftMass(Layout.Vertical vertical) {
        if (vertical.number() > 1) {
            return columnMass(bay, vertical.number() - 1);
        }
        double heaviest = 0;
        for (Bay neighbour : context.layout.leftOf(bay)) {
            Double mass = columnMass(neighbour, neighbour.columns().size());
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
