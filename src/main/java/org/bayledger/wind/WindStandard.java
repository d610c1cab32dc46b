package org.bayledger.wind;

/** The wind standard whose rules and whose meaning of the basic wind speed apply. */
public enum WindStandard {
    /** ASCE/SEI 7-10, components and cladding. */
    ASCE_7_10,
    /** ASCE/SEI 7-16, components and cladding. */
    ASCE_7_16,
    /** ASCE/SEI 7-22, components and cladding; its tornado loads are not covered. */
    ASCE_7_22,
    /** EN 1991-1-4:2005 with the values it recommends; a National Annex may set others. */
    EN_1991_1_4;

    /** Whether this is an edition of ASCE/SEI 7. */
    public boolean isAsce() {
        return this != EN_1991_1_4;
    }
}
