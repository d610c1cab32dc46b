package org.bayledger.blocks;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.bayledger.glazing.Pane;
import org.bayledger.mechanics.BeamExtreme;
import org.bayledger.mechanics.BeamLoad;
import org.bayledger.mechanics.BeamReaction;
import org.bayledger.mechanics.BeamSolution;
import org.jspecify.annotations.Nullable;

/**
 * What the blocks at one place ask of horizontal, blocks and glass.
 *
 * @param load on each block, N; null where the mass of the lite is not known
 * @param pressure on each block, Pa; null likewise, and where no width is known
 * @param glassEdgeStress greatest tension in an edge of the glass, Pa
 * @param member what it asks of the member; null where that is not known or there is none
 */
record BlockDemand(
        @Nullable Double load,
        @Nullable Double pressure,
        double glassEdgeStress,
        @Nullable OfMember member) {

    /**
     * What it asks of the member.
     *
     * @param deflection greatest deflection without its sign, m, and where it is
     * @param sinking how far the block of the lite that sinks less sinks, m
     * @param rotation greatest rotation, rad; null where it is not known
     * @param drop how far rotation brings down the metal over the glazing below, m
     * @param endReaction the greater reaction of the two ends, N
     * @param endTorque the greater torque of the two ends, N m; null where rotation is not known
     * @param propReaction force on the prop at mid-span, N; null where there is none
     */
    record OfMember(
            BeamExtreme deflection,
            double sinking,
            @Nullable Double rotation,
            double drop,
            double endReaction,
            @Nullable Double endTorque,
            @Nullable Double propReaction) {}

    /** A demand over its limit. */
    record Use(BlockLimit limit, double ratio) {}

    /**
     * @param length of each block, m
     * @param fraction distance from the glass corner over the glass width
     */
    static BlockDemand of(SettingBlocksRequest request, double length, double fraction) {
        Double load = request.blockLoad();
        Double width = bearingWidth(request);
        return new BlockDemand(
                load,
                load == null || width == null ? null : (Double) (load / (length * width)),
                new GlassOnBlocks(request.width(), request.height()).stress(fraction),
                ofMember(request, fraction));
    }

    /**
     * Width over which glass and block touch, m: that of the panes, whose edges stand on the block
     * while the spacers between them do not, or of the block where it is narrower.
     */
    private static @Nullable Double bearingWidth(SettingBlocksRequest request) {
        Double block = request.blockWidth();
        if (request.glass() == null) {
            return block;
        }
        double panes = request.glass().panes().stream().mapToDouble(Pane::thickness).sum();
        return block == null ? panes : Math.min(block, panes);
    }

    private static @Nullable OfMember ofMember(SettingBlocksRequest request, double fraction) {
        HorizontalDeflection horizontal = HorizontalDeflection.of(request.support());
        if (horizontal == null) {
            return null;
        }
        BlockLayout layout = BlockLayout.of(request, horizontal.span(), fraction);
        List<BeamLoad.Force> loads = layout.loads(request);
        if (loads == null || !layout.on(horizontal.span())) {
            return null;
        }
        return under(request, horizontal, loads, layout.own());
    }

    /**
     * What weights at any places ask of the member.
     *
     * @param loads on the member, from the left support
     * @param own where the blocks of the lite itself stand, m from the left support
     */
    static OfMember under(
            SettingBlocksRequest request,
            HorizontalDeflection horizontal,
            List<BeamLoad.Force> loads,
            List<Double> own) {
        BeamSolution beam = horizontal.under(loads);
        HorizontalTwist twist = HorizontalTwist.of(request, loads);
        List<BeamReaction> reactions = beam.reactions();
        BeamExtreme greatest = beam.greatestDeflection();
        return new OfMember(
                new BeamExtreme(greatest.at(), Math.abs(greatest.value())),
                own.stream()
                        .mapToDouble(
                                at -> beam.deflection(at) + (twist == null ? 0 : twist.sinking(at)))
                        .min()
                        .orElse(0),
                twist == null ? null : (Double) twist.rotation(),
                twist == null ? 0 : twist.greatestDrop(),
                Math.max(reactions.get(0).force(), reactions.get(reactions.size() - 1).force()),
                twist == null ? null : (Double) twist.endTorque(),
                horizontal.propped() ? (Double) reactions.get(1).force() : null);
    }

    /**
     * The demand that is greatest over its limit, of the limits that are known.
     *
     * @param limits on the deflection, or null on a sill
     */
    Use governing(SettingBlocksRequest request, @Nullable DeadLoadLimits limits) {
        return uses(request, limits).stream()
                .max(Comparator.comparingDouble(Use::ratio))
                .orElseThrow();
    }

    /**
     * All demands over their limits, of the limits that are known.
     *
     * @param limits on the deflection, or null on a sill
     */
    List<Use> uses(SettingBlocksRequest request, @Nullable DeadLoadLimits limits) {
        List<Use> uses = new ArrayList<>();
        OfMember of = member;
        if (of != null && limits != null) {
            double deflection = of.deflection().value();
            double lost = deflection + of.drop();
            add(uses, BlockLimit.DEFLECTION, limits.ownUse(deflection));
            add(uses, BlockLimit.BITE, limits.biteUse(lost));
            add(uses, BlockLimit.CLEARANCE, limits.clearanceUse(lost));
            BlockSupport support = request.support();
            add(uses, BlockLimit.ROTATION, over(of.rotation(), support.rotationAllowed()));
            Double reaction = over(of.endReaction(), support.endReactionAllowable());
            Double torque = over(of.endTorque(), support.endTorqueAllowable());
            add(
                    uses,
                    BlockLimit.END_CONNECTION,
                    reaction == null
                            ? torque
                            : (Double) (reaction + (torque == null ? 0 : torque)));
        }
        add(uses, BlockLimit.BLOCK_PRESSURE, over(pressure, request.blockPressureAllowable()));
        add(uses, BlockLimit.GLASS_EDGE_STRESS, over(glassEdgeStress, GlassOnBlocks.allowable()));
        return uses;
    }

    private static void add(List<Use> uses, BlockLimit limit, @Nullable Double ratio) {
        if (ratio != null) {
            uses.add(new Use(limit, ratio));
        }
    }

    private static @Nullable Double over(@Nullable Double demand, @Nullable Double limit) {
        return demand == null || limit == null ? null : (Double) (demand / limit);
    }
}
