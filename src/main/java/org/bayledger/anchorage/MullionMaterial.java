package org.bayledger.anchorage;

/** Metals of mullions, with what temperature does to them (design manuals, from memory). */
public enum MullionMaterial {
    /** 13.1e-6 per degF, 10 100 ksi. */
    ALUMINUM(13.1e-6 * 1.8, 10_100 * 6.894757293168e6),
    /** 6.5e-6 per degF, 29 000 ksi. */
    STEEL(6.5e-6 * 1.8, 29_000 * 6.894757293168e6);

    private final double expansion;
    private final double elasticModulus;

    MullionMaterial(double expansion, double elasticModulus) {
        this.expansion = expansion;
        this.elasticModulus = elasticModulus;
    }

    /** Coefficient of linear thermal expansion, 1/K. */
    public double expansion() {
        return expansion;
    }

    /** Elastic modulus, Pa. */
    public double elasticModulus() {
        return elasticModulus;
    }
}
