package org.bayledger.review;

import static org.bayledger.quantity.Constants.STANDARD_GRAVITY;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.blocks.BlockSupport;
import org.bayledger.check.Finding;
import org.bayledger.check.Verdict;
import org.bayledger.framing.Axis;
import org.bayledger.framing.DeadLoad;
import org.bayledger.framing.FramingCheck;
import org.bayledger.framing.FramingRequest;
import org.bayledger.framing.FramingResult;
import org.bayledger.framing.GlassEdge;
import org.bayledger.framing.PointLoad;
import org.bayledger.framing.Section;
import org.bayledger.framing.SectionCandidate;
import org.jspecify.annotations.Nullable;

/**
 * The horizontals of one bay under wind and under the glass that stands on them. A line of
 * horizontals is one item; the column that governs is the one whose inputs and result it shows. The
 * line at the top belongs to the bays above where these stand on all of it, with the same verticals
 * and on a member: else it is this bay's as well.
 */
final class HorizontalReview {

    private final ReviewContext context;
    private final Bay bay;
    private final String pointer;
    private final LiteReview lites;
    private final @Nullable Section section;
    private final List<SectionCandidate> others;
    private final List<Checked> items = new ArrayList<>();

    HorizontalReview(ReviewContext context, Bay bay, String pointer, LiteReview lites) {
        this.context = context;
        this.bay = bay;
        this.pointer = pointer;
        this.lites = lites;
        Horizontal named = bay.horizontal();
        section = context.section(named == null ? null : named.section());
        others = context.horizontalSections;
        int lines = bay.rows().size() + 1;
        for (int line = 1; line <= lines; line++) {
            boolean shimmed = line == 1 && bay.sillSupport() == BlockSupport.Kind.SHIMMED_SILL;
            boolean anothers = line == lines && belongsToBayAbove();
            if (!shimmed && !anothers) {
                line(line);
            }
        }
    }

    List<Checked> items() {
        return items;
    }

    /** Whether the bays above look at this bay's top line, every piece of it. */
    private boolean belongsToBayAbove() {
        return context.layout.continuesAbove(bay)
                && context.layout.sameVerticalsAbove(bay)
                && !shimmedAbove();
    }

    private boolean shimmedAbove() {
        return context.layout.above(bay).stream()
                .anyMatch(above -> above.sillSupport() == BlockSupport.Kind.SHIMMED_SILL);
    }

    /**
     * What is not known of the top line under bays whose verticals stand elsewhere: they put weight
     * on it that nobody looked at.
     */
    private List<Finding> ofTopLine(int line) {
        boolean loaded =
                line > bay.rows().size()
                        && !context.layout.sameVerticalsAbove(bay)
                        && context.layout.above(bay).stream()
                                .anyMatch(
                                        above ->
                                                above.sillSupport()
                                                        != BlockSupport.Kind.SHIMMED_SILL);
        return loaded
                ? List.of(
                        Finding.action(
                                "VERTICALS_ABOVE_STAND_ELSEWHERE",
                                pointer + "/columns",
                                "The verticals of the bay above do not stand over those of this"
                                        + " bay: the weight that comes down on this head was not"
                                        + " checked."))
                : List.of();
    }

    private void line(int line) {
        String id = bay.id() + "/horizontal/" + line;
        Section of = section;
        if (of == null) {
            items.add(
                    Checked.missing(
                            id,
                            "framing",
                            "HORIZONTAL_NOT_GIVEN",
                            pointer + "/horizontal",
                            "No section was given for the horizontals of this bay."));
            return;
        }
        if (line == 1 && bay.sillSupport() == null) {
            items.add(
                    Checked.missing(
                            id,
                            "framing",
                            "SILL_SUPPORT_NOT_GIVEN",
                            pointer + "/sillSupport",
                            "It was not said whether the sill is a member that spans or rests on"
                                    + " the slab."));
            return;
        }
        List<Checked> wind = new ArrayList<>();
        List<Checked> dead = new ArrayList<>();
        for (int column = 1; column <= bay.columns().size(); column++) {
            // no glass stands on the head: its own weight bends it all the same
            DeadLoad weight = line > bay.rows().size() ? new DeadLoad(null, null) : null;
            if (line <= bay.rows().size()) {
                Checked underGlass = underGlass(id, line, column, of);
                dead.add(underGlass);
                if (underGlass.item().inputs() instanceof FramingRequest asked) {
                    weight = new DeadLoad(null, onModule(asked, column));
                }
            }
            wind.add(underWind(id, line, column, of, weight));
        }
        items.add(Checked.governing(wind));
        if (!dead.isEmpty()) {
            items.add(Checked.governing(dead));
        }
    }

    /** The weights of the glass where they stand between the lines of a column. */
    private List<PointLoad> onModule(FramingRequest asked, int column) {
        double aside = (bay.columns().get(column - 1) - asked.length()) / 2;
        List<PointLoad> loads = asked.pointLoads() == null ? List.of() : asked.pointLoads();
        return loads.stream().map(load -> new PointLoad(load.at() + aside, load.force())).toList();
    }

    private Checked underWind(
            String id, int line, int column, Section of, @Nullable DeadLoad weight) {
        double span = bay.columns().get(column - 1);
        double from = bay.columnStart(column);
        double below = line == 1 ? rowBelow() : bay.rows().get(line - 2);
        double above = line > bay.rows().size() ? rowAbove() : bay.rows().get(line - 1);
        double width = (below + above) / 2;
        double level = bay.sill() + bay.rowStart(line);
        WallWind.Seen seen =
                context.wind.on(
                        pointer,
                        new WallWind.Patch(
                                bay.elevation(),
                                from,
                                from + span,
                                level - below / 2,
                                level + above / 2,
                                context.wind.effectiveWindArea(span, width)));
        List<Finding> own = ofTopLine(line);
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
                                            List.of(0.0, span),
                                            null,
                                            span,
                                            width,
                                            of,
                                            seen.load(),
                                            null,
                                            null,
                                            List.of(new GlassEdge(0, span)),
                                            null,
                                            context.deflectionRule,
                                            weight,
                                            context.deflectionLoadFactor);
                            FramingResult result =
                                    FramingCheck.run(request, context.reporting, others);
                            return new Checked.Ran(request, result, result.outcome());
                        });
        return own.isEmpty() ? checked : checked.atLeast(Verdict.UNDETERMINED);
    }

    /** Height of the row under the sill where another bay stands there, else 0. */
    private double rowBelow() {
        return context.layout.below(bay).stream()
                .mapToDouble(under -> under.rows().get(under.rows().size() - 1))
                .max()
                .orElse(0);
    }

    /** Height of the row over the head where another bay stands there, else 0. */
    private double rowAbove() {
        return context.layout.above(bay).stream()
                .mapToDouble(over -> over.rows().get(0))
                .max()
                .orElse(0);
    }

    /** The horizontal under the lite that stands on it, on the blocks found for that lite. */
    private Checked underGlass(String id, int line, int column, Section of) {
        String name = "framing-dead-load";
        LiteReview.Standing lite = lites.standing(column, line);
        double span = lite.span();
        if (lite.mass() == null) {
            return Checked.missing(
                    id,
                    name,
                    "GLASS_NOT_GIVEN",
                    pointer + "/glassType",
                    "The weight on this horizontal is not known: no glass type was given for the"
                            + " lite above it.");
        }
        if (of.deadLoadInertia() == null) {
            return Checked.missing(
                    id,
                    name,
                    "DEAD_LOAD_PROPERTIES_NOT_GIVEN",
                    pointer + "/horizontal/section",
                    "The section has no deadLoadSecondMomentOfArea: its bending under the weight of"
                            + " the glass was not checked.");
        }
        double weight = lite.mass() * STANDARD_GRAVITY;
        List<PointLoad> known = lite.loads();
        boolean placed = known != null;
        List<PointLoad> loads =
                known != null
                        ? known
                        : List.of(
                                new PointLoad(span / 4, weight / 2),
                                new PointLoad(span - span / 4, weight / 2));
        List<Finding> own =
                placed
                        ? List.of()
                        : List.of(
                                Finding.action(
                                        "BLOCK_PLACE_NOT_FOUND",
                                        pointer + "/horizontal",
                                        "No place was found for the setting blocks on this"
                                                + " horizontal, or not what each carries; the"
                                                + " weight of the lite was taken at the quarter"
                                                + " points."));
        Checked checked =
                Checked.run(
                        id,
                        name,
                        pointer,
                        null,
                        own,
                        () -> {
                            FramingRequest request =
                                    new FramingRequest(
                                            Axis.DEAD,
                                            List.of(0.0, span),
                                            null,
                                            span,
                                            null,
                                            of,
                                            null,
                                            null,
                                            loads,
                                            null,
                                            null,
                                            context.deflectionRule,
                                            null,
                                            null);
                            FramingResult result =
                                    FramingCheck.run(request, context.reporting, others);
                            return new Checked.Ran(request, result, result.outcome());
                        });
        return placed ? checked : checked.atLeast(Verdict.UNDETERMINED);
    }
}
