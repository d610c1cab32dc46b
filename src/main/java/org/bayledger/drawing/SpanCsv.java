package org.bayledger.drawing;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.bayledger.framing.SpanTableResult;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.UnitSystem;

/** A table of spans as CSV (RFC 4180): a heading with the units, then one line a span. */
final class SpanCsv {

    private SpanCsv() {}

    static byte[] write(SpanTableResult table, UnitSystem units) {
        StringWriter text = new StringWriter();
        try (CSVPrinter csv = new CSVPrinter(text, CSVFormat.RFC4180)) {
            csv.printRecord(
                    "pressure (" + Dimension.PRESSURE.symbol(units) + ")",
                    "spacing (" + Dimension.DISTANCE.symbol(units) + ")",
                    "span (" + Dimension.DISTANCE.symbol(units) + ")",
                    "limit",
                    "verdict");
            for (SpanTableResult.Row row : table.rows()) {
                for (SpanTableResult.Cell cell : row.cells()) {
                    csv.printRecord(
                            row.pressure().value(units).toPlainString(),
                            cell.spacing().value(units).toPlainString(),
                            cell.span().value(units).toPlainString(),
                            cell.limit(),
                            table.outcome().verdict());
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }
}
