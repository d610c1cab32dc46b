package org.bayledger.blocks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.Random;
import org.bayledger.mechanics.BeamLoad;
import org.bayledger.mechanics.BeamSolution;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;

@NullMarked
class HorizontalDeflectionTest {

    private static BeamSolution two(HorizontalDeflection beam, double load, double a) {
        return beam.under(
                List.of(new BeamLoad.Force(a, load), new BeamLoad.Force(beam.span() - a, load)));
    }

    private static double midSpan(HorizontalDeflection beam, double load, double a) {
        return two(beam, load, a).deflection(beam.span() / 2);
    }

    private static double atBlock(HorizontalDeflection beam, double load, double a) {
        return two(beam, load, a).deflection(a);
    }

    private static HorizontalDeflection beam(double span, double rigidity, double ownWeight) {
        return new HorizontalDeflection(span, rigidity, ownWeight, false);
    }

    private static double lite(double fraction) {
        return midSpan(beam(3, 2e5, 0), 1200, 3 * fraction);
    }

    /** The closed form for two equal loads at a from the supports, and superposition of it. */
    @Test
    void agreesWithTheClosedForm() {
        double a = 0.7;
        assertThat(midSpan(beam(3, 2e5, 0), 1200, a))
                .isCloseTo(1200 * a * (3 * 9 - 4 * a * a) / (24 * 2e5), withinPercentage(1e-9));
        assertThat(two(beam(3, 2e5, 30), 1200, a).greatestDeflection().at())
                .isCloseTo(1.5, offset(1e-6));
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
        HorizontalDeflection beam = beam(3, 2e5, 0);
        assertThat(midSpan(beam, 1000, 1.5))
                .isCloseTo(2000 * 27 / (48 * 2e5), withinPercentage(1e-10));
        assertThat(atBlock(beam, 1000, 1.5))
                .isCloseTo(midSpan(beam, 1000, 1.5), withinPercentage(1e-10));
        assertThat(midSpan(beam, 1000, 1))
                .isCloseTo(23.0 * 1000 * 27 / (648 * 2e5), withinPercentage(1e-10));
        assertThat(midSpan(beam(3, 2e5, 40), 0, 1))
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
            HorizontalDeflection beam = beam(span, 3e5, w);
            assertThat(midSpan(beam, p, a))
                    .isCloseTo(byVirtualWork(span, 3e5, w, p, a, span / 2), withinPercentage(1e-4));
            assertThat(atBlock(beam, p, a))
                    .isCloseTo(byVirtualWork(span, 3e5, w, p, a, a), withinPercentage(1e-4));
            assertThat(midSpan(beam, p, a)).isGreaterThan(atBlock(beam, p, a));
            assertThat(midSpan(beam(span, 6e5, w), p, a))
                    .isCloseTo(midSpan(beam, p, a) / 2, withinPercentage(1e-10));
        }
    }

    /**
     * A prop at mid-span under a uniform load: 5/8 of it, 3/16 w L at each end of spans of L/2
     * (textbook case of two equal spans), the greatest deflection w l^4/(185 E I).
     */
    @Test
    void standsOnAPropAtMidSpan() {
        BeamSolution beam = new HorizontalDeflection(4, 2e5, 100, true).under(List.of());
        assertThat(beam.reactions().get(1).force()).isCloseTo(250, withinPercentage(1e-9));
        assertThat(beam.reactions().get(0).force()).isCloseTo(75, withinPercentage(1e-9));
        assertThat(beam.greatestDeflection().value())
                .isCloseTo(100 * 16 / (185 * 2e5), withinPercentage(0.3));
    }
}
