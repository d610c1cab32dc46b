package org.bayledger.framing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.DoubleUnaryOperator;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/** Against what can be had by a division, and by what is asked of the answer itself. */
class RequiredModulusTest {

    private static final double ROUNDING = 1e-11;

    @Test
    void withOneMomentItIsADivision() {
        assertThat(RequiredModulus.least(3e-5, s -> 2.5e-5 / s))
                .isCloseTo(2.5e-5, Percentage.withPercentage(1e-9));
        assertThat(RequiredModulus.least(1e-9, s -> 2.5e-5 / s + 0.75))
                .isCloseTo(1e-4, Percentage.withPercentage(1e-9));
    }

    @Test
    void itDoesAndAHairLessDoesNot() {
        Random random = new Random(20);
        AtomicInteger asked = new AtomicInteger();
        for (int i = 0; i < 2000; i++) {
            double wind = 1e-5 * Math.exp(2 * random.nextGaussian());
            double elsewhere = wind * random.nextDouble();
            double weight = 0.9 * random.nextDouble();
            double more = weight + 0.99 * (1 - weight) * random.nextDouble();
            double power = 1 + i % 3 / 2.0;
            DoubleUnaryOperator used =
                    s -> {
                        asked.incrementAndGet();
                        return Math.max(Math.pow(wind / s, power) + weight, elsewhere / s + more);
                    };
            double least = RequiredModulus.least(1e-5 * Math.exp(2 * random.nextGaussian()), used);
            asked.addAndGet(-2); // for what is asked here
            assertThat(used.applyAsDouble(least)).isLessThanOrEqualTo(1);
            assertThat(used.applyAsDouble(least * (1 - ROUNDING))).isGreaterThan(1);
        }
        assertThat(asked.get() / 2000).as("beams solved for one answer").isLessThan(15);
    }

    @Test
    void nothingIsNeededWithoutALoadAndNothingDoesWhereTheWeightAloneIsTooMuch() {
        assertThat(RequiredModulus.least(1e-4, s -> 0.3)).isZero();
        assertThat(RequiredModulus.least(1e-4, s -> 0)).isZero();
        assertThat(RequiredModulus.least(1e-4, s -> 1.01)).isNull();
    }
}
