package org.bayledger.blocks;

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
 * Changes after which the blocks stand where they may: a stiffer horizontal that keeps the quarter
 * points or lets the eighth points do, a larger clearance below. Each is run through the check
 * before it is offered, and offered only where the check is then satisfied.
 */
final class SettingBlocksRemedies {

    private static final String STIFFNESS = "/support/secondMomentOfArea";
    private static final String CLEARANCE = "/below/edgeClearance";

    private final SettingBlocksRequest request;
    private final Reporting reporting;
    private final List<Remedy> remedies = new ArrayList<>();

    private SettingBlocksRemedies(SettingBlocksRequest request, Reporting reporting) {
        this.request = request;
        this.reporting = reporting;
    }

    /** The remedies where no place passes, or none without the fabricator's word. */
    static List<Remedy> of(
            SettingBlocksRequest request, Reporting reporting, SettingBlocksResult result) {
        BlockPlace recommended = result.recommended();
        boolean pending =
                recommended != null
                        && recommended.point() == BlockPoint.TENTH
                        && result.outcome().verdict() == Verdict.UNDETERMINED;
        if (result.outcome().verdict() != Verdict.EXCEEDED && !pending) {
            return List.of();
        }
        SettingBlocksRemedies search = new SettingBlocksRemedies(request, reporting);
        for (BlockCandidate candidate : result.candidates()) {
            if (candidate.eligible() && candidate.point() != BlockPoint.TENTH) {
                search.stiffer(candidate);
            }
        }
        search.moreClearance(result.candidates());
        return List.copyOf(search.remedies);
    }

    private void stiffer(BlockCandidate candidate) {
        Quantity required = candidate.requiredSecondMomentOfArea();
        Double now = request.support().secondMomentOfArea();
        if (required != null && now != null && required.si() > now) {
            attempt(candidate.point(), required.si(), null);
        }
    }

    /** Where the clearance governs: what it must be for the first place, stiffened if need be. */
    private void moreClearance(List<BlockCandidate> candidates) {
        Double span = request.support().span();
        Double now = request.support().secondMomentOfArea();
        GlazingBelow below = request.below();
        if (span == null || now == null || below == null || below.edgeClearance() == null) {
            return;
        }
        DeadLoadLimits limits = new DeadLoadLimits(span, below);
        BlockCandidate last = null;
        for (BlockCandidate candidate : candidates) {
            if (candidate.eligible() && candidate.memberDeflection() != null) {
                last = candidate;
                if (candidate.memberDeflection().si() <= limits.limitBesideClearance()) {
                    break;
                }
            }
        }
        if (last == null || last.memberDeflection() == null) {
            return;
        }
        double deflection = last.memberDeflection().si();
        double allowed = limits.limitBesideClearance();
        Double clearance = limits.clearanceLimit();
        boolean stiffen = deflection > allowed;
        double kept = Math.min(deflection, allowed);
        if (clearance == null || kept <= clearance || (stiffen && clearance > 0)) {
            return;
        }
        attempt(
                last.point(),
                stiffen ? now * deflection / allowed : null,
                below.edgeClearance() + kept - clearance);
    }

    private void attempt(
            BlockPoint point, @Nullable Double secondMoment, @Nullable Double clearance) {
        List<Remedy.Change> changes = new ArrayList<>();
        List<String> words = new ArrayList<>();
        BlockSupport support = request.support();
        GlazingBelow below = request.below();
        if (secondMoment != null) {
            Dimension dimension = Dimension.SECOND_MOMENT_OF_AREA;
            String to = reporting.atLeast(dimension, secondMoment);
            changes.add(new Remedy.Change(STIFFNESS, to));
            words.add("a horizontal with a second moment of area of at least " + to);
            support =
                    new BlockSupport(
                            support.kind(),
                            support.span(),
                            QuantityParser.parse(to, dimension),
                            support.elasticModulus(),
                            support.massPerLength());
        }
        if (clearance != null && below != null) {
            String to = reporting.atLeast(Dimension.LENGTH, clearance);
            changes.add(new Remedy.Change(CLEARANCE, to));
            words.add("an edge clearance below of at least " + to);
            below =
                    new GlazingBelow(
                            below.kind(),
                            QuantityParser.parse(to, Dimension.LENGTH),
                            below.bite(),
                            below.memberDeflection());
        }
        SettingBlocksResult after =
                SettingBlocksCheck.evaluate(
                        new SettingBlocksRequest(
                                request.width(),
                                request.height(),
                                request.glass(),
                                request.glassWeight(),
                                support,
                                below,
                                request.fabricatorApproval()),
                        reporting);
        Double utilization = after.outcome().utilization();
        if (after.outcome().verdict() == Verdict.SATISFIED && utilization != null) {
            String text = "With " + String.join(" and ", words) + " the blocks ";
            text +=
                    point == BlockPoint.QUARTER
                            ? "stay at the quarter points."
                            : "may stand at the " + point.words() + ".";
            remedies.add(new Remedy(text, changes, utilization));
        }
    }
}
