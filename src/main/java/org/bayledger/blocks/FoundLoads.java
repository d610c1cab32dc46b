package org.bayledger.blocks;

import static org.bayledger.quantity.Constants.STANDARD_GRAVITY;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.bayledger.mechanics.RigidBar;
import org.jspecify.annotations.Nullable;

/**
 * What each of the blocks of one lite carries.
 *
 * <p>A lite is rigid in its plane beside the horizontal and the blocks. On two blocks statics says
 * what each carries. On more it depends on the heights of their tops, their stiffness and that of
 * the horizontal ({@link RigidBar}); where these are not all known, the loads lie between those of
 * the pairs of blocks either side of the middle: every set of loads that balances the lite is a mix
 * of such pairs, and the greatest deflection is that of one of them.
 */
final class FoundLoads {

    /** A block closer to the middle of the lite than this, m, is under it. */
    private static final double MIDDLE = 1e-6;

    private final double width;
    private final double weight;
    private final double[] places;
    private final double[] arms;
    private final @Nullable FoundMember member;
    private final boolean firm;
    private final double @Nullable [] tops;
    private final double @Nullable [] compliances;

    /**
     * @param mass of the lite, kg
     * @param member the horizontal, or null where it is not known or the sill is shimmed
     */
    FoundLoads(
            SettingBlocksRequest request,
            Installed installed,
            double mass,
            @Nullable FoundMember member) {
        width = request.width();
        weight = mass * STANDARD_GRAVITY;
        List<InstalledBlock> blocks = installed.blocks();
        places = blocks.stream().mapToDouble(InstalledBlock::position).toArray();
        arms = Arrays.stream(places).map(place -> place - width / 2).toArray();
        firm = request.support().kind() == BlockSupport.Kind.SHIMMED_SILL;
        this.member = member;
        double lowest =
                blocks.stream()
                        .mapToDouble(block -> block.top() == null ? 0 : block.top())
                        .min()
                        .orElse(0);
        List<@Nullable Double> over = new ArrayList<>();
        List<@Nullable Double> yields = new ArrayList<>();
        for (InstalledBlock block : blocks) {
            Double top = block.top();
            over.add(top == null ? null : (Double) (top - lowest));
            yields.add(BlockStiffness.compliance(block, request.glass()));
        }
        tops = known(over);
        compliances = known(yields);
    }

    private static double @Nullable [] known(List<@Nullable Double> values) {
        double[] known = new double[values.size()];
        for (int i = 0; i < known.length; i++) {
            Double value = values.get(i);
            if (value == null) {
                return null;
            }
            known[i] = value;
        }
        return known;
    }

    double weight() {
        return weight;
    }

    /** The blocks from the left glass corner, m. */
    double[] places() {
        return places.clone();
    }

    /**
     * Whether there is a block on either side of the lite's middle.
     *
     * @param arms distance of each block from it, m, positive to the right
     */
    static boolean held(double[] arms) {
        return Arrays.stream(arms).anyMatch(arm -> arm < -MIDDLE)
                && Arrays.stream(arms).anyMatch(arm -> arm > MIDDLE);
    }

    /**
     * The loads, N, of each pair of blocks that could hold the lite alone, and of one block right
     * under its middle.
     */
    List<double[]> pairs() {
        List<double[]> pairs = new ArrayList<>();
        for (int i = 0; i < arms.length; i++) {
            if (Math.abs(arms[i]) <= MIDDLE) {
                double[] alone = new double[arms.length];
                alone[i] = weight;
                pairs.add(alone);
            }
            for (int j = 0; j < arms.length; j++) {
                if (arms[i] < -MIDDLE && arms[j] > MIDDLE) {
                    pairs.add(pair(i, j));
                }
            }
        }
        return pairs;
    }

    /**
     * Loads of which the true ones are one or a mix.
     *
     * @param known the loads, or null where they are not determined
     */
    List<double[]> cases(double @Nullable [] known) {
        return known == null ? pairs() : List.of(known);
    }

    /** Least or greatest load of each block over all that balance the lite, N. */
    double[] bound(boolean lower) {
        List<double[]> pairs = pairs();
        double[] bound = pairs.get(0).clone();
        for (double[] pair : pairs) {
            for (int i = 0; i < bound.length; i++) {
                bound[i] = lower ? Math.min(bound[i], pair[i]) : Math.max(bound[i], pair[i]);
            }
        }
        return bound;
    }

    /** The loads, N, of two blocks that hold the lite; one is negative where it would tip. */
    double[] pair(int i, int j) {
        double[] pair = new double[arms.length];
        pair[i] = weight * arms[j] / (arms[j] - arms[i]);
        pair[j] = weight - pair[i];
        return pair;
    }

    /**
     * The loads of three blocks or more, or null where something that they depend on is not known.
     *
     * @param raised number of a block under which something more is put
     * @param by its height, m
     */
    @Nullable RigidBar elastic(int raised, double by) {
        FoundMember on = member;
        boolean known = firm || (on != null && Arrays.stream(places).allMatch(on::spans));
        if (tops == null || compliances == null || !known) {
            return null;
        }
        int n = places.length;
        double[][] compliance = on == null ? new double[n][n] : on.flexibility(places);
        double[] level = new double[n];
        for (int i = 0; i < n; i++) {
            compliance[i][i] += compliances[i];
            double own = on == null ? 0 : on.sinks(new double[0], new double[0], places[i]);
            level[i] = own - tops[i] - (i == raised ? by : 0);
        }
        return RigidBar.rest(compliance, level, arms, weight);
    }

    /**
     * How far the left and the right corner of a lite on two blocks sink, m: the horizontal's
     * bending and, where it is known, the blocks' compression, less what the higher block raises;
     * null where the horizontal is not known, or on a sill the blocks' stiffness.
     */
    double @Nullable [] corners(double[] loads) {
        if (firm ? compliances == null : member == null) {
            return null;
        }
        double[] down = new double[2];
        for (int i = 0; i < 2; i++) {
            down[i] = member == null ? 0 : member.sinks(places, loads, places[i]);
            down[i] += compliances == null ? 0 : compliances[i] * loads[i];
            down[i] -= tops == null ? 0 : tops[i];
        }
        double slope = (down[1] - down[0]) / (places[1] - places[0]);
        double left = down[0] - slope * places[0];
        return new double[] {left, left + slope * width};
    }

    /** Compression of a block under a load, N, in m, or null where it is not known. */
    @Nullable Double compression(int block, double load) {
        return compliances == null ? null : (Double) (compliances[block] * load);
    }
}
