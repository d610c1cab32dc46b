package org.bayledger.review;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.bayledger.anchorage.Anchor;
import org.bayledger.check.Finding;
import org.bayledger.check.Verdict;
import org.bayledger.framing.Axis;
import org.bayledger.framing.FramingCheck;
import org.bayledger.framing.FramingRequest;
import org.bayledger.framing.FramingResult;
import org.bayledger.framing.GlassEdge;
import org.bayledger.framing.Section;
import org.jspecify.annotations.Nullable;

/** The verticals of one bay under wind, and what they hand on to the anchors. */
final class VerticalReview {

    /**
     * The greatest forces that any vertical of the bay puts on an anchor, N, at allowable-stress
     * level, positive in the pressure's direction, and the wind on that vertical.
     */
    record Force(double underPositive, double underNegative, ReviewItem.@Nullable Wind wind) {}

    private final ReviewContext context;
    private final Bay bay;
    private final String pointer;
    private final List<Checked> items = new ArrayList<>();
    private final Map<String, Force> forces = new HashMap<>();
    private final @Nullable MullionLine line;

    VerticalReview(ReviewContext context, Bay bay, String pointer) {
        this.context = context;
        this.bay = bay;
        this.pointer = pointer;
        line = MullionLine.of(bay, pointer, context.reporting);
        for (Layout.Vertical vertical : context.layout.verticals(bay)) {
            items.add(vertical(vertical));
        }
    }

    List<Checked> items() {
        return items;
    }

    /** What the verticals put on an anchor, or null where it was not found. */
    @Nullable Force force(Anchor anchor) {
        return forces.get(anchor.id());
    }

    /** Whether the piece above has its foot held by these verticals alone. */
    boolean carriesPieceAbove() {
        return context.layout.above(bay).stream().anyMatch(MullionLine::standsInJoint);
    }

    /** How the verticals are held, or null where it is not known. */
    @Nullable MullionLine line() {
        return line;
    }

    private Checked vertical(Layout.Vertical vertical) {
        String id = bay.id() + "/mullion/" + vertical.number();
        Mullion mullion = bay.mullion();
        Section section = context.section(mullion == null ? null : mullion.section());
        MullionLine held = line;
        if (section == null) {
            return Checked.missing(
                    id,
                    "framing",
                    "MULLION_NOT_GIVEN",
                    pointer + "/mullion",
                    "No section was given for the verticals of this bay.");
        }
        if (held == null) {
            return Checked.missing(
                    id,
                    "framing",
                    "SUPPORTS_NOT_GIVEN",
                    pointer + "/mullion/supports",
                    "Neither anchors nor supports were given for the verticals of this bay.");
        }
        double width = vertical.tributaryWidth();
        double span = held.shortestSpan();
        double foot = bay.sill() + held.start();
        WallWind.Seen seen =
                context.wind.on(
                        pointer,
                        new WallWind.Patch(
                                bay.elevation(),
                                vertical.at() - vertical.left(),
                                vertical.at() + vertical.right(),
                                foot,
                                foot + held.length(),
                                context.wind.effectiveWindArea(span, width)));
        List<Finding> own = new ArrayList<>(held.findings());
        edgeOfWall(vertical, own);
        boolean alone = !carriesPieceAbove();
        if (!alone) {
            own.add(
                    Finding.action(
                            "CARRIES_PIECE_ABOVE",
                            pointer + "/stackJoints",
                            "The verticals above stand in the stack joint on top of these: what"
                                    + " wind puts on them there comes on these verticals and their"
                                    + " anchors as well, and is not in the numbers. Give both as"
                                    + " one bay with the joint as a hinge."));
        }
        Checked checked =
                Checked.run(
                        id,
                        "framing",
                        pointer,
                        seen,
                        own,
                        () -> {
                            FramingRequest request =
                                    new FramingRequest(
                                            Axis.WIND,
                                            held.supports(),
                                            held.hinges(),
                                            held.length(),
                                            width,
                                            section,
                                            seen.load(),
                                            null,
                                            null,
                                            glassEdges(vertical, held),
                                            null,
                                            context.deflectionRule,
                                            null);
                            FramingResult result = FramingCheck.run(request, context.reporting);
                            handOn(held, result, seen.wind());
                            return new Checked.Ran(request, result, result.outcome());
                        });
        return held.certain() && alone ? checked : checked.atLeast(Verdict.UNDETERMINED);
    }

    /** A vertical with no bay on one side, somewhere on the elevation, carries one side only. */
    private void edgeOfWall(Layout.Vertical vertical, List<Finding> own) {
        boolean inside =
                vertical.at() > Layout.TOUCH
                        && vertical.at() < context.width(bay.elevation()) - Layout.TOUCH;
        if (inside && (vertical.left() == 0 || vertical.right() == 0)) {
            own.add(
                    Finding.note(
                            "TAKEN_AS_EDGE_OF_WALL",
                            pointer + "/offset",
                            "No bay was given beyond this vertical: it carries the wind of this bay"
                                    + " only. Where the wall goes on there, give the bay that"
                                    + " stands there."));
        }
    }

    /** The edges of the lites on both sides of a vertical. */
    private List<GlassEdge> glassEdges(Layout.Vertical vertical, MullionLine held) {
        List<GlassEdge> edges = new ArrayList<>();
        addEdges(bay, held, edges);
        if (vertical.number() == 1) {
            for (Bay neighbour : context.layout.leftOf(bay)) {
                addEdges(neighbour, held, edges);
            }
        }
        if (vertical.number() > bay.columns().size()) {
            for (Bay neighbour : context.layout.rightOf(bay)) {
                addEdges(neighbour, held, edges);
            }
        }
        return edges;
    }

    private void addEdges(Bay of, MullionLine held, List<GlassEdge> edges) {
        for (int row = 1; row <= of.rows().size(); row++) {
            double from = of.sill() - bay.sill() + of.rowStart(row) - held.start();
            double start = Math.max(0, from);
            double end = Math.min(held.length(), from + of.rows().get(row - 1));
            boolean known =
                    edges.stream()
                            .anyMatch(
                                    edge ->
                                            Math.abs(edge.from() - start) < Layout.TOUCH
                                                    && Math.abs(edge.to() - end) < Layout.TOUCH);
            if (!known && end - start > Layout.TOUCH) {
                edges.add(new GlassEdge(start, end));
            }
        }
    }

    private void handOn(MullionLine held, FramingResult result, ReviewItem.@Nullable Wind wind) {
        for (FramingResult.Reaction reaction : result.reactions()) {
            Anchor anchor = held.anchorAt(bay, reaction.at().si());
            if (anchor != null
                    && reaction.underPositive() != null
                    && reaction.underNegative() != null) {
                Force force =
                        new Force(
                                reaction.underPositive().si(), reaction.underNegative().si(), wind);
                forces.merge(anchor.id(), force, VerticalReview::greater);
            }
        }
    }

    private static Force greater(Force one, Force other) {
        return Math.max(Math.abs(one.underPositive()), Math.abs(one.underNegative()))
                        >= Math.max(
                                Math.abs(other.underPositive()), Math.abs(other.underNegative()))
                ? one
                : other;
    }
}
