package org.bayledger.mechanics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;

@NullMarked
class SlotFlowTest {

    private static final double PSF = 4.4482216152605 / (0.3048 * 0.3048);

    /**
     * Conversion tables, from memory: 1 mm of water is 9.81 Pa, 1 in of water 5.20 psf (249 Pa).
     */
    @Test
    void headsOfWater() {
        assertThat(SlotFlow.head(137, 1000)).isCloseTo(0.014, within(0.0001));
        assertThat(SlotFlow.head(6.24 * PSF, 1000)).isCloseTo(1.2 * 0.0254, within(0.0001));
        assertThat(SlotFlow.head(5.20 * PSF, 1000)).isCloseTo(0.0254, within(0.00005));
        // a mercury barometer stands at 760 mm under one atmosphere
        assertThat(SlotFlow.head(101_325, 13_595.1)).isCloseTo(0.760, within(0.0001));
    }

    /** Torricelli: under 1 m of water the jet has 4.43 m/s, 0.61 of it through each area. */
    @Test
    void orificeFollowsTorricelli() {
        double flow = SlotFlow.orifice(0.61, 1e-4, 1000 * 9.80665, new Fluid(1000, 1e-3));
        assertThat(flow).isCloseTo(0.61 * 1e-4 * 4.4287, within(1e-8));
        // v = 1.29 sqrt(dp) m/s for air of 1.2 kg/m3 (from memory)
        assertThat(SlotFlow.orifice(1, 1, 50, new Fluid(1.2, 1.8e-5)))
                .isCloseTo(1.29 * Math.sqrt(50), within(0.01));
    }

    /**
     * Plane Poiseuille flow, with the mean speed g^2 dp / (12 mu t): water (mu 1e-3) in a gap of
     * 0.1 mm, 10 mm deep, under 1200 Pa has a mean speed of 0.1 m/s. The same from summing the
     * parabola u(y) = dp / (2 mu t) y (g - y) over the gap.
     */
    @Test
    void viscousFlowBetweenParallelPlates() {
        Fluid water = new Fluid(1000, 1e-3);
        double flow = SlotFlow.viscous(1e-4, 0.5, 0.010, 1200, water);
        assertThat(flow / (1e-4 * 0.5)).isCloseTo(0.1, within(1e-12));
        int strips = 2000;
        double sum = 0;
        for (int i = 0; i < strips; i++) {
            double y = (i + 0.5) * 1e-4 / strips;
            sum += 1200 / (2 * 1e-3 * 0.010) * y * (1e-4 - y) * 0.5 * 1e-4 / strips;
        }
        assertThat(flow).isCloseTo(sum, within(1e-6 * sum));
    }

    /** Jurin's height between plates, h = 2 gamma / (rho g d): 14.9 mm at 1 mm (textbook value). */
    @Test
    void capillaryThresholdIsJurinsHeight() {
        double threshold = SlotFlow.capillaryThreshold(1e-3, Fluid.WATER_SURFACE_TENSION);
        assertThat(SlotFlow.head(threshold, 998.2)).isCloseTo(0.0149, within(0.00005));
    }

    /**
     * Friction and exit loss in series: with a = dp/Qv and b = dp/Qo^2 the flow q solves dp = a q +
     * b q^2. It never exceeds the bound and is never under 0.618 of it (closed form at Qv = Qo).
     */
    @Test
    void upperBoundIsAboveBothLossesInSeries() {
        Random random = new Random(7);
        double least = 1;
        for (int i = 0; i < 5000; i++) {
            double gap = Math.pow(10, -5 + 3 * random.nextDouble());
            double length = Math.pow(10, -2 + 3 * random.nextDouble());
            double depth = Math.pow(10, -3 + 2 * random.nextDouble());
            double pressure = Math.pow(10, 3 * random.nextDouble());
            Fluid fluid = random.nextBoolean() ? Fluid.WATER : Fluid.AIR;
            double viscous = SlotFlow.viscous(gap, length, depth, pressure, fluid);
            double orifice = SlotFlow.orifice(SlotFlow.SHARP_EDGED, gap * length, pressure, fluid);
            double a = pressure / viscous;
            double b = pressure / (orifice * orifice);
            double series = 2 * pressure / (a + Math.sqrt(a * a + 4 * b * pressure));
            assertThat(SlotFlow.series(SlotFlow.SHARP_EDGED, gap, length, depth, pressure, fluid))
                    .isCloseTo(series, within(1e-9 * series));
            double ratio = series / SlotFlow.upperBound(gap, length, depth, pressure, fluid);
            assertThat(ratio).isBetween(0.618, 1.0 + 1e-12);
            least = Math.min(least, ratio);
            assertThat(SlotFlow.upperBound(gap, 2 * length, depth, pressure, fluid))
                    .isCloseTo(
                            2 * SlotFlow.upperBound(gap, length, depth, pressure, fluid),
                            within(1e-9 * orifice));
            assertThat(SlotFlow.upperBound(1.1 * gap, length, depth, pressure, fluid))
                    .isGreaterThan(SlotFlow.upperBound(gap, length, depth, pressure, fluid));
        }
        assertThat(least).isLessThan(0.64);
    }

    /**
     * What spans a hole: 4 gamma / (rho g d), 14.9 mm of water at 2 mm, and half of it for a long
     * slot of that width; a square as a round hole of its width (rim over area is 4/d for both).
     */
    @Test
    void rimOfAHole() {
        double tension = Fluid.WATER_SURFACE_TENSION;
        double round = SlotFlow.rimThreshold(Math.PI * 2e-3, Math.PI * 1e-6, tension);
        assertThat(SlotFlow.head(round, 998.2)).isCloseTo(0.01487, within(1e-5));
        assertThat(SlotFlow.rimThreshold(8e-3, 4e-6, tension)).isCloseTo(round, within(1e-9));
        double slot = SlotFlow.rimThreshold(2 * (10 + 2e-3), 10 * 2e-3, tension);
        assertThat(slot).isCloseTo(SlotFlow.capillaryThreshold(2e-3, tension), within(1e-3 * slot));
        assertThatThrownBy(() -> SlotFlow.rimThreshold(1, 0, 0.07))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void nothingFlowsThroughNothing() {
        assertThat(SlotFlow.series(0.6, 0, 1, 1, 300, Fluid.WATER)).isZero();
        assertThat(SlotFlow.series(0.6, 1e-3, 1, 1, 0, Fluid.WATER)).isZero();
    }

    @Test
    void refusesWhatHasNoMeaning() {
        Fluid water = Fluid.WATER;
        assertThatThrownBy(() -> SlotFlow.viscous(-1e-4, 1, 1, 1, water))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> SlotFlow.viscous(1e-4, 1, 0, 1, water))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> SlotFlow.orifice(0.6, 1, Double.NaN, water))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> SlotFlow.capillaryThreshold(0, 0.07))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> SlotFlow.head(1, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Fluid(0, 1)).isInstanceOf(IllegalArgumentException.class);
    }
}
