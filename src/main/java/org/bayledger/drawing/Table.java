package org.bayledger.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * A table of short words: heads of one or more lines, rows under them, fine lines between.
 *
 * @param heads the head of each column, line by line
 * @param rows cells, as many in each row as there are columns
 */
record Table(List<List<String>> heads, List<List<String>> rows) {

    private static final double LINE = 10.5;
    private static final double SIDE = 3;

    Table {
        heads = List.copyOf(heads);
        rows = List.copyOf(rows);
    }

    /** Width of each column. */
    private List<Double> widths() {
        List<Double> widths = new ArrayList<>();
        for (int i = 0; i < heads.size(); i++) {
            double widest = 0;
            for (String line : heads.get(i)) {
                widest = Math.max(widest, Label.width(line, Label.SMALL, true));
            }
            for (List<String> row : rows) {
                widest = Math.max(widest, Label.width(row.get(i), Label.SMALL, false));
            }
            widths.add(widest + 2 * SIDE);
        }
        return widths;
    }

    private int headLines() {
        return heads.stream().mapToInt(List::size).max().orElse(0);
    }

    double width() {
        return widths().stream().mapToDouble(Double::doubleValue).sum();
    }

    double height() {
        return (headLines() + rows.size()) * LINE + SIDE;
    }

    /** How many rows have room in a height. */
    int capacity(double height) {
        return Math.max(0, (int) ((height - SIDE) / LINE) - headLines());
    }

    /** Some of its rows, under the same heads. */
    Table part(int from, int to) {
        return new Table(heads, rows.subList(from, to));
    }

    /** Draws it; the first column reads from its left edge, the others from their right. */
    void draw(Sheet sheet, double x, double y) {
        double top = y + headLines() * LINE + SIDE;
        double left = x;
        List<Double> widths = widths();
        for (int i = 0; i < heads.size(); i++) {
            double right = left + widths.get(i);
            for (int line = 0; line < heads.get(i).size(); line++) {
                cell(sheet, i, left, right, y + (line + 1) * LINE - 2, heads.get(i).get(line), true);
            }
            for (int row = 0; row < rows.size(); row++) {
                String words = rows.get(row).get(i);
                cell(sheet, i, left, right, top + (row + 1) * LINE - 2.5, words, false);
            }
            left = right;
        }
        sheet.line(Stroke.MEDIUM, x, top, left, top);
        for (int row = 1; row <= rows.size(); row++) {
            sheet.line(Stroke.FINE, x, top + row * LINE, left, top + row * LINE);
        }
    }

    private static void cell(
            Sheet sheet,
            int column,
            double left,
            double right,
            double y,
            String words,
            boolean head) {
        Label label =
                column == 0 ? Label.start(words, left + SIDE, y) : Label.end(words, right - SIDE, y);
        sheet.put(head ? label.inBold() : label);
    }
}
