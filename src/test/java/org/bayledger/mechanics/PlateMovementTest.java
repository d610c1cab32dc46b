package org.bayledger.mechanics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Arrays;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The volume that a plate displaces, and how far its edges move in. */
class PlateMovementTest {

    private static final double E = 71.7e9;
    private static final double NU = 0.22;

    /**
     * Linear theory: Navier's series, Timoshenko and Woinowsky-Krieger, Theory of Plates and
     * Shells, 2nd ed., section 28 (from memory), integrated over the plate: V = 64 q a b/(pi^8 D)
     * Sum Sum 1/(m^2 n^2 (m^2/a^2 + n^2/b^2)^2), m and n odd.
     */
    @ParameterizedTest
    @ValueSource(doubles = {1.0, 1.3, 2.0, 3.7, 8.0})
    void volumeUnderSmallLoadsIsThatOfNaviersSeries(double aspect) {
        double sum = 0.0;
        for (int m = 1; m < 400; m += 2) {
            for (int n = 1; n < 400; n += 2) {
                double k = m * m / (aspect * aspect) + n * n;
                sum += 1.0 / ((double) m * m * n * n * k * k);
            }
        }
        Plate plate = new Plate(aspect, 1.0, 0.01, E, NU);
        double rigidity = E * 1e-6 / (12.0 * (1.0 - NU * NU));
        double series = 64.0 * 0.1 * aspect / (Math.pow(Math.PI, 8.0) * rigidity) * sum;
        PlateResponse direct =
                PlateSolver.standard(aspect, NU).solve(plate.loadNumber(0.1)).response(plate);
        assertThat(direct.displacedVolume()).isCloseTo(series, withinPercentage(0.001));
        assertThat(PlateTable.standard().respond(plate, 0.1).displacedVolume())
                .isCloseTo(series, withinPercentage(0.05));
    }

    /**
     * No force crosses a section of a plate whose edges slide, so that the membrane stresses drop
     * out of the mean along an edge: it is the mean shortening of the chords, Integral w_x^2/2 dA
     * over the length of the edge.
     */
    @ParameterizedTest
    @CsvSource({"1.0, 0.01", "1.0, 30", "1.6, 200", "2.5, 5", "4.0, 100"})
    void meanPullInAlongAnEdgeIsTheMeanShorteningOfTheChords(double aspect, double load) {
        PlateField field = PlateSolver.standard(aspect, NU).solve(load);
        double h = 1e-4;
        double shortMean = mean(field::shortEdgePullIn);
        double longMean = mean(field::longEdgePullIn);
        double alongX =
                mean(
                        xi ->
                                mean(
                                        eta -> {
                                            double slope =
                                                    (field.deflectionAt(xi + h, eta)
                                                                    - field.deflectionAt(
                                                                            xi - h, eta))
                                                            / (2.0 * h * aspect);
                                            return slope * slope / 2.0;
                                        }));
        double alongY =
                mean(
                        xi ->
                                mean(
                                        eta -> {
                                            double slope =
                                                    (field.deflectionAt(xi, eta + h)
                                                                    - field.deflectionAt(
                                                                            xi, eta - h))
                                                            / (2.0 * h);
                                            return slope * slope / 2.0;
                                        }));
        assertThat(shortMean).isCloseTo(alongX * aspect, withinPercentage(0.02));
        assertThat(longMean).isCloseTo(alongY, withinPercentage(0.02));
    }

    private static double mean(DoubleUnaryOperator f) {
        return new GaussIntegratorFactory().legendre(30, 0.0, 1.0).integrate(f::applyAsDouble);
    }

    /**
     * The middle of an edge stands for the edge: where much moves, no place moves more than 4 %
     * further.
     */
    @Test
    void middleOfAnEdgeStandsForTheEdge() {
        double worst = 1.0;
        for (double aspect : new double[] {1.0, 1.5, 2.5, 5.0, 10.0}) {
            PlateSolver solver = PlateSolver.standard(aspect, NU);
            for (double share : new double[] {1e-4, 0.01, 0.1, 0.4, 1.0}) {
                PlateField field = solver.solve(share * PlateTable.greatestLoadNumber(aspect));
                double middle = Math.max(field.shortEdgePullIn(0.0), field.longEdgePullIn(0.0));
                for (double at = 0.1; at <= 1.0; at += 0.1) {
                    worst = Math.max(worst, field.shortEdgePullIn(at) / middle);
                    worst = Math.max(worst, field.longEdgePullIn(at) / middle);
                }
            }
        }
        System.out.println(
                "greatest pull-in along an edge over the greater of the middles: " + worst);
        assertThat(worst).isLessThan(1.04);
    }

    /** The middle of a long plate bends to a cylinder: its long edges move as a strip's do. */
    @Test
    void longPlateIsPulledInAsAStrip() {
        Plate plate = new Plate(10.0, 1.0, 0.01, E, NU);
        PlateResponse longPlate = PlateTable.standard().respond(plate, 200.0);
        PlateResponse strip = PlateStrip.respond(1.0, 10.0, 0.01, E, 200.0);
        double softer = 1.0 - NU * NU;
        assertThat(longPlate.longEdgePullIn())
                .isCloseTo(strip.longEdgePullIn() * softer * softer, withinPercentage(0.2));
    }

    @Test
    void edgesOfASquareMoveAlike() {
        PlateResponse r = PlateTable.standard().respond(new Plate(1.0, 1.0, 0.005, E, NU), 2000.0);
        assertThat(r.longEdgePullIn()).isCloseTo(r.shortEdgePullIn(), withinPercentage(1e-4));
    }

    /**
     * The volume within 0.3 %, and the pull-in within 0.5 %, of the direct solution at 500 points
     * off the nodes.
     */
    @Test
    void fiveHundredRandomPlatesAgreeWithTheDirectSolution() {
        Random random = new Random(20260202L);
        double[] worst = new double[3];
        for (int i = 0; i < 100; i++) {
            double aspect = Math.exp(random.nextDouble() * Math.log(PlateTable.MAX_ASPECT_RATIO));
            Plate plate = new Plate(aspect, 1.0, 0.004, E, NU);
            PlateSolver solver = PlateSolver.standard(plate.aspectRatio(), NU);
            double greatest = PlateTable.greatestLoadNumber(aspect);
            for (int j = 0; j < 5; j++) {
                double load = Math.expm1(random.nextDouble() * Math.log1p(greatest));
                PlateResponse direct = solver.solve(load).response(plate);
                PlateResponse table =
                        PlateTable.standard().respond(plate, load * plate.pressureUnit());
                double[] deviations = {
                    table.displacedVolume() / direct.displacedVolume() - 1.0,
                    table.longEdgePullIn() / direct.longEdgePullIn() - 1.0,
                    table.shortEdgePullIn() / direct.shortEdgePullIn() - 1.0
                };
                for (int k = 0; k < 3; k++) {
                    worst[k] = Math.max(worst[k], Math.abs(deviations[k]));
                    assertThat(Math.abs(deviations[k]))
                            .as("quantity %d at aspect ratio %s, load number %s", k, aspect, load)
                            .isLessThan(k == 0 ? 0.003 : 0.005);
                }
            }
        }
        System.out.println(
                "table against direct solution, worst of volume, long and short edges: "
                        + Arrays.toString(worst));
    }

    /** Volume of the line 16/5 w (z - 2 z^3 + z^4), and half of the shortening of its chord. */
    @Test
    void stripIsThatOfItsDeflectedLine() {
        double span = 1.4;
        PlateResponse r = PlateStrip.respond(span, 2.3, 0.006, E, 800.0);
        double w = r.centreDeflection();
        double area = mean(z -> 3.2 * w * (z - 2.0 * Math.pow(z, 3.0) + Math.pow(z, 4.0))) * span;
        assertThat(r.displacedVolume()).isCloseTo(area * 2.3, withinPercentage(1e-9));
        double length =
                mean(
                                z ->
                                        Math.hypot(
                                                1.0,
                                                3.2
                                                        * w
                                                        / span
                                                        * (1.0
                                                                - 6.0 * z * z
                                                                + 4.0 * Math.pow(z, 3.0))))
                        * span;
        assertThat(r.longEdgePullIn()).isCloseTo((length - span) / 2.0, withinPercentage(1.0));
        assertThat(r.shortEdgePullIn()).isEqualTo(r.longEdgePullIn());
    }
}
