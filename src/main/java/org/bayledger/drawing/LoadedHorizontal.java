package org.bayledger.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.bayledger.blocks.SettingBlocksRequest;
import org.bayledger.blocks.SettingBlocksResult;
import org.bayledger.check.Finding;
import org.bayledger.review.Bay;
import org.bayledger.review.ReviewItem;
import org.jspecify.annotations.Nullable;

/**
 * A horizontal of a bay under the lite that governs it, with the review's check of the blocks
 * between the two.
 *
 * @param line its line, from 1 at the sill
 * @param column column of the lite
 * @param item the review of the lite's blocks
 * @param others reviews of all lites on that line, from the left
 */
record LoadedHorizontal(int line, int column, ReviewItem item, List<ReviewItem> others) {

    private static final Comparator<ReviewItem> GOVERNING =
            Comparator.comparing(ReviewItem::verdict)
                    .thenComparingDouble(
                            item -> item.utilization() == null ? 0 : item.utilization());

    /** The horizontal that a request asks for. */
    static LoadedHorizontal of(Job job) {
        Bay bay = job.bay();
        String asked = job.request().item();
        HorizontalItem chosen =
                asked == null ? null : Objects.requireNonNull(HorizontalItem.of(bay, asked));
        List<ReviewItem> blocks = job.items("setting-blocks");
        LoadedHorizontal governing = null;
        for (int line : chosen == null ? HorizontalItem.lines(bay) : List.of(chosen.line())) {
            List<ReviewItem> lites = new ArrayList<>();
            for (int column = 1; column <= bay.columns().size(); column++) {
                String name = bay.id() + "/lite/" + column + "-" + line;
                lites.add(
                        blocks.stream()
                                .filter(item -> item.id().equals(name))
                                .findFirst()
                                .orElseThrow());
            }
            for (int column = 1; column <= lites.size(); column++) {
                ReviewItem item = lites.get(column - 1);
                boolean asks =
                        chosen == null || chosen.column() == null || chosen.column() == column;
                if (asks && (governing == null || GOVERNING.compare(item, governing.item()) > 0)) {
                    governing = new LoadedHorizontal(line, column, item, List.copyOf(lites));
                }
            }
        }
        return Objects.requireNonNull(governing);
    }

    /** What the check was asked; null where the document left out what it needs. */
    @Nullable SettingBlocksRequest inputs() {
        return item.inputs() instanceof SettingBlocksRequest request ? request : null;
    }

    /** What the check found; null likewise. */
    @Nullable SettingBlocksResult result() {
        return item.result() instanceof SettingBlocksResult result ? result : null;
    }

    /** What somebody has to do about it, in sentences. */
    List<String> open() {
        SettingBlocksResult found = result();
        return Stream.concat(
                        item.findings().stream(),
                        found == null ? Stream.of() : found.outcome().findings().stream())
                .filter(finding -> finding.severity() == Finding.Severity.ACTION)
                .map(Finding::text)
                .distinct()
                .toList();
    }
}
