package org.bayledger.glass;

/** How many edges of a lite are held against wind. */
public enum SupportedEdges {
    /** All four edges, free to turn and to slide in the plane of the glass. */
    FOUR,
    /** Two opposite edges; the other two are free. */
    TWO
}
