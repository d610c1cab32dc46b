package org.bayledger.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * The strip at the foot of every sheet: whose job, which drawing, from what, and what the numbers
 * do not replace.
 *
 * @param lines lines of entries, from the top
 * @param cautions what the numbers do not replace
 */
record TitleBlock(List<List<Entry>> lines, List<String> cautions) {

    private static final double LINE = 23;
    private static final double WORDS = 9;
    private static final double SIDE = 4;

    /** Names are set a little larger than what stands over them. */
    private static final double VALUE = 8;

    TitleBlock {
        lines = List.copyOf(lines);
        cautions = List.copyOf(cautions);
    }

    /**
     * What the block says in one place.
     *
     * @param name what it is
     * @param value the value
     */
    record Entry(String name, String value) {

        private double width() {
            return Math.max(Label.width(name, Label.SMALL, false), Label.width(value, VALUE, true))
                    + 2 * SIDE;
        }
    }

    private List<String> words(double width) {
        return Words.wrap(String.join(" ", cautions), Label.SMALL, width - 2 * SIDE);
    }

    double height(double width) {
        return lines.size() * LINE + words(width).size() * WORDS + SIDE;
    }

    /** What it leaves of a frame. */
    Box body(Box frame) {
        return new Box(frame.x(), frame.y(), frame.width(), frame.height() - height(frame.width()));
    }

    /** Draws it at the foot of a frame, and gives what is left above it. */
    Box draw(Sheet sheet, Box frame) {
        sheet.outline(Stroke.HEAVY, frame);
        double top = frame.bottom() - height(frame.width());
        double y = top;
        for (List<Entry> line : lines) {
            sheet.line(Stroke.MEDIUM, frame.x(), y, frame.right(), y);
            entries(sheet, line, frame, y);
            y += LINE;
        }
        sheet.line(Stroke.MEDIUM, frame.x(), y, frame.right(), y);
        for (String words : words(frame.width())) {
            y += WORDS;
            sheet.put(Label.start(words, frame.x() + SIDE, y));
        }
        return body(frame);
    }

    private static void entries(Sheet sheet, List<Entry> line, Box frame, double y) {
        double x = frame.x();
        List<Double> widths = widths(line, frame.width());
        for (int i = 0; i < line.size(); i++) {
            Entry entry = line.get(i);
            double room = widths.get(i) - 2 * SIDE;
            if (i > 0) {
                sheet.line(Stroke.FINE, x, y, x, y + LINE);
            }
            sheet.put(Label.start(Words.fit(entry.name(), Label.SMALL, room), x + SIDE, y + 8.5));
            String value =
                    Words.fit(
                            entry.value(),
                            VALUE * Label.width("n", 1, true) / Words.width("n", 1),
                            room);
            sheet.put(Label.start(value, x + SIDE, y + LINE - 4).sized(VALUE).inBold());
            x += widths.get(i);
        }
    }

    /** What is left over goes to all alike; what is missing is taken from the widest. */
    private static List<Double> widths(List<Entry> line, double width) {
        List<Double> widths = new ArrayList<>(line.stream().map(Entry::width).toList());
        double spare = width - widths.stream().mapToDouble(Double::doubleValue).sum();
        if (spare >= 0) {
            widths.replaceAll(own -> own + spare / line.size());
            return widths;
        }
        int widest = 0;
        for (int i = 1; i < widths.size(); i++) {
            if (widths.get(i) > widths.get(widest)) {
                widest = i;
            }
        }
        widths.set(widest, widths.get(widest) + spare);
        return widths;
    }
}
