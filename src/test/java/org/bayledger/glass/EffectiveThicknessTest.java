package org.bayledger.glass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.bayledger.glazing.HeatTreatment;
import org.bayledger.glazing.Interlayer;
import org.bayledger.glazing.InterlayerMaterial;
import org.bayledger.glazing.Pane;
import org.bayledger.glazing.Ply;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;

@NullMarked
class EffectiveThicknessTest {

    /** A sandwich of elastic layers: rigid film, then sections that stay plane. */
    @Test
    void isOnePieceWithARigidFilm() {
        double h = 0.00292;
        EffectiveThickness thin = EffectiveThickness.twoPlies(h, h, 1e-9, 1e18, 1);
        assertThat(thin.deflection()).isCloseTo(2 * h, within(1e-8));
        assertThat(thin.stress()).isCloseTo(2 * h, within(1e-8));

        // second moment about the common centroid, and stress M z / I at the outer face
        double h1 = 0.00378;
        double h2 = 0.00556;
        double film = 0.00152;
        double z1 = (h1 / 2 + film + h2 / 2) * h2 / (h1 + h2);
        double z2 = (h1 / 2 + film + h2 / 2) * h1 / (h1 + h2);
        double inertia = (cube(h1) + cube(h2)) / 12 + h1 * z1 * z1 + h2 * z2 * z2;
        EffectiveThickness rigid = EffectiveThickness.twoPlies(h1, h2, film, 1e18, 1);
        assertThat(rigid.deflection()).isCloseTo(Math.cbrt(12 * inertia), within(1e-9));
        assertThat(rigid.onePiece()).isCloseTo(rigid.deflection(), within(1e-9));
        double farthest = Math.max(z1 + h1 / 2, z2 + h2 / 2);
        assertThat(rigid.stress()).isCloseTo(Math.sqrt(6 * inertia / farthest), within(1e-9));
        assertThat(rigid.transfer()).isCloseTo(1, within(1e-9));
    }

    /** Loose plies share by stiffness: sum of cubes, and stress by curvature. */
    @Test
    void isLooseWithASoftFilm() {
        EffectiveThickness loose = EffectiveThickness.twoPlies(0.003, 0.005, 0.00076, 1e-6, 1);
        double cubes = cube(0.003) + cube(0.005);
        assertThat(loose.deflection()).isCloseTo(Math.cbrt(cubes), within(1e-9));
        assertThat(loose.stress()).isCloseTo(Math.sqrt(cubes / 0.005), within(1e-9));
        EffectiveThickness pair = EffectiveThickness.twoPlies(0.003, 0.003, 0.00076, 1e-6, 1);
        assertThat(pair.deflection()).isCloseTo(0.003 * Math.cbrt(2), within(1e-9));
        assertThat(pair.stress()).isCloseTo(0.003 * Math.sqrt(2), within(1e-9));
    }

    /**
     * A sum done by hand from the formulas: 2 x 5.56 mm, 0.76 mm film of G 0.44 MPa, span 1 m. hs
     * 6.32 mm; Is 2 x 5.56 x 3.16^2 = 111.04 mm3; Gamma = 1/(1 + 9.6 x 71700 x 111.04 x 0.76 /
     * (0.44 x 6.32^2 x 1e6)) = 1/(1 + 3.3052) = 0.23228; hefw = cbrt(343.76 + 309.50) = 8.6771 mm;
     * hefs = sqrt(653.26 / (5.56 + 2 x 0.23228 x 3.16)) = 9.6423 mm.
     */
    @Test
    void redoesASumByHand() {
        EffectiveThickness sum =
                EffectiveThickness.twoPlies(0.00556, 0.00556, 0.00076, 0.44e6, 1.0);
        assertThat(sum.transfer()).isCloseTo(0.23228, within(2e-4));
        assertThat(sum.deflection()).isCloseTo(8.677e-3, within(3e-6));
        assertThat(sum.stress()).isCloseTo(9.642e-3, within(3e-6));
    }

    @Test
    void growsWithTheModulusBetweenItsLimits() {
        Random random = new Random(7);
        for (int i = 0; i < 200; i++) {
            double h1 = 0.002 + 0.01 * random.nextDouble();
            double h2 = 0.002 + 0.01 * random.nextDouble();
            double film = 0.0004 + 0.002 * random.nextDouble();
            double span = 0.3 + 3 * random.nextDouble();
            double g = Math.pow(10, 4 + 4 * random.nextDouble());
            EffectiveThickness soft = EffectiveThickness.twoPlies(h1, h2, film, g, span);
            EffectiveThickness stiff = EffectiveThickness.twoPlies(h1, h2, film, 2 * g, span);
            EffectiveThickness turned = EffectiveThickness.twoPlies(h2, h1, film, g, span);
            assertThat(stiff.deflection())
                    .isGreaterThan(soft.deflection())
                    .isLessThan(soft.onePiece());
            assertThat(stiff.stress()).isGreaterThanOrEqualTo(soft.stress());
            assertThat(soft.deflection()).isGreaterThan(Math.cbrt(cube(h1) + cube(h2)));
            assertThat(turned.deflection()).isCloseTo(soft.deflection(), within(1e-12));
            assertThat(turned.stress()).isCloseTo(soft.stress(), within(1e-12));
        }
    }

    @Test
    void takesMoreThanTwoPliesAsLoose() {
        Interlayer film = new Interlayer(InterlayerMaterial.IONOMER, 0.00152, null, null);
        Pane three =
                Pane.laminated(
                        List.of(new Ply(0.006), new Ply(0.006), new Ply(0.006)),
                        film,
                        HeatTreatment.ANNEALED);
        EffectiveThickness loose = EffectiveThickness.laminated(three, film, 1e9, 1);
        assertThat(loose.deflection()).isCloseTo(0.00556 * Math.cbrt(3), within(1e-9));
        assertThat(loose.stress()).isCloseTo(0.00556 * Math.sqrt(3), within(1e-9));
        // rigid films: middle ply at the centroid, outer ones 7.08 mm away
        double inertia = (3 * cube(0.00556) + 12 * 2 * 0.00556 * 0.00708 * 0.00708);
        assertThat(loose.onePiece()).isCloseTo(Math.cbrt(inertia), within(1e-9));
    }

    private static double cube(double x) {
        return x * x * x;
    }
}
