package org.bayledger.drawing;

/**
 * Words at a place on a sheet.
 *
 * @param words the words
 * @param x place, in points
 * @param y the line that the words stand on; for upright words the middle of them
 * @param size size of the type, in points
 * @param anchor which part of the words the place is
 * @param bold whether they are bold
 * @param upright whether they read from the bottom up
 */
record Label(
        String words,
        double x,
        double y,
        double size,
        Anchor anchor,
        boolean bold,
        boolean upright) {

    /** Size of ordinary words; nothing on a sheet is smaller. */
    static final double SMALL = 7;

    /** Parts of the type's size above and below the line that words stand on. */
    private static final double ABOVE = 0.8;

    private static final double BELOW = 0.24;

    /** Bold type is so much wider. */
    private static final double BOLD = 1.12;

    /** Which part of the words a place is. */
    enum Anchor {
        /** Their beginning. */
        START,
        /** Their middle. */
        MIDDLE,
        /** Their end. */
        END
    }

    Label {
        words = Words.clean(words);
    }

    /** Small words that begin at a place. */
    static Label start(String words, double x, double y) {
        return new Label(words, x, y, SMALL, Anchor.START, false, false);
    }

    /** Small words with their middle at a place. */
    static Label middle(String words, double x, double y) {
        return new Label(words, x, y, SMALL, Anchor.MIDDLE, false, false);
    }

    /** Small words that end at a place. */
    static Label end(String words, double x, double y) {
        return new Label(words, x, y, SMALL, Anchor.END, false, false);
    }

    /** Small words whose middle, in both directions, is at a place. */
    static Label centred(String words, double x, double y) {
        return middle(words, x, y + SMALL * (ABOVE - BELOW) / 2);
    }

    /** The same in another size. */
    Label sized(double points) {
        return new Label(words, x, y, points, anchor, bold, upright);
    }

    /** The same in bold type. */
    Label inBold() {
        return new Label(words, x, y, size, anchor, true, upright);
    }

    /** The same words, reading from the bottom up around the middle of where they stood. */
    Label turned() {
        Box flat = box();
        return new Label(
                words,
                flat.middleX() + size * (ABOVE - BELOW) / 2,
                flat.middleY(),
                size,
                Anchor.MIDDLE,
                bold,
                true);
    }

    /** Room that words take at most. */
    static double width(String words, double size, boolean bold) {
        return Words.width(Words.clean(words), size) * (bold ? BOLD : 1);
    }

    /** The room they take. */
    Box box() {
        double width = width(words, size, bold);
        if (upright) {
            return new Box(x - ABOVE * size, y - width / 2, (ABOVE + BELOW) * size, width);
        }
        double left =
                switch (anchor) {
                    case START -> x;
                    case MIDDLE -> x - width / 2;
                    case END -> x - width;
                };
        return new Box(left, y - ABOVE * size, width, (ABOVE + BELOW) * size);
    }
}
