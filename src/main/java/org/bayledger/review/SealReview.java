package org.bayledger.review;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.bayledger.anchorage.StackJoint;
import org.bayledger.blocks.BlockSupport;
import org.bayledger.check.Finding;
import org.bayledger.quantity.Dimension;
import org.bayledger.seals.Edge;
import org.bayledger.seals.SealDetails;
import org.bayledger.seals.SealsCheck;
import org.bayledger.seals.SealsRequest;
import org.bayledger.seals.SealsResult;
import org.bayledger.seals.WallSystem;
import org.jspecify.annotations.Nullable;

/** The internal seals of one bay, with its grid, its neighbours, its splices and its wind. */
final class SealReview {

    private static final String NAME = "internal-seals";

    /** Levels nearer than this are those of the same joint, m. */
    private static final double SAME = 0.003;

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

    /** Stack joints of the bay that are in nobody's count: neither in its own nor a neighbour's. */
    private List<Finding> beyondTheRows(SealDetails given) {
        List<Finding> findings = new ArrayList<>();
        List<StackJoint> joints = bay.stackJoints() == null ? List.of() : bay.stackJoints();
        if (given.systemOrDefault() == WallSystem.WINDOW_WALL || given.stackJoints() != null) {
            return findings;
        }
        for (int i = 0; i < joints.size(); i++) {
            double level = joints.get(i).elevation();
            if (!counts(level) && neighboursAcross().stream().noneMatch(it -> it.counts(level))) {
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

    /** The bays above and below, as this check sees them. */
    private List<SealReview> neighboursAcross() {
        return Stream.concat(context.layout.above(bay).stream(), context.layout.below(bay).stream())
                .map(other -> new SealReview(context, other, ""))
                .toList();
    }

    /** Whether the stack joint at a level is among the joints counted for this bay. */
    private boolean counts(double level) {
        SealDetails given = bay.seals();
        List<Double> heights = given == null ? null : stackJoints(given);
        return heights != null
                && heights.stream().anyMatch(at -> Math.abs(bay.sill() + at - level) < SAME);
    }

    private boolean crosses(double at) {
        return at > Layout.TOUCH && at < bay.height() - Layout.TOUCH;
    }

    /** What the seals leave out and the rest of the bay tells. */
    private SealDetails completed(SealDetails given) {
        return given.within(
                        given.splices() == null ? splices(given) : given.splices(),
                        stackJoints(given),
                        continuous(given))
                .atLevel(bay.sill());
    }

    private List<Edge> continuous(SealDetails given) {
        return given.continuousEdges() == null ? neighbours() : given.continuousEdges();
    }

    /** Splices of a stick-built bay; the pieces of the other systems end at their joints. */
    private @Nullable List<Double> splices(SealDetails given) {
        Mullion mullion = bay.mullion();
        if (given.systemOrDefault() != WallSystem.STICK_BUILT
                || mullion == null
                || mullion.hinges() == null) {
            return null;
        }
        List<Double> stacks = stackJoints(given);
        List<Double> splices = new ArrayList<>();
        for (double hinge : mullion.hinges()) {
            boolean stack =
                    stacks != null && stacks.stream().anyMatch(at -> Math.abs(at - hinge) < SAME);
            if (!stack && hinge < bay.height() - Layout.TOUCH) {
                splices.add(hinge);
            }
        }
        return splices;
    }

    /**
     * Heights above the sill of the stack joints that count with this bay: those that cross its
     * rows, and the one along its sill where the wall goes on below; the one along its top counts
     * with the bay above. A bay lists its own, and a neighbour may list them as well or instead.
     */
    private @Nullable List<Double> stackJoints(SealDetails given) {
        if (given.stackJoints() != null
                || bay.stackJoints() == null
                || given.systemOrDefault() == WallSystem.WINDOW_WALL) {
            return given.stackJoints();
        }
        boolean below = continuous(given).contains(Edge.BOTTOM);
        List<Double> heights = new ArrayList<>();
        for (Bay other : listing()) {
            List<StackJoint> joints = other.stackJoints() == null ? List.of() : other.stackJoints();
            for (StackJoint joint : joints) {
                double at = joint.elevation() - bay.sill();
                boolean along = below && Math.abs(at) <= Layout.TOUCH;
                boolean across = crosses(at) && spans(other);
                if ((along || across) && heights.stream().noneMatch(h -> near(h, at))) {
                    heights.add(along ? 0 : at);
                }
            }
        }
        return heights;
    }

    /** The bay itself and those above and below it. */
    private List<Bay> listing() {
        List<Bay> bays = new ArrayList<>(List.of(bay));
        bays.addAll(context.layout.below(bay));
        bays.addAll(context.layout.above(bay));
        return bays;
    }

    private boolean spans(Bay other) {
        return other.offset() <= bay.offset() + Layout.TOUCH
                && other.right() >= bay.right() - Layout.TOUCH;
    }

    private static boolean near(double one, double other) {
        return Math.abs(one - other) < SAME;
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
