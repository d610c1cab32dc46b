package org.bayledger.blocks;

import org.bayledger.check.Finding;
import org.bayledger.check.Reporting;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/** What the blocks found on site do to the horizontal and to what stands below, in sentences. */
final class FoundSagFindings {

    private static final String BLOCKS = "/installed/blocks";

    private final SettingBlocksRequest request;
    private final Reporting reporting;
    private final FoundPlaces places;
    private final AsFoundVerdict verdict;

    FoundSagFindings(
            SettingBlocksRequest request,
            Reporting reporting,
            FoundPlaces places,
            AsFoundVerdict verdict) {
        this.request = request;
        this.reporting = reporting;
        this.places = places;
        this.verdict = verdict;
    }

    /** What the horizontal does now, in one sentence. */
    String consequence(FoundSag sag, DeadLoadLimits limits) {
        Double drawn = sag.asDrawn();
        Double left = limits.clearanceLeft(sag.lost());
        return "As found the horizontal "
                + bends(sag)
                + (drawn == null
                        ? ""
                        : " (" + reporting.text(Dimension.LENGTH, drawn) + " as drawn)")
                + (left == null
                        ? "."
                        : left > 0
                                ? " and leaves "
                                        + reporting.text(Dimension.LENGTH, left)
                                        + " of edge clearance over "
                                        + below()
                                        + "."
                                : " and comes down on " + below() + ".");
    }

    private String bends(FoundSag sag) {
        return (sag.bound() ? "may bend by as much as " : "bends by ")
                + reporting.text(Dimension.LENGTH, sag.greatest())
                + (sag.member().drop() > 0
                        ? ", turns so that its edge comes down by "
                                + reporting.text(Dimension.LENGTH, sag.member().drop())
                                + " more"
                        : "");
    }

    private String below() {
        GlazingBelow below = request.below();
        return below == null
                ? "what stands below"
                : switch (below.kind()) {
                    case FIXED_LITE -> "the lite below";
                    case OPERATING_SASH -> "the sash below";
                    case PANEL -> "the panel below";
                    case NONE -> "nothing";
                };
    }

    /**
     * Holds what the blocks as found ask against its limits; whether all that are known are kept.
     *
     * @param sag what they ask of the horizontal, or null on a sill or where it is not known
     * @param limits on the deflection, likewise
     */
    boolean limits(BlockDemand demand, @Nullable FoundSag sag, @Nullable DeadLoadLimits limits) {
        boolean bound = sag != null && sag.bound();
        boolean kept = true;
        for (BlockDemand.Use use : demand.uses(request, limits)) {
            if (bound && use.ratio() > 1) {
                kept = false;
                verdict.open(
                        code(use.limit(), sag, limits),
                        BLOCKS,
                        text(use, sag, limits) + " Take the inner blocks out and check again.");
            } else if (!verdict.counts(use.ratio())) {
                kept = false;
                verdict.broken(
                        code(use.limit(), sag, limits),
                        BLOCKS,
                        text(use, sag, limits) + whatToDo(sag, limits));
            }
        }
        if (kept && sag != null && limits != null) {
            verdict.says(
                    Finding.info(
                            "AS_FOUND_DEFLECTION_KEPT",
                            BLOCKS,
                            consequence(sag, limits)
                                    + " That is within the limits that are known."));
        }
        return kept;
    }

    private static String whatToDo(@Nullable FoundSag sag, @Nullable DeadLoadLimits limits) {
        return sag != null && limits != null && sag.drawnKeeps(limits)
                ? " Move the blocks to where they are drawn."
                : " Even where they are drawn they would not do: see what this check finds for the"
                        + " drawing.";
    }

    private static String code(
            BlockLimit limit, @Nullable FoundSag sag, @Nullable DeadLoadLimits limits) {
        return switch (limit) {
            case DEFLECTION -> "AS_FOUND_DEFLECTION_TOO_LARGE";
            case BITE -> "AS_FOUND_BITE_TOO_SMALL";
            case CLEARANCE ->
                    touches(sag, limits) ? "GLAZING_BELOW_TOUCHED" : "AS_FOUND_CLEARANCE_TOO_SMALL";
            case ROTATION -> "AS_FOUND_ROTATION_TOO_LARGE";
            case END_CONNECTION -> "AS_FOUND_END_CONNECTION_OVERLOADED";
            case BLOCK_PRESSURE -> "AS_FOUND_BLOCK_PRESSURE_TOO_LARGE";
            case GLASS_EDGE_STRESS -> "AS_FOUND_GLASS_STRESS_TOO_LARGE";
        };
    }

    private static boolean touches(@Nullable FoundSag sag, @Nullable DeadLoadLimits limits) {
        Double left = sag == null || limits == null ? null : limits.clearanceLeft(sag.lost());
        return left != null && left <= 0;
    }

    private String text(
            BlockDemand.Use use, @Nullable FoundSag sag, @Nullable DeadLoadLimits limits) {
        if (sag != null && limits != null) {
            Double left = limits.clearanceLeft(sag.lost());
            Double bite = limits.biteLeft(sag.lost());
            Double mayLose = limits.biteLimit();
            double keep = request.below() == null ? 0 : request.below().kind().clearanceToKeep();
            if (use.limit() == BlockLimit.DEFLECTION) {
                return consequence(sag, limits)
                        + " It bends most "
                        + reporting.dimensioned(sag.at())
                        + " from the left glass corner; "
                        + reporting.text(Dimension.LENGTH, limits.ownLimit())
                        + " is allowed.";
            }
            if (use.limit() == BlockLimit.CLEARANCE && left != null) {
                return left > 0
                        ? consequence(sag, limits)
                                + " At least "
                                + reporting.text(Dimension.LENGTH, keep)
                                + " must be left."
                        : "The horizontal "
                                + bends(sag)
                                + " and comes down on "
                                + below()
                                + ", "
                                + reporting.text(Dimension.LENGTH, -left)
                                + " more than its edge clearance: the weight of this lite goes into"
                                + " the glazing below. Take the weight off before anything else.";
            }
            if (use.limit() == BlockLimit.BITE && bite != null && mayLose != null) {
                return "The horizontal "
                        + bends(sag)
                        + " and leaves "
                        + reporting.text(Dimension.LENGTH, bite)
                        + " of bite on "
                        + below()
                        + "; no more than "
                        + reporting.text(Dimension.LENGTH, mayLose)
                        + " of it may be lost.";
            }
        }
        return "With the blocks as found "
                + use.limit().words()
                + ": "
                + reporting.text(Dimension.NONE, use.ratio())
                + " times what is allowed.";
    }

    /** Blocks that stand beyond the ends of the horizontal. */
    void beyondMember(FoundMember member) {
        for (int i = 0; i < places.blocks().size(); i++) {
            if (!member.spans(places.blocks().get(i).position())) {
                verdict.open(
                        "BLOCK_BEYOND_MEMBER",
                        FoundPlaces.pointer(i) + "/position",
                        places.name(i, reporting)
                                + " stands beyond the end of the horizontal's span: it does not"
                                + " bend the horizontal, and what holds it up there was not"
                                + " checked. Move it onto the span.");
            }
        }
    }

    /** The place that blocks are held against. */
    void drawnFrom(@Nullable Double drawn) {
        verdict.says(
                drawn == null
                        ? Finding.note(
                                "DRAWN_PLACE_NOT_KNOWN",
                                "/installed",
                                "It was not said where the shop drawing has the blocks, and this"
                                        + " check finds no place for them: where they stand was not"
                                        + " held against a drawing.")
                        : Finding.info(
                                "DRAWN_PLACE_NOT_GIVEN",
                                "/installed",
                                "It was not said where the shop drawing has the blocks: they are"
                                        + " held against the place that this check finds, "
                                        + reporting.dimensioned(drawn)
                                        + " from each glass corner."));
    }

    /** Where the drawing has the blocks, if that is where the horizontal bends too far. */
    void drawing(double drawn, FoundSag sag, DeadLoadLimits limits) {
        Double bends = sag.asDrawn();
        if (bends != null && !sag.drawnKeeps(limits)) {
            verdict.says(
                    Finding.action(
                            "DRAWN_PLACE_EXCEEDS_LIMIT",
                            "/installed",
                            "With the blocks where the drawing has them, "
                                    + reporting.dimensioned(drawn)
                                    + " from each corner, the horizontal bends by "
                                    + reporting.text(Dimension.LENGTH, bends)
                                    + ", which is too far. Correct the drawing."));
        }
    }
}
