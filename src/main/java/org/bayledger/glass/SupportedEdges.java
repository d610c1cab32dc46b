package org.bayledger.glass;

/** How many edges of a lite are held against wind. */
public enum SupportedEdges {
    /** All four edges, free to turn and to slide in the plane of the glass. */
    FOUR,
    /** Three edges, the fourth free: refused with 422, no plate solution at hand. */
    THREE,
    /** Two opposite edges; the other two are free. */
    TWO,
    /** One edge, as a cantilever: refused with 422, no plate solution at hand. */
    ONE
}
