package org.bayledger.framing;

/** Which load a member is checked for, and so about which of its axes it bends. */
public enum Axis {
    /** Wind, at right angles to the wall. */
    WIND,
    /** Dead load, parallel to the wall. */
    DEAD
}
