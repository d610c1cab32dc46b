package org.bayledger.drawing;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.List;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.jspecify.annotations.Nullable;

/** Take-offs as a workbook (XLSX, ECMA-376), one sheet each. */
final class TakeOffBook {

    private TakeOffBook() {}

    static byte[] write(List<TakeOff> takeOffs) {
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        try (Workbook book = new Workbook(file, "Bayledger", null)) {
            for (TakeOff takeOff : takeOffs) {
                Worksheet sheet = book.newWorksheet(ResultTree.words(takeOff.kind().name()));
                for (int column = 0; column < takeOff.heading().size(); column++) {
                    sheet.value(0, column, takeOff.heading().get(column));
                    sheet.style(0, column).bold().set();
                }
                sheet.freezePane(0, 1);
                for (int row = 0; row < takeOff.rows().size(); row++) {
                    List<@Nullable Object> cells = takeOff.rows().get(row);
                    for (int column = 0; column < cells.size(); column++) {
                        put(sheet, row + 1, column, cells.get(column));
                    }
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return file.toByteArray();
    }

    private static void put(Worksheet sheet, int row, int column, @Nullable Object cell) {
        if (cell instanceof BigDecimal number) {
            sheet.value(row, column, number);
        } else if (cell instanceof Integer count) {
            sheet.value(row, column, count);
        } else if (cell != null) {
            // a text is never a formula there
            sheet.value(row, column, cell.toString());
        }
    }
}
