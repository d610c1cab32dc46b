package org.bayledger.blocks;

import static org.bayledger.quantity.Constants.INCH;

import jakarta.validation.constraints.Size;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.bayledger.check.Faults;
import org.bayledger.check.FaultsException;
import org.bayledger.check.Measured;
import org.bayledger.check.Pointer;
import org.bayledger.glazing.GlassBuildUp;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * The setting blocks of a lite as they were found on site.
 *
 * @param drawnPoint where the shop drawing has the blocks; without it and without drawnDistance
 *     they are held against the place that this check finds
 * @param drawnDistance where the shop drawing has the blocks, from each glass corner to the block's
 *     center, m, in place of drawnPoint
 * @param positionTolerance how far a block may stand from where it is drawn without a word, m; 1/2
 *     in where not given
 * @param blocks the blocks that were found, in any order; empty where there are none
 * @param weeps the weeps in the horizontal under the lite; without it they are not looked at
 */
public record Installed(
        @Nullable BlockPoint drawnPoint,
        @Measured(value = Dimension.DISTANCE, sign = Measured.Sign.POSITIVE)
                @Nullable Double drawnDistance,
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.NOT_NEGATIVE, max = 0.3)
                @Nullable Double positionTolerance,
        @Size(max = 8) List<InstalledBlock> blocks,
        @Size(max = 100) @Nullable List<Weep> weeps) {

    /** Tolerance on a position where none is given, m: common practice, no source. */
    private static final double TOLERANCE = INCH / 2;

    /** Centers closer than this, m, are one place. */
    private static final double ONE_PLACE = 1e-3;

    public Installed {
        blocks = List.copyOf(blocks);
        weeps = weeps == null ? null : List.copyOf(weeps);
        if (drawnPoint != null && drawnDistance != null) {
            throw FaultsException.outOfRange(
                    "/drawnDistance", "must be absent where drawnPoint is given: one or the other");
        }
    }

    /** How far a block may stand from where it is drawn, m. */
    double tolerance() {
        return positionTolerance == null ? TOLERANCE : positionTolerance;
    }

    /** Collects what can't be so under a lite of a width, m, and of a glass where it is known. */
    public void check(Faults faults, String at, double width, @Nullable GlassBuildUp glass) {
        String beyond = "must not be beyond the right glass corner";
        faults.require(
                drawnDistance == null || drawnDistance < width / 2,
                at + "/drawnDistance",
                "must be less than half of the glass width");
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < blocks.size(); i++) {
            InstalledBlock block = blocks.get(i);
            String pointer = Pointer.child(at + "/blocks", i);
            order.add(i);
            faults.require(block.position() <= width, pointer + "/position", beyond);
            faults.require(
                    glass == null
                            || glass.isInsulating()
                            || block.carries() == null
                            || block.carries() == PanesCarried.ALL_PANES,
                    pointer + "/carries",
                    "must be ALL_PANES under a single pane");
        }
        order.sort(Comparator.comparingDouble(i -> blocks.get(i).position()));
        for (int k = 1; k < order.size(); k++) {
            InstalledBlock before = blocks.get(order.get(k - 1));
            InstalledBlock here = blocks.get(order.get(k));
            double room = here.position() - before.position();
            faults.require(
                    room >= ONE_PLACE && room >= half(before) + half(here) - ONE_PLACE,
                    Pointer.child(at + "/blocks", order.get(k)) + "/position",
                    "must leave room for block " + (order.get(k - 1) + 1) + ": they overlap");
        }
        for (int i = 0; weeps != null && i < weeps.size(); i++) {
            faults.require(
                    weeps.get(i).position() <= width,
                    Pointer.child(at + "/weeps", i) + "/position",
                    beyond);
        }
    }

    private static double half(InstalledBlock block) {
        return block.length() == null ? 0 : block.length() / 2;
    }
}
