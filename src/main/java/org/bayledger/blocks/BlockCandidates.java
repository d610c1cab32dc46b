package org.bayledger.blocks;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.check.Reporting;
import org.bayledger.check.Verdict;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/** The places that the two blocks of one lite can take, judged one by one. */
final class BlockCandidates {

    /** Rounding in a conversion of units, m: far below what a tape shows. */
    private static final double SAME_PLACE = 1e-9;

    private static final String NEEDS_WORD = "needs the glass fabricator's word in writing";

    private final SettingBlocksRequest request;
    private final Reporting reporting;
    private final double length;
    private final @Nullable DeadLoadLimits limits;

    /**
     * @param length of each block, m
     * @param limits on the deflection, or null where the span was not given or on a sill
     */
    BlockCandidates(
            SettingBlocksRequest request,
            Reporting reporting,
            double length,
            @Nullable DeadLoadLimits limits) {
        this.request = request;
        this.reporting = reporting;
        this.length = length;
        this.limits = limits;
    }

    /** All of them, in the order in which the trade accepts them, one that was chosen last. */
    List<BlockCandidate> all() {
        List<BlockCandidate> all = new ArrayList<>();
        for (BlockPoint point : BlockPoint.values()) {
            Double fraction = point.fraction(request);
            if (fraction != null) {
                all.add(candidate(point, fraction));
            }
        }
        return List.copyOf(all);
    }

    /** Whether blocks fit there at all, the fabricator's word aside. */
    boolean fits(BlockCandidate candidate) {
        return obstacle(candidate.point(), candidate.fraction()) == null;
    }

    private BlockCandidate candidate(BlockPoint point, double fraction) {
        double corner = fraction * request.width();
        String reason = obstacle(point, fraction);
        if (reason == null && !mayStand(point, corner)) {
            reason = NEEDS_WORD;
        }
        BlockDemand demand = BlockDemand.of(request, length, fraction);
        BlockDemand.OfMember member = demand.member();
        boolean sill = request.support().kind() == BlockSupport.Kind.SHIMMED_SILL;
        BlockDemand.Use use =
                sill || (member != null && limits != null)
                        ? demand.governing(request, limits)
                        : null;
        Verdict verdict =
                use == null
                        ? Verdict.UNDETERMINED
                        : Verdict.ofUtilization(use.ratio())
                                .and(
                                        sill || (limits != null && limits.known())
                                                ? Verdict.SATISFIED
                                                : Verdict.UNDETERMINED);
        Double deflection = member == null ? null : (Double) member.deflection().value();
        Double lost =
                member == null ? null : (Double) (member.deflection().value() + member.drop());
        // a sill has no limit of its own unless the caller gave one for its blocks
        boolean judged = use != null && (!sill || request.blockPressureAllowable() != null);
        return new BlockCandidate(
                point,
                fraction,
                Quantity.of(Dimension.LENGTH, corner),
                Quantity.of(Dimension.LENGTH, corner - length / 2),
                reason == null,
                reason,
                of(Dimension.LENGTH, deflection),
                of(Dimension.LENGTH, member == null ? null : (Double) member.sinking()),
                of(
                        Dimension.LENGTH,
                        lost == null || limits == null ? null : limits.clearanceLeft(lost)),
                of(Dimension.LENGTH, lost == null || limits == null ? null : limits.biteLeft(lost)),
                of(Dimension.SECOND_MOMENT_OF_AREA, required(member)),
                of(Dimension.DISTANCE, member == null ? null : (Double) member.deflection().at()),
                of(Dimension.ANGLE, member == null ? null : member.rotation()),
                of(
                        Dimension.LENGTH,
                        member == null || member.rotation() == null
                                ? null
                                : (Double) member.drop()),
                of(Dimension.FORCE, member == null ? null : (Double) member.endReaction()),
                of(Dimension.MOMENT, member == null ? null : member.endTorque()),
                of(Dimension.FORCE, member == null ? null : member.propReaction()),
                of(Dimension.FORCE, demand.load()),
                of(Dimension.STRESS, demand.pressure()),
                Quantity.of(Dimension.STRESS, demand.glassEdgeStress()),
                judged && use != null ? use.limit() : null,
                judged && use != null ? (Double) use.ratio() : null,
                verdict);
    }

    /** Whether the trade or the fabricator lets blocks stand so far out. */
    private boolean mayStand(BlockPoint point, double corner) {
        if (point == BlockPoint.QUARTER || point == BlockPoint.EIGHTH) {
            return true;
        }
        return corner >= leastDistance(request) - SAME_PLACE;
    }

    /** Least distance from the corner to a block's center that somebody has agreed to, m. */
    static double leastDistance(SettingBlocksRequest request) {
        double eighth = 0.125 * request.width();
        Double agreed = request.leastBlockDistance();
        if (agreed != null) {
            return Math.min(eighth, agreed);
        }
        return Boolean.TRUE.equals(request.fabricatorApproval()) ? 0.1 * request.width() : eighth;
    }

    /** Least distance from the corner to a block's center that keeps its near end off it, m. */
    static double nearest(double length) {
        return SettingBlock.LEAST_END_DISTANCE + length / 2;
    }

    private @Nullable String obstacle(BlockPoint point, double fraction) {
        Double span = request.support().span();
        if (span != null && !BlockLayout.of(request, span, fraction).on(span)) {
            return "would stand beyond the end of the member";
        }
        if (point == BlockPoint.QUARTER) {
            return null;
        }
        if (request.support().kind() == BlockSupport.Kind.SHIMMED_SILL) {
            return "a sill that is shimmed keeps the quarter points";
        }
        double end = fraction * request.width() - length / 2;
        if (end < SettingBlock.LEAST_END_DISTANCE - SAME_PLACE) {
            return "the near end of the block would be "
                    + reporting.dimensioned(end)
                    + " from the glass corner, less than "
                    + reporting.dimensioned(SettingBlock.LEAST_END_DISTANCE);
        }
        return fraction > 0.25 + SAME_PLACE ? "further in than the quarter points" : null;
    }

    /** Deflection goes with 1/(E I); no stiffness helps where nothing may bend at all. */
    private @Nullable Double required(BlockDemand.@Nullable OfMember member) {
        BlockSupport support = request.support();
        HorizontalDeflection horizontal = HorizontalDeflection.of(support);
        if (member == null
                || limits == null
                || horizontal == null
                || support.elasticModulus() == null) {
            return null;
        }
        double limit = limits.limit(member.drop());
        Double bite = limits.biteUse(member.drop());
        if (limit <= 0 || (bite != null && bite > 1)) {
            return null;
        }
        double rigidity = horizontal.rigidity() * member.deflection().value() / limit;
        double without = (rigidity - support.steelRigidity()) / support.elasticModulus();
        return without > 0 ? without : null;
    }

    private static @Nullable Quantity of(Dimension dimension, @Nullable Double si) {
        return si == null ? null : Quantity.of(dimension, si);
    }
}
