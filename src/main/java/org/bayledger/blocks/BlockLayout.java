package org.bayledger.blocks;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.mechanics.BeamLoad;
import org.jspecify.annotations.Nullable;

/**
 * Where the blocks stand on the member, m from its left support. A place is measured from the glass
 * corner; on the member the glass begins at its offset or, centered, at (L - W)/2.
 *
 * @param own the two blocks of the lite
 * @param second the two blocks of the second lite, or none
 */
record BlockLayout(List<Double> own, List<Double> second) {

    /**
     * @param span of the member, m
     * @param fraction distance from the glass corner over the glass width
     */
    static BlockLayout of(SettingBlocksRequest request, double span, double fraction) {
        Double offset = request.support().glassOffset();
        double start = offset == null ? (span - request.width()) / 2 : offset;
        SecondLite beside = request.secondLite();
        return new BlockLayout(
                pair(start, request.width(), fraction),
                beside == null ? List.of() : pair(beside.offset(), beside.width(), fraction));
    }

    private static List<Double> pair(double start, double width, double fraction) {
        return List.of(start + fraction * width, start + (1 - fraction) * width);
    }

    /** Whether every block stands between the ends of a span in m. */
    boolean on(double span) {
        return within(own, span) && within(second, span);
    }

    private static boolean within(List<Double> blocks, double span) {
        for (double at : blocks) {
            if (at <= 0 || at >= span) {
                return false;
            }
        }
        return true;
    }

    /** All blocks, from the left. */
    List<Double> all() {
        List<Double> all = new ArrayList<>(own);
        all.addAll(second);
        return all.stream().sorted().toList();
    }

    /**
     * What the blocks put on the member.
     *
     * @param load weight on each block of the lite, N
     * @param beside weight on each block of the second lite, N
     */
    List<BeamLoad.Force> loads(double load, double beside) {
        List<BeamLoad.Force> loads = new ArrayList<>();
        own.forEach(at -> loads.add(new BeamLoad.Force(at, load)));
        second.forEach(at -> loads.add(new BeamLoad.Force(at, beside)));
        return loads;
    }

    /** The loads of a request, or null where the mass of its lite is not known. */
    @Nullable List<BeamLoad.Force> loads(SettingBlocksRequest request) {
        Double load = request.blockLoad();
        SecondLite beside = request.secondLite();
        return load == null
                ? null
                : loads(load, beside == null ? 0 : SettingBlock.load(beside.glassWeight()));
    }
}
