package org.bayledger.blocks;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.check.Finding;
import org.bayledger.check.Reporting;
import org.bayledger.mechanics.RigidBar;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/** How a lite stands on the blocks found on site, in sentences. */
final class AsFoundFindings {

    private static final String BLOCKS = "/installed/blocks";

    /** Shim by which the loads on three blocks are shown to hang on their heights, m: 1/32 in. */
    private static final double SHIM = 0.0254 / 32;

    /** Block tops that differ by no more than this are level, m: 1/16 in, common practice. */
    private static final double LEVEL = 0.0254 / 16;

    private final SettingBlocksRequest request;
    private final Reporting reporting;
    private final FoundPlaces places;
    private final AsFoundVerdict verdict;

    AsFoundFindings(
            SettingBlocksRequest request,
            Reporting reporting,
            FoundPlaces places,
            AsFoundVerdict verdict) {
        this.request = request;
        this.reporting = reporting;
        this.places = places;
        this.verdict = verdict;
    }

    /** No block or one: nothing holds the lite. */
    void tooFew() {
        boolean none = places.blocks().isEmpty();
        verdict.broken(
                none ? "NO_SETTING_BLOCKS" : "WRONG_BLOCK_COUNT",
                BLOCKS,
                (none
                                ? "No setting block was found under the lite: its edge rests on"
                                        + " metal, where a crack may start."
                                : "One setting block was found under the lite, where two belong:"
                                        + " the lite tips on it until a corner rests on metal.")
                        + " Take the weight off the lite and set two blocks.");
    }

    /**
     * All blocks on one side of the lite's middle.
     *
     * @param loads of two blocks, N, one of them negative, or null where they are not two or the
     *     weight is not known
     */
    void tips(double @Nullable [] loads) {
        double middle = request.width() / 2;
        int near =
                places.order().stream()
                        .min(
                                (one, other) ->
                                        Double.compare(
                                                Math.abs(
                                                        places.blocks().get(one).position()
                                                                - middle),
                                                Math.abs(
                                                        places.blocks().get(other).position()
                                                                - middle)))
                        .orElseThrow();
        double beyond = Math.abs(places.blocks().get(near).position() - middle);
        String text =
                "No block stands on the other side of the lite's middle, which is "
                        + reporting.dimensioned(beyond)
                        + " beyond block "
                        + (near + 1)
                        + ": the lite tips over it.";
        if (loads != null) {
            int lifted = loads[0] < loads[1] ? 0 : 1;
            text +=
                    " Block "
                            + (lifted + 1)
                            + " would have to hold it down with "
                            + reporting.text(Dimension.FORCE, -loads[lifted])
                            + " while block "
                            + (2 - lifted)
                            + " carries "
                            + reporting.text(Dimension.FORCE, loads[1 - lifted])
                            + ".";
        }
        verdict.broken(
                "LITE_NOT_HELD_UP",
                BLOCKS,
                text
                        + " Take the weight off the lite and set two blocks at equal distances from"
                        + " its corners.");
    }

    /**
     * Two blocks whose loads are not the same.
     *
     * @param corners how far the lite's corners sink, m, or null where that is not known
     */
    void unequal(double[] loads, double @Nullable [] corners) {
        double mean = (loads[0] + loads[1]) / 2;
        if (Math.abs(loads[0] - mean) <= SettingBlock.UNEQUAL * mean) {
            return;
        }
        verdict.says(
                Finding.note(
                        "UNEQUAL_BLOCK_LOADS",
                        BLOCKS,
                        "The blocks stand at unequal distances from the lite's middle and carry "
                                + each(loads)
                                + ", not "
                                + reporting.text(Dimension.FORCE, mean)
                                + " each"
                                + (corners == null
                                        ? ""
                                        : "; the left corner of the lite sinks by "
                                                + reporting.text(Dimension.LENGTH, corners[0])
                                                + ", the right one by "
                                                + reporting.text(Dimension.LENGTH, corners[1]))
                                + ". Set them at equal distances from the corners."));
    }

    /** Two blocks whose tops are not level. */
    void level() {
        InstalledBlock one = places.blocks().get(0);
        InstalledBlock other = places.blocks().get(1);
        if (one.top() == null || other.top() == null) {
            return;
        }
        double step = Math.abs(one.top() - other.top());
        if (step > LEVEL) {
            double apart = Math.abs(one.position() - other.position());
            verdict.open(
                    "BLOCKS_NOT_LEVEL",
                    BLOCKS,
                    "Block "
                            + (one.top() > other.top() ? 1 : 2)
                            + " stands "
                            + reporting.text(Dimension.LENGTH, step)
                            + " higher than the other: the lite leans, its top moves sideways by "
                            + reporting.text(Dimension.LENGTH, step * request.height() / apart)
                            + " and takes that from the clearance at the jamb. Make them level.");
        }
    }

    /** Three blocks or more, of which the loads are known. */
    void many(FoundLoads lite, RigidBar bar) {
        double[] loads = bar.reactions();
        int middle = places.middle();
        StringBuilder text = new StringBuilder(count());
        text.append(" With their tops as measured they carry ").append(each(loads));
        text.append(
                loads[middle] <= 0.01 * lite.weight()
                        ? ": block " + (middle + 1) + " carries next to nothing"
                        : ": block "
                                + (middle + 1)
                                + " takes load from the others and bends the glass in its plane");
        RigidBar shimmed = lite.elastic(middle, SHIM);
        if (shimmed != null) {
            text.append(". A shim of ")
                    .append(reporting.text(Dimension.LENGTH, SHIM))
                    .append(" more under block ")
                    .append(middle + 1)
                    .append(" would make it ")
                    .append(each(shimmed.reactions()));
        }
        text.append(". Take the inner blocks out, the outer two being right.");
        verdict.open("WRONG_BLOCK_COUNT", BLOCKS, text.toString());
    }

    /** Three blocks or more, of which only bounds of the loads are known. */
    void bounded(double[] least, double[] greatest) {
        List<String> each = new ArrayList<>();
        for (int i = 0; i < least.length; i++) {
            each.add(
                    reporting.text(Dimension.FORCE, least[i])
                            + " to "
                            + reporting.text(Dimension.FORCE, greatest[i])
                            + " (block "
                            + (i + 1)
                            + ")");
        }
        verdict.open(
                "WRONG_BLOCK_COUNT",
                BLOCKS,
                count()
                        + " What each carries hangs on heights and stiffness of blocks and"
                        + " horizontal that are not all known; it is anything that balances the"
                        + " lite: "
                        + FoundPlaces.joined(each)
                        + ". On firm blocks whose tops are level only the outermost two carry,"
                        + " since the horizontal sags away from the others. Take the inner blocks"
                        + " out, the outer two being right.");
    }

    /** Three blocks or more, of which no load is known. */
    void uncounted() {
        verdict.open(
                "WRONG_BLOCK_COUNT",
                BLOCKS,
                count() + " Take the inner blocks out, the outer two being right.");
    }

    private String count() {
        return places.blocks().size()
                + " setting blocks were found under the lite, which is to rest on two.";
    }

    private String each(double[] loads) {
        List<String> each = new ArrayList<>();
        for (int i = 0; i < loads.length; i++) {
            each.add(reporting.text(Dimension.FORCE, loads[i]) + " (block " + (i + 1) + ")");
        }
        return FoundPlaces.joined(each);
    }
}
