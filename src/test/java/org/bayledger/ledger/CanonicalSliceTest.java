package org.bayledger.ledger;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.bayledger.check.StrictJson;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Stepping over canonical JSON finds what reading it finds. */
class CanonicalSliceTest {

    private static final long SEED = 8_785;
    private static final List<String> NAMES = List.of("a", "b", "c", "d", "e");
    private static final List<String> TEXTS =
            List.of(
                    "",
                    "\"",
                    "\\",
                    "\\\"",
                    "]}",
                    "{\"a\":[",
                    "\u00e9\ud83c\udfd7\u2028",
                    ",",
                    "null");

    private final SplittableRandom random = new SplittableRandom(SEED);

    @Test
    void everyPropertyIsFoundAndNothingElse() {
        for (int i = 0; i < 2_000; i++) {
            Map<String, @Nullable Object> object = object(4);
            byte[] json = CanonicalJson.bytes(object);
            Map<?, ?> read = (Map<?, ?>) StrictJson.read(json);
            CanonicalSlice slice = CanonicalSlice.of(json);
            for (String name : NAMES) {
                assertThat(value(slice, name)).isEqualTo(read.get(name));
                List<?> elements = Trees.list(read, name);
                CanonicalSlice found = slice.properties().get(name);
                List<CanonicalSlice> sliced = found == null ? List.of() : found.elements();
                assertThat(sliced).hasSameSizeAs(elements);
                for (int e = 0; e < elements.size(); e++) {
                    for (String inner : NAMES) {
                        assertThat(value(sliced.get(e), inner))
                                .isEqualTo(Trees.get(elements.get(e), inner));
                    }
                }
            }
        }
    }

    @Test
    void whatIsTheSameHasTheSameHashAndNothingElse() {
        int same = 0;
        for (int i = 0; i < 5_000; i++) {
            Object first = object(2);
            Object second = random.nextInt(2) == 0 ? withNulls(first) : object(2);
            boolean alike = Trees.same(first, second);
            assertThat(hash(first).equals(hash(second)))
                    .as("%s and %s", first, second)
                    .isEqualTo(alike);
            same += alike ? 1 : 0;
        }
        assertThat(same).isGreaterThan(1_000);
        assertThat(hash(List.of("a,", "b"))).isNotEqualTo(hash(List.of("a", ",b")));
        assertThat(hash(Map.of("a", List.of()))).isNotEqualTo(hash(Map.of()));
    }

    @Test
    void aDigestSaysWhatTheResultsSay() {
        byte[] results =
                ("{\"id\":\"N-01\",\"items\":[{\"check\":\"GLASS\",\"id\":\"N-01/lite/1-1\",\"inputs\":"
                                + "{\"glass\":{\"panes\":[null,\"6 mm\"]},\"load\":null},"
                                + "\"utilization\":1.25,\"verdict\":\"EXCEEDED\"},{\"check\":\"SEALS\","
                                + "\"id\":\"N-01/seals\",\"utilization\":null,\"verdict\":\"SATISFIED\"}]}")
                        .getBytes(UTF_8);
        List<ItemDigest> items = ItemDigest.of(results);
        assertThat(items.stream().map(ItemDigest::verdict).toList())
                .isEqualTo(ItemVerdict.of(StrictJson.read(results)))
                .containsExactly(
                        new ItemVerdict(
                                "N-01/lite/1-1", "GLASS", "EXCEEDED", new BigDecimal("1.25")),
                        new ItemVerdict("N-01/seals", "SEALS", "SATISFIED", null));
        assertThat(items.get(0).glass())
                .isEqualTo(
                        hash(Map.of("panes", java.util.Arrays.asList(null, "6 mm")))
                                .substring(0, 32));
        assertThat(items.get(1).glass()).isNull();
        byte[] digest = ItemDigest.digest(results);
        assertThat(ItemDigest.read(digest)).isEqualTo(items);
        assertThat(ItemVerdict.read(digest))
                .isEqualTo(items.stream().map(ItemDigest::verdict).toList());
        assertThat(ItemDigest.read(ItemVerdict.digest(ItemVerdict.read(digest))))
                .as("one of four cells")
                .isNull();
        assertThat(ItemDigest.of("{\"items\":[]}".getBytes(UTF_8))).isEmpty();
        assertThat(ItemDigest.of("{}".getBytes(UTF_8))).isEmpty();
    }

    private static @Nullable Object value(CanonicalSlice slice, String name) {
        CanonicalSlice found = slice.properties().get(name);
        return found == null ? null : found.value();
    }

    private static String hash(@Nullable Object tree) {
        return CanonicalSlice.of(CanonicalJson.bytes(tree)).hash();
    }

    private Map<String, @Nullable Object> object(int depth) {
        Map<String, @Nullable Object> object = new LinkedHashMap<>();
        for (String name : NAMES) {
            if (random.nextInt(2) == 0) {
                object.put(name, value(depth));
            }
        }
        return object;
    }

    private @Nullable Object value(int depth) {
        return switch (random.nextInt(depth > 0 ? 6 : 4)) {
            case 0 -> null;
            case 1 -> new BigDecimal(random.nextInt(-3, 4)).movePointLeft(random.nextInt(2));
            case 2 -> random.nextInt(2) == 0;
            case 3 -> TEXTS.get(random.nextInt(TEXTS.size()));
            case 4 -> object(depth - 1);
            default -> {
                List<@Nullable Object> list = new ArrayList<>();
                for (int i = random.nextInt(3); i > 0; i--) {
                    list.add(value(depth - 1));
                }
                yield list;
            }
        };
    }

    /** The same with explicit nulls where nothing was, and without some of those that were. */
    private @Nullable Object withNulls(@Nullable Object tree) {
        if (tree instanceof Map<?, ?> map) {
            Map<String, @Nullable Object> more = new LinkedHashMap<>();
            for (String name : NAMES) {
                Object value = map.get(name);
                if (value != null || random.nextInt(2) == 0) {
                    more.put(name, withNulls(value));
                }
            }
            return more;
        }
        return tree instanceof List<?> list
                ? list.stream()
                        .map(this::withNulls)
                        .collect(ArrayList::new, List::add, List::addAll)
                : tree;
    }
}
