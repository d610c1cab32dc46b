package org.bayledger.review;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.anchorage.StackJoint;
import org.bayledger.blocks.BlockSupport;
import org.bayledger.check.Finding;
import org.bayledger.quantity.Dimension;
import org.bayledger.seals.Edge;
import org.bayledger.seals.SealDetails;
import org.bayledger.seals.SealsCheck;
import org.bayledger.seals.SealsRequest;
import org.bayledger.seals.SealsResult;
import org.jspecify.annotations.Nullable;

/** The internal seals of one bay, with its grid, its neighbours, its splices and its wind. */
final class SealReview {

    private static final String NAME = "internal-seals";

    private final ReviewContext context;
    private final Bay bay;
    private final String pointer;

    SealReview(ReviewContext context, Bay bay, String pointer) {
        this.context = context;
        this.bay = bay;
        this.pointer = pointer;
    }

    Checked item() {
        String id = bay.id() + "/seals";
        SealDetails given = bay.seals();
        if (given == null) {
            return Checked.missing(
                    id,
                    NAME,
                    "SEALS_NOT_GIVEN",
                    pointer + "/seals",
                    "Nothing was said of this bay's internal seals.");
        }
        // the smallest lite sees the greatest pressure, and water is driven in by that
        WallWind.Seen seen =
                context.wind.on(
                        pointer,
                        new WallWind.Patch(
                                bay.elevation(),
                                bay.offset(),
                                bay.right(),
                                bay.sill(),
                                bay.top(),
                                bay.smallestLite()));
        return Checked.run(
                id,
                NAME,
                pointer,
                seen,
                beyondTheRows(given),
                () -> {
                    SealsRequest request =
                            new SealsRequest(
                                    bay.columns(), bay.rows(), seen.load(), completed(given));
                    SealsResult result = SealsCheck.run(request, context.reporting);
                    return new Checked.Ran(request, result, result.outcome());
                });
    }

    /** Stack joints of the bay that do not cross its rows, and so are in nobody's count. */
    private List<Finding> beyondTheRows(SealDetails given) {
        List<Finding> findings = new ArrayList<>();
        List<StackJoint> joints = bay.stackJoints() == null ? List.of() : bay.stackJoints();
        for (int i = 0; given.stackJoints() == null && i < joints.size(); i++) {
            double level = joints.get(i).elevation();
            if (!crosses(level - bay.sill())) {
                findings.add(
                        Finding.note(
                                "STACK_JOINT_NOT_IN_COUNT",
                                pointer + "/stackJoints/" + i,
                                "The stack joint at "
                                        + context.reporting.text(Dimension.DISTANCE, level)
                                        + " does not cross the rows of this bay: its seal is not"
                                        + " among the joints counted here."));
            }
        }
        return findings;
    }

    private boolean crosses(double at) {
        return at > Layout.TOUCH && at < bay.height() - Layout.TOUCH;
    }

    /** What the seals leave out and the rest of the bay tells. */
    private SealDetails completed(SealDetails given) {
        return new SealDetails(
                given.drainage(),
                given.bead(),
                given.perimeterBead(),
                given.beadLengths(),
                given.splices() == null ? splices() : given.splices(),
                given.stackJoints() == null ? stackJoints() : given.stackJoints(),
                given.pressurePlateLength(),
                given.fastenersPerHorizontalEnd(),
                given.perimeterFastenerSpacing(),
                given.jointCovers(),
                given.anchorPenetrations(),
                given.continuousEdges() == null ? neighbours() : given.continuousEdges(),
                given.endDamHeight(),
                given.cartridgeVolume(),
                given.wasteFactor(),
                given.waterTest(),
                given.airLeakage(),
                given.wettedArea(),
                given.missedJoint());
    }

    private @Nullable List<Double> splices() {
        Mullion mullion = bay.mullion();
        if (mullion == null || mullion.hinges() == null) {
            return null;
        }
        List<Double> stacks = stackJoints();
        List<Double> splices = new ArrayList<>();
        for (double hinge : mullion.hinges()) {
            boolean stack =
                    stacks != null && stacks.stream().anyMatch(at -> Math.abs(at - hinge) < 0.003);
            if (!stack && hinge < bay.height() - Layout.TOUCH) {
                splices.add(hinge);
            }
        }
        return splices;
    }

    private @Nullable List<Double> stackJoints() {
        if (bay.stackJoints() == null) {
            return null;
        }
        return bay.stackJoints().stream()
                .map(StackJoint::elevation)
                .map(level -> level - bay.sill())
                .filter(this::crosses)
                .toList();
    }

    /**
     * Edges at which the wall goes on along the whole edge; one that meets the building anywhere
     * has a perimeter joint, and is counted as if it had one all along. A sill that is shimmed
     * stands on the building.
     */
    private List<Edge> neighbours() {
        List<Edge> edges = new ArrayList<>();
        if (context.layout.continuesLeft(bay)) {
            edges.add(Edge.LEFT);
        }
        if (context.layout.continuesRight(bay)) {
            edges.add(Edge.RIGHT);
        }
        boolean slabAbove =
                context.layout.above(bay).stream()
                        .anyMatch(above -> above.sillSupport() == BlockSupport.Kind.SHIMMED_SILL);
        if (context.layout.continuesAbove(bay) && !slabAbove) {
            edges.add(Edge.TOP);
        }
        if (context.layout.continuesBelow(bay)
                && bay.sillSupport() != BlockSupport.Kind.SHIMMED_SILL) {
            edges.add(Edge.BOTTOM);
        }
        return edges;
    }
}
