package org.bayledger.drawing;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.jspecify.annotations.Nullable;

/** Rows as CSV (RFC 4180), UTF-8. */
final class CsvText {

    /** What spreadsheets take for a formula, unless it is a number with or without its unit. */
    private static final Pattern FORMULA = Pattern.compile("^[=+\\-@\\t\\r].*", Pattern.DOTALL);

    private static final Pattern NUMBER =
            Pattern.compile("^[+-]?\\d+(\\.\\d+)?([eE][+-]?\\d+)?( [\\w/*]+)?$");

    private CsvText() {}

    static byte[] write(List<String> heading, Iterable<? extends List<?>> rows) {
        StringWriter text = new StringWriter();
        try (CSVPrinter csv = new CSVPrinter(text, CSVFormat.RFC4180)) {
            csv.printRecord(heading);
            for (List<?> row : rows) {
                csv.printRecord(row.stream().map(CsvText::cell).toList());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    /**
     * A cell's text; nothing stands for null. An apostrophe goes before what a spreadsheet would
     * run as a formula: names and reasons come from callers.
     */
    private static @Nullable String cell(@Nullable Object value) {
        if (value == null) {
            return null;
        }
        String text = value.toString();
        return FORMULA.matcher(text).matches() && !NUMBER.matcher(text).matches()
                ? "'" + text
                : text;
    }
}
