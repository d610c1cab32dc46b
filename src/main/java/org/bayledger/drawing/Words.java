package org.bayledger.drawing;

import java.util.ArrayList;
import java.util.List;

/** Words on a sheet: what may stand in them, how wide they are, how they are cut and wrapped. */
final class Words {

    private static final String ELLIPSIS = "\u2026";

    /** A blank at which a line does not end. */
    private static final int NO_BREAK = 0xa0;

    private Words() {}

    /** A number and its unit, which stay in one line. */
    static String together(String quantity) {
        return quantity.replace(' ', (char) NO_BREAK);
    }

    /**
     * Words without what a sheet can't show or would be led astray by: control characters and what
     * XML 1.0 has no place for become blanks, characters that turn the direction of reading are
     * left out, blanks in a row become one.
     */
    static String clean(String words) {
        StringBuilder clean = new StringBuilder(words.length());
        boolean blank = false;
        for (int i = 0; i < words.length(); ) {
            int letter = words.codePointAt(i);
            i += Character.charCount(letter);
            if (letter == NO_BREAK) {
                clean.appendCodePoint(letter);
                continue;
            }
            switch (Character.getType(letter)) {
                case Character.FORMAT -> {}
                case Character.CONTROL,
                        Character.SURROGATE,
                        Character.UNASSIGNED,
                        Character.PRIVATE_USE,
                        Character.LINE_SEPARATOR,
                        Character.PARAGRAPH_SEPARATOR,
                        Character.SPACE_SEPARATOR ->
                        blank = true;
                default -> {
                    if (blank && !clean.isEmpty()) {
                        clean.append(' ');
                    }
                    blank = false;
                    clean.appendCodePoint(letter);
                }
            }
        }
        return clean.toString();
    }

    /**
     * Room that words take at most, in the unit of the size. Widths are those of a wide sans-serif
     * font, so that words keep clear of one another in any that a viewer is likely to have.
     */
    static double width(String words, double size) {
        return words.codePoints().mapToDouble(Words::em).sum() * size;
    }

    private static double em(int letter) {
        if (letter == ' ' || letter == NO_BREAK) {
            return 0.32;
        }
        if ("ijl.,:;'|!()[]\"/-".indexOf(letter) >= 0) {
            return 0.4;
        }
        if ("mwMWQGO@%&\u2026".indexOf(letter) >= 0) {
            return 1.0;
        }
        if (letter == '+' || letter == '\u2212' || letter == '<' || letter == '>') {
            return 0.84;
        }
        if (letter >= '0' && letter <= '9') {
            return 0.64;
        }
        if (letter < 0x250) {
            return Character.isUpperCase(letter) ? 0.72 : 0.63;
        }
        return letter < 0x1100 ? 0.8 : 1.05;
    }

    /** Words as they are where they fit a width, else cut, with an ellipsis at the end. */
    static String fit(String words, double size, double width) {
        String clean = clean(words);
        if (width(clean, size) <= width) {
            return clean;
        }
        int end = 0;
        double taken = width(ELLIPSIS, size);
        while (end < clean.length()) {
            int letter = clean.codePointAt(end);
            taken += em(letter) * size;
            if (taken > width) {
                break;
            }
            end += Character.charCount(letter);
        }
        return clean.substring(0, end).stripTrailing() + ELLIPSIS;
    }

    /** Words in lines that fit a width; a word that is longer is cut. */
    static List<String> wrap(String words, double size, double width) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : clean(words).split(" ", -1)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && width(longer, size) > width) {
                lines.add(line);
                longer = word;
            }
            line = fit(longer, size, width);
        }
        lines.add(line);
        return lines;
    }
}
