package org.bayledger.mechanics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Crossings of polynomials made from the roots that are to be found. */
class BeamRootsTest {

    private static double[] product(double... roots) {
        double[] coefficients = {1};
        for (double root : roots) {
            double[] next = new double[coefficients.length + 1];
            for (int i = 0; i < coefficients.length; i++) {
                next[i] -= root * coefficients[i];
                next[i + 1] += coefficients[i];
            }
            coefficients = next;
        }
        return coefficients;
    }

    private static double[] crossings(double[] coefficients, double low, double high) {
        BeamRoots roots = new BeamRoots();
        int count = roots.between(coefficients, coefficients.length - 1, low, high);
        return Arrays.copyOf(roots.found, count);
    }

    @Test
    void simpleRootsInsideTheInterval() {
        Random random = new Random(3);
        for (int n = 0; n < 500; n++) {
            double[] roots =
                    random.ints(1 + random.nextInt(5), -10, 30)
                            .distinct()
                            .sorted()
                            .mapToDouble(i -> i / 20.0)
                            .toArray();
            double[] inside = Arrays.stream(roots).filter(r -> r > 0.01 && r < 0.99).toArray();

            double[] found = crossings(product(roots), 0.01, 0.99);

            assertThat(found).hasSameSizeAs(inside);
            for (int i = 0; i < found.length; i++) {
                assertThat(found[i]).isCloseTo(inside[i], within(1e-9));
            }
        }
    }

    @Test
    void aCrossingThatPassesFlatIsFoundAndNothingWhereThereIsNone() {
        assertThat(crossings(product(0.5, 0.5, 0.5), 0, 1)).containsExactly(0.5);
        assertThat(crossings(new double[] {1, 0, 1}, -1, 1)).isEmpty();
        assertThat(crossings(new double[] {0, 0, 0}, -1, 1)).isEmpty();
    }
}
