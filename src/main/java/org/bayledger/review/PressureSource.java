package org.bayledger.review;

/** Where a wind pressure comes from. */
public enum PressureSource {
    /** Worked out from the site by its standard. */
    COMPUTED,
    /** Given with the job. */
    SPECIFIED
}
