package org.bayledger.check;

/** How much derivation an answer carries. */
public enum TraceLevel {
    /** Only the steps of what governs. */
    GOVERNING,
    /** Every step. */
    ALL
}
