package org.bayledger.wind;

import static org.bayledger.wind.Imperial.FOOT;

/**
 * One edition of ASCE/SEI 7: its profile of velocity pressure and the places of its rules. All from
 * memory.
 *
 * <p>The profile is {@code Kz = k (z/zg)^(2/alpha)}. Through 2016 k is 2.01, with alpha and zg of
 * 7.0 and 1200 ft (B), 9.5 and 900 ft (C), 11.5 and 700 ft (D). The 2022 edition has k 2.41, with
 * 7.5 and 3280 ft, 9.8 and 2460 ft, 11.5 and 1935 ft.
 */
enum AsceEdition {
    /** ASCE/SEI 7-10. */
    SEVEN_10(
            "ASCE/SEI 7-10",
            "Table 30.3-1",
            "30.3.2",
            "Table 26.11-1",
            "30.4.2 and Fig. 30.4-1",
            "30.6.2 and Fig. 30.6-1",
            "30.9"),
    /** ASCE/SEI 7-16. */
    SEVEN_16(
            "ASCE/SEI 7-16",
            "Table 26.10-1",
            "26.10.2",
            "Table 26.13-1",
            "30.3.2 and Fig. 30.3-1",
            "30.5.2 and Fig. 30.5-1",
            "30.8"),
    /** ASCE/SEI 7-22. */
    SEVEN_22(
            "ASCE/SEI 7-22",
            "Table 26.10-1",
            "26.10.2",
            "Table 26.13-1",
            "30.3.2 and Fig. 30.3-1",
            "30.4.2 and Fig. 30.4-1",
            "30.6");

    private final String title;
    private final String exposureTable;
    private final String velocityPressure;
    private final String internalTable;
    private final String lowRise;
    private final String highRise;
    private final String parapet;

    AsceEdition(
            String title,
            String exposureTable,
            String velocityPressure,
            String internalTable,
            String lowRise,
            String highRise,
            String parapet) {
        this.title = title;
        this.exposureTable = exposureTable;
        this.velocityPressure = velocityPressure;
        this.internalTable = internalTable;
        this.lowRise = lowRise;
        this.highRise = highRise;
        this.parapet = parapet;
    }

    static AsceEdition of(WindStandard standard) {
        return switch (standard) {
            case ASCE_7_10 -> SEVEN_10;
            case ASCE_7_16 -> SEVEN_16;
            case ASCE_7_22 -> SEVEN_22;
            case EN_1991_1_4 -> throw new IllegalArgumentException("not an edition of ASCE/SEI 7");
        };
    }

    /** Whether the edition has the ground elevation factor Ke. */
    boolean hasGroundElevationFactor() {
        return this != SEVEN_10;
    }

    /** Whether the directionality factor stands in the velocity pressure or with the pressure. */
    boolean directionalityInVelocityPressure() {
        return this != SEVEN_22;
    }

    /** Exponent alpha of the 3 s gust profile. */
    double alpha(ExposureCategory exposure) {
        boolean newest = this == SEVEN_22;
        return switch (exposure) {
            case B -> newest ? 7.5 : 7.0;
            case C -> newest ? 9.8 : 9.5;
            case D -> 11.5;
        };
    }

    /** Gradient height zg, m, up to which the profile is defined. */
    double gradientHeight(ExposureCategory exposure) {
        boolean newest = this == SEVEN_22;
        return FOOT
                * switch (exposure) {
                    case B -> newest ? 3280 : 1200;
                    case C -> newest ? 2460 : 900;
                    case D -> newest ? 1935 : 700;
                };
    }

    /**
     * Height, m, below which the profile is flat: 15 ft; for components and cladding in exposure B
     * of 7-10 30 ft, so that Kz is never under 0.70 there (note to its Table 30.3-1).
     */
    double flatBelow(ExposureCategory exposure) {
        return (this == SEVEN_10 && exposure == ExposureCategory.B ? 30 : 15) * FOOT;
    }

    /**
     * Velocity pressure exposure coefficient Kz.
     *
     * @param exposure exposure category
     * @param z height above ground, m, at most the gradient height
     */
    double kz(ExposureCategory exposure, double z) {
        double top = gradientHeight(exposure);
        if (!(z > 0 && z <= top)) {
            throw new IllegalArgumentException("no profile at a height of " + z + " m");
        }
        double height = Math.max(z, flatBelow(exposure));
        double k = this == SEVEN_22 ? 2.41 : 2.01;
        return k * Math.pow(height / top, 2 / alpha(exposure));
    }

    /** Where the coefficient Kz stands. */
    String exposureSource() {
        return cite(exposureTable);
    }

    /** Where the velocity pressure stands. */
    String velocityPressureSource() {
        return cite(velocityPressure);
    }

    /** Where the internal pressure coefficients stand. */
    String internalSource() {
        return cite(internalTable);
    }

    /** Where the pressures on walls stand. */
    String wallSource(boolean low) {
        return cite(low ? lowRise : highRise);
    }

    /** Where the load cases of parapets stand. */
    String parapetSource() {
        return cite(parapet);
    }

    /** A place in this edition. */
    String cite(String clause) {
        return title + ", " + clause + " (from memory)";
    }
}
