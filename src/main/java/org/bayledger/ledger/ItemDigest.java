package org.bayledger.ledger;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.bayledger.check.StrictJson;
import org.jspecify.annotations.Nullable;

/**
 * One check of one item in short, so that a history finds what changed without its results.
 *
 * <p>A digest is those of one bay's results as canonical JSON, {@code [[item, check, verdict,
 * utilization, whole, glass], ...]}: a hundredth of the results that it is made from. A
 * verification holds each digest against its results. Digests of four cells, without the last two,
 * were stored once; they serve comparisons.
 *
 * @param verdict what came out
 * @param whole hash of all that the results hold of it
 * @param glass hash of the glass that it was checked with; null where it has none
 */
record ItemDigest(ItemVerdict verdict, String whole, @Nullable String glass) {

    private static final int CELLS = 6;

    /** Digits of a hash that tell two apart: 128 bits. */
    private static final int DIGITS = 32;

    CheckedItem.Key key() {
        return new CheckedItem.Key(verdict.item(), verdict.check());
    }

    /** Whether another revision's results hold the very same of it. */
    boolean same(@Nullable ItemDigest other) {
        return other != null && whole.equals(other.whole);
    }

    /** Whether it was checked with the same glass, as far as it has any. */
    boolean sameGlass(ItemDigest other) {
        return Objects.equals(glass, other.glass);
    }

    /** The checks in one bay's results, in their order. */
    static List<ItemDigest> of(byte[] results) {
        List<ItemDigest> digests = new ArrayList<>();
        CanonicalSlice items = CanonicalSlice.of(results).properties().get("items");
        for (CanonicalSlice item : items == null ? List.<CanonicalSlice>of() : items.elements()) {
            Map<String, CanonicalSlice> properties = item.properties();
            CanonicalSlice inputs = properties.get("inputs");
            CanonicalSlice glass = inputs == null ? null : inputs.properties().get("glass");
            digests.add(
                    new ItemDigest(
                            ItemVerdict.of(properties),
                            digits(item),
                            glass == null ? null : digits(glass)));
        }
        return digests;
    }

    private static String digits(CanonicalSlice slice) {
        return slice.hash().substring(0, DIGITS);
    }

    /** The digest of one bay's results. */
    static byte[] digest(byte[] results) {
        return CanonicalJson.bytes(
                of(results).stream()
                        .map(
                                item ->
                                        Arrays.asList(
                                                item.verdict.item(),
                                                item.verdict.check(),
                                                item.verdict.verdict(),
                                                item.verdict.utilization(),
                                                item.whole,
                                                item.glass))
                        .toList());
    }

    /** What a digest says; null where it is one of four cells. */
    static @Nullable List<ItemDigest> read(byte[] digest) {
        List<ItemDigest> items = new ArrayList<>();
        for (Object row : ItemVerdict.rows(StrictJson.read(digest))) {
            if (!(row instanceof List<?> cells
                    && cells.size() == CELLS
                    && cells.get(CELLS - 2) instanceof String whole)) {
                return null;
            }
            items.add(
                    new ItemDigest(
                            ItemVerdict.row(row),
                            whole,
                            cells.get(CELLS - 1) instanceof String glass ? glass : null));
        }
        return items;
    }
}
