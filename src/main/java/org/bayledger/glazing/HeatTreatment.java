package org.bayledger.glazing;

import org.jspecify.annotations.Nullable;

/** How glass was treated with heat after it was drawn. */
public enum HeatTreatment {
    /** Slowly cooled float glass, without residual stress to speak of. */
    ANNEALED,
    /** Surface compression of 24 to 52 MPa (ASTM C1048, from memory); breaks into large pieces. */
    HEAT_STRENGTHENED,
    /** Surface compression of at least 69 MPa (ASTM C1048, from memory); breaks into dice. */
    FULLY_TEMPERED;

    /** The next stronger treatment, or null where there is none. */
    public @Nullable HeatTreatment stronger() {
        return switch (this) {
            case ANNEALED -> HEAT_STRENGTHENED;
            case HEAT_STRENGTHENED -> FULLY_TEMPERED;
            case FULLY_TEMPERED -> null;
        };
    }

    /** The treatment as a sentence names it. */
    public String words() {
        return switch (this) {
            case ANNEALED -> "annealed";
            case HEAT_STRENGTHENED -> "heat-strengthened";
            case FULLY_TEMPERED -> "fully tempered";
        };
    }
}
