package org.bayledger.blocks;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.check.Finding;
import org.bayledger.check.Reporting;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/** What a request leaves out or leaves open, said in sentences. */
final class BlockFindings {

    private BlockFindings() {}

    /** Nothing says how heavy the lite is. */
    static Finding weightNotGiven() {
        return Finding.action(
                "GLASS_WEIGHT_NOT_GIVEN",
                "/glassWeight",
                "Neither the glass nor its weight was given, so that the deflection under it is not"
                        + " known.");
    }

    /** What is missing for the deflection of a member and for the clearance below it. */
    static List<Finding> missing(SettingBlocksRequest request, @Nullable Double mass) {
        List<Finding> findings = new ArrayList<>();
        BlockSupport support = request.support();
        if (mass == null) {
            findings.add(weightNotGiven());
        }
        missing(findings, support.span(), "SPAN_NOT_GIVEN", "/support/span", "span");
        missing(
                findings,
                support.secondMomentOfArea(),
                "SECOND_MOMENT_OF_AREA_NOT_GIVEN",
                "/support/secondMomentOfArea",
                "second moment of area");
        missing(
                findings,
                support.elasticModulus(),
                "ELASTIC_MODULUS_NOT_GIVEN",
                "/support/elasticModulus",
                "elastic modulus");
        if (support.massPerLength() == null) {
            findings.add(
                    Finding.note(
                            "MEMBER_WEIGHT_NOT_INCLUDED",
                            "/support/massPerLength",
                            "The mass of the horizontal was not given; its own weight is not in"
                                    + " the deflection."));
        }
        if (support.steelSecondMomentOfArea() != null && support.steelMassPerLength() == null) {
            findings.add(
                    Finding.note(
                            "STEEL_WEIGHT_NOT_INCLUDED",
                            "/support/steelMassPerLength",
                            "The mass of the steel inside the horizontal was not given; its weight"
                                    + " is not in the deflection."));
        }
        findings.addAll(missingBelow(request.below()));
        return findings;
    }

    private static void missing(
            List<Finding> findings,
            @Nullable Double value,
            String code,
            String pointer,
            String name) {
        if (value == null) {
            findings.add(
                    Finding.action(
                            code,
                            pointer,
                            "The "
                                    + name
                                    + " of the horizontal was not given, so that its deflection is"
                                    + " not known."));
        }
    }

    private static List<Finding> missingBelow(@Nullable GlazingBelow below) {
        List<Finding> findings = new ArrayList<>();
        if (below == null) {
            findings.add(
                    Finding.action(
                            "BELOW_NOT_GIVEN",
                            "/below",
                            "What stands below the horizontal was not given, so that the clearance"
                                    + " and bite left there are not known."));
            return findings;
        }
        if (below.kind() == GlazingBelow.Kind.NONE) {
            return findings;
        }
        if (below.edgeClearance() == null) {
            findings.add(
                    Finding.action(
                            "EDGE_CLEARANCE_NOT_GIVEN",
                            "/below/edgeClearance",
                            "The edge clearance below the horizontal was not given, so that what"
                                    + " is left of it is not known."));
        }
        if (below.bite() == null && below.kind().hasBite()) {
            findings.add(
                    Finding.action(
                            "BITE_NOT_GIVEN",
                            "/below/bite",
                            "The bite below the horizontal was not given, so that what is left of"
                                    + " it is not known."));
        }
        if (below.memberDeflection() == null) {
            findings.add(
                    Finding.info(
                            "MOVEMENT_BELOW_NOT_INCLUDED",
                            "/below/memberDeflection",
                            "How far the glazing below sinks on its own support was not given; the"
                                    + " clearance is worked out as if it stood firm."));
        }
        if (below.edgeClearance() != null
                && (below.tolerance() == null || below.thermalGrowth() == null)) {
            boolean both = below.tolerance() == null && below.thermalGrowth() == null;
            findings.add(
                    Finding.note(
                            "CLEARANCE_AS_DRAWN",
                            below.tolerance() == null ? "/below/tolerance" : "/below/thermalGrowth",
                            (both
                                            ? "What tolerances and thermal growth take"
                                            : below.tolerance() == null
                                                    ? "What tolerances take"
                                                    : "What thermal growth takes")
                                    + " of the clearance below was not given; nothing was taken off"
                                    + " for it."));
        }
        return findings;
    }

    /**
     * The lite and the span do not go together as one lite centered on one span does.
     *
     * @param span of the member, m
     */
    static Finding spanDiffers(SettingBlocksRequest request, double span, Reporting reporting) {
        return Finding.action(
                "SPAN_DIFFERS_FROM_GLASS",
                "/support/span",
                "The horizontal spans "
                        + reporting.text(Dimension.DISTANCE, span)
                        + " and the glass is "
                        + reporting.text(Dimension.DISTANCE, request.width())
                        + (request.secondLite() != null
                                ? " wide, beside another of "
                                        + reporting.text(
                                                Dimension.DISTANCE, request.secondLite().width())
                                        + ": the numbers hold for these two and nothing else on"
                                        + " the span."
                                : request.support().glassOffset() != null
                                        ? " wide: the numbers hold for this one lite and nothing"
                                                + " else on the span. Where another lite rests on"
                                                + " it, give it as secondLite."
                                        : " wide: the numbers hold for this one lite, centered on"
                                                + " the span, and nothing else on it. Where another"
                                                + " lite rests on the same span, or the glass"
                                                + " stands off center, they do not."));
    }

    /** The clearance is used up before anything bends. */
    static Finding clearanceTooSmall(DeadLoadLimits limits, Reporting reporting) {
        GlazingBelow below = limits.below();
        double keep = below == null ? 0 : below.kind().clearanceToKeep();
        return Finding.action(
                "CLEARANCE_TOO_SMALL_AS_DRAWN",
                "/below/edgeClearance",
                "The edge clearance below is not greater than the "
                        + reporting.text(Dimension.LENGTH, keep)
                        + " that must be left, before the horizontal bends at all; no block"
                        + " position helps.");
    }

    /**
     * No place for the blocks keeps the limits.
     *
     * @param best the place that comes nearest to it
     * @param limit of its deflection, m
     */
    static Finding nothingPasses(BlockCandidate best, double limit, Reporting reporting) {
        boolean chosen = best.point() == BlockPoint.CHOSEN;
        Quantity deflection = best.memberDeflection();
        BlockLimit governing = best.governing();
        String text;
        if (governing != null && !bends(governing)) {
            text =
                    (chosen
                                    ? "With the blocks at the chosen places "
                                    : "Wherever the blocks stand ")
                            + governing.words()
                            + ".";
        } else {
            text =
                    "The horizontal bends by "
                            + (chosen ? "" : "at least ")
                            + reporting.text(
                                    Dimension.LENGTH, deflection == null ? 0 : deflection.si())
                            + (chosen
                                    ? " with the blocks at the chosen places; "
                                    : " wherever the blocks may stand; ")
                            + reporting.text(Dimension.LENGTH, Math.max(0, limit))
                            + " is allowed.";
        }
        return Finding.action(
                chosen ? "CHOSEN_BLOCK_POSITION_FAILS" : "NO_BLOCK_POSITION_PASSES",
                chosen ? "/blockDistance" : "/support",
                text);
    }

    /** The place that was chosen is one that the trade does not accept. */
    static Finding chosenNotAccepted(BlockCandidate chosen) {
        return Finding.action(
                "CHOSEN_BLOCK_POSITION_NOT_ACCEPTED",
                "/blockDistance",
                "The blocks may not stand where they are put: " + chosen.reason() + ".");
    }

    /** Whether a limit is on how far the horizontal bends. */
    private static boolean bends(BlockLimit limit) {
        return limit == BlockLimit.DEFLECTION
                || limit == BlockLimit.BITE
                || limit == BlockLimit.CLEARANCE;
    }

    /** Not even blocks at the quarter points stand on the member. */
    static Finding nothingFits() {
        return Finding.action(
                "NO_BLOCK_POSITION_FITS",
                "/support/span",
                "The span is so much shorter than the glass that blocks at the quarter points would"
                        + " stand beyond its ends.");
    }

    /**
     * The blocks leave the quarter points.
     *
     * @param quarter what would come of the quarter points
     */
    static Finding relocated(BlockPlace place, BlockCandidate quarter, Reporting reporting) {
        BlockLimit governing = quarter.governing();
        String why =
                governing == null || bends(governing)
                        ? "the horizontal would bend too far"
                        : governing.words();
        return Finding.note(
                "BLOCKS_RELOCATED",
                "",
                (place.point() == BlockPoint.CHOSEN
                                ? "The blocks stand at the chosen places, "
                                : "At the quarter points "
                                        + why
                                        + "; the blocks go to the "
                                        + place.point().words()
                                        + ", ")
                        + reporting.dimensioned(place.distanceFromCorner().si())
                        + " from each glass corner. The field expects quarter points: call it out"
                        + " on the shop drawings.");
    }

    /** The tenth points rest on somebody else's word. */
    static Finding fabricatorsWord() {
        return Finding.action(
                "FABRICATOR_APPROVAL_NEEDED",
                "/fabricatorApproval",
                "Blocks further out than the eighth points need the glass fabricator's word in"
                        + " writing for this lite. Ask for it, or stiffen the horizontal.");
    }
}
