package org.bayledger.mechanics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Plates on two opposite edges against finite elements (src/test/oracle/plate) and Levy. */
class PlateStripOracleTest {

    private static final double E = 71.7e9;
    private static final double NU = 0.22;

    private static final double FREE_EDGE = (1.0 + NU) * (3.0 - NU) / (3.0 + NU);

    @Test
    void ruleIsOnTheSafeSideOfFiniteElementsAndClose() throws IOException {
        List<Oracle> rows = Oracle.rows("strip-calculix.csv");
        assertThat(rows).hasSize(5);
        for (Oracle row : rows) {
            double[] v = row.values();
            PlateResponse r = PlateStrip.respond(v[0], v[1], v[2], v[3], v[5]);
            double same = PlateStrip.pressureForFailureIntegral(v[0], v[1], v[2], v[3], v[11]);
            System.out.printf(
                    "%s: over finite elements: centre deflection %+.2f %%, greatest tension %+.2f"
                            + " %%, load of the same failure integral %+.2f %%%n",
                    row.name(),
                    100.0 * (r.centreDeflection() / v[6] - 1.0),
                    100.0 * (r.maxPrincipalStress() / v[10] - 1.0),
                    100.0 * (same / v[5] - 1.0));
            assertThat(same / v[5])
                    .as("%s: load of the same failure integral", row.name())
                    .isBetween(0.975, 1.0);
            assertThat(r.maxPrincipalStress() / v[10])
                    .as("%s: greatest tension", row.name())
                    .isBetween(1.0, 1.09);
            assertThat(r.centreDeflection() / v[6])
                    .as("%s: centre deflection", row.name())
                    .isBetween(0.998, 1.075);
            assertThat(r.centreDeflection() * FREE_EDGE)
                    .as("%s: bound of the deflection of the free edges", row.name())
                    .isGreaterThan(0.998 * v[7]);
        }
    }

    /** For every width the rule takes no less than Levy's solution, and at most 15 % more. */
    @Test
    void ruleBoundsLevysSolutionForEveryWidth() {
        for (double width : new double[] {0.1, 0.3, 0.7, 1.0, 1.5, 2.0, 3.0, 5.0, 10.0}) {
            PlateResponse r = PlateStrip.respond(1.0, width, 0.01, E, 100.0);
            double mean = 0.75 * 100.0 * 1e4;
            double[] levy = levy(width);
            double integral = levy[0] * Math.pow(mean, 7.0);
            assertThat(r.failureIntegral() / integral)
                    .as("failure integral, width %s", width)
                    .isBetween(1.0, 1.15);
            assertThat(r.maxPrincipalStress() / (levy[1] * mean))
                    .as("stress in the free edge, width %s", width)
                    .isBetween(1.10 / FREE_EDGE - 1e-4, 1.1001);
        }
        assertThat(levy(10.0)[1]).isCloseTo(FREE_EDGE, withinPercentage(0.01));
    }

    /**
     * Levy's solution of a plate of 1 m span with two free sides: w = sum over odd m of 4/(m pi)^5
     * (1 + A cosh e + B e sinh e) sin(m pi x), e = m pi y, in q/D; no moment and no edge force at e
     * = m pi width/2. Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed.,
     * section 48 (from memory).
     *
     * @return failure integral and stress in the middle of the free edge, for q s^2/8 6/t^2 = 1
     */
    private static double[] levy(double width) {
        int nx = 30;
        int ny = 60;
        double integral = 0.0;
        for (int i = 0; i < nx; i++) {
            for (int j = 0; j < ny; j++) {
                double v = 1.0 - (j + 0.5) / ny;
                double[] s = levy(width, (i + 0.5) / (2 * nx), width / 2.0 * (1.0 - v * v));
                double area = 2.0 * width * v / (nx * ny);
                integral +=
                        area
                                * (SurfaceFailure.weightedStress(s[0], s[1])
                                        + SurfaceFailure.weightedStress(-s[0], -s[1]));
            }
        }
        return new double[] {integral, levy(width, 0.5, width / 2.0)[0]};
    }

    /**
     * Principal stresses on the face away from the load at x from a held edge, y from the middle.
     */
    private static double[] levy(double width, double x, double y) {
        double xx = 0.0;
        double yy = 0.0;
        double xy = 0.0;
        for (int m = 1; m < 60; m += 2) {
            double p = m * Math.PI;
            double end = p * width / 2.0;
            double coth = 1.0 / Math.tanh(end);
            double k = (1.0 + NU) / (1.0 - NU) - end * coth;
            // cosh(end) B and cosh(end) A
            double b = NU / ((1.0 - NU) * k + 2.0 + (1.0 - NU) * end * Math.tanh(end));
            double a = k * b;
            double e = p * y;
            double scale = 1.0 + Math.exp(-2.0 * end);
            double cosh = (Math.exp(e - end) + Math.exp(-e - end)) / scale;
            double sinh = (Math.exp(e - end) - Math.exp(-e - end)) / scale;
            double factor = 4.0 / Math.pow(p, 3.0);
            double sine = factor * Math.sin(p * x);
            xx -= sine * (1.0 + a * cosh + b * e * sinh);
            yy += sine * (a * cosh + b * (2.0 * cosh + e * sinh));
            xy += factor * Math.cos(p * x) * (a * sinh + b * (sinh + e * cosh));
        }
        double mx = -8.0 * (xx + NU * yy);
        double my = -8.0 * (yy + NU * xx);
        double mxy = -8.0 * (1.0 - NU) * xy;
        double radius = Math.hypot((mx - my) / 2.0, mxy);
        return new double[] {(mx + my) / 2.0 + radius, (mx + my) / 2.0 - radius};
    }
}
