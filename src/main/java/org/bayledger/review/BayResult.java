package org.bayledger.review;

import java.util.List;
import org.bayledger.check.Verdict;

/**
 * One bay through all checks.
 *
 * @param id the bay's name
 * @param verdict on all its items
 * @param items its items: lites, setting blocks, verticals, horizontals, anchorage, seals,
 *     retention
 */
public record BayResult(String id, Verdict verdict, List<ReviewItem> items) {

    public BayResult {
        items = List.copyOf(items);
    }

    BayResult verdictsOnly() {
        return new BayResult(id, verdict, items.stream().map(ReviewItem::verdictOnly).toList());
    }
}
