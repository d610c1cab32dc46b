package org.bayledger.framing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.bayledger.quantity.Constants;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Held against the design aids of the Aluminum Design Manual 2015, part VI, from memory. */
class AluminumBucklingTest {

    private static final double KSI = 1000 * Constants.PSI;

    /** Allowable tensile stresses of the design aids: the lesser of Fty/1.65 and Ftu/(1.95 kt). */
    @ParameterizedTest
    @CsvSource({
        "ALUMINUM_6063_T5, 9.7, 11.3",
        "ALUMINUM_6063_T6, 15.2, 15.4",
        "ALUMINUM_6061_T6, 21.2, 19.5",
        "ALUMINUM_6005A_T61, 21.2, 15.6"
    })
    void allowableStressesOfYieldAndRupture(Alloy alloy, double yield, double rupture) {
        assertThat(alloy.allowableYield() / KSI).isCloseTo(yield, within(0.05));
        assertThat(alloy.allowableRupture() / KSI).isCloseTo(rupture, within(0.05));
    }

    /** Table of buckling constants: Bc Dc Cc, Bp Dp Cp, Bbr Dbr Cbr. */
    @ParameterizedTest
    @CsvSource({
        "ALUMINUM_6063_T5, 17.3, 0.072, 99, 19.5, 0.086, 93",
        "ALUMINUM_6063_T6, 27.6, 0.145, 78, 31.4, 0.175, 74",
        "ALUMINUM_6061_T6, 39.4, 0.246, 66, 45.0, 0.301, 61"
    })
    void bucklingConstants(
            Alloy alloy, double bc, double dc, double cc, double bp, double dp, double cp) {
        AluminumBuckling buckling = new AluminumBuckling(alloy);
        assertThat(buckling.member().intercept() / KSI).isCloseTo(bc, within(0.06));
        assertThat(buckling.member().slope() / KSI).isCloseTo(dc, within(0.001));
        assertThat(buckling.member().limit()).isCloseTo(cc, within(0.6));
        assertThat(buckling.flatCompression().intercept() / KSI).isCloseTo(bp, within(0.06));
        assertThat(buckling.flatCompression().slope() / KSI).isCloseTo(dp, within(0.001));
        assertThat(buckling.flatCompression().limit()).isCloseTo(cp, within(0.6));
    }

    @Test
    void bendingConstants() {
        AluminumBuckling.Line line = new AluminumBuckling(Alloy.ALUMINUM_6061_T6).flatBending();
        assertThat(line.intercept() / KSI).isCloseTo(66.8, within(0.06));
        assertThat(line.slope() / KSI).isCloseTo(0.665, within(0.001));
        assertThat(line.limit()).isCloseTo(67, within(0.5));
    }

    /**
     * Design aid of 6063-T6, ksi: walls held at both edges 15.2 up to b/t 22.8, 19.0 - 0.170 b/t,
     * from 39 on 484/(b/t); at one edge 15.2 up to 7.3, 19.0 - 0.530 b/t, from 12.6 on 155/(b/t).
     */
    @ParameterizedTest
    @CsvSource({
        "BOTH, 20, 15.2", "BOTH, 30, 13.9", "BOTH, 50, 9.68",
        "ONE, 6, 15.2", "ONE, 10, 13.7", "ONE, 20, 7.75"
    })
    void wallsInCompression(Wall.SupportedEdges edges, double ratio, double ksi) {
        Wall wall = new Wall(0.002 * ratio, 0.002, edges, Wall.Stress.UNIFORM_COMPRESSION);
        double nominal = new AluminumBuckling(Alloy.ALUMINUM_6063_T6).wall(wall);
        assertThat(nominal / 1.65 / KSI).isCloseTo(ksi, within(0.06));
    }

    /** A web of 6063-T6 beyond b/t 93: 1298/(b/t). */
    @Test
    void webInBending() {
        Wall web = new Wall(0.24, 0.002, Wall.SupportedEdges.BOTH, Wall.Stress.FLEXURE);
        double nominal = new AluminumBuckling(Alloy.ALUMINUM_6063_T6).wall(web);
        assertThat(nominal / 1.65 / KSI).isCloseTo(1298.0 / 120, within(0.05));
    }

    /**
     * Timoshenko & Gere, Theory of Elastic Stability: M,cr = pi/L sqrt(E Iy G J + (pi E/L)2 Iy Cw)
     * of a simply supported beam under uniform moment, with G = 3/8 E.
     */
    @Test
    void elasticMomentIsTheClassicalOne() {
        double e = Alloy.ELASTIC_MODULUS;
        double g = 0.375 * e;
        double length = 3.2;
        double weak = 4e-7;
        double torsion = 3e-9;
        double warping = 9e-10;
        double classical =
                Math.PI
                        / length
                        * Math.sqrt(
                                e * weak * g * torsion
                                        + Math.pow(Math.PI * e / length, 2) * weak * warping);
        assertThat(AluminumBuckling.elasticMoment(length, weak, torsion, warping) / classical)
                .isCloseTo(1, within(2e-4));
    }

    /** F.4.2.1: lambda = L/rye, rye2 = sqrt(Iy)/S sqrt(Cw + 0.038 J L2); both curves meet at Cc. */
    @Test
    void slendernessAndCurve() {
        double moment = AluminumBuckling.elasticMoment(3, 4e-7, 3e-9, 9e-10);
        double lambda = AluminumBuckling.slenderness(4e-5, moment);
        double rye = Math.sqrt(Math.sqrt(4e-7) / 4e-5 * Math.sqrt(9e-10 + 0.038 * 3e-9 * 9));
        assertThat(lambda).isCloseTo(3 / rye, within(1e-9));
        AluminumBuckling buckling = new AluminumBuckling(Alloy.ALUMINUM_6063_T6);
        double limit = buckling.member().limit();
        assertThat(buckling.lateral(limit * (1 - 1e-9)))
                .isCloseTo(buckling.lateral(limit), within(1.0));
        assertThat(buckling.lateral(0)).isEqualTo(Alloy.ALUMINUM_6063_T6.yieldStrength());
        double critical = moment / 4e-5;
        assertThat(buckling.lateral(lambda))
                .isLessThanOrEqualTo(Math.min(critical, buckling.lateral(0)) * (1 + 1e-9));
    }
}
