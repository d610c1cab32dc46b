package org.bayledger.drawing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.bayledger.blocks.BlockPlace;
import org.bayledger.blocks.BlockPoint;
import org.bayledger.blocks.SettingBlocksRequest;
import org.bayledger.blocks.SettingBlocksResult;
import org.bayledger.check.Finding;
import org.bayledger.check.Verdict;
import org.bayledger.review.Bay;
import org.bayledger.review.ReviewItem;
import org.bayledger.review.ReviewResult;
import org.jspecify.annotations.Nullable;

/**
 * The setting blocks of one lite as the review found them.
 *
 * @param column its column, from 1 at the left
 * @param row its row, from 1 at the sill
 * @param glass name of its build-up; null where none was given
 * @param width width of its glass as the review took it, m; null where it is not known
 * @param result what the check found; null where the document left out what it needs
 * @param verdict the review's word on them
 * @param mark mark of its note for the shop drawings; null where it has none
 * @param open what keeps the blocks from being settled, in sentences
 */
record LiteBlocks(
        int column,
        int row,
        @Nullable String glass,
        @Nullable Double width,
        @Nullable SettingBlocksResult result,
        Verdict verdict,
        @Nullable String mark,
        List<String> open) {

    /** The lites of a bay, row by row from the sill up. */
    static List<LiteBlocks> of(Job job) {
        Bay bay = job.bay();
        Map<String, String> marks = marks(job.result());
        List<LiteBlocks> lites = new ArrayList<>();
        for (ReviewItem item : job.items("setting-blocks")) {
            String[] place = item.id().substring(item.id().lastIndexOf('/') + 1).split("-", -1);
            int column = Integer.parseInt(place[0]);
            int row = Integer.parseInt(place[1]);
            SettingBlocksResult found =
                    item.result() instanceof SettingBlocksResult result ? result : null;
            lites.add(
                    new LiteBlocks(
                            column,
                            row,
                            bay.glassTypeOf(column, row),
                            item.inputs() instanceof SettingBlocksRequest asked
                                    ? Double.valueOf(asked.width())
                                    : null,
                            found,
                            item.verdict(),
                            marks.get(item.id()),
                            open(item, found)));
        }
        return List.copyOf(lites);
    }

    /** Marks of the notes by the names of the items that they are on. */
    private static Map<String, String> marks(ReviewResult review) {
        Map<String, String> marks = new HashMap<>();
        for (ReviewResult.Note note : review.notes()) {
            if (note.mark() != null) {
                note.items().forEach(item -> marks.put(item, note.mark()));
            }
        }
        return marks;
    }

    private static List<String> open(ReviewItem item, @Nullable SettingBlocksResult found) {
        return Stream.concat(
                        item.findings().stream(),
                        found == null ? Stream.of() : found.outcome().findings().stream())
                .filter(finding -> finding.severity() == Finding.Severity.ACTION)
                .map(Finding::text)
                .toList();
    }

    /** The lite as notes call it. */
    String name() {
        return column + "-" + row;
    }

    /** Where the blocks are to stand; null where no place was found. */
    @Nullable BlockPlace place() {
        return result == null ? null : result.recommended();
    }

    /** Whether the blocks may be set where they are drawn. */
    boolean settled() {
        return place() != null && verdict == Verdict.SATISFIED;
    }

    /** Whether they stand elsewhere than at the quarter points, which the field expects. */
    boolean moved() {
        BlockPlace place = place();
        return place != null && place.point() != BlockPoint.QUARTER;
    }

    /** Whether they stand on a sill that is shimmed. */
    boolean shimmed() {
        return result != null && result.shimNote() != null;
    }

    /** Distance from the glass corner to the quarter point, m; null where nothing was found. */
    @Nullable Double quarter() {
        return result == null
                ? null
                : result.candidates().stream()
                        .filter(candidate -> candidate.point() == BlockPoint.QUARTER)
                        .map(candidate -> Double.valueOf(candidate.distanceFromCorner().si()))
                        .findFirst()
                        .orElse(null);
    }

    /** The name of a place. */
    static String words(BlockPoint point) {
        return point.name().toLowerCase(Locale.ROOT).replace('_', ' ') + " points";
    }
}
