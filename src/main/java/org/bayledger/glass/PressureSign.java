package org.bayledger.glass;

/** The direction of the pressure that governs. */
public enum PressureSign {
    /** Toward the wall. */
    POSITIVE,
    /** Away from the wall. */
    NEGATIVE
}
