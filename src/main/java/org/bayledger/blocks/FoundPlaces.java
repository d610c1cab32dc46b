package org.bayledger.blocks;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.bayledger.check.Reporting;
import org.jspecify.annotations.Nullable;

/**
 * Where the blocks of a lite were found and how a sentence names them.
 *
 * @param width of the glass, m
 * @param blocks in the order of the request
 * @param order their numbers from the left to the right
 */
record FoundPlaces(double width, List<InstalledBlock> blocks, List<Integer> order) {

    static FoundPlaces of(SettingBlocksRequest request, Installed installed) {
        List<InstalledBlock> blocks = installed.blocks();
        return new FoundPlaces(
                request.width(),
                blocks,
                IntStream.range(0, blocks.size())
                        .boxed()
                        .sorted(Comparator.comparingDouble(i -> blocks.get(i).position()))
                        .toList());
    }

    /** Whether a block is the first or the last of several. */
    boolean outermost(int block) {
        int last = order.size() - 1;
        return last > 0 && (order.get(0) == block || order.get(last) == block);
    }

    /** The inner block nearest to the middle of the lite, or -1 where there is none. */
    int middle() {
        return order.stream()
                .filter(block -> !outermost(block))
                .min(
                        Comparator.comparingDouble(
                                block -> Math.abs(blocks.get(block).position() - width / 2)))
                .orElse(-1);
    }

    /** From a block's center to the glass corner on its side, m. */
    double fromCorner(int block) {
        double position = blocks.get(block).position();
        boolean left = order.size() > 1 ? order.get(0) == block : position <= width / 2;
        boolean right = order.size() > 1 && order.get(order.size() - 1) == block;
        return left || (!right && position <= width / 2) ? position : width - position;
    }

    /** From the glass corner on its side to a block's near end, m, or null without a length. */
    @Nullable Double end(int block) {
        Double length = blocks.get(block).length();
        return length == null ? null : (Double) (fromCorner(block) - length / 2);
    }

    /** A block as a sentence names it. */
    String name(int block, Reporting reporting) {
        return "Block "
                + (block + 1)
                + ", "
                + reporting.dimensioned(blocks.get(block).position())
                + " from the left glass corner,";
    }

    /** Pointer to a block in the request. */
    static String pointer(int block) {
        return "/installed/blocks/" + block;
    }

    /** Words joined as a sentence does. */
    static String joined(List<String> words) {
        int last = words.size() - 1;
        return last < 1
                ? String.join("", words)
                : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
    }
}
