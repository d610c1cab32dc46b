package org.bayledger.seals;

/** An edge of the frame, as seen from outside. */
public enum Edge {
    /** The first vertical. */
    LEFT,
    /** The last vertical. */
    RIGHT,
    /** The uppermost horizontal. */
    TOP,
    /** The lowest horizontal. */
    BOTTOM
}
