package org.bayledger.wind;

/** Enclosure of the building, as ASCE/SEI 7 section 26.2 defines it. */
public enum EnclosureClassification {
    /** Enclosed: internal pressure coefficient of 0.18, either sign. */
    ENCLOSED(0.18),
    /** Partially enclosed, by a dominant opening: 0.55, either sign. */
    PARTIALLY_ENCLOSED(0.55),
    /** Partially open, from the 2016 edition on: 0.18, either sign. */
    PARTIALLY_OPEN(0.18);

    private final double internalCoefficient;

    EnclosureClassification(double internalCoefficient) {
        this.internalCoefficient = internalCoefficient;
    }

    /** Magnitude of GCpi (7-10 Table 26.11-1, 7-16 and 7-22 Table 26.13-1; from memory). */
    double internalCoefficient() {
        return internalCoefficient;
    }
}
