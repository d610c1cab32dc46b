package org.bayledger.glass;

/** An edge of a lite, as seen from outside. */
public enum LiteEdge {
    /** The top edge. */
    HEAD("head"),
    /** The bottom edge. */
    SILL("sill"),
    /** The left edge. */
    LEFT_JAMB("left jamb"),
    /** The right edge. */
    RIGHT_JAMB("right jamb");

    private final String words;

    LiteEdge(String words) {
        this.words = words;
    }

    /** The edge as a sentence names it. */
    String words() {
        return words;
    }

    boolean isHorizontal() {
        return this == HEAD || this == SILL;
    }
}
