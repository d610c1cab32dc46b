package org.bayledger.wind;

/**
 * Risk category of the building (ASCE/SEI 7, Table 1.5-1), for which its basic wind speed was
 * mapped.
 */
public enum RiskCategory {
    /** I: low hazard to life, such as minor storage. */
    I,
    /** II: every building that belongs to no other category. */
    II,
    /** III: substantial hazard to life, such as large assemblies and schools. */
    III,
    /** IV: essential facilities, such as hospitals and fire stations. */
    IV
}
