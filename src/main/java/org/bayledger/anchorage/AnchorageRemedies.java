package org.bayledger.anchorage;

import java.util.List;
import org.bayledger.check.Remedy;
import org.bayledger.check.Reporting;
import org.bayledger.check.Verdict;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.bayledger.quantity.QuantityParser;
import org.jspecify.annotations.Nullable;

/**
 * The changes that together bring a run within its limits: a piece fixed where nothing carries it
 * and released where several anchors do, joints widened, slots lengthened, stronger anchors and
 * bolts, more clearance for a lite that racks. They are run through the check before they are
 * offered, and offered only where nothing is exceeded then and no demand is over its limit; what
 * was undetermined for want of data stays so.
 */
final class AnchorageRemedies {

    private final Reporting reporting;
    private final AnchorageChanges changes;

    private AnchorageRemedies(AnchorageMovementRequest request, Reporting reporting) {
        this.reporting = reporting;
        this.changes = new AnchorageChanges(request);
    }

    static List<Remedy> of(
            AnchorageMovementRequest request, Reporting reporting, AnchorageMovementResult result) {
        GlassDrift drift = new GlassDrift(request.movement());
        boolean shortOfDrift = drift.isExact() && drift.verdict() != Verdict.SATISFIED;
        boolean fixedTwice =
                result.pieces().stream().anyMatch(piece -> piece.deadLoadAnchors().size() > 1);
        if (result.outcome().verdict() != Verdict.EXCEEDED && !shortOfDrift && !fixedTwice) {
            return List.of();
        }
        AnchorageRemedies search = new AnchorageRemedies(request, reporting);
        search.fixPieces(request);
        AnchorageMovementResult held =
                AnchorageMovementCheck.evaluate(search.changes.request(), reporting);
        search.widenJoints(held);
        search.widenExpansionJoints(held);
        AnchorRemedies anchors = new AnchorRemedies(search.changes, reporting);
        anchors.lengthenSlots(held);
        anchors.strengthenAnchors(held);
        if (shortOfDrift) {
            search.giveClearance(drift);
        }
        return search.offered();
    }

    /** The changes, where they pass. */
    private List<Remedy> offered() {
        AnchorageMovementResult after =
                AnchorageMovementCheck.evaluate(changes.request(), reporting);
        Double utilization = after.outcome().utilization();
        boolean passes =
                after.outcome().verdict() != Verdict.EXCEEDED
                        && (utilization == null || utilization <= 1);
        if (changes.list().isEmpty() || !passes) {
            return List.of();
        }
        String text = changes.text();
        if (after.outcome().verdict() == Verdict.UNDETERMINED) {
            text += " What is undetermined for want of data stays so.";
        }
        return List.of(new Remedy(text, changes.list(), utilization == null ? 0 : utilization));
    }

    /**
     * The highest anchor of a piece that nothing carries becomes its dead-load anchor; of several
     * dead-load anchors of a piece one stays, that which may carry most, else the highest.
     */
    private void fixPieces(AnchorageMovementRequest request) {
        if (request.stackJoints() == null) {
            return;
        }
        for (Piece piece : Piece.of(request)) {
            List<Anchor> fixed = piece.fixed();
            if (fixed.isEmpty() && !piece.anchors().isEmpty()) {
                Anchor anchor = piece.anchors().get(piece.anchors().size() - 1);
                int i = changes.index(anchor.id());
                changes.anchors.set(
                        i, anchor.withRole(Anchor.Role.DEAD_LOAD, anchor.deadLoadReaction()));
                changes.add(
                        "/anchors/" + i + "/role",
                        Anchor.Role.DEAD_LOAD.name(),
                        "Make " + anchor.id() + " the dead-load anchor of its piece");
            } else if (fixed.size() > 1) {
                release(fixed);
            }
        }
    }

    private void release(List<Anchor> fixed) {
        Anchor kept = fixed.get(0);
        double weight = 0;
        boolean moved = false;
        for (Anchor anchor : fixed) {
            kept = allowable(anchor) >= allowable(kept) ? anchor : kept;
            weight += anchor.deadLoadReaction() == null ? 0 : anchor.deadLoadReaction();
        }
        if (weight > 0 && fixed.stream().anyMatch(a -> a.deadLoadReaction() == null)) {
            return; // what the one that stays would carry is not known
        }
        for (Anchor anchor : fixed) {
            if (anchor.equals(kept)) {
                continue;
            }
            int i = changes.index(anchor.id());
            changes.add(
                    "/anchors/" + i + "/role",
                    Anchor.Role.WIND_LOAD.name(),
                    "Slot "
                            + anchor.id()
                            + ", so that "
                            + kept.id()
                            + " alone carries the weight of its piece");
            Double reaction = anchor.deadLoadReaction();
            if (reaction != null && reaction > 0) {
                moved = true;
                changes.also("/anchors/" + i + "/deadLoadReaction", "0 N");
                reaction = 0.0;
            }
            changes.anchors.set(i, anchor.withRole(Anchor.Role.WIND_LOAD, reaction));
        }
        if (moved) {
            int i = changes.index(kept.id());
            String to = reporting.atLeast(Dimension.FORCE, weight);
            changes.also("/anchors/" + i + "/deadLoadReaction", to);
            changes.anchors.set(
                    i,
                    kept.withRole(
                            Anchor.Role.DEAD_LOAD, QuantityParser.parse(to, Dimension.FORCE)));
        }
    }

    private static double allowable(Anchor anchor) {
        return anchor.allowableDeadLoadForce() == null ? 0 : anchor.allowableDeadLoadForce();
    }

    private void widenJoints(AnchorageMovementResult held) {
        for (int j = 0; j < held.joints().size(); j++) {
            JointResult result = held.joints().get(j);
            List<StackJoint> joints = changes.joints;
            String to = wider(result.verdict(), result.requiredWidth());
            if (to != null && joints != null) {
                joints.set(j, joints.get(j).withNominalWidth(length(to)));
                changes.add(
                        "/stackJoints/" + j + "/nominalWidth",
                        to,
                        "Widen the joint at "
                                + reporting.text(Dimension.DISTANCE, joints.get(j).elevation())
                                + " to "
                                + to
                                + ", within the sealant maker's greatest width");
            }
        }
    }

    private void widenExpansionJoints(AnchorageMovementResult held) {
        for (int j = 0; j < held.expansionJoints().size(); j++) {
            ExpansionJointResult result = held.expansionJoints().get(j);
            List<ExpansionJoint> joints = changes.expansionJoints;
            String to = wider(result.verdict(), result.requiredWidth());
            if (to != null && joints != null) {
                joints.set(j, joints.get(j).withNominalWidth(length(to)));
                changes.add(
                        "/expansionJoints/" + j + "/nominalWidth",
                        to,
                        "Widen expansion joint "
                                + result.joint()
                                + " to "
                                + to
                                + ", within the sealant maker's greatest width");
            }
        }
    }

    private @Nullable String wider(Verdict verdict, @Nullable Quantity required) {
        return verdict != Verdict.EXCEEDED || required == null
                ? null
                : reporting.atLeast(Dimension.LENGTH, required.si());
    }

    private void giveClearance(GlassDrift drift) {
        DriftClearance lite = changes.movement.drift();
        Double demand = drift.demand();
        if (lite == null || demand == null) {
            return;
        }
        String to = reporting.atLeast(Dimension.LENGTH, lite.sideClearanceFor(demand));
        changes.movement = changes.movement.withDrift(lite.withSideClearance(length(to)));
        changes.add(
                "/drift/sideClearance",
                to,
                "Give the lite " + to + " at each side, if the bite allows it");
    }

    private static double length(String text) {
        return QuantityParser.parse(text, Dimension.LENGTH);
    }
}
