package org.bayledger.mechanics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;

import java.util.Arrays;
import java.util.Random;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.QRDecomposition;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;

@NullMarked
class RigidBarTest {

    private static double[][] springs(double... compliances) {
        double[][] matrix = new double[compliances.length][compliances.length];
        for (int i = 0; i < compliances.length; i++) {
            matrix[i][i] = compliances[i];
        }
        return matrix;
    }

    /**
     * Equal springs on firm ground that all stay pressed: R = k (v + t s) in the two equations of
     * balance gives R = G (sum s^2 - s sum s) / (n sum s^2 - (sum s)^2), as in a row of bolts or
     * piles under an eccentric load.
     */
    @Test
    void equalSpringsOnFirmGroundShareAsPilesDo() {
        double[] arm = {-0.9, -0.2, 0.4, 1.1};
        double sum = Arrays.stream(arm).sum();
        double squares = Arrays.stream(arm).map(s -> s * s).sum();
        double below = arm.length * squares - sum * sum;
        RigidBar bar = RigidBar.rest(springs(1e-7, 1e-7, 1e-7, 1e-7), new double[4], arm, 2000);
        for (int i = 0; i < arm.length; i++) {
            assertThat(bar.reactions()[i])
                    .isCloseTo(2000 * (squares - arm[i] * sum) / below, offset(1e-6));
            assertThat(bar.dropAt(arm[i])).isCloseTo(1e-7 * bar.reactions()[i], offset(1e-15));
        }
    }

    /** A support that stands lower than the bar comes down is out of contact. */
    @Test
    void aLowSupportCarriesNothingAndAHighOneEverything() {
        double[] arm = {-1, 0, 1};
        double[][] firm = springs(1e-8, 1e-8, 1e-8);
        assertThat(RigidBar.rest(firm, new double[] {0, 1e-3, 0}, arm, 1000).reactions())
                .containsExactly(new double[] {500, 0, 500}, offset(1e-9));
        RigidBar balanced = RigidBar.rest(firm, new double[] {0, -1e-3, 0}, arm, 1000);
        assertThat(balanced.reactions()).containsExactly(new double[] {0, 1000, 0}, offset(1e-9));
        assertThat(balanced.dropAt(0)).isCloseTo(1e-5 - 1e-3, offset(1e-12));
        assertThat(balanced.dropAt(1)).isCloseTo(balanced.dropAt(-1), offset(1e-12));
        // raised by just what makes the three share alike: 1/3 each from level springs
        assertThat(RigidBar.rest(firm, new double[3], arm, 999).reactions())
                .containsExactly(new double[] {333, 333, 333}, offset(1e-9));
    }

    /** Balance and contact over random beds; the answer is the only one that has them all. */
    @Test
    void balancesWithoutPullingWhateverIsUnderIt() {
        Random random = new Random(7);
        int lifted = 0;
        for (int trial = 0; trial < 300; trial++) {
            int n = 2 + random.nextInt(6);
            double[] arm = new double[n];
            double[] level = new double[n];
            for (int i = 0; i < n; i++) {
                arm[i] = -1 + (2 * i + random.nextDouble()) / n;
                level[i] = 1e-3 * random.nextGaussian();
            }
            arm[0] = -1;
            arm[n - 1] = 0.3 + random.nextDouble();
            double[][] bed = new double[n][n];
            for (int k = 0; k < n; k++) {
                double[] mode = random.doubles(n).toArray();
                for (int i = 0; i < n; i++) {
                    for (int j = 0; j < n; j++) {
                        bed[i][j] += 1e-6 * mode[i] * mode[j];
                    }
                }
            }
            for (int i = 0; i < n; i++) {
                bed[i][i] += 1e-7;
            }
            RigidBar bar = RigidBar.rest(bed, level, arm, 1500);
            double[] reactions = bar.reactions();
            double moment = 0;
            for (int i = 0; i < n; i++) {
                double gap = level[i] - bar.dropAt(arm[i]);
                for (int j = 0; j < n; j++) {
                    gap += bed[i][j] * reactions[j];
                }
                moment += reactions[i] * arm[i];
                assertThat(reactions[i]).isNotNegative();
                assertThat(gap).isGreaterThan(-1e-10);
                assertThat(gap * reactions[i]).isCloseTo(0, offset(1e-7));
                lifted += reactions[i] == 0 ? 1 : 0;
            }
            assertThat(Arrays.stream(reactions).sum()).isCloseTo(1500, offset(1e-6));
            assertThat(moment).isCloseTo(0, offset(1e-6));
        }
        assertThat(lifted).isGreaterThan(100);
    }

    /**
     * Three springs on a simply supported beam against a dense solution of another kind: beam
     * elements with cubic shape functions (stiffness matrix as in any textbook of finite elements),
     * springs between beam and bar, the bar's two freedoms, and springs that pull cut out one after
     * the other.
     */
    @Test
    void agreesWithFiniteElementsOnABeam() {
        double span = 3.0;
        double rigidity = 90e3;
        double load = 2300;
        for (double stiffness : new double[] {3e5, 3e6, 2e7}) {
            for (double raised : new double[] {0, 1e-3, 6e-3}) {
                int[] nodes = {6, 16, 25};
                double[] at = {0.6, 1.6, 2.5};
                double[] level = {0, -raised, 0};
                double[] expected = elements(span, rigidity, load, stiffness, nodes, level);
                double[][] bed = new double[3][3];
                double[] arm = new double[3];
                for (int i = 0; i < 3; i++) {
                    arm[i] = at[i] - span / 2;
                    for (int j = 0; j < 3; j++) {
                        double a = Math.min(at[i], at[j]);
                        double b = span - Math.max(at[i], at[j]);
                        bed[i][j] =
                                a * b * (span * span - a * a - b * b) / (6 * span * rigidity)
                                        + (i == j ? 1 / stiffness : 0);
                    }
                }
                assertThat(RigidBar.rest(bed, level, arm, load).reactions())
                        .as("k %s raised %s", stiffness, raised)
                        .containsExactly(expected, offset(1e-3));
            }
        }
    }

    private static double[] elements(
            double span,
            double rigidity,
            double load,
            double stiffness,
            int[] nodes,
            double[] level) {
        int elements = 30;
        double h = span / elements;
        boolean[] cut = new boolean[nodes.length];
        while (true) {
            int n = 2 * (elements + 1) + 2;
            Array2DRowRealMatrix matrix = new Array2DRowRealMatrix(n, n);
            ArrayRealVector right = new ArrayRealVector(n);
            double[][] cubic = {
                {12, 6 * h, -12, 6 * h},
                {6 * h, 4 * h * h, -6 * h, 2 * h * h},
                {-12, -6 * h, 12, -6 * h},
                {6 * h, 2 * h * h, -6 * h, 4 * h * h}
            };
            for (int e = 0; e < elements; e++) {
                for (int i = 0; i < 4; i++) {
                    for (int j = 0; j < 4; j++) {
                        matrix.addToEntry(
                                2 * e + i, 2 * e + j, rigidity / (h * h * h) * cubic[i][j]);
                    }
                }
            }
            for (int end : new int[] {0, 2 * elements}) {
                matrix.addToEntry(end, end, 1e13);
            }
            right.setEntry(n - 2, load);
            for (int k = 0; k < nodes.length; k++) {
                if (cut[k]) {
                    continue;
                }
                // force = stiffness (v + t s - w - level)
                int w = 2 * nodes[k];
                double[] row = {1, nodes[k] * h - span / 2, -1};
                int[] dofs = {n - 2, n - 1, w};
                for (int i = 0; i < 3; i++) {
                    for (int j = 0; j < 3; j++) {
                        matrix.addToEntry(dofs[i], dofs[j], stiffness * row[i] * row[j]);
                    }
                    right.addToEntry(dofs[i], stiffness * row[i] * level[k]);
                }
            }
            double[] answer = new QRDecomposition(matrix).getSolver().solve(right).toArray();
            double[] forces = new double[nodes.length];
            int worst = -1;
            for (int k = 0; k < nodes.length; k++) {
                double arm = nodes[k] * h - span / 2;
                forces[k] =
                        cut[k]
                                ? 0
                                : stiffness
                                        * (answer[n - 2]
                                                + answer[n - 1] * arm
                                                - answer[2 * nodes[k]]
                                                - level[k]);
                if (forces[k] < 0 && (worst < 0 || forces[k] < forces[worst])) {
                    worst = k;
                }
            }
            if (worst < 0) {
                return forces;
            }
            cut[worst] = true;
        }
    }

    @Test
    void refusesABarThatWouldTip() {
        assertThatThrownBy(
                        () -> RigidBar.rest(springs(1, 1), new double[2], new double[] {1, 2}, 1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("either side");
        assertThatThrownBy(() -> RigidBar.rest(new double[9][9], new double[9], new double[9], 1))
                .hasMessageContaining("more than 8");
    }
}
