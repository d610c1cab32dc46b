package org.bayledger.wind;

/** Terrain of the site upwind, as EN 1991-1-4 Table 4.1 defines it (values from memory). */
public enum TerrainCategory {
    /** Category 0: sea or coast exposed to the open sea. */
    ZERO(0.003, 1),
    /** Category I: lakes, or flat ground with negligible vegetation and no obstacles. */
    I(0.01, 1),
    /** Category II: low vegetation and isolated obstacles. */
    II(0.05, 2),
    /** Category III: regular cover of vegetation or buildings, villages, suburbs. */
    III(0.3, 5),
    /** Category IV: at least 15 % of the ground covered by buildings over 15 m high. */
    IV(1.0, 10);

    private final double roughnessLength;
    private final double minimumHeight;

    TerrainCategory(double roughnessLength, double minimumHeight) {
        this.roughnessLength = roughnessLength;
        this.minimumHeight = minimumHeight;
    }

    /** Roughness length z0, m. */
    double roughnessLength() {
        return roughnessLength;
    }

    /** Height zmin, m, below which the wind is taken as at that height. */
    double minimumHeight() {
        return minimumHeight;
    }
}
