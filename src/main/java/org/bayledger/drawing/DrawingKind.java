package org.bayledger.drawing;

/** What a drawing shows. */
public enum DrawingKind {
    /** An elevation with its wind zones, bays and design pressures of both signs. */
    WIND_ZONES
}
