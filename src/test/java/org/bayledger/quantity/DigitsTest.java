package org.bayledger.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Against the exact expansion of the double, which java.math rounds. */
class DigitsTest {

    @Test
    void roundsAsTheExactExpansionDoes() {
        Random random = new Random(7);
        for (int i = 0; i < 200_000; i++) {
            double value =
                    switch (i % 6) {
                        case 0 -> (random.nextInt(2_000_000) + 0.5) / 1000;
                        case 1 -> Math.pow(10, random.nextInt(24) - 12);
                        case 2 -> Math.nextDown(Math.pow(10, random.nextInt(24) - 12));
                        case 3 -> (random.nextInt(20_000) + 0.5) * Math.pow(10, i % 8 - 6);
                        case 4 -> random.nextInt(100_000) - 50_000;
                        default -> -Math.exp(8 * random.nextGaussian());
                    };
            for (int digits : new int[] {4, 6}) {
                assertThat(Digits.plain(value, digits))
                        .as("%s to %d digits", value, digits)
                        .isEqualTo(
                                new BigDecimal(value)
                                        .round(new MathContext(digits, RoundingMode.HALF_EVEN))
                                        .stripTrailingZeros()
                                        .toPlainString());
            }
        }
    }
}
