package org.bayledger.mechanics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.Random;
import org.bayledger.mechanics.TwistedBar.Torque;
import org.junit.jupiter.api.Test;

class TwistedBarTest {

    /** St. Venant alone: T a/(G J) between two equal torques, T carried by each end. */
    @Test
    void twoEqualTorquesTwistTheMiddleAlike() {
        TwistedBar bar =
                new TwistedBar(3, 500, 0, List.of(new Torque(0.75, 20), new Torque(2.25, 20)));
        assertThat(bar.rotation(1.5)).isCloseTo(20 * 0.75 / 500, withinPercentage(1e-9));
        assertThat(bar.rotation(0.75)).isCloseTo(20 * 0.75 / 500, withinPercentage(1e-9));
        assertThat(bar.rotation(0.375)).isCloseTo(10 * 0.75 / 500, withinPercentage(1e-9));
        assertThat(bar.rotation(0)).isZero();
        assertThat(bar.startTorque()).isCloseTo(20, withinPercentage(1e-9));
        assertThat(bar.greatestRotation().value()).isCloseTo(0.03, withinPercentage(1e-9));
    }

    /** With G J small against E Cw/L2 the flanges bend as beams: phi = T L3/(48 E Cw). */
    @Test
    void warpingAloneIsABeam() {
        for (double torsional : List.of(1e-4, 1e-8)) {
            TwistedBar bar = new TwistedBar(2, torsional, 300, List.of(new Torque(1, 40)));
            assertThat(bar.rotation(1)).isCloseTo(40 * 8 / (48 * 300.0), withinPercentage(0.01));
        }
    }

    /** Residual of G J phi'' = E Cw phi'''' between torques, ends, and Betti's reciprocity. */
    @Test
    void satisfiesItsEquation() {
        Random random = new Random(3);
        for (int i = 0; i < 50; i++) {
            double length = 1 + 4 * random.nextDouble();
            double gj = 50 + 2000 * random.nextDouble();
            double ecw = 20 + 500 * random.nextDouble();
            double a = length * (0.05 + 0.4 * random.nextDouble());
            double b = length * (0.55 + 0.4 * random.nextDouble());
            TwistedBar one = new TwistedBar(length, gj, ecw, List.of(new Torque(a, 1)));
            TwistedBar other = new TwistedBar(length, gj, ecw, List.of(new Torque(b, 1)));
            assertThat(one.rotation(b)).isCloseTo(other.rotation(a), withinPercentage(1e-9));
            double h = length / 100;
            double x = (a + b) / 2;
            double second =
                    (one.rotation(x + h) - 2 * one.rotation(x) + one.rotation(x - h)) / (h * h);
            double fourth =
                    (one.rotation(x + 2 * h)
                                    - 4 * one.rotation(x + h)
                                    + 6 * one.rotation(x)
                                    - 4 * one.rotation(x - h)
                                    + one.rotation(x - 2 * h))
                            / Math.pow(h, 4);
            assertThat(gj * second)
                    .isCloseTo(ecw * fourth, within(0.02 * Math.abs(gj * second) + 1e-6));
            assertThat(one.rotation(length)).isCloseTo(0, offset(1e-15));
            assertThat(one.rotation(a))
                    .isLessThan(
                            new TwistedBar(length, gj, 0, List.of(new Torque(a, 1))).rotation(a));
            BeamExtreme greatest = one.greatestRotation();
            for (int k = 0; k <= 200; k++) {
                assertThat(one.rotation(length * k / 200))
                        .isLessThanOrEqualTo(greatest.value() * (1 + 1e-9));
            }
        }
    }

    @Test
    void refusesWhatItCannotSolve() {
        assertThatThrownBy(() -> new TwistedBar(0, 1, 0, List.of()))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new TwistedBar(1, 1, 0, List.of(new Torque(2, 1))))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(
                        () ->
                                new TwistedBar(
                                        1, 1, 0, List.of(new Torque(0.2, 1), new Torque(0.3, -1))))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
