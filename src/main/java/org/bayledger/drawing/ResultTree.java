package org.bayledger.drawing;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.bayledger.check.StrictJson;
import org.jspecify.annotations.Nullable;

/**
 * Looking into results as JSON trees, which is how revisions keep them, and saying them in words.
 */
final class ResultTree {

    /** Significant digits that a sheet shows; the results themselves hold six. */
    private static final MathContext SHOWN = new MathContext(4, RoundingMode.HALF_UP);

    private ResultTree() {}

    /** Results as they are written in an answer. */
    static Map<?, ?> of(byte[] answer) {
        if (StrictJson.read(answer) instanceof Map<?, ?> tree) {
            return tree;
        }
        throw new IllegalStateException("results are not a JSON object");
    }

    static @Nullable Object get(@Nullable Object tree, String... names) {
        Object at = tree;
        for (String name : names) {
            at = at instanceof Map<?, ?> properties ? properties.get(name) : null;
        }
        return at;
    }

    static List<Object> list(@Nullable Object tree, String... names) {
        List<Object> present = new ArrayList<>();
        if (get(tree, names) instanceof List<?> elements) {
            for (Object element : elements) {
                if (element != null) {
                    present.add(element);
                }
            }
        }
        return present;
    }

    /** A property as text: a string as it is, a quantity with its unit, a number; else a dash. */
    static String text(@Nullable Object tree, String... names) {
        return say(get(tree, names));
    }

    static String say(@Nullable Object value) {
        if (value instanceof Map<?, ?> quantity
                && quantity.get("value") instanceof BigDecimal number
                && quantity.get("unit") instanceof String unit) {
            return unit.equals("1") ? number(number) : number(number) + " " + unit;
        }
        if (value instanceof BigDecimal number) {
            return number(number);
        }
        if (value instanceof Boolean yes) {
            return yes ? "yes" : "no";
        }
        if (value instanceof List<?> elements) {
            return String.join(", ", elements.stream().map(ResultTree::say).toList());
        }
        return value == null || value.toString().isEmpty() ? "\u2013" : value.toString();
    }

    private static String number(BigDecimal number) {
        BigDecimal shown = number.precision() > SHOWN.getPrecision() ? number.round(SHOWN) : number;
        if (shown.signum() == 0) {
            return "0";
        }
        BigDecimal magnitude = shown.abs();
        boolean plain =
                magnitude.compareTo(new BigDecimal("1e-4")) >= 0
                        && magnitude.compareTo(new BigDecimal("1e9")) < 0;
        String text = plain ? shown.stripTrailingZeros().toPlainString() : shown.toString();
        return text.replace('-', '\u2212');
    }

    static boolean isQuantity(@Nullable Object value) {
        return value instanceof Map<?, ?> quantity
                && quantity.size() == 2
                && quantity.containsKey("value")
                && quantity.containsKey("unit");
    }

    /** A name of the contract in words: loadResistance, setting-blocks, JOINT_PLUG. */
    static String words(String name) {
        String spaced =
                name.replaceAll("([a-z0-9])([A-Z])", "$1 $2")
                        .replace('-', ' ')
                        .replace('_', ' ')
                        .toLowerCase(Locale.ROOT);
        return spaced.isEmpty()
                ? spaced
                : spaced.substring(0, 1).toUpperCase(Locale.ROOT) + spaced.substring(1);
    }
}
