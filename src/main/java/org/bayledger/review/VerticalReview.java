package org.bayledger.review;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.bayledger.anchorage.Anchor;
import org.bayledger.check.AllowableLoad;
import org.bayledger.check.Finding;
import org.bayledger.check.Trace;
import org.bayledger.check.TraceLevel;
import org.bayledger.check.Verdict;
import org.bayledger.framing.Axis;
import org.bayledger.framing.FramingCheck;
import org.bayledger.framing.FramingRequest;
import org.bayledger.framing.FramingResult;
import org.bayledger.framing.GlassEdge;
import org.bayledger.framing.Section;
import org.bayledger.framing.SectionCandidate;
import org.bayledger.framing.TributaryArea;
import org.jspecify.annotations.Nullable;

/** The verticals of one bay under wind, and what they hand on to the anchors. */
final class VerticalReview {

    private final ReviewContext context;
    private final Bay bay;
    private final String pointer;
    private final List<Checked> items = new ArrayList<>();
    private final VerticalRuns runs;
    private final List<VerticalRun> own = new ArrayList<>();
    private boolean open;
    private boolean corner;
    private final Map<String, Double> sideways = new HashMap<>();
    private final @Nullable MullionLine line;

    VerticalReview(ReviewContext context, Bay bay, String pointer, VerticalRuns runs) {
        this.context = context;
        this.bay = bay;
        this.pointer = pointer;
        this.runs = runs;
        line = MullionLine.of(bay, pointer, context.reporting);
        for (Layout.Vertical vertical : context.layout.verticals(bay)) {
            items.add(vertical(vertical));
        }
    }

    /** Enters the verticals among those of all bays, for the anchors and for the bays below. */
    void enter() {
        own.forEach(runs::add);
        if (MullionLine.standsInJoint(bay)) {
            for (Layout.Vertical vertical : context.layout.verticals(bay)) {
                runs.stands(bay, new VerticalRuns.Foot(bay.id(), vertical.at(), foot(vertical)));
            }
        }
    }

    private VerticalRun.@Nullable Force foot(Layout.Vertical vertical) {
        return own.stream()
                .filter(run -> run.at() == vertical.at())
                .findFirst()
                .map(VerticalRun::foot)
                .orElse(null);
    }

    List<Checked> items() {
        return items;
    }

    /** The greatest that any vertical puts on an anchor, or null where it was not found. */
    VerticalRun.@Nullable Force force(Anchor anchor) {
        VerticalRun.Force greatest = null;
        for (VerticalRun run : own) {
            VerticalRun.Force force = run.forces().get(anchor.id());
            if (force != null) {
                greatest = greatest == null ? force : greatest.orGreater(force);
            }
        }
        return greatest;
    }

    /** The wind on the vertical that puts the most on an anchor, or null where none was found. */
    ReviewItem.@Nullable Wind wind(Anchor anchor) {
        ReviewItem.Wind wind = null;
        double greatest = -1;
        for (VerticalRun run : own) {
            VerticalRun.Force force = run.forces().get(anchor.id());
            if (force != null) {
                double size =
                        Math.max(Math.abs(force.underPositive()), Math.abs(force.underNegative()));
                if (size > greatest) {
                    greatest = size;
                    wind = run.wind();
                }
            }
        }
        return wind;
    }

    /** The verticals whose forces were found. */
    List<VerticalRun> runs() {
        return own;
    }

    /** Whether a piece stands on these verticals whose force on them is not known. */
    boolean isOpenAbove() {
        return open;
    }

    /** Whether a vertical at a corner carries, or may carry, wall round it. */
    boolean isOpenAtCorner() {
        return corner;
    }

    /**
     * Greatest force that wind round a corner puts on an anchor parallel to the wall, N, or null
     * where none was found.
     */
    @Nullable Double sideways(Anchor anchor) {
        return sideways.get(anchor.id());
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
        CornerVertical turning = CornerVertical.of(context, bay, pointer, vertical);
        Layout.Vertical face = turning == null ? vertical : turning.ownFace();
        double width = face.tributaryWidth();
        double span = held.shortestSpan();
        double foot = bay.sill() + held.start();
        WallWind.Seen seen =
                context.wind.on(
                        pointer,
                        new WallWind.Patch(
                                bay.elevation(),
                                vertical.at() - face.left(),
                                vertical.at() + face.right(),
                                foot,
                                foot + held.length(),
                                context.wind.effectiveWindArea(span, width)));
        List<Finding> own = new ArrayList<>(held.findings());
        edgeOfWall(vertical, own);
        AllowableLoad load = seen.load().allowable(new Trace(TraceLevel.GOVERNING));
        StackLoad above = StackLoad.on(context, bay, vertical, runs, load, pointer);
        own.addAll(above.findings());
        open |= !above.known();
        CornerVertical.Sideways side = null;
        if (turning != null && !Double.valueOf(0).equals(turning.width())) {
            side = turning.sideways(held, section, above.area() > 0 || !above.known());
            own.add(side.finding());
            side.forces().forEach((anchor, force) -> sideways.merge(anchor, force, Math::max));
            corner = true;
        }
        double stress = side == null ? 0 : side.stress();
        FoundForces found = new FoundForces(held);
        Supplier<FramingRequest> request =
                () -> {
                    FramingRequest alone =
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
                                    null,
                                    context.deflectionLoadFactor);
                    return stress > 0 ? alone.withConcurrentBendingStress(stress) : alone;
                };
        Checked checked = check(id, seen, own, request, found);
        if (above.area() > 0) {
            double tip = bay.height() - held.start();
            List<TributaryArea> areas = List.of(new TributaryArea(tip, above.area()));
            Checked carrying =
                    check(id, seen, own, () -> request.get().withTributaryAreas(areas), found);
            checked = Checked.governing(List.of(carrying, checked));
        }
        if (side != null && side.request() != null && side.result() != null) {
            Checked.Ran ran =
                    new Checked.Ran(side.request(), side.result(), side.result().outcome());
            Checked parallel = Checked.run(id, "framing", pointer, side.seen(), own, () -> ran);
            checked = Checked.governing(List.of(checked, parallel));
        }
        keep(face, held, load, request, found, seen.wind());
        return held.certain() && above.known() && (side == null || side.known())
                ? checked
                : checked.atLeast(Verdict.UNDETERMINED);
    }

    private Checked check(
            String id,
            WallWind.Seen seen,
            List<Finding> own,
            Supplier<FramingRequest> request,
            FoundForces found) {
        return Checked.run(
                id,
                "framing",
                pointer,
                seen,
                own,
                () -> {
                    FramingRequest of = request.get();
                    // round a corner another section would be stressed otherwise as well
                    boolean alone = of.concurrentBendingStress() == null;
                    FramingResult result =
                            FramingCheck.run(
                                    of,
                                    context.reporting,
                                    alone ? context.verticalSections : List.<SectionCandidate>of());
                    found.of(bay, result);
                    return new Checked.Ran(of, result, result.outcome());
                });
    }

    /** Keeps what a vertical hands on, for the anchors and for what carries its foot. */
    private void keep(
            Layout.Vertical vertical,
            MullionLine held,
            AllowableLoad load,
            Supplier<FramingRequest> request,
            FoundForces found,
            ReviewItem.@Nullable Wind wind) {
        if (found.isEmpty()) {
            return;
        }
        VerticalRun run =
                new VerticalRun(
                        bay,
                        vertical.at(),
                        held,
                        load,
                        vertical.tributaryWidth(),
                        request.get().rigidity(),
                        found.onAnchors(),
                        held.certain() ? found.onJoint() : null,
                        wind);
        own.add(run);
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
}
