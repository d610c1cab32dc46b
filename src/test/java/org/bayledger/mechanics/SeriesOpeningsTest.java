package org.bayledger.mechanics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;

@NullMarked
class SeriesOpeningsTest {

    /**
     * Orifices: equal areas halve the pressure; vents of 2, 3 and 7 times the leaks leave these.
     */
    @Test
    void sharesOfOrifices() {
        assertThat(SeriesOpenings.outerShare(1, 1, 0.5)).isEqualTo(0.5);
        assertThat(SeriesOpenings.outerShare(2, 1, 0.5)).isCloseTo(0.2, within(1e-15));
        assertThat(SeriesOpenings.outerShare(3, 1, 0.5)).isCloseTo(0.1, within(1e-15));
        assertThat(SeriesOpenings.outerShare(7, 1, 0.5)).isCloseTo(0.02, within(1e-15));
        // viscous: shares go as resistances
        assertThat(SeriesOpenings.outerShare(3, 1, 1)).isCloseTo(0.25, within(1e-15));
        assertThat(SeriesOpenings.areaRatio(0.1, 0.5)).isCloseTo(3, within(1e-12));
    }

    /**
     * The pressure in the chamber found by bisection on continuity, Av (1 - c)^n = Al c^n, without
     * the closed form; and the limits, the symmetry and the scaling that physics asks for.
     */
    @Test
    void continuityDecides() {
        Random random = new Random(3);
        for (int i = 0; i < 1000; i++) {
            double vent = Math.pow(10, -5 + 3 * random.nextDouble());
            double leak = Math.pow(10, -5 + 3 * random.nextDouble());
            double n = 0.5 + 0.5 * random.nextDouble();
            double low = 0;
            double high = 1;
            for (int k = 0; k < 60; k++) {
                double chamber = (low + high) / 2;
                if (vent * Math.pow(1 - chamber, n) > leak * Math.pow(chamber, n)) {
                    low = chamber;
                } else {
                    high = chamber;
                }
            }
            double share = SeriesOpenings.outerShare(vent, leak, n);
            assertThat(share).isCloseTo(1 - low, within(1e-9));
            assertThat(share + SeriesOpenings.outerShare(leak, vent, n))
                    .isCloseTo(1, within(1e-12));
            assertThat(SeriesOpenings.outerShare(5 * vent, 5 * leak, n))
                    .isCloseTo(share, within(1e-12));
            assertThat(SeriesOpenings.outerShare(1.1 * vent, leak, n)).isLessThan(share);
            assertThat(SeriesOpenings.outerShare(vent, 1.1 * leak, n)).isGreaterThan(share);
            assertThat(SeriesOpenings.areaRatio(share, n))
                    .isCloseTo(vent / leak, within(1e-6 * vent / leak));
        }
        assertThat(SeriesOpenings.outerShare(0, 1, 0.5)).isEqualTo(1);
        assertThat(SeriesOpenings.outerShare(1, 0, 0.5)).isZero();
        assertThat(SeriesOpenings.outerShare(1e9, 1, 0.5)).isLessThan(1e-17);
    }

    /** The chamber's pressure stepped through time: V/p0 dpc/dt = Cd A sqrt(2 (p - pc)/rho). */
    @Test
    void equalizationStepByStep() {
        double volume = 0.02;
        double area = 3e-4;
        double pressure = 800;
        double chamber = 0;
        double time = 0;
        double step = 1e-6;
        while (chamber < pressure * (1 - 1e-6)) {
            double flow = 0.61 * area * Math.sqrt(2 * (pressure - chamber) / 1.2);
            chamber += 101_325 / volume * flow * step;
            time += step;
        }
        assertThat(SeriesOpenings.equalizationTime(volume, 0.61, area, pressure, 101_325, 1.2))
                .isCloseTo(time, within(2e-3 * time));
        assertThat(
                        SeriesOpenings.equalizationTime(
                                2 * volume, 0.61, area, 4 * pressure, 101_325, 1.2))
                .isCloseTo(4 * time, within(1e-2 * time));
    }

    @Test
    void refusesWhatHasNoMeaning() {
        assertThatThrownBy(() -> SeriesOpenings.outerShare(0, 0, 0.5))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> SeriesOpenings.outerShare(1, 1, 0.4))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> SeriesOpenings.areaRatio(1, 0.5))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> SeriesOpenings.equalizationTime(1, 0.6, 0, 1, 1, 1))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> SeriesOpenings.equalizationTime(-1, 0.6, 1, 1, 1, 1))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
