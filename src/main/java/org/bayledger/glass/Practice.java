package org.bayledger.glass;

/** The published practice by which the load resistance of glass is found. */
public enum Practice {
    /** ASTM E1300, edition 2016 (values from memory). */
    ASTM_E1300
}
