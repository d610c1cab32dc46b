package org.bayledger.drawing;

import static org.bayledger.drawing.ResultTree.get;
import static org.bayledger.drawing.ResultTree.list;
import static org.bayledger.drawing.ResultTree.text;
import static org.bayledger.drawing.ResultTree.words;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * One bay on a review sheet.
 *
 * @param id the bay
 * @param verdict sign and word
 * @param items every item's result
 * @param sums for each check the sums of the item that governs it in this bay
 * @param blocks where the setting blocks stand
 * @param seals the joints in the order of their steps
 */
record SheetBay(
        String id,
        String verdict,
        List<Item> items,
        List<Sums> sums,
        List<Blocks> blocks,
        List<Seal> seals) {

    record Item(
            String id,
            String check,
            String verdict,
            String utilization,
            String figures,
            List<String> remedies) {}

    record Sums(String title, List<Step> steps) {}

    record Step(String symbol, String meaning, String value, String formula, String source) {}

    record Blocks(
            String lite, String mark, String place, String distance, String length, String sag) {}

    record Seal(
            String step,
            String type,
            String count,
            String length,
            String volume,
            String hold,
            String instruction) {}

    boolean hasBlocks() {
        return !blocks.isEmpty();
    }

    boolean hasSeals() {
        return !seals.isEmpty();
    }

    boolean hasSums() {
        return !sums.isEmpty();
    }

    static SheetBay of(Object bay, Map<?, ?> result) {
        List<Object> items = list(bay, "items");
        Map<String, String> marks = marks(result);
        return new SheetBay(
                text(bay, "id"),
                VerdictMark.text(ReviewSheet.verdict(bay)),
                items.stream().map(SheetBay::item).toList(),
                sums(items),
                items.stream()
                        .filter(item -> "setting-blocks".equals(get(item, "check")))
                        .map(item -> blocks(item, marks))
                        .toList(),
                items.stream()
                        .filter(item -> "internal-seals".equals(get(item, "check")))
                        .flatMap(item -> list(item, "result", "joints").stream())
                        .filter(SheetBay::counted)
                        .map(SheetBay::seal)
                        .toList());
    }

    private static Item item(Object item) {
        return new Item(
                text(item, "id"),
                words(text(item, "check")),
                VerdictMark.text(ReviewSheet.verdict(item)),
                text(item, "utilization"),
                figures(get(item, "result")),
                list(item, "result", "remedies").stream().map(r -> text(r, "text")).toList());
    }

    /** The result's own quantities, in their order. */
    private static String figures(@Nullable Object result) {
        List<String> figures = new ArrayList<>();
        if (result instanceof Map<?, ?> properties) {
            properties.forEach(
                    (name, value) -> {
                        if (ResultTree.isQuantity(value)) {
                            figures.add(words(String.valueOf(name)) + " " + ResultTree.say(value));
                        }
                    });
        }
        return figures.isEmpty() ? "\u2013" : String.join("; ", figures);
    }

    private static List<Sums> sums(List<Object> items) {
        Map<String, Object> governing = new LinkedHashMap<>();
        for (Object item : items) {
            governing.merge(
                    text(item, "check"),
                    item,
                    (known, other) ->
                            utilization(other).compareTo(utilization(known)) > 0 ? other : known);
        }
        List<Sums> sums = new ArrayList<>();
        governing.forEach(
                (check, item) -> {
                    List<Step> steps =
                            list(item, "result", "trace").stream().map(SheetBay::step).toList();
                    if (!steps.isEmpty()) {
                        sums.add(new Sums(words(check) + ", " + text(item, "id"), steps));
                    }
                });
        return sums;
    }

    private static BigDecimal utilization(Object item) {
        return get(item, "utilization") instanceof BigDecimal utilization
                ? utilization
                : BigDecimal.valueOf(-1);
    }

    private static Step step(Object step) {
        return new Step(
                text(step, "symbol"),
                text(step, "meaning"),
                text(step, "value"),
                text(step, "formula"),
                text(step, "source"));
    }

    private static Map<String, String> marks(Map<?, ?> result) {
        Map<String, String> marks = new LinkedHashMap<>();
        for (Object note : list(result, "notes")) {
            for (Object item : list(note, "items")) {
                marks.merge(
                        String.valueOf(item),
                        text(note, "mark"),
                        (known, other) -> known.equals("\u2013") ? other : known);
            }
        }
        return marks;
    }

    private static Blocks blocks(Object item, Map<String, String> marks) {
        String id = text(item, "id");
        return new Blocks(
                id,
                marks.getOrDefault(id, "\u2013"),
                words(text(item, "result", "recommended", "point")),
                text(item, "result", "recommended", "distanceFromCorner"),
                text(item, "result", "blockCutLength"),
                text(item, "result", "recommended", "memberDeflection"));
    }

    private static boolean counted(Object joint) {
        return get(joint, "count") instanceof BigDecimal count && count.signum() > 0;
    }

    private static Seal seal(Object joint) {
        return new Seal(
                text(joint, "step"),
                words(text(joint, "type")),
                text(joint, "count"),
                text(joint, "length"),
                text(joint, "sealantVolume"),
                Boolean.TRUE.equals(get(joint, "holdPoint")) ? "sign before glazing" : "\u2013",
                text(joint, "instruction"));
    }
}
