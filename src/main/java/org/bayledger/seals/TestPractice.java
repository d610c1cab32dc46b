package org.bayledger.seals;

import org.bayledger.quantity.Constants;

/** By whose custom a water test's pressure is chosen where the project does not say. */
public enum TestPractice {
    /** Curtain walls: 20 % of the positive design pressure, from 300 Pa to 720 Pa (15 psf). */
    CURTAIN_WALL(
            0.20,
            300,
            720,
            "specification practice unless given (from memory); methods ASTM E331, E1105"),
    /** Curtain walls in most US specifications: the same up to 12 psf. */
    CURTAIN_WALL_CAP_12_PSF(
            0.20,
            300,
            12 * TestPractice.PSF,
            "US specification practice unless given (from memory); methods ASTM E331, E1105"),
    /** Windows of light and residential classes: 15 %, from 2.9 psf to 12 psf. */
    WINDOW(
            0.15,
            2.9 * TestPractice.PSF,
            12 * TestPractice.PSF,
            "AAMA/WDMA/CSA 101/I.S.2/A440, classes R and LC, unless given (from memory); methods"
                    + " ASTM E331, E1105");

    /** Pound-force per square foot, Pa. */
    private static final double PSF = Constants.PSI / 144;

    private final double share;
    private final double floor;
    private final double cap;
    private final String source;

    TestPractice(double share, double floor, double cap, String source) {
        this.share = share;
        this.floor = floor;
        this.cap = cap;
        this.source = source;
    }

    /** Share of the positive design pressure. */
    double share() {
        return share;
    }

    /** Least test pressure, Pa. */
    double floor() {
        return floor;
    }

    /** Greatest test pressure, Pa. */
    double cap() {
        return cap;
    }

    /** Where share, floor and cap come from. */
    String source() {
        return source;
    }
}
