package org.bayledger.mechanics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.bayledger.mechanics.PlateField.Face;
import org.bayledger.mechanics.PlateField.PrincipalStresses;
import org.junit.jupiter.api.Test;

/** Against finite elements (src/test/oracle/plate) and against a published fit. */
class PlateOracleTest {

    private static final double NU = 0.22;

    private record Case(
            String name,
            Plate plate,
            double pressure,
            double deflection,
            double tensionLoaded,
            double tensionOther,
            double volume,
            double longEdge,
            double shortEdge) {}

    @Test
    void deflectionAndTensionOnBothFacesAgreeWithFiniteElements() throws IOException {
        List<Case> cases = cases();
        assertThat(cases).hasSizeGreaterThanOrEqualTo(20);
        for (Case c : cases) {
            Plate plate = c.plate();
            PlateField field =
                    PlateSolver.standard(plate.aspectRatio(), plate.poissonRatio())
                            .solve(plate.loadNumber(c.pressure()));
            double loaded = field.greatestTension(Face.LOADED) * plate.stressUnit();
            double other = field.greatestTension(Face.AWAY_FROM_LOAD) * plate.stressUnit();
            PlateResponse direct = field.response(plate);
            PlateResponse tabulated = PlateTable.standard().respond(plate, c.pressure());
            System.out.printf(
                    "%s: w/t %.3f; over finite elements: deflection %+.2f %%, tension on the loaded"
                            + " face %+.2f %%, on the other %+.2f %%%n",
                    c.name(),
                    direct.centreDeflection() / plate.thickness(),
                    100.0 * (direct.centreDeflection() / c.deflection() - 1.0),
                    100.0 * (loaded / c.tensionLoaded() - 1.0),
                    100.0 * (other / c.tensionOther() - 1.0));
            double greatest = Math.max(c.tensionLoaded(), c.tensionOther());
            for (PlateResponse r : List.of(direct, tabulated)) {
                assertThat(r.centreDeflection())
                        .as("%s deflection", c.name())
                        .isCloseTo(c.deflection(), withinPercentage(1.0));
                assertThat(r.maxPrincipalStress())
                        .as("%s greatest tension", c.name())
                        .isCloseTo(greatest, withinPercentage(1.0));
            }
            assertThat(loaded)
                    .as("%s loaded face", c.name())
                    .isCloseTo(c.tensionLoaded(), withinPercentage(1.0));
            assertThat(other)
                    .as("%s other face", c.name())
                    .isCloseTo(c.tensionOther(), withinPercentage(1.0));
        }
    }

    /** The finite elements know the turning of the edge's faces; it moves nothing at mid-depth. */
    @Test
    void volumeAndPullInAgreeWithFiniteElements() throws IOException {
        for (Case c : cases()) {
            PlateResponse r = PlateTable.standard().respond(c.plate(), c.pressure());
            System.out.printf(
                    "%s: over finite elements: volume %+.2f %%, pull-in of the long edges %+.2f %%,"
                            + " of the short ones %+.2f %%%n",
                    c.name(),
                    100.0 * (r.displacedVolume() / c.volume() - 1.0),
                    100.0 * (r.longEdgePullIn() / c.longEdge() - 1.0),
                    100.0 * (r.shortEdgePullIn() / c.shortEdge() - 1.0));
            assertThat(r.displacedVolume())
                    .as("%s volume", c.name())
                    .isCloseTo(c.volume(), withinPercentage(1.0));
            assertThat(r.longEdgePullIn())
                    .as("%s long edges", c.name())
                    .isCloseTo(c.longEdge(), withinPercentage(2.0));
            assertThat(r.shortEdgePullIn())
                    .as("%s short edges", c.name())
                    .isCloseTo(c.shortEdge(), withinPercentage(2.0));
        }
    }

    /**
     * The deflection polynomial of ASTM E1300, appendix on centre deflection (from memory): w = t
     * exp(r0 + r1 x + r2 x^2), x = ln ln [q (a b)^2/(E t^4)]. A cross-check only. Where it was
     * fitted, load numbers 30 to 500 (w from about 0.2 to 6 t), it lies within 2 % of the plate up
     * to aspect ratio 1.7, and within 9 % from 2 to 5, where finite elements side with the plate.
     * At smaller loads (10) and larger ones (2000) it departs further; that is reported, not
     * asserted.
     */
    @Test
    void deflectionPolynomialOfThePractice() {
        double modulus = 71.7e9;
        double t = 0.004;
        for (double r : new double[] {1.0, 1.2, 1.4, 1.7, 2.0, 2.5, 3.0, 4.0, 5.0}) {
            double r0 = 0.553 - 3.83 * r + 1.11 * r * r - 0.0969 * r * r * r;
            double r1 = -2.29 + 5.83 * r - 2.17 * r * r + 0.2067 * r * r * r;
            double r2 = 1.485 - 1.908 * r + 0.815 * r * r - 0.0822 * r * r * r;
            Plate plate = new Plate(r, 1.0, t, modulus, NU);
            StringBuilder deviations = new StringBuilder();
            for (double load : new double[] {10, 30, 50, 100, 300, 500, 1000, 2000}) {
                double x = Math.log(Math.log(load));
                double fit = Math.exp(r0 + r1 * x + r2 * x * x);
                double pressure = load * modulus * Math.pow(t, 4.0) / (r * r);
                PlateResponse plateResponse = PlateTable.standard().respond(plate, pressure);
                double deviation = 100.0 * (fit * t / plateResponse.centreDeflection() - 1.0);
                deviations.append(String.format(" %+.1f %% at %.0f;", deviation, load));
                if (load >= 30.0 && load <= 500.0) {
                    assertThat(deviation)
                            .as("aspect ratio %s, q (ab)^2/(E t^4) = %s", r, load)
                            .isCloseTo(0.0, within(r <= 1.7 ? 2.0 : 9.0));
                }
            }
            System.out.printf(
                    "aspect ratio %.1f, deflection polynomial over plate:%s%n", r, deviations);
        }
    }

    /** Both faces, from the centre to near the corner. */
    @Test
    void principalStressesAtPointsOfBothFacesAgreeWithFiniteElements() throws IOException {
        List<Oracle> rows = Oracle.rows("plate-points-calculix.csv");
        assertThat(rows).hasSize(35);
        for (Oracle row : rows) {
            double[] v = row.values();
            Plate plate = new Plate(v[0], v[1], v[2], v[3], v[4]);
            PlateField field =
                    PlateSolver.standard(plate.aspectRatio(), plate.poissonRatio())
                            .solve(plate.loadNumber(v[5]));
            double greatest =
                    Math.max(
                            field.greatestTension(Face.LOADED),
                            field.greatestTension(Face.AWAY_FROM_LOAD));
            PrincipalStresses loaded = field.principalStresses(Face.LOADED, v[6], v[7]);
            PrincipalStresses other = field.principalStresses(Face.AWAY_FROM_LOAD, v[6], v[7]);
            double[] ours = {loaded.greater(), loaded.lesser(), other.greater(), other.lesser()};
            for (int i = 0; i < 4; i++) {
                double difference = ours[i] * plate.stressUnit() - v[8 + i];
                assertThat(difference / (greatest * plate.stressUnit()))
                        .as("%s at %s, %s, stress %d", row.name(), v[6], v[7], i)
                        .isCloseTo(0.0, within(0.01));
            }
        }
    }

    private static List<Case> cases() throws IOException {
        List<Case> cases = new ArrayList<>();
        for (Oracle row : Oracle.rows("plate-calculix.csv")) {
            double[] v = row.values();
            Plate plate = new Plate(v[0], v[1], v[2], v[3], v[4]);
            cases.add(new Case(row.name(), plate, v[5], v[6], v[7], v[8], v[9], v[10], v[11]));
        }
        return cases;
    }
}
