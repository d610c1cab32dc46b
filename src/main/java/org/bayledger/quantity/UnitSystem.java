package org.bayledger.quantity;

/** The units in which computed values are reported. */
public enum UnitSystem {
    /** Millimetres, kilopascals, newtons. */
    SI,
    /** Inches, pounds per square foot, pounds-force. */
    US
}
