package org.bayledger.drawing;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.framing.SpanTableResult;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.UnitSystem;

/** A table of spans as CSV: a heading with the units, then one line a span. */
final class SpanCsv {

    private SpanCsv() {}

    static byte[] write(SpanTableResult table, UnitSystem units) {
        List<List<Object>> rows = new ArrayList<>();
        for (SpanTableResult.Row row : table.rows()) {
            for (SpanTableResult.Cell cell : row.cells()) {
                rows.add(
                        List.of(
                                row.pressure().value(units).toPlainString(),
                                cell.spacing().value(units).toPlainString(),
                                cell.span().value(units).toPlainString(),
                                cell.limit(),
                                table.outcome().verdict()));
            }
        }
        return CsvText.write(
                List.of(
                        "pressure (" + Dimension.PRESSURE.symbol(units) + ")",
                        "spacing (" + Dimension.DISTANCE.symbol(units) + ")",
                        "span (" + Dimension.DISTANCE.symbol(units) + ")",
                        "limit",
                        "verdict"),
                rows);
    }
}
