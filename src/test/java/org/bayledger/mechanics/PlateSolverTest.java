package org.bayledger.mechanics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.bayledger.mechanics.PlateField.Face;
import org.bayledger.mechanics.PlateField.PrincipalStresses;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PlateSolverTest {

    private static final double NU = 0.22;

    /**
     * Simply supported plate under uniform load, linear theory, nu = 0.3: w = alpha q b^4/D,
     * moments beta q b^2 across the short side and beta1 q b^2 across the long side at the centre.
     * Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed., Table 8 (from
     * memory).
     */
    @ParameterizedTest
    @CsvSource({
        "1.0, 0.00406, 0.0479, 0.0479",
        "1.2, 0.00564, 0.0627, 0.0501",
        "1.5, 0.00772, 0.0812, 0.0498",
        "2.0, 0.01013, 0.1017, 0.0464",
        "3.0, 0.01223, 0.1189, 0.0406",
        "5.0, 0.01297, 0.1246, 0.0375"
    })
    void smallLoadsGiveTimoshenkosCoefficients(
            double aspect, double alpha, double beta, double beta1) {
        double[] ours = linearCoefficients(aspect);
        // To the table's rounding; its 0.00564 and 0.0375 are 0.2 % and 0.7 % under the series.
        assertThat(ours[0]).isCloseTo(alpha, within(0.000011));
        assertThat(ours[1]).isCloseTo(beta, within(0.00006));
        assertThat(ours[2]).isCloseTo(beta1, within(0.00025));
    }

    /** The series behind those coefficients: M. Levy's solution, same book, section 30. */
    @ParameterizedTest
    @ValueSource(doubles = {1.0, 1.2, 1.5, 2.0, 3.0, 5.0})
    void smallLoadsGiveLevysSeries(double aspect) {
        double alpha = 0.0;
        double beta = 0.0;
        double beta1 = 0.0;
        for (int m = 1; m < 200; m += 2) {
            double a = m * Math.PI * aspect / 2.0;
            double cosh = Math.cosh(a);
            double factor = 4.0 / Math.pow(Math.PI * m, 5.0) * (m % 4 == 1 ? 1.0 : -1.0);
            double k2 = m * Math.PI * m * Math.PI;
            double w = factor * (1.0 - (a * Math.tanh(a) + 2.0) / (2.0 * cosh));
            double across = k2 * w;
            double along = factor * k2 * a * Math.tanh(a) / (2.0 * cosh);
            alpha += w;
            beta += across + 0.3 * along;
            beta1 += along + 0.3 * across;
        }
        double[] ours = linearCoefficients(aspect);
        assertThat(ours[0]).isCloseTo(alpha, withinPercentage(0.002));
        assertThat(ours[1]).isCloseTo(beta, withinPercentage(0.01));
        assertThat(ours[2]).isCloseTo(beta1, withinPercentage(0.01));
    }

    /** {w D/(q b^4), moment across and moment along at the centre over q b^2} for nu = 0.3. */
    private static double[] linearCoefficients(double aspect) {
        double q = 1e-6;
        PlateField field = PlateSolver.standard(aspect, 0.3).solve(q);
        PrincipalStresses centre = field.principalStresses(Face.AWAY_FROM_LOAD, 0.0, 0.0);
        // With b = 2: q b^4/D = 16 Q 12 (1 - nu^2), and 6 M/t^2 = 24 beta Q.
        return new double[] {
            field.centreDeflection() / (16.0 * q * 12.0 * (1.0 - 0.09)),
            centre.greater() / (24.0 * q),
            centre.lesser() / (24.0 * q)
        };
    }

    /** Many more functions change nothing by 0.2 %: the standard number is enough. */
    @ParameterizedTest
    @ValueSource(doubles = {1.0, 1.6, 2.5, 5.0, 10.0})
    void resultsAreConvergedToTwoPerThousand(double aspect) {
        PlateSolver standard = PlateSolver.standard(aspect, NU);
        int orderX = 26 + (int) Math.round(20.0 * Math.log10(aspect));
        PlateSolver finer = new PlateSolver(aspect, NU, orderX, 24);
        double greatest = PlateTable.greatestLoadNumber(aspect);
        for (double share : new double[] {1e-3, 0.01, 0.1, 0.5, 1.0}) {
            PlateField a = standard.solve(share * greatest);
            PlateField b = finer.solve(share * greatest);
            assertThat(a.centreDeflection())
                    .isCloseTo(b.centreDeflection(), withinPercentage(0.01));
            for (Face face : Face.values()) {
                assertThat(a.greatestTension(face))
                        .as("tension, %s, share %s", face, share)
                        .isCloseTo(b.greatestTension(face), withinPercentage(0.2));
                assertThat(Math.pow(a.failureIntegral(face), 1.0 / 7.0))
                        .as("failure integral, %s, share %s", face, share)
                        .isCloseTo(
                                Math.pow(b.failureIntegral(face), 1.0 / 7.0),
                                withinPercentage(0.2));
            }
        }
    }

    @Test
    void edgesAreHeldAndTheCornerIsInPureTwist() {
        PlateField field = PlateSolver.standard(1.4, NU).solve(30.0);
        for (double s = 0.0; s <= 1.0; s += 0.1) {
            assertThat(field.deflectionAt(1.0, s)).isCloseTo(0.0, within(1e-9));
            assertThat(field.deflectionAt(s, -1.0)).isCloseTo(0.0, within(1e-9));
        }
        PrincipalStresses corner = field.principalStresses(Face.LOADED, 1.0, 1.0);
        assertThat(corner.greater()).isPositive();
        assertThat(corner.lesser()).isCloseTo(-corner.greater(), withinPercentage(1e-6));
    }

    @Test
    void squarePlateIsTheSameSeenFromItsOtherSide() {
        PlateField field = PlateSolver.standard(1.0, NU).solve(50.0);
        for (double[] at : new double[][] {{0.3, 0.7}, {0.95, 0.2}, {0.99, 0.9}}) {
            assertThat(field.deflectionAt(at[0], at[1]))
                    .isCloseTo(field.deflectionAt(at[1], at[0]), withinPercentage(0.01));
            for (Face face : Face.values()) {
                assertThat(field.principalStresses(face, at[0], at[1]).greater())
                        .isCloseTo(
                                field.principalStresses(face, at[1], at[0]).greater(),
                                withinPercentage(0.1));
            }
        }
    }

    @Test
    void fieldIsDoublySymmetric() {
        PlateField field = PlateSolver.standard(1.7, NU).solve(20.0);
        assertThat(field.deflectionAt(-0.4, 0.6))
                .isCloseTo(field.deflectionAt(0.4, -0.6), withinPercentage(1e-9));
        assertThat(field.principalStresses(Face.LOADED, -0.9, -0.8).greater())
                .isCloseTo(
                        field.principalStresses(Face.LOADED, 0.9, 0.8).greater(),
                        withinPercentage(1e-9));
    }

    /** The middle of a long plate bends to a cylinder: w = 5 q b^4 (1 - nu^2) 12 / (384 E t^3). */
    @Test
    void middleOfALongPlateIsCylindrical() {
        double q = 1e-3;
        PlateField field = PlateSolver.standard(10.0, NU).solve(q);
        double strip = 5.0 / 384.0 * 16.0 * q * 12.0 * (1.0 - NU * NU);
        assertThat(field.centreDeflection()).isCloseTo(strip, withinPercentage(0.05));
        assertThat(field.greatestTension(Face.AWAY_FROM_LOAD))
                .isCloseTo(6.0 / 8.0 * 4.0 * q, withinPercentage(0.05));
    }

    /**
     * The state under a load sought from a neighbour, by Newton's method with the factorized
     * tangent of all the functions, against the state sought through coarser ones by conjugate
     * gradients.
     */
    @ParameterizedTest
    @CsvSource({"1.0, 0.001", "1.3, 0.01", "1.0, 1.0", "3.0, 0.3", "10.0, 1.0"})
    void startingFromANeighbourGivesTheSameState(double aspect, double share) {
        PlateSolver solver = PlateSolver.standard(aspect, NU);
        double load = share * PlateTable.greatestLoadNumber(aspect);
        PlateField direct = solver.solve(load);
        PlateField near = solver.solve(load, solver.solve(0.9 * load));
        assertThat(near.centreDeflection())
                .isCloseTo(direct.centreDeflection(), withinPercentage(1e-7));
        for (Face face : Face.values()) {
            assertThat(near.greatestTension(face))
                    .isCloseTo(direct.greatestTension(face), withinPercentage(1e-6));
            assertThat(near.failureIntegral(face))
                    .isCloseTo(direct.failureIntegral(face), withinPercentage(1e-5));
        }
    }

    @Test
    void noLoadIsFlat() {
        PlateField field = PlateSolver.standard(1.0, NU).solve(0.0);
        assertThat(field.centreDeflection()).isZero();
        assertThat(field.failureIntegral(Face.LOADED)).isZero();
        assertThat(field.greatestTension(Face.LOADED)).isZero();
    }

    @Test
    void refusesALoadThatBucklesTheEdge() {
        PlateSolver solver = new PlateSolver(1.0, NU, 16, 16);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> solver.solve(3.0 * PlateTable.greatestLoadNumber(1.0)))
                .withMessageContaining("buckles");
    }

    @Test
    void refusesWhatIsNoPlate() {
        assertThatIllegalArgumentException().isThrownBy(() -> PlateSolver.standard(0.5, NU));
        assertThatIllegalArgumentException().isThrownBy(() -> PlateSolver.standard(1.0, 0.5));
        PlateSolver solver = new PlateSolver(1.0, NU, 6, 6);
        assertThatIllegalArgumentException().isThrownBy(() -> solver.solve(-1.0));
        assertThatIllegalArgumentException().isThrownBy(() -> solver.solve(Double.NaN));
        PlateField field = solver.solve(1.0);
        Plate other = new Plate(2.0, 1.0, 0.006, 70e9, NU);
        assertThatIllegalArgumentException().isThrownBy(() -> field.response(other));
    }
}
