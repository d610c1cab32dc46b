package org.bayledger.blocks;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.check.Reporting;
import org.bayledger.check.Verdict;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * The places that the two blocks of one lite can take, judged one by one.
 *
 * <p>A place is measured from the glass corner. On the member it lies nearer to the end by half of
 * what the glass is wider than the span: a = f W - (W - L)/2.
 */
final class BlockCandidates {

    /** Rounding in a conversion of units, m: far below what a tape shows. */
    private static final double SAME_PLACE = 1e-9;

    private final SettingBlocksRequest request;
    private final Reporting reporting;
    private final double length;
    private final @Nullable DeadLoadLimits limits;
    private final @Nullable HorizontalDeflection horizontal;
    private final double blockLoad;

    /**
     * @param length of each block, m
     * @param limits on the deflection, or null where the span was not given
     * @param horizontal the member, or null where it is not known or there is none
     * @param blockLoad weight on each block, N, of no account without a member
     */
    BlockCandidates(
            SettingBlocksRequest request,
            Reporting reporting,
            double length,
            @Nullable DeadLoadLimits limits,
            @Nullable HorizontalDeflection horizontal,
            double blockLoad) {
        this.request = request;
        this.reporting = reporting;
        this.length = length;
        this.limits = limits;
        this.horizontal = horizontal;
        this.blockLoad = blockLoad;
    }

    /** All of them, in the order in which the trade accepts them. */
    List<BlockCandidate> all() {
        List<BlockCandidate> all = new ArrayList<>();
        for (BlockPoint point : BlockPoint.values()) {
            all.add(candidate(point));
        }
        return List.copyOf(all);
    }

    /** Whether blocks fit there at all, the fabricator's word aside. */
    boolean fits(BlockPoint point) {
        return obstacle(point) == null;
    }

    private BlockCandidate candidate(BlockPoint point) {
        double corner = point.fraction() * request.width();
        double place = placeOnMember(point);
        String reason = obstacle(point);
        if (reason == null
                && point == BlockPoint.TENTH
                && !Boolean.TRUE.equals(request.fabricatorApproval())) {
            reason = "needs the glass fabricator's word in writing";
        }
        Double deflection = null;
        Double sinking = null;
        Double clearanceLeft = null;
        Double biteLeft = null;
        Double required = null;
        Double utilization = null;
        Verdict verdict = Verdict.UNDETERMINED;
        if (request.support().kind() == BlockSupport.Kind.SHIMMED_SILL) {
            verdict = Verdict.SATISFIED;
        } else if (horizontal != null && limits != null && place > 0) {
            deflection = horizontal.midSpan(blockLoad, place);
            sinking = horizontal.atBlock(blockLoad, place);
            clearanceLeft = limits.clearanceLeft(deflection);
            biteLeft = limits.biteLeft(deflection);
            utilization = limits.utilization(deflection);
            required = required(deflection, limits);
            verdict =
                    Verdict.ofUtilization(utilization)
                            .and(limits.known() ? Verdict.SATISFIED : Verdict.UNDETERMINED);
        }
        return new BlockCandidate(
                point,
                point.fraction(),
                Quantity.of(Dimension.LENGTH, corner),
                Quantity.of(Dimension.LENGTH, corner - length / 2),
                reason == null,
                reason,
                length(deflection),
                length(sinking),
                length(clearanceLeft),
                length(biteLeft),
                required == null ? null : Quantity.of(Dimension.SECOND_MOMENT_OF_AREA, required),
                utilization,
                verdict);
    }

    /** Position on the member, m from its support. */
    double placeOnMember(BlockPoint point) {
        Double span = request.support().span();
        double overlap = span == null ? 0 : (request.width() - span) / 2;
        return point.fraction() * request.width() - overlap;
    }

    private @Nullable String obstacle(BlockPoint point) {
        if (placeOnMember(point) <= 0) {
            return "would stand beyond the end of the member";
        }
        if (point == BlockPoint.QUARTER) {
            return null;
        }
        if (request.support().kind() == BlockSupport.Kind.SHIMMED_SILL) {
            return "a sill that is shimmed keeps the quarter points";
        }
        double end = point.fraction() * request.width() - length / 2;
        if (end < SettingBlock.LEAST_END_DISTANCE - SAME_PLACE) {
            return "the near end of the block would be "
                    + reporting.dimensioned(end)
                    + " from the glass corner, less than "
                    + reporting.dimensioned(SettingBlock.LEAST_END_DISTANCE);
        }
        return null;
    }

    /** Deflection goes with 1/I; no stiffness helps where nothing may bend at all. */
    private @Nullable Double required(double deflection, DeadLoadLimits limits) {
        Double secondMoment = request.support().secondMomentOfArea();
        if (secondMoment == null || limits.limit() <= 0 || limits.utilization(0) > 1) {
            return null;
        }
        return secondMoment * deflection / limits.limit();
    }

    private static @Nullable Quantity length(@Nullable Double metres) {
        return metres == null ? null : Quantity.of(Dimension.LENGTH, metres);
    }
}
