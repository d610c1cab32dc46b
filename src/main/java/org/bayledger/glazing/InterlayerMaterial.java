package org.bayledger.glazing;

/** What holds the plies of laminated glass together. */
public enum InterlayerMaterial {
    /** Polyvinyl butyral of standard stiffness. */
    PVB(1070),
    /** Stiff ionomer (an ionoplast). */
    IONOMER(950);

    private final double density;

    InterlayerMaterial(double density) {
        this.density = density;
    }

    /** Density, kg/m3 (textbook values, from memory). */
    public double density() {
        return density;
    }
}
