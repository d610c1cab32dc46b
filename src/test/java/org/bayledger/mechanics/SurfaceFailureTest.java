package org.bayledger.mechanics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SurfaceFailureTest {

    private static final double K = 2.86e-53;

    /** The biaxial correction as Beason and Morgan (1984) write it, by quadrature (from memory). */
    @ParameterizedTest
    @ValueSource(doubles = {1.0, 0.8, 0.3, 0.0, -0.1, -0.5, -1.0, -3.0, -10.0})
    void closedFormIsTheBiaxialCorrection(double n) {
        double limit = n >= 0.0 ? Math.PI / 2.0 : Math.atan(Math.sqrt(-1.0 / n));
        double integral =
                new GaussIntegratorFactory()
                        .legendre(40, 0.0, limit)
                        .integrate(
                                th -> {
                                    double c = Math.cos(th);
                                    double s = Math.sin(th);
                                    return Math.pow(c * c + n * s * s, 7.0);
                                });
        double stress = 12.5e6;
        double expected = 2.0 / Math.PI * integral * Math.pow(stress, 7.0);
        assertThat(SurfaceFailure.weightedStress(stress, n * stress))
                .isCloseTo(expected, withinPercentage(1e-6));
        assertThat(SurfaceFailure.weightedStress(n * stress, stress))
                .isCloseTo(expected, withinPercentage(1e-6));
    }

    @Test
    void equalBiaxialTensionCountsFullyAndCompressionNotAtAll() {
        assertThat(SurfaceFailure.weightedStress(2.0, 2.0)).isCloseTo(128.0, within(1e-9));
        assertThat(SurfaceFailure.weightedStress(-1.0, -2.0)).isZero();
        assertThat(SurfaceFailure.weightedStress(0.0, 0.0)).isZero();
        // A trace of tension across strong compression: (1/pi) Integral is of the order 1e-9^7.5.
        assertThat(SurfaceFailure.weightedStress(1e-9, -1.0)).isBetween(0.0, 1e-13);
    }

    /** (1/20)^(7/16) less risk at 3 s than at 60 s: strength up by 20^(1/16) = 1.206. */
    @Test
    void strengthFallsWithTheSixteenthRootOfDuration() {
        double atMinute = SurfaceFailure.failureIntegralFor(0.008, K, 60.0);
        double atThree = SurfaceFailure.failureIntegralFor(0.008, K, 3.0);
        assertThat(Math.pow(atThree / atMinute, 1.0 / 7.0)).isCloseTo(1.206, within(0.0005));
        assertThat(atMinute).isCloseTo(-Math.log(0.992) / K, withinPercentage(1e-9));
    }

    @Test
    void probabilityAndItsInverseAgree() {
        for (double p : new double[] {0.0, 1e-12, 0.001, 0.008, 0.5, 0.999}) {
            double integral = SurfaceFailure.failureIntegralFor(p, K, 3.0);
            assertThat(SurfaceFailure.probability(integral, K, 3.0))
                    .isCloseTo(p, within(1e-12 * p));
        }
    }

    /**
     * 1200 x 1500 mm, 5.56 mm thick, E 71.7 GPa, nu 0.22, 3 s, 8 per 1000: 2.5 kPa, the first
     * example of ASTM E1300 (from memory).
     */
    @Test
    void publishedExampleOfTheFailureModel() {
        Plate plate = Plate.of(1.2, 1.5, 0.00556, 71.7e9, 0.22);
        double integral = SurfaceFailure.failureIntegralFor(0.008, K, 3.0);
        double pressure = PlateTable.standard().pressureForFailureIntegral(plate, integral);
        assertThat(pressure).isCloseTo(2500.0, withinPercentage(0.5));
        PlateField field = PlateSolver.standard(1.25, 0.22).solve(plate.loadNumber(2500.0));
        assertThat(SurfaceFailure.probability(field.response(plate).failureIntegral(), K, 3.0))
                .isCloseTo(0.008, withinPercentage(2.0));
    }

    @Test
    void refusesWhatIsNoProbabilityOrDuration() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SurfaceFailure.failureIntegralFor(1.0, K, 3.0));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SurfaceFailure.failureIntegralFor(-0.1, K, 3.0));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SurfaceFailure.failureIntegralFor(Double.NaN, K, 3.0));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SurfaceFailure.probability(-1.0, K, 3.0));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SurfaceFailure.probability(1.0, 0.0, 3.0));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SurfaceFailure.probability(1.0, K, 0.0));
    }
}
