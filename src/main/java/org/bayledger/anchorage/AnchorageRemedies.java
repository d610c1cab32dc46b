package org.bayledger.anchorage;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.check.Remedy;
import org.bayledger.check.Reporting;
import org.bayledger.check.Verdict;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.bayledger.quantity.QuantityParser;
import org.jspecify.annotations.Nullable;

/**
 * The changes that together bring a run within its limits: a piece fixed where nothing carries it,
 * joints widened, slots lengthened, stronger anchors, more clearance for a lite that racks. They
 * are run through the check before they are offered, and offered only where nothing is exceeded
 * then and no demand is over its limit; what was undetermined for want of data stays so.
 */
final class AnchorageRemedies {

    private final Reporting reporting;
    private final List<Remedy.Change> changes = new ArrayList<>();
    private final List<String> words = new ArrayList<>();
    private final List<Anchor> anchors;
    private final @Nullable List<StackJoint> joints;
    private Movement movement;

    private AnchorageRemedies(AnchorageMovementRequest request, Reporting reporting) {
        this.reporting = reporting;
        this.anchors = new ArrayList<>(request.anchors());
        this.joints = request.stackJoints() == null ? null : new ArrayList<>(request.stackJoints());
        this.movement = request.movement();
    }

    static List<Remedy> of(
            AnchorageMovementRequest request, Reporting reporting, AnchorageMovementResult result) {
        GlassDrift drift = new GlassDrift(request.movement());
        boolean shortOfDrift = drift.isExact() && drift.verdict() != Verdict.SATISFIED;
        if (result.outcome().verdict() != Verdict.EXCEEDED && !shortOfDrift) {
            return List.of();
        }
        AnchorageRemedies search = new AnchorageRemedies(request, reporting);
        search.fixPieces(request);
        AnchorageMovementResult held = AnchorageMovementCheck.evaluate(search.changed(), reporting);
        search.widenJoints(held);
        search.lengthenSlots(held);
        search.strengthenAnchors(held);
        if (shortOfDrift) {
            search.giveClearance(drift);
        }
        AnchorageMovementResult after =
                AnchorageMovementCheck.evaluate(search.changed(), reporting);
        Double utilization = after.outcome().utilization();
        boolean passes =
                after.outcome().verdict() != Verdict.EXCEEDED
                        && (utilization == null || utilization <= 1);
        if (search.changes.isEmpty() || !passes) {
            return List.of();
        }
        String text = String.join("; ", search.words) + ".";
        if (after.outcome().verdict() == Verdict.UNDETERMINED) {
            text += " What is undetermined for want of data stays so.";
        }
        return List.of(new Remedy(text, search.changes, utilization == null ? 0 : utilization));
    }

    private AnchorageMovementRequest changed() {
        return new AnchorageMovementRequest(anchors, joints, movement);
    }

    /** The highest anchor of a piece that nothing carries becomes its dead-load anchor. */
    private void fixPieces(AnchorageMovementRequest request) {
        if (request.stackJoints() == null) {
            return;
        }
        for (Piece piece : Piece.of(request)) {
            if (piece.fixed().isEmpty() && !piece.anchors().isEmpty()) {
                Anchor anchor = piece.anchors().get(piece.anchors().size() - 1);
                int i = anchors.indexOf(anchor);
                anchors.set(
                        i,
                        with(
                                anchor,
                                Anchor.Role.DEAD_LOAD,
                                anchor.slotUp(),
                                anchor.slotDown(),
                                anchor.allowableWindForce(),
                                anchor.allowableDeadLoadForce()));
                change(
                        "/anchors/" + i + "/role",
                        Anchor.Role.DEAD_LOAD.name(),
                        "Make " + anchor.id() + " the dead-load anchor of its piece");
            }
        }
    }

    private void widenJoints(AnchorageMovementResult held) {
        for (int j = 0; j < held.joints().size(); j++) {
            Quantity required = held.joints().get(j).requiredWidth();
            if (held.joints().get(j).verdict() == Verdict.EXCEEDED
                    && required != null
                    && joints != null) {
                String to = reporting.atLeast(Dimension.LENGTH, required.si());
                StackJoint joint = joints.get(j);
                joints.set(
                        j,
                        new StackJoint(
                                joint.elevation(), length(to), joint.sealantMovementCapability()));
                change(
                        "/stackJoints/" + j + "/nominalWidth",
                        to,
                        "Widen the joint at "
                                + reporting.text(Dimension.DISTANCE, joint.elevation())
                                + " to "
                                + to
                                + ", within the sealant maker's greatest width");
            }
        }
    }

    private void lengthenSlots(AnchorageMovementResult held) {
        for (SlotResult slot : held.slots()) {
            if (slot.verdict() != Verdict.EXCEEDED || slot.up() == null || slot.down() == null) {
                continue;
            }
            int i = index(slot.anchor());
            Anchor anchor = anchors.get(i);
            Double up = anchor.slotUp();
            Double down = anchor.slotDown();
            if (up != null && slot.up().si() > up) {
                String to = reporting.atLeast(Dimension.LENGTH, slot.up().si());
                up = length(to);
                change(
                        "/anchors/" + i + "/slotUp",
                        to,
                        "Give the mullion " + to + " to move up at " + anchor.id());
            }
            if (down != null && slot.down().si() > down) {
                String to = reporting.atLeast(Dimension.LENGTH, slot.down().si());
                down = length(to);
                change(
                        "/anchors/" + i + "/slotDown",
                        to,
                        "Give the mullion " + to + " to move down at " + anchor.id());
            }
            anchors.set(
                    i,
                    with(
                            anchor,
                            anchor.role(),
                            up,
                            down,
                            anchor.allowableWindForce(),
                            anchor.allowableDeadLoadForce()));
        }
    }

    private void strengthenAnchors(AnchorageMovementResult held) {
        for (AnchorForceResult force : held.anchors()) {
            int i = index(force.anchor());
            Anchor anchor = anchors.get(i);
            Double wind = anchor.allowableWindForce();
            Double dead = anchor.allowableDeadLoadForce();
            if (over(force.windUtilization()) && force.windReaction() != null) {
                String to = reporting.atLeast(Dimension.FORCE, force.windReaction().si());
                wind = QuantityParser.parse(to, Dimension.FORCE);
                change(
                        "/anchors/" + i + "/allowableWindForce",
                        to,
                        "Choose an anchor at "
                                + anchor.id()
                                + " that may carry "
                                + to
                                + " of wind");
            }
            if (over(force.deadLoadUtilization()) && anchor.deadLoadReaction() != null) {
                String to = reporting.atLeast(Dimension.FORCE, anchor.deadLoadReaction());
                dead = QuantityParser.parse(to, Dimension.FORCE);
                change(
                        "/anchors/" + i + "/allowableDeadLoadForce",
                        to,
                        "Choose an anchor at "
                                + anchor.id()
                                + " that may carry "
                                + to
                                + " of weight");
            }
            anchors.set(
                    i, with(anchor, anchor.role(), anchor.slotUp(), anchor.slotDown(), wind, dead));
        }
    }

    private void giveClearance(GlassDrift drift) {
        DriftClearance lite = movement.drift();
        Double demand = drift.demand();
        if (lite == null || demand == null) {
            return;
        }
        String to = reporting.atLeast(Dimension.LENGTH, lite.sideClearanceFor(demand));
        movement =
                new Movement(
                        movement.material(),
                        movement.temperature(),
                        movement.erectionTolerance(),
                        movement.metalClearance(),
                        movement.columnShortening(),
                        movement.interstoryDrift(),
                        movement.storyHeight(),
                        new DriftClearance(
                                lite.glassWidth(),
                                lite.glassHeight(),
                                length(to),
                                lite.topBottomClearance(),
                                lite.importanceFactor()),
                        movement.sectionArea());
        change(
                "/drift/sideClearance",
                to,
                "Give the lite " + to + " at each side, if the bite allows it");
    }

    private void change(String pointer, String to, String text) {
        changes.add(new Remedy.Change(pointer, to));
        words.add(text);
    }

    private static double length(String text) {
        return QuantityParser.parse(text, Dimension.LENGTH);
    }

    private int index(String id) {
        int i = 0;
        while (!anchors.get(i).id().equals(id)) {
            i++;
        }
        return i;
    }

    private static boolean over(@Nullable Double utilization) {
        return utilization != null && utilization > 1;
    }

    private static Anchor with(
            Anchor anchor,
            Anchor.Role role,
            @Nullable Double slotUp,
            @Nullable Double slotDown,
            @Nullable Double allowableWind,
            @Nullable Double allowableDead) {
        return new Anchor(
                anchor.id(),
                anchor.elevation(),
                role,
                anchor.slabLiveLoadDeflection(),
                slotUp,
                slotDown,
                anchor.windReactionPositive(),
                anchor.windReactionNegative(),
                anchor.deadLoadReaction(),
                allowableWind,
                allowableDead);
    }
}
