package org.bayledger.framing;

import static org.bayledger.quantity.Constants.INCH;
import static org.bayledger.quantity.Constants.PSI;

/**
 * Alloy and temper of an extrusion, with its minimum strengths (Aluminum Design Manual 2015, table
 * A.3.4, unwelded; from memory). All in Pa; ksi in the constants.
 *
 * <p>The tension coefficient kt of 6005A-T61 is recalled as 1.25, the greater of the values that
 * come into question: it can only lower the allowable stress.
 */
public enum Alloy {
    /** 6063-T5, walls up to 0.5 in: Ftu 22 ksi, Fty and Fcy 16 ksi. */
    ALUMINUM_6063_T5("6063-T5", 22, 16, 1.0, 0.5),
    /** 6063-T6, walls up to 1 in: Ftu 30 ksi, Fty and Fcy 25 ksi. */
    ALUMINUM_6063_T6("6063-T6", 30, 25, 1.0, 1.0),
    /** 6061-T6: Ftu 38 ksi, Fty and Fcy 35 ksi. */
    ALUMINUM_6061_T6("6061-T6", 38, 35, 1.0, Double.POSITIVE_INFINITY),
    /** 6005A-T61, walls up to 1 in: Ftu 38 ksi, Fty and Fcy 35 ksi. */
    ALUMINUM_6005A_T61("6005A-T61", 38, 35, 1.25, 1.0);

    /**
     * Modulus of elasticity of all of them, 10 100 ksi, Pa (the same, table A.3.1; from memory).
     */
    static final double ELASTIC_MODULUS = 10_100_000 * PSI;

    /** Safety factor on yielding and on buckling of building-type structures (F.1; from memory). */
    static final double OMEGA_YIELD = 1.65;

    /** Safety factor on rupture of building-type structures (F.1; from memory). */
    static final double OMEGA_RUPTURE = 1.95;

    private final String title;
    private final double ultimate;
    private final double yield;
    private final double tensionCoefficient;
    private final double greatestThickness;

    Alloy(
            String title,
            double ultimateKsi,
            double yieldKsi,
            double tensionCoefficient,
            double greatestInches) {
        this.title = title;
        this.ultimate = ultimateKsi * 1000 * PSI;
        this.yield = yieldKsi * 1000 * PSI;
        this.tensionCoefficient = tensionCoefficient;
        this.greatestThickness = greatestInches * INCH;
    }

    /** Name as the trade writes it. */
    String title() {
        return title;
    }

    /** Tensile ultimate strength Ftu, Pa. */
    double ultimate() {
        return ultimate;
    }

    /** Yield strength Fty, Pa, which is that in compression Fcy as well for these extrusions. */
    double yieldStrength() {
        return yield;
    }

    /** Tension coefficient kt. */
    double tensionCoefficient() {
        return tensionCoefficient;
    }

    /** Thickest wall for which the strengths are listed, m. */
    double greatestThickness() {
        return greatestThickness;
    }

    /** Allowable bending stress for yielding, Pa: Fy / 1.65, on the elastic section modulus. */
    double allowableYield() {
        return yield / OMEGA_YIELD;
    }

    /** Allowable bending stress for rupture, Pa: Ftu / (kt 1.95), likewise. */
    double allowableRupture() {
        return ultimate / (tensionCoefficient * OMEGA_RUPTURE);
    }
}
