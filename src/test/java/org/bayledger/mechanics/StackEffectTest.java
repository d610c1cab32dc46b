package org.bayledger.mechanics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Random;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;

@NullMarked
class StackEffectTest {

    private static final double SEA_LEVEL = 101_325;

    /**
     * Textbook tables of dry air (from memory): 1.204 kg/m3 at 20 degC, 1.394 at -20, 1.292 at 0.
     */
    @Test
    void densitiesOfTables() {
        assertThat(StackEffect.density(293.15, SEA_LEVEL)).isCloseTo(1.204, within(5e-4));
        assertThat(StackEffect.density(253.15, SEA_LEVEL)).isCloseTo(1.394, within(1e-3));
        assertThat(StackEffect.density(273.15, SEA_LEVEL)).isCloseTo(1.2925, within(1e-3));
        assertThat(StackEffect.density(293.15, SEA_LEVEL))
                .isCloseTo(Fluid.AIR.density(), within(5e-4));
    }

    /**
     * BS 5925:1991 (from memory): dp = 3463 h (1/To - 1/Ti), absolute temperatures. 20 degC inside,
     * -20 degC outside, 100 m: 3463 x 100 x (1/253.15 - 1/293.15) = 186.7 Pa.
     */
    @Test
    void publishedFormula() {
        assertThat(100 * StackEffect.gradient(253.15, 293.15, SEA_LEVEL))
                .isCloseTo(186.7, within(0.15));
        Random random = new Random(11);
        for (int i = 0; i < 500; i++) {
            double outside = 233 + 90 * random.nextDouble();
            double inside = 283 + 20 * random.nextDouble();
            assertThat(StackEffect.gradient(outside, inside, SEA_LEVEL))
                    .isCloseTo(3463 * (1 / outside - 1 / inside), withinPercentage(0.06));
            // the form of textbooks: rho_o g (Ti - To) / Ti
            assertThat(StackEffect.gradient(outside, inside, SEA_LEVEL))
                    .isCloseTo(
                            StackEffect.density(outside, SEA_LEVEL)
                                    * 9.80665
                                    * (inside - outside)
                                    / inside,
                            within(1e-12));
            assertThat(StackEffect.gradient(outside, inside, SEA_LEVEL))
                    .isCloseTo(-StackEffect.gradient(inside, outside, SEA_LEVEL), within(1e-12));
            assertThat(StackEffect.gradient(outside, inside, SEA_LEVEL / 2))
                    .isCloseTo(StackEffect.gradient(outside, inside, SEA_LEVEL) / 2, within(1e-12));
        }
        assertThat(StackEffect.gradient(290, 290, SEA_LEVEL)).isZero();
    }

    @Test
    void refusesWhatHasNoMeaning() {
        assertThatThrownBy(() -> StackEffect.density(0, 1))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> StackEffect.density(300, Double.NaN))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
