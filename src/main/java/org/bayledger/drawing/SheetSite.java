package org.bayledger.drawing;

import static org.bayledger.drawing.ResultTree.words;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.bayledger.wind.WindStandard;
import org.jspecify.annotations.Nullable;

/** The site of a job as rows of a sheet. Quantities stand as they were posted, with every digit. */
final class SheetSite {

    /** Names of the contract that are words: longer than the letters of exposures and terrains. */
    private static final Pattern WORDS = Pattern.compile("[A-Z][A-Z_]{3,}");

    private SheetSite() {}

    static List<SheetOrigin.Row> rows(Map<?, ?> document) {
        List<SheetOrigin.Row> rows = new ArrayList<>();
        add(rows, "", document.get("site"));
        return rows;
    }

    private static void add(List<SheetOrigin.Row> rows, String of, @Nullable Object tree) {
        if (!(tree instanceof Map<?, ?> properties)) {
            return;
        }
        properties.forEach(
                (key, value) -> {
                    String name = words(String.valueOf(key));
                    String whole = of.isEmpty() ? name : of + ", " + decapitalized(name);
                    if (value instanceof Map<?, ?> && !ResultTree.isQuantity(value)) {
                        add(rows, whole, value);
                    } else if (value != null) {
                        rows.add(
                                new SheetOrigin.Row(
                                        whole,
                                        key.equals("standard") && value instanceof String standard
                                                ? standard(standard)
                                                : posted(value)));
                    }
                });
    }

    private static String decapitalized(String name) {
        return name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1);
    }

    private static String standard(String name) {
        for (WindStandard standard : WindStandard.values()) {
            if (standard.name().equals(name)) {
                return Wording.name(standard);
            }
        }
        return words(name);
    }

    private static String posted(Object value) {
        if (value instanceof BigDecimal number) {
            return number.toPlainString();
        }
        if (value instanceof Map<?, ?> quantity && quantity.get("value") instanceof BigDecimal n) {
            return n.toPlainString() + " " + quantity.get("unit");
        }
        return value instanceof String word && WORDS.matcher(word).matches()
                ? words(word)
                : ResultTree.say(value);
    }
}
