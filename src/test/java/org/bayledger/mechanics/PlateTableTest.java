package org.bayledger.mechanics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

class PlateTableTest {

    private static final double E = 71.7e9;
    private static final double NU = 0.22;

    private final PlateTable table = PlateTable.standard();

    /**
     * 100 random aspect ratios, five random loads on each: deflection, greatest tension and the
     * pressure that gives the same failure integral, all within 0.3 % of the direct solution.
     */
    @Test
    void fiveHundredRandomPlatesAgreeWithTheDirectSolution() {
        Random random = new Random(20260101L);
        double[] worst = new double[3];
        for (int i = 0; i < 100; i++) {
            double aspect = Math.exp(random.nextDouble() * Math.log(PlateTable.MAX_ASPECT_RATIO));
            Plate plate = new Plate(aspect, 1.0, 0.004, E, NU);
            PlateSolver solver = PlateSolver.standard(plate.aspectRatio(), NU);
            double greatest = PlateTable.greatestLoadNumber(aspect);
            for (int j = 0; j < 5; j++) {
                double load = Math.expm1(random.nextDouble() * Math.log1p(greatest));
                double pressure = load * plate.pressureUnit();
                PlateResponse direct = solver.solve(load).response(plate);
                PlateResponse tabulated = table.respond(plate, pressure);
                double same = table.pressureForFailureIntegral(plate, direct.failureIntegral());
                double[] deviations = {
                    tabulated.centreDeflection() / direct.centreDeflection() - 1.0,
                    tabulated.maxPrincipalStress() / direct.maxPrincipalStress() - 1.0,
                    same / pressure - 1.0
                };
                for (int k = 0; k < 3; k++) {
                    assertThat(Math.abs(deviations[k]))
                            .as(
                                    "quantity %d at aspect ratio %s, load number %s: %s",
                                    k, aspect, load, Arrays.toString(deviations))
                            .isLessThan(0.003);
                    worst[k] = Math.max(worst[k], Math.abs(deviations[k]));
                }
            }
        }
        System.out.println(
                "table against direct solution, worst of deflection, stress, load: "
                        + Arrays.toString(worst));
    }

    /** The resource is what the generator makes: a few nodes made again. */
    @Test
    void nodesAreThoseOfTheGenerator() {
        int[][] nodes = {{0, 0}, {0, 40}, {7, 60}, {15, 31}, {24, 1}, {28, 50}};
        for (int[] node : nodes) {
            double aspect = PlateTable.aspectRatioAt(node[0]);
            double load = Math.max(1e-7, PlateTable.loadNumberAt(aspect, node[1]));
            double[] secants =
                    PlateTableGenerator.secants(PlateSolver.standard(aspect, NU).solve(load), load);
            Plate plate = new Plate(aspect, 1.0, 0.004, E, NU);
            PlateResponse r = table.respond(plate, load * plate.pressureUnit());
            assertThat(r.centreDeflection() / plate.thickness() / load)
                    .isCloseTo(secants[0], withinPercentage(0.0005));
            assertThat(r.maxPrincipalStress() / plate.stressUnit() / load)
                    .isCloseTo(
                            Math.max(secants[1], Math.max(secants[2], secants[3])),
                            withinPercentage(0.0005));
            assertThat(Math.pow(r.failureIntegral() / plate.failureIntegralUnit(), 1 / 7.0) / load)
                    .isCloseTo(secants[4], withinPercentage(0.0005));
            assertThat(r.displacedVolume() / plate.volumeUnit() / load)
                    .isCloseTo(secants[5], withinPercentage(0.0005));
            assertThat(r.longEdgePullIn() / plate.pullInUnit() / load / load)
                    .isCloseTo(secants[6], withinPercentage(0.0005));
            assertThat(r.shortEdgePullIn() / plate.pullInUnit() / load / load)
                    .isCloseTo(secants[7], withinPercentage(0.0005));
        }
    }

    @Test
    void smallLoadsTendToLinearTheory() {
        Plate plate = Plate.of(1.2, 1.7, 0.006, E, NU);
        PlateResponse one = table.respond(plate, 1e-6);
        PlateResponse ten = table.respond(plate, 1e-5);
        assertThat(ten.centreDeflection())
                .isCloseTo(10.0 * one.centreDeflection(), withinPercentage(1e-4));
        assertThat(ten.maxPrincipalStress())
                .isCloseTo(10.0 * one.maxPrincipalStress(), withinPercentage(1e-4));
        assertThat(ten.failureIntegral())
                .isCloseTo(1e7 * one.failureIntegral(), withinPercentage(1e-3));
        PlateField linear =
                PlateSolver.standard(plate.aspectRatio(), NU).solve(plate.loadNumber(1e-6));
        assertThat(one.centreDeflection())
                .isCloseTo(linear.centreDeflection() * 0.006, withinPercentage(0.001));
    }

    @Test
    void everythingGrowsWithTheLoad() {
        Random random = new Random(7L);
        for (int i = 0; i < 50; i++) {
            Plate plate = randomPlate(random);
            double greatest = table.greatestPressure(plate);
            PlateResponse before = table.respond(plate, 0.0);
            for (int step = 1; step <= 200; step++) {
                double share = Math.pow(10.0, -4.0 + 4.0 * step / 200.0);
                PlateResponse r = table.respond(plate, share * greatest);
                assertThat(r.centreDeflection()).isGreaterThan(before.centreDeflection());
                assertThat(r.maxPrincipalStress()).isGreaterThan(before.maxPrincipalStress());
                assertThat(r.failureIntegral()).isGreaterThan(before.failureIntegral());
                assertThat(r.displacedVolume()).isGreaterThan(before.displacedVolume());
                assertThat(r.longEdgePullIn()).isGreaterThan(before.longEdgePullIn());
                assertThat(r.shortEdgePullIn()).isGreaterThan(before.shortEdgePullIn());
                before = r;
            }
        }
    }

    @Test
    void inversesGiveThePressureBack() {
        Random random = new Random(11L);
        for (int i = 0; i < 1000; i++) {
            Plate plate = randomPlate(random);
            double pressure =
                    table.greatestPressure(plate) * Math.pow(10.0, -6.0 * random.nextDouble());
            PlateResponse r = table.respond(plate, pressure);
            assertThat(table.pressureForFailureIntegral(plate, r.failureIntegral()))
                    .isCloseTo(pressure, withinPercentage(1e-7));
            assertThat(table.pressureForDeflection(plate, r.centreDeflection()))
                    .isCloseTo(pressure, withinPercentage(1e-7));
        }
    }

    /** A plate n times as large in all three lengths under the same pressure. */
    @Test
    void geometricallySimilarPlatesScale() {
        Plate plate = new Plate(1.9, 1.1, 0.005, E, NU);
        Plate larger = new Plate(3.0 * 1.9, 3.0 * 1.1, 0.015, E, NU);
        PlateResponse r = table.respond(plate, 2000.0);
        PlateResponse s = table.respond(larger, 2000.0);
        assertThat(s.centreDeflection())
                .isCloseTo(3.0 * r.centreDeflection(), withinPercentage(1e-9));
        assertThat(s.maxPrincipalStress())
                .isCloseTo(r.maxPrincipalStress(), withinPercentage(1e-9));
        assertThat(s.failureIntegral())
                .isCloseTo(9.0 * r.failureIntegral(), withinPercentage(1e-8));
    }

    /** Stiffer by n and loaded by n: the same deflection, n times the stress. */
    @Test
    void pressureAndModulusScaleTogether() {
        Plate plate = new Plate(1.9, 1.1, 0.005, E, NU);
        Plate stiffer = new Plate(1.9, 1.1, 0.005, 2.0 * E, NU);
        PlateResponse r = table.respond(plate, 1500.0);
        PlateResponse s = table.respond(stiffer, 3000.0);
        assertThat(s.centreDeflection()).isCloseTo(r.centreDeflection(), withinPercentage(1e-9));
        assertThat(s.maxPrincipalStress())
                .isCloseTo(2.0 * r.maxPrincipalStress(), withinPercentage(1e-9));
    }

    @Test
    void sidesMayBeSwapped() {
        assertThat(Plate.of(1.2, 1.5, 0.006, E, NU)).isEqualTo(Plate.of(1.5, 1.2, 0.006, E, NU));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Plate(1.2, 1.5, 0.006, E, NU))
                .withMessageContaining("shortSide");
    }

    @Test
    void noLoadDoesNothing() {
        Plate plate = new Plate(1.9, 1.1, 0.005, E, NU);
        assertThat(table.respond(plate, 0.0)).isEqualTo(PlateResponse.NONE);
        assertThat(table.pressureForFailureIntegral(plate, 0.0)).isZero();
        assertThat(table.pressureForDeflection(plate, 0.0)).isZero();
    }

    @Test
    void endsOfTheTableAreInside() {
        Plate square = new Plate(1.0, 1.0, 0.004, E, NU);
        Plate longest = new Plate(10.0, 1.0, 0.004, E, NU);
        for (Plate plate : new Plate[] {square, longest}) {
            double greatest = table.greatestPressure(plate);
            PlateResponse r = table.respond(plate, greatest);
            assertThat(table.pressureForDeflection(plate, r.centreDeflection()))
                    .isCloseTo(greatest, withinPercentage(1e-7));
        }
    }

    @Test
    void refusesWhatIsOutside() {
        Plate plate = new Plate(1.9, 1.1, 0.005, E, NU);
        double greatest = table.greatestPressure(plate);
        PlateResponse last = table.respond(plate, greatest);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> table.respond(plate, 1.001 * greatest))
                .withMessageContaining("buckle");
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () ->
                                table.pressureForFailureIntegral(
                                        plate, 1.01 * last.failureIntegral()))
                .withMessageContaining("at most");
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () -> table.pressureForDeflection(plate, 1.001 * last.centreDeflection()));
        assertThatIllegalArgumentException().isThrownBy(() -> table.respond(plate, -1.0));
        assertThatIllegalArgumentException().isThrownBy(() -> table.respond(plate, Double.NaN));
        Plate tooLong = new Plate(10.1, 1.0, 0.005, E, NU);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> table.respond(tooLong, 1.0))
                .withMessageContaining("aspect ratio");
        Plate otherMaterial = new Plate(1.9, 1.1, 0.005, E, 0.3);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> table.respond(otherMaterial, 1.0))
                .withMessageContaining("Poisson");
    }

    @Test
    void refusesWhatIsNoThinPlate() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Plate(1.0, 0.0, 0.006, E, NU));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Plate(Double.POSITIVE_INFINITY, 1.0, 0.006, E, NU));
        assertThatIllegalArgumentException().isThrownBy(() -> new Plate(1.0, 1.0, -0.006, E, NU));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Plate(1.0, 1.0, 0.006, Double.NaN, NU));
        assertThatIllegalArgumentException().isThrownBy(() -> new Plate(1.0, 1.0, 0.006, E, -0.1));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Plate(1.0, 1.0, 0.11, E, NU))
                .withMessageContaining("not a thin plate");
    }

    private static Plate randomPlate(Random random) {
        double b = 0.3 + 3.0 * random.nextDouble();
        double aspect = Math.exp(random.nextDouble() * Math.log(9.99));
        double t = 0.002 + 0.019 * random.nextDouble();
        return new Plate(b * aspect, b, t, E, NU);
    }
}
