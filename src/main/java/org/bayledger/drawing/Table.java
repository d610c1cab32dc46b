package org.bayledger.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * A table of short words: heads of two lines, rows under them, fine lines between. The upper line
 * of a head reaches over the columns on its right whose own upper line is empty.
 *
 * @param heads the head of each column, two lines
 * @param rows cells, as many in each row as there are columns
 */
record Table(List<List<String>> heads, List<List<String>> rows) {

    private static final double LINE = 10.5;
    private static final double SIDE = 3;
    private static final int HEAD = 2;

    Table {
        heads = List.copyOf(heads);
        rows = List.copyOf(rows);
    }

    /** Width of each column. */
    private List<Double> widths() {
        List<Double> widths = new ArrayList<>();
        for (int i = 0; i < heads.size(); i++) {
            double widest = Label.width(heads.get(i).get(1), Label.SMALL, true);
            for (List<String> row : rows) {
                widest = Math.max(widest, Label.width(row.get(i), Label.SMALL, false));
            }
            widths.add(widest + 2 * SIDE);
        }
        for (int i = 0; i < heads.size(); i++) {
            double room = widths.get(i);
            int last = i;
            while (last + 1 < heads.size() && heads.get(last + 1).get(0).isEmpty()) {
                last++;
                room += widths.get(last);
            }
            double wanted = Label.width(heads.get(i).get(0), Label.SMALL, true) + 2 * SIDE;
            widths.set(last, widths.get(last) + Math.max(0, wanted - room));
        }
        return widths;
    }

    double width() {
        return widths().stream().mapToDouble(Double::doubleValue).sum();
    }

    double height() {
        return (HEAD + rows.size()) * LINE + SIDE;
    }

    /** How many rows have room in a height. */
    int capacity(double height) {
        return Math.max(0, (int) ((height - SIDE) / LINE) - HEAD);
    }

    /** The first of its rows, under the same heads. */
    Table first(int count) {
        return new Table(heads, rows.subList(0, count));
    }

    /** The cell of a row in the first column, of a table at a place. */
    Box first(int row, double x, double y) {
        return new Box(x, y + HEAD * LINE + SIDE + row * LINE, widths().get(0), LINE);
    }

    /** Draws it; words read from the left edge of a column, numbers from its right. */
    void draw(Sheet sheet, double x, double y) {
        double top = y + HEAD * LINE + SIDE;
        double left = x;
        List<Double> widths = widths();
        for (int i = 0; i < heads.size(); i++) {
            double right = left + widths.get(i);
            sheet.put(Label.start(heads.get(i).get(0), left + SIDE, y + LINE - 2).inBold());
            sheet.put(Label.end(heads.get(i).get(1), right - SIDE, y + 2 * LINE - 2).inBold());
            boolean numbers = !heads.get(i).get(1).isEmpty();
            for (int row = 0; row < rows.size(); row++) {
                String words = rows.get(row).get(i);
                double line = top + (row + 1) * LINE - 2.8;
                sheet.put(
                        numbers
                                ? Label.end(words, right - SIDE, line)
                                : Label.start(words, left + SIDE, line));
            }
            left = right;
        }
        sheet.line(Stroke.MEDIUM, x, top, left, top);
        for (int row = 1; row <= rows.size(); row++) {
            sheet.line(Stroke.FINE, x, top + row * LINE, left, top + row * LINE);
        }
    }
}
