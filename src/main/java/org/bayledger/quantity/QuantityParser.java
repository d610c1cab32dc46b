package org.bayledger.quantity;

import static org.bayledger.quantity.Constants.FOOT;
import static org.bayledger.quantity.Constants.INCH;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.bayledger.quantity.Units.Conversion;

/**
 * Reads a quantity as a person writes it: {@code 120 mph}, {@code 2.4 kPa}, {@code 0.75 in}, {@code
 * 13'-6 1/2"}, {@code 1 1/2 in}, {@code 13 ft 6 in}.
 */
public final class QuantityParser {

    private static final String DECIMAL = "(?:\\d+(?:\\.\\d*)?|\\.\\d+)(?:[eE][+-]?\\d{1,3})?";
    private static final Pattern PLAIN =
            Pattern.compile("([+-]?" + DECIMAL + ")(?:\\s*([A-Za-z][A-Za-z0-9/*_]*)|\\s+(1))");
    private static final Pattern BARE = Pattern.compile("[+-]?" + DECIMAL);

    /** A whole number, a decimal, a fraction or a whole number and a fraction of inches. */
    private static final String INCHES =
            "(?:(?<whole>\\d{1,9})(?:(?:\\s+|-)(?<wn>\\d{1,5})/(?<wd>\\d{1,5}))?"
                    + "|(?<n>\\d{1,5})/(?<d>\\d{1,5})|(?<dec>\\d*\\.\\d+|\\d+\\.))";

    private static final Pattern FEET_INCHES =
            Pattern.compile(
                    "(?<sign>[+-]?)(?:(?<ft>\\d{1,9}(?:\\.\\d+)?)\\s*(?:'|ft)(?:\\s*-?\\s*(?=[\\d.])|$))?"
                            + "(?:"
                            + INCHES
                            + "\\s*(?:\"|in))?");

    private QuantityParser() {}

    /**
     * The SI value of a text.
     *
     * @param text number and unit, or feet and inches for a length
     * @param dimension what the quantity must measure
     * @throws QuantityFormatException where the text is no quantity of that dimension; the message
     *     is advice to the caller
     */
    public static double parse(String text, Dimension dimension) {
        String trimmed = text.strip();
        if (trimmed.length() > 64) {
            throw new QuantityFormatException("is too long for a quantity");
        }
        if (BARE.matcher(trimmed).matches()) {
            if (dimension == Dimension.NONE) {
                return parse(Double.parseDouble(trimmed), "1", dimension);
            }
            throw new QuantityFormatException("has no unit; " + accepted(dimension));
        }
        Matcher plain = PLAIN.matcher(trimmed);
        if (plain.matches()) {
            String unit = plain.group(2) == null ? plain.group(3) : plain.group(2);
            return parse(Double.parseDouble(plain.group(1)), unit, dimension);
        }
        if (dimension.symbols().contains("in") && dimension.symbols().contains("ft")) {
            String primes =
                    trimmed.replace('\u2032', '\'')
                            .replace('\u2019', '\'')
                            .replace('\u2033', '"')
                            .replace('\u201d', '"')
                            .replace("''", "\"");
            Matcher feet = FEET_INCHES.matcher(primes);
            if (feet.matches() && (feet.group("ft") != null || hasInches(feet))) {
                return feetInches(feet, trimmed);
            }
        }
        throw new QuantityFormatException(
                "'" + trimmed + "' is not a quantity; " + accepted(dimension));
    }

    /**
     * The SI value of a number with a unit.
     *
     * @throws QuantityFormatException where the number is not finite or the unit does not measure
     *     the dimension
     */
    public static double parse(double value, String unit, Dimension dimension) {
        if (!Double.isFinite(value)) {
            throw new QuantityFormatException("must be a finite number");
        }
        if (!dimension.symbols().contains(unit)) {
            String why =
                    Units.find(unit) == null ? "is not a known unit" : "is the wrong unit here";
            throw new QuantityFormatException("'" + unit + "' " + why + "; " + accepted(dimension));
        }
        Conversion conversion = Units.get(unit);
        return conversion.toSi(value);
    }

    private static String accepted(Dimension dimension) {
        List<String> symbols = dimension.symbols();
        String feet = symbols.contains("ft") && symbols.contains("in") ? ", or 13'-6 1/2\"" : "";
        return "give a number with one of the units " + String.join(", ", symbols) + feet;
    }

    private static boolean hasInches(Matcher feet) {
        return feet.group("whole") != null || feet.group("n") != null || feet.group("dec") != null;
    }

    private static double feetInches(Matcher matcher, String text) {
        String feet = matcher.group("ft");
        if (feet != null && feet.contains(".") && hasInches(matcher)) {
            throw new QuantityFormatException("'" + text + "' has a decimal point in its feet");
        }
        double inches = 0;
        if (matcher.group("whole") != null) {
            inches = Double.parseDouble(matcher.group("whole"));
            if (matcher.group("wn") != null) {
                inches += fraction(matcher.group("wn"), matcher.group("wd"), text);
            }
        } else if (matcher.group("n") != null) {
            inches = fraction(matcher.group("n"), matcher.group("d"), text);
        } else if (matcher.group("dec") != null) {
            inches = Double.parseDouble(matcher.group("dec"));
        }
        if (feet != null && inches >= 12) {
            throw new QuantityFormatException(
                    "'" + text + "' has feet and twelve inches or more; write it one way");
        }
        double size = (feet == null ? 0 : Double.parseDouble(feet)) * FOOT + inches * INCH;
        return "-".equals(matcher.group("sign")) ? -size : size;
    }

    private static double fraction(String numerator, String denominator, String text) {
        double over = Double.parseDouble(denominator);
        double under = Double.parseDouble(numerator);
        if (over == 0 || under >= over) {
            throw new QuantityFormatException(
                    "'" + text + "' has a fraction that is not smaller than one");
        }
        return under / over;
    }
}
