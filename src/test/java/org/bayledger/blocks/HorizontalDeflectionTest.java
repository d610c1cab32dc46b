package org.bayledger.blocks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Random;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;

@NullMarked
class HorizontalDeflectionTest {

    private static double lite(double fraction) {
        return new HorizontalDeflection(3, 2e5, 0).midSpan(1200, 3 * fraction);
    }

    /** The ratios that the trade quotes: an eighth bends it 0.534, a tenth 0.431 as far. */
    @Test
    void bendsLessTheFurtherOutTheBlocksStand() {
        assertThat(lite(0.125) / lite(0.25)).isCloseTo(0.534, offset(5e-4));
        assertThat(lite(0.1) / lite(0.25)).isCloseTo(0.431, offset(5e-4));
    }

    /**
     * Textbook cases of a simply supported beam: two loads that meet at mid-span are one of twice
     * the size, d = 2P L^3/48EI; third points give d = 23 P L^3/648EI; own weight 5 w L^4/384EI.
     */
    @Test
    void agreesWithTextbookCases() {
        HorizontalDeflection beam = new HorizontalDeflection(3, 2e5, 0);
        assertThat(beam.midSpan(1000, 1.5))
                .isCloseTo(2000 * 27 / (48 * 2e5), withinPercentage(1e-10));
        assertThat(beam.atBlock(1000, 1.5))
                .isCloseTo(beam.midSpan(1000, 1.5), withinPercentage(1e-10));
        assertThat(beam.midSpan(1000, 1))
                .isCloseTo(23.0 * 1000 * 27 / (648 * 2e5), withinPercentage(1e-10));
        assertThat(new HorizontalDeflection(3, 2e5, 40).midSpan(0, 1))
                .isCloseTo(5 * 40.0 * 81 / (384 * 2e5), withinPercentage(1e-10));
    }

    /** Virtual work: d at x is the integral of M(u) m(u)/EI, m for a unit force at x. */
    private static double byVirtualWork(
            double span, double ei, double w, double p, double a, double x) {
        int n = 40_000;
        double sum = 0;
        for (int i = 0; i < n; i++) {
            double u = (i + 0.5) * span / n;
            double moment = w * u * (span - u) / 2 + p * Math.min(Math.min(u, span - u), a);
            double unit = u < x ? u * (span - x) / span : x * (span - u) / span;
            sum += moment * unit * span / n / ei;
        }
        return sum;
    }

    @Test
    void agreesWithVirtualWork() {
        Random random = new Random(7);
        for (int i = 0; i < 50; i++) {
            double span = 1 + 4 * random.nextDouble();
            double a = span * (0.02 + 0.47 * random.nextDouble());
            double p = 5000 * random.nextDouble();
            double w = 100 * random.nextDouble();
            HorizontalDeflection beam = new HorizontalDeflection(span, 3e5, w);
            assertThat(beam.midSpan(p, a))
                    .isCloseTo(byVirtualWork(span, 3e5, w, p, a, span / 2), withinPercentage(1e-4));
            assertThat(beam.atBlock(p, a))
                    .isCloseTo(byVirtualWork(span, 3e5, w, p, a, a), withinPercentage(1e-4));
            assertThat(beam.midSpan(p, a)).isGreaterThan(beam.atBlock(p, a));
            assertThat(new HorizontalDeflection(span, 6e5, w).midSpan(p, a))
                    .isCloseTo(beam.midSpan(p, a) / 2, withinPercentage(1e-10));
        }
    }

    @Test
    void refusesBlocksOffTheirHalfOfTheSpan() {
        HorizontalDeflection beam = new HorizontalDeflection(3, 2e5, 0);
        assertThatThrownBy(() -> beam.midSpan(1, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> beam.atBlock(1, 1.6)).isInstanceOf(IllegalArgumentException.class);
    }
}
