package org.bayledger.review;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.bayledger.anchorage.Anchor;
import org.bayledger.check.AllowableLoad;
import org.bayledger.check.FaultsException;
import org.bayledger.check.Finding;
import org.bayledger.check.Trace;
import org.bayledger.check.TraceLevel;
import org.bayledger.framing.Axis;
import org.bayledger.framing.FramingCheck;
import org.bayledger.framing.FramingRequest;
import org.bayledger.framing.FramingResult;
import org.bayledger.framing.Section;
import org.bayledger.quantity.Dimension;
import org.bayledger.wind.SpecifiedPressures;
import org.jspecify.annotations.Nullable;

/**
 * A vertical at which the wall turns, and what wind on the wall round the corner does to it.
 *
 * <p>The wall round the corner stands at right angles to the bay's own: wind on it bends the
 * vertical parallel to the bay's wall, about the section's other axis. Both faces are taken to see
 * their greatest pressure at once, and both bending stresses are added (common practice, no
 * source). At the end of an elevation the wall beyond sees what this one sees within the same
 * distance of the corner: the zones of a building lie alike on both sides of its corner.
 */
final class CornerVertical {

    private final ReviewContext context;
    private final Bay bay;
    private final String pointer;
    private final Layout.Vertical vertical;
    private final boolean inside;
    private final boolean ownIsRight;
    private final @Nullable CornerReturn said;

    private CornerVertical(
            ReviewContext context,
            Bay bay,
            String pointer,
            Layout.Vertical vertical,
            boolean inside) {
        this.context = context;
        this.bay = bay;
        this.pointer = pointer;
        this.vertical = vertical;
        this.inside = inside;
        this.ownIsRight = vertical.number() <= bay.columns().size();
        boolean edge = vertical.number() == 1 || !ownIsRight;
        this.said =
                edge
                        ? bay.cornerReturn(
                                ownIsRight ? CornerReturn.Side.LEFT : CornerReturn.Side.RIGHT)
                        : null;
    }

    /** A vertical of a bay, or null where the wall does not turn there. */
    static @Nullable CornerVertical of(
            ReviewContext context, Bay bay, String pointer, Layout.Vertical vertical) {
        Corner corner = context.corner(bay.elevation(), vertical.at());
        boolean inside =
                vertical.at() > Layout.TOUCH
                        && vertical.at() < context.width(bay.elevation()) - Layout.TOUCH;
        return corner == null ? null : new CornerVertical(context, bay, pointer, vertical, inside);
    }

    /** What the vertical carries of the bay's own face. */
    Layout.Vertical ownFace() {
        return new Layout.Vertical(
                vertical.number(),
                vertical.at(),
                ownIsRight ? 0 : vertical.left(),
                ownIsRight ? vertical.right() : 0);
    }

    /** Width of wall that it carries round the corner, m, or null where it is not known. */
    @Nullable Double width() {
        if (said != null) {
            return said.tributaryWidth();
        }
        double laidOut = ownIsRight ? vertical.left() : vertical.right();
        return inside && laidOut > 0 ? (Double) laidOut : null;
    }

    /**
     * What wind round the corner does to the vertical.
     *
     * @param seen the wind there
     * @param request the vertical bent parallel to the bay's wall; null where it is not known how
     * @param result what that gives; null likewise
     * @param forces on its anchors parallel to the bay's wall, N, by id
     * @param finding what to say of it
     */
    record Sideways(
            WallWind.Seen seen,
            @Nullable FramingRequest request,
            @Nullable FramingResult result,
            Map<String, Double> forces,
            Finding finding) {

        /** Bending stress about the other axis, Pa; 0 where it is not known. */
        double stress() {
            return result == null || result.bendingStress() == null
                    ? 0
                    : result.bendingStress().si();
        }

        /** Whether the vertical was checked for both faces at once. */
        boolean known() {
            return finding.severity() != Finding.Severity.ACTION;
        }
    }

    /**
     * What wind round the corner does to the vertical; nothing but a finding where it is not known
     * how much of it comes on.
     *
     * @param held how the vertical is held
     * @param section its section
     * @param carries whether a piece above stands on it
     */
    Sideways sideways(MullionLine held, Section section, boolean carries) {
        Double width = width();
        WallWind.Seen none = new WallWind.Seen(WallWind.NO_LOAD, null, List.of());
        if (width == null) {
            return new Sideways(
                    none,
                    null,
                    null,
                    Map.of(),
                    Finding.action(
                            "CORNER_RETURN_NOT_GIVEN",
                            pointer + "/cornerReturns",
                            "This vertical stands at a corner of the building, and it was not said"
                                    + " whether it carries the wall round the corner as well: it"
                                    + " was checked for the wind on its own elevation only. Give"
                                    + " cornerReturns; a tributaryWidth of 0 where another vertical"
                                    + " carries that wall."));
        }
        String start =
                "This vertical carries "
                        + context.reporting.text(Dimension.DISTANCE, width)
                        + " of wall round the corner as well. ";
        if (!inside && specifiedByElevation()) {
            return open(
                    none,
                    start
                            + "What wind that wall sees is not known: pressures are specified by"
                            + " elevation, and which one lies round the corner is not said. Wind"
                            + " there bends the vertical"
                            + " parallel to this elevation and pushes its anchors sideways, at the"
                            + " same time as the wind on this one; neither is in the numbers. An"
                            + " engineer has to check it for both faces at once.");
        }
        WallWind.Seen seen = seen(held, width);
        Section turned = section.turned();
        if (turned == null) {
            return open(
                    seen,
                    start
                            + "Wind there bends it parallel to this elevation and pushes its"
                            + " anchors sideways, at the same time as the wind on this one. Neither"
                            + " is in the numbers: the section has no deadLoadSecondMomentOfArea,"
                            + " which holds for bending parallel to the wall.");
        }
        try {
            return bent(held, width, seen, turned, carries, start);
        } catch (FaultsException refused) {
            return open(
                    seen,
                    start
                            + "Its bending parallel to this elevation is not covered: "
                            + refused.faults().get(0).pointer()
                            + " "
                            + refused.faults().get(0).detail());
        }
    }

    private boolean specifiedByElevation() {
        SpecifiedPressures table = context.wind.specifiedOn(bay.elevation());
        return table != null
                && table.pressures().stream().anyMatch(line -> line.elevation() != null);
    }

    private Sideways open(WallWind.Seen seen, String text) {
        return new Sideways(seen, null, null, Map.of(), finding(false, text));
    }

    private WallWind.Seen seen(MullionLine held, double width) {
        // inside an elevation the wall round the corner is laid out beyond it, at an end it is not
        boolean onRight = inside != ownIsRight;
        double foot = bay.sill() + held.start();
        return context.wind.on(
                pointer,
                new WallWind.Patch(
                        bay.elevation(),
                        onRight ? vertical.at() : vertical.at() - width,
                        onRight ? vertical.at() + width : vertical.at(),
                        foot,
                        foot + held.length(),
                        context.wind.effectiveWindArea(held.shortestSpan(), width)));
    }

    private Sideways bent(
            MullionLine line,
            double width,
            WallWind.Seen seen,
            Section turned,
            boolean carries,
            String start) {
        FramingRequest request =
                new FramingRequest(
                        Axis.WIND,
                        line.supports(),
                        line.hinges(),
                        line.length(),
                        width,
                        turned,
                        seen.load(),
                        null,
                        null,
                        null,
                        null,
                        context.deflectionRule,
                        null,
                        context.deflectionLoadFactor);
        FramingResult result = FramingCheck.run(request, context.reporting);
        boolean held = said != null && Boolean.TRUE.equals(said.heldSideways());
        Map<String, Double> forces = new HashMap<>();
        double greatest = 0;
        for (FramingResult.Reaction reaction : result.reactions()) {
            double force = Math.abs(reaction.force().si());
            greatest = Math.max(greatest, force);
            Anchor anchor = line.anchorAt(bay, reaction.at().si());
            if (anchor != null) {
                forces.merge(anchor.id(), force, Math::max);
            }
        }
        Double stress = result.bendingStress() == null ? null : result.bendingStress().si();
        String text =
                start
                        + (held
                                ? "Wind there bends it parallel to this elevation by "
                                : "Where its anchors alone hold it in that direction as well, wind"
                                        + " there bends it parallel to this elevation by ")
                        + context.reporting.text(Dimension.LENGTH, result.maxDeflection().si())
                        + (stress == null
                                ? ""
                                : ", with a bending stress of "
                                        + context.reporting.text(Dimension.STRESS, stress)
                                        + " that adds to the one from this elevation,")
                        + " and pushes its anchors sideways with up to "
                        + context.reporting.text(Dimension.FORCE, greatest)
                        + ". ";
        List<String> open = open(held, seen, stress == null, carries);
        return new Sideways(
                seen,
                held ? request : null,
                held ? result : null,
                held ? Map.copyOf(forces) : Map.of(),
                finding(
                        open.isEmpty(),
                        text
                                + (open.isEmpty()
                                        ? "Both faces were checked at once; where bending parallel to"
                                                + " this elevation governs, the inputs and remedies"
                                                + " shown are those of the section turned."
                                        : String.join(" ", open))));
    }

    /** What keeps the vertical from being judged under the wind on both faces. */
    private static List<String> open(
            boolean held, WallWind.Seen seen, boolean noStress, boolean carries) {
        List<String> open = new ArrayList<>();
        if (!held) {
            open.add(
                    "Whether they do was not said, and none of it is in the verdict: give"
                            + " heldSideways in cornerReturns.");
        }
        AllowableLoad load = seen.load().allowable(new Trace(TraceLevel.GOVERNING));
        if (!load.missingSigns("").isEmpty()) {
            open.add("The wind there is not known under both signs.");
        }
        if (noStress) {
            open.add(
                    "The bending stress of that is not in the numbers: the section has no"
                            + " deadLoadSectionModulus.");
        }
        if (carries) {
            open.add("What the piece above puts on it sideways is not in the numbers.");
        }
        return open;
    }

    private Finding finding(boolean known, String text) {
        String code = "CORNER_VERTICAL_CARRIES_TWO_FACES";
        String at = pointer + "/cornerReturns";
        return known ? Finding.note(code, at, text) : Finding.action(code, at, text);
    }
}
