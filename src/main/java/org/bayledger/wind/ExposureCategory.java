package org.bayledger.wind;

/** Exposure of the site upwind, as ASCE/SEI 7 section 26.7 defines it. */
public enum ExposureCategory {
    /** Urban, suburban and wooded ground. */
    B,
    /** Open ground with scattered obstructions. */
    C,
    /** Flat, unobstructed ground and water. */
    D
}
