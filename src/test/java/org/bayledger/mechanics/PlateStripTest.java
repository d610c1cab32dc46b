package org.bayledger.mechanics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.junit.jupiter.api.Test;

class PlateStripTest {

    private static final double E = 71.7e9;

    /** Simple beam 1 m wide: M = q s^2/8 = 125 N m/m, Z = t^2/6, w = 5 q s^4/(384 E I). */
    @Test
    void isASimpleBeam() {
        PlateResponse r = PlateStrip.respond(1.0, 2.0, 0.01, E, 1000.0);
        double freeEdge = 1.10;
        assertThat(r.maxPrincipalStress())
                .isCloseTo(freeEdge * 125.0 * 6.0 / 1e-4, withinPercentage(1e-9));
        double inertia = 1e-6 / 12.0;
        assertThat(r.centreDeflection())
                .isCloseTo(5.0 * 1000.0 / (384.0 * E * inertia), withinPercentage(1e-9));
    }

    @Test
    void failureIntegralIsThatOfItsStressField() {
        double span = 1.3;
        double width = 2.1;
        PlateResponse r = PlateStrip.respond(span, width, 0.008, E, 900.0);
        double mean = 0.75 * 900.0 * (span / 0.008) * (span / 0.008);
        double integral =
                width
                        * new GaussIntegratorFactory()
                                .legendre(20, -span / 2.0, span / 2.0)
                                .integrate(
                                        x -> {
                                            double u = 2.0 * x / span;
                                            double stress = mean * (1.0 - u * u);
                                            return SurfaceFailure.weightedStress(
                                                    stress, 0.22 * stress);
                                        });
        assertThat(r.failureIntegral()).isCloseTo(integral, withinPercentage(1e-9));
    }

    /** A long plate held on four edges is stiffer than the strip by 1/(1 - nu^2) only. */
    @Test
    void middleOfALongPlateDiffersByTheAnticlasticStiffnessOnly() {
        Plate plate = new Plate(10.0, 1.0, 0.01, E, 0.22);
        PlateResponse longPlate = PlateTable.standard().respond(plate, 1.0);
        PlateResponse strip = PlateStrip.respond(1.0, 10.0, 0.01, E, 1.0);
        assertThat(longPlate.centreDeflection())
                .isCloseTo(strip.centreDeflection() * (1.0 - 0.22 * 0.22), withinPercentage(0.1));
        assertThat(longPlate.maxPrincipalStress())
                .isCloseTo(strip.maxPrincipalStress() / 1.10, withinPercentage(0.1));
    }

    @Test
    void inversesGiveThePressureBack() {
        PlateResponse r = PlateStrip.respond(1.3, 2.0, 0.006, E, 777.0);
        assertThat(PlateStrip.pressureForFailureIntegral(1.3, 2.0, 0.006, E, r.failureIntegral()))
                .isCloseTo(777.0, withinPercentage(1e-9));
        assertThat(PlateStrip.pressureForDeflection(1.3, 2.0, 0.006, E, r.centreDeflection()))
                .isCloseTo(777.0, withinPercentage(1e-9));
    }

    /** A strip that sags by more than a twentieth of its span is out of linear theory's reach. */
    @Test
    void refusesDeflectionsBeyondLinearTheory() {
        double most = PlateStrip.pressureForDeflection(3.0, 1.2, 0.003, E, 0.1499);
        assertThat(PlateStrip.respond(3.0, 1.2, 0.003, E, most).centreDeflection())
                .isCloseTo(0.1499, withinPercentage(1e-9));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PlateStrip.respond(3.0, 1.2, 0.003, E, 1.01 * most))
                .withMessageContaining("a twentieth of the span");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PlateStrip.pressureForDeflection(3.0, 1.2, 0.003, E, 0.151));
    }

    @Test
    void refusesWhatIsNoStrip() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PlateStrip.respond(0.0, 1.0, 0.006, E, 1.0));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PlateStrip.respond(1.0, Double.NaN, 0.006, E, 1.0));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PlateStrip.respond(1.0, 1.0, 0.2, E, 1.0))
                .withMessageContaining("not a thin strip");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PlateStrip.respond(1.0, 1.0, 0.006, E, -1.0));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PlateStrip.pressureForDeflection(1.0, 1.0, 0.006, E, -1.0));
    }
}
