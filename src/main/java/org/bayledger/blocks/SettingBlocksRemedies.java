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
 * points or lets the eighth points do, a larger clearance below, and those of {@link
 * OtherBlockRemedies}. Each is run through the check before it is offered, and offered only where
 * the check is then satisfied.
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
                        && recommended.beyondEighthPoints()
                        && result.outcome().verdict() == Verdict.UNDETERMINED;
        if (result.outcome().verdict() != Verdict.EXCEEDED && !pending) {
            return List.of();
        }
        SettingBlocksRemedies search = new SettingBlocksRemedies(request, reporting);
        for (BlockCandidate candidate : result.candidates()) {
            if (search.worthwhile(candidate)) {
                search.stiffer(candidate);
            }
        }
        search.moreClearance(result.candidates());
        search.remedies.addAll(new OtherBlockRemedies(request, reporting).all());
        return List.copyOf(search.remedies);
    }

    /** Whether a place that is worth some more stiffness: within the eighth points, or chosen. */
    private boolean worthwhile(BlockCandidate candidate) {
        return candidate.eligible()
                && (request.blockDistance() == null
                        ? candidate.point() != BlockPoint.TENTH
                        : candidate.point() == BlockPoint.CHOSEN);
    }

    private void stiffer(BlockCandidate candidate) {
        Quantity required = candidate.requiredSecondMomentOfArea();
        Double now = request.support().secondMomentOfArea();
        if (required != null && now != null && required.si() > now) {
            attempt(required.si(), null);
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
        DeadLoadLimits limits = DeadLoadLimits.of(request, span);
        BlockCandidate last = null;
        for (BlockCandidate candidate : candidates) {
            if (worthwhile(candidate)
                    || (candidate.eligible() && request.blockDistance() == null)) {
                if (candidate.memberDeflection() != null) {
                    last = candidate;
                    if (candidate.memberDeflection().si()
                            <= limits.limitBesideClearance(drop(candidate))) {
                        break;
                    }
                }
            }
        }
        if (last == null || last.memberDeflection() == null) {
            return;
        }
        double deflection = last.memberDeflection().si();
        double allowed = limits.limitBesideClearance(drop(last));
        Double clearance = limits.clearanceLimit();
        boolean stiffen = deflection > allowed;
        double kept = Math.min(deflection, allowed);
        if (clearance == null || allowed <= 0) {
            return;
        }
        double left = clearance - drop(last);
        if (kept <= left || (stiffen && left > 0)) {
            return;
        }
        attempt(stiffen ? now * deflection / allowed : null, below.edgeClearance() + kept - left);
    }

    private static double drop(BlockCandidate candidate) {
        Quantity drop = candidate.rotationDrop();
        return drop == null ? 0 : drop.si();
    }

    private void attempt(@Nullable Double secondMoment, @Nullable Double clearance) {
        List<Remedy.Change> changes = new ArrayList<>();
        List<String> words = new ArrayList<>();
        SettingBlocksRequest changed = request;
        GlazingBelow below = request.below();
        if (secondMoment != null) {
            Dimension dimension = Dimension.SECOND_MOMENT_OF_AREA;
            String to = reporting.atLeast(dimension, secondMoment);
            changes.add(new Remedy.Change(STIFFNESS, to));
            words.add("a horizontal with a second moment of area of at least " + to);
            changed =
                    changed.withSupport(
                            request.support()
                                    .withSecondMomentOfArea(QuantityParser.parse(to, dimension)));
        }
        if (clearance != null && below != null) {
            String to = reporting.atLeast(Dimension.LENGTH, clearance);
            changes.add(new Remedy.Change(CLEARANCE, to));
            words.add("an edge clearance below of at least " + to);
            changed =
                    changed.withBelow(
                            below.withEdgeClearance(QuantityParser.parse(to, Dimension.LENGTH)));
        }
        Remedy remedy = passing("With " + String.join(" and ", words), changes, changed, reporting);
        if (remedy != null) {
            remedies.add(remedy);
        }
    }

    /**
     * A change as a remedy where the check is satisfied with it.
     *
     * @param words the change, as a sentence begins
     * @return null where it is not
     */
    static @Nullable Remedy passing(
            String words,
            List<Remedy.Change> changes,
            SettingBlocksRequest changed,
            Reporting reporting) {
        SettingBlocksResult after = SettingBlocksCheck.evaluate(changed, reporting);
        Double utilization = after.outcome().utilization();
        BlockPlace place = after.recommended();
        if (after.outcome().verdict() != Verdict.SATISFIED
                || utilization == null
                || place == null) {
            return null;
        }
        String stand =
                switch (place.point()) {
                    case QUARTER -> " the blocks stay at the quarter points.";
                    case EIGHTH, TENTH ->
                            " the blocks may stand at the " + place.point().words() + ".";
                    case CHOSEN ->
                            " the blocks may stand with their centers "
                                    + reporting.dimensioned(place.distanceFromCorner().si())
                                    + " from the glass corners.";
                };
        return new Remedy(words + stand, changes, utilization);
    }
}
