package org.bayledger.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.bayledger.drawing.Sheet.Point;

/**
 * Dimension lines end to end. Each length stands at its own line; where they have no room there,
 * equal ones in a row stand together, and all of them clear of one another with leaders.
 */
final class Chain {

    private static final double LINE = 9;

    /** From a dimension line to the words beside it, points. */
    private static final double OFF = 9;

    /** Strokes nearer to one another than this run together, points. */
    private static final double CLOSE = 7;

    /** Equal lengths in a row. */
    private record Run(String words, double middle) {}

    private final Sheet sheet;
    private final double[] at;
    private final List<String> words;

    /**
     * @param at where the lines begin and end, in rising order, points
     * @param words the lengths between them
     */
    Chain(Sheet sheet, double[] at, List<String> words) {
        this.sheet = sheet;
        this.at = at.clone();
        this.words = words;
    }

    /** Room that the words of an upright chain take beside it, points. */
    static double room(List<String> words) {
        double widest = words.stream().mapToDouble(Chain::width).max().orElse(0);
        for (String together : together(words)) {
            widest = Math.max(widest, width(together));
        }
        return widest + OFF + 4;
    }

    /** Draws it across; whether all words have room between two places. */
    boolean across(double y, double from, double to) {
        boolean onLine = true;
        for (int i = 0; i < words.size(); i++) {
            onLine &= width(words.get(i)) + 8 < at[i + 1] - at[i];
        }
        for (double[] piece : pieces()) {
            Dimensions.across(sheet, piece[0], piece[1], y);
        }
        if (onLine) {
            for (int i = 0; i < words.size(); i++) {
                sheet.put(Label.centred(words.get(i), (at[i] + at[i + 1]) / 2, y));
            }
            return true;
        }
        List<Run> runs = runs();
        double[] starts =
                Spread.along(
                        runs.stream().mapToDouble(Run::middle).toArray(),
                        runs.stream().mapToDouble(run -> width(run.words()) + 6).toArray(),
                        from,
                        to);
        for (int i = 0; i < starts.length; i++) {
            double middle = starts[i] + width(runs.get(i).words()) / 2 + 3;
            Dimensions.leader(
                    sheet, new Point(runs.get(i).middle(), y), new Point(middle, y + OFF - 4));
            sheet.put(Label.centred(runs.get(i).words(), middle, y + OFF));
        }
        return starts.length == runs.size();
    }

    /** Draws it upright with the words at its left; whether all have room. */
    boolean up(double x, double from, double to) {
        boolean own = true;
        for (int i = 0; i < words.size(); i++) {
            own &= LINE < at[i + 1] - at[i];
        }
        for (double[] piece : pieces()) {
            Dimensions.up(sheet, piece[0], piece[1], x);
        }
        List<Run> runs = own ? single() : runs();
        double[] lengths = new double[runs.size()];
        Arrays.fill(lengths, LINE);
        double[] starts =
                Spread.along(runs.stream().mapToDouble(Run::middle).toArray(), lengths, from, to);
        for (int i = 0; i < starts.length; i++) {
            double middle = starts[i] + LINE / 2;
            Dimensions.leader(
                    sheet, new Point(x, runs.get(i).middle()), new Point(x - OFF + 3, middle));
            Label label = Label.centred(runs.get(i).words(), 0, middle);
            sheet.put(Label.end(label.words(), x - OFF + 1, label.y()));
        }
        return starts.length == runs.size();
    }

    /** Where lines begin and end: equal ones as one where their strokes would run together. */
    private List<double[]> pieces() {
        boolean close = false;
        for (int i = 0; i < words.size(); i++) {
            close |= at[i + 1] - at[i] < CLOSE;
        }
        List<double[]> pieces = new ArrayList<>();
        int first = 0;
        for (int i = 1; i <= words.size(); i++) {
            if (!close || i == words.size() || !words.get(i).equals(words.get(first))) {
                pieces.add(new double[] {at[first], at[i]});
                first = i;
            }
        }
        return pieces;
    }

    private List<Run> single() {
        List<Run> runs = new ArrayList<>();
        for (int i = 0; i < words.size(); i++) {
            runs.add(new Run(words.get(i), (at[i] + at[i + 1]) / 2));
        }
        return runs;
    }

    private List<Run> runs() {
        List<Run> runs = new ArrayList<>();
        int first = 0;
        for (String together : together(words)) {
            int last = first + 1;
            while (last < words.size() && words.get(last).equals(words.get(first))) {
                last++;
            }
            runs.add(new Run(together, (at[first] + at[last]) / 2));
            first = last;
        }
        return runs;
    }

    /** Equal lengths in a row in one: {@code 3 x 5'-0"}. */
    private static List<String> together(List<String> words) {
        List<String> together = new ArrayList<>();
        int first = 0;
        for (int i = 1; i <= words.size(); i++) {
            if (i == words.size() || !words.get(i).equals(words.get(first))) {
                String times = i - first > 1 ? (i - first) + " x " : "";
                together.add(Words.together(times + words.get(first)));
                first = i;
            }
        }
        return together;
    }

    private static double width(String words) {
        return Label.width(words, Label.SMALL, false);
    }
}
