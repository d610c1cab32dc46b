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

/**
 * The sums of an item that governs a check in its bay.
 *
 * @param title check and item
 * @param steps what was worked out, in order
 */
record SheetSums(String title, List<Step> steps) {

    record Step(String symbol, String meaning, String value, String formula, String source) {}

    /** For each check of a bay the sums of the item that governs it. */
    static List<SheetSums> of(List<Object> items) {
        Map<String, Object> governing = new LinkedHashMap<>();
        for (Object item : items) {
            governing.merge(
                    text(item, "check"),
                    item,
                    (known, other) ->
                            utilization(other).compareTo(utilization(known)) > 0 ? other : known);
        }
        List<SheetSums> sums = new ArrayList<>();
        governing.forEach(
                (check, item) -> {
                    List<Step> steps =
                            list(item, "result", "trace").stream().map(SheetSums::step).toList();
                    if (!steps.isEmpty()) {
                        sums.add(new SheetSums(words(check) + ", " + text(item, "id"), steps));
                    }
                });
        return sums;
    }

    static BigDecimal utilization(Object item) {
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
}
