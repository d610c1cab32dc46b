package org.bayledger.drawing;

import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Consumer;

/** A column of words, tables and signs, written from the top down as long as there is room. */
final class Column {

    private static final double LINE = 9;
    private static final double GAP = 7;
    private static final double SWATCH = 22;

    /** Bold type is wider. */
    private static final double BOLD = Label.width("n", 1, true) / Label.width("n", 1, false);

    private final Sheet sheet;
    private final Box box;
    private double y;
    private boolean full;

    Column(Sheet sheet, Box box) {
        this.sheet = sheet;
        this.box = box;
        this.y = box.y();
    }

    /** Whether something had no room. */
    boolean full() {
        return full;
    }

    void gap() {
        y += GAP;
    }

    void heading(String words) {
        for (String line : Words.wrap(words, Label.SMALL * BOLD, box.width())) {
            if (next(LINE)) {
                sheet.put(Label.start(line, box.x(), y - 1.7).inBold());
            }
        }
        y += 1.5;
    }

    /** A paragraph. */
    void text(String words) {
        for (String line : Words.wrap(words, Label.SMALL, box.width())) {
            if (next(LINE)) {
                sheet.put(Label.start(line, box.x(), y - 1.7));
            }
        }
    }

    /** A table, or as many of its rows as there is room for with a sentence on the others. */
    void table(Table table) {
        table(table, (row, cell) -> {});
    }

    /** The same, with something drawn in the first cell of each row. */
    void table(Table table, BiConsumer<Integer, Box> first) {
        int shown = Math.min(table.rows().size(), table.capacity(box.bottom() - y - LINE));
        if (shown < table.rows().size()) {
            full = true;
        }
        if (shown > 0) {
            table.first(shown).draw(sheet, box.x(), y);
            for (int row = 0; row < shown; row++) {
                first.accept(row, table.first(row, box.x(), y));
            }
            y += table.first(shown).height();
        }
        if (shown < table.rows().size()) {
            text((table.rows().size() - shown) + " more rows have no room here.");
        }
    }

    /** A picture of a height. */
    void picture(double height, Consumer<Box> picture) {
        double top = y;
        if (next(height)) {
            picture.accept(new Box(box.x(), top, box.width(), height));
        }
    }

    /** A sign with its meaning. */
    void sign(BiConsumer<Sheet, Box> sign, String meaning) {
        List<String> lines = Words.wrap(meaning, Label.SMALL, box.width() - SWATCH - 6);
        double height = Math.max(LINE + 2, lines.size() * LINE);
        double top = y;
        if (next(height + 3)) {
            Box swatch = new Box(box.x(), top, SWATCH, LINE + 2);
            sign.accept(sheet, swatch);
            for (int i = 0; i < lines.size(); i++) {
                sheet.put(
                        Label.start(
                                lines.get(i), swatch.right() + 6, swatch.bottom() - 3 + i * LINE));
            }
        }
    }

    /** Goes down by a height if there is room for it. */
    private boolean next(double height) {
        if (y + height > box.bottom()) {
            full = true;
            return false;
        }
        y += height;
        return true;
    }
}
