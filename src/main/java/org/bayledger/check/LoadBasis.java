package org.bayledger.check;

/** What a wind pressure means to the one who designs with it. */
public enum LoadBasis {
    /** Design level for load and resistance factors (ASCE/SEI 7-10 and later). */
    STRENGTH,
    /** Design level for allowable stresses, deflections and glass resistance. */
    ALLOWABLE_STRESS,
    /** Characteristic value of EN 1991; partial factors are the caller's. */
    CHARACTERISTIC
}
