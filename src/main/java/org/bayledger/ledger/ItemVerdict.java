package org.bayledger.ledger;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.bayledger.check.StrictJson;
import org.bayledger.quantity.Quantity;
import org.bayledger.quantity.UnitSystem;
import org.bayledger.review.ReviewItem;
import org.jspecify.annotations.Nullable;

/**
 * What came out of one check of one item, as a bay's results or their digest say it.
 *
 * @param item the item's identifier
 * @param check the check
 * @param verdict its verdict
 * @param utilization demand over limit, or null where the check has none
 */
record ItemVerdict(String item, String check, String verdict, @Nullable BigDecimal utilization) {

    /** The verdicts in one bay's results, in their order. */
    static List<ItemVerdict> of(@Nullable Object bay) {
        List<ItemVerdict> verdicts = new ArrayList<>();
        for (Object item : Trees.present(Trees.list(bay, "items"))) {
            verdicts.add(
                    new ItemVerdict(
                            Trees.text(item, "id"),
                            Trees.text(item, "check"),
                            Trees.text(item, "verdict"),
                            number(Trees.get(item, "utilization"))));
        }
        return verdicts;
    }

    /** The verdict on an item as its results hold it. */
    static ItemVerdict of(ReviewItem item) {
        return new ItemVerdict(
                item.id(),
                item.check(),
                item.verdict().name(),
                item.utilization() == null
                        ? null
                        : Quantity.number(item.utilization()).value(UnitSystem.SI));
    }

    /** The verdict on an item, by the properties of the item in its bay's results. */
    static ItemVerdict of(Map<String, CanonicalSlice> item) {
        return new ItemVerdict(
                value(item, "id") instanceof String id ? id : "",
                value(item, "check") instanceof String check ? check : "",
                value(item, "verdict") instanceof String verdict ? verdict : "",
                number(value(item, "utilization")));
    }

    private static @Nullable Object value(Map<String, CanonicalSlice> item, String name) {
        CanonicalSlice found = item.get(name);
        return found == null ? null : found.value();
    }

    /** The digest of four cells that was stored once. */
    static byte[] digest(List<ItemVerdict> verdicts) {
        return CanonicalJson.bytes(
                verdicts.stream()
                        .map(v -> Arrays.asList(v.item, v.check, v.verdict, v.utilization))
                        .toList());
    }

    /** What a digest says. */
    static List<ItemVerdict> read(byte[] digest) {
        return rows(StrictJson.read(digest)).stream().map(ItemVerdict::row).toList();
    }

    /** The rows of a digest. */
    static List<?> rows(@Nullable Object digest) {
        if (digest instanceof List<?> rows) {
            return rows;
        }
        throw new IllegalStateException("A digest of verdicts is not a list");
    }

    /** The first four cells of a row. */
    static ItemVerdict row(@Nullable Object row) {
        if (row instanceof List<?> cells
                && cells.size() >= 4
                && cells.get(0) instanceof String item
                && cells.get(1) instanceof String check
                && cells.get(2) instanceof String verdict) {
            return new ItemVerdict(item, check, verdict, number(cells.get(3)));
        }
        throw new IllegalStateException("A row of a digest of verdicts is not what it has to be");
    }

    private static @Nullable BigDecimal number(@Nullable Object value) {
        return value instanceof BigDecimal number ? number : null;
    }
}
