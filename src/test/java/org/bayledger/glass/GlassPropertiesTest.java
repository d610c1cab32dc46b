package org.bayledger.glass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.bayledger.glazing.NominalThickness;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;

/** What must hold for every lite, whatever the figures. */
@NullMarked
class GlassPropertiesTest {

    private static final String[] NOMINAL = {
        "3 mm", "4 mm", "5 mm", "6 mm", "8 mm", "10 mm", "12 mm", "16 mm", "19 mm", "22 mm"
    };

    private static double resistance(double width, double height, String nominal, String duration) {
        return GlassRequests.run(
                        GlassRequests.lite(
                                metres(width),
                                metres(height),
                                List.of(GlassRequests.pane(nominal, "ANNEALED")),
                                "{\"positive\":\"0.1 kPa\",\"negative\":\"-0.1 kPa\",\"duration\":\"%s\"}"
                                        .formatted(duration),
                                ""))
                .loadResistance()
                .si();
    }

    private static String metres(double size) {
        return String.format(Locale.ROOT, "%.6f m", size);
    }

    @Test
    void thickerIsStrongerLargerWeakerLongerWeakerAndTurningChangesNothing() {
        Random random = new Random(1300);
        for (int i = 0; i < 150; i++) {
            double width = 0.6 + 1.6 * random.nextDouble();
            double height = width * (1 + 2.5 * random.nextDouble());
            int step = random.nextInt(NOMINAL.length - 1);
            double base = resistance(width, height, NOMINAL[step], "3 s");
            assertThat(resistance(height, width, NOMINAL[step], "3 s"))
                    .isCloseTo(base, within(1e-9 * base));
            assertThat(resistance(width, height, NOMINAL[step + 1], "3 s")).isGreaterThan(base);
            assertThat(resistance(1.1 * width, 1.1 * height, NOMINAL[step], "3 s"))
                    .isLessThan(base);
            double minute = resistance(width, height, NOMINAL[step], "60 s");
            assertThat(minute).isLessThan(base);
            assertThat(resistance(width, height, NOMINAL[step], "365 d")).isLessThan(minute);
        }
    }

    /**
     * A lite grown in all three directions by s has s^2 the area under the same stress: at the same
     * pressure B is s^2 as great. That is the size effect of the failure model.
     */
    @Test
    void hasTheSizeEffectOfTheModel() {
        Random random = new Random(7);
        for (int i = 0; i < 100; i++) {
            double width = 0.5 + random.nextDouble();
            double height = width * (1 + 3 * random.nextDouble());
            double thickness = 0.003 + 0.006 * random.nextDouble();
            double s = 1 + 2 * random.nextDouble();
            double rarer = -Math.expm1(Math.log1p(-0.008) / (s * s));
            double small = new GlassModel(width, height, 0).resistance(thickness, rarer, 3);
            double large =
                    new GlassModel(s * width, s * height, 0).resistance(s * thickness, 0.008, 3);
            assertThat(large).isCloseTo(small, within(1e-6 * small));
            assertThat(large)
                    .isLessThan(new GlassModel(width, height, 0).resistance(thickness, 0.008, 3));
        }
    }

    /** Probability and resistance are inverse to one another, on four edges and on two. */
    @Test
    void probabilityAndResistanceAreInverse() {
        for (GlassModel model :
                List.of(new GlassModel(1.2, 2.0, 0), new GlassModel(1.2, 2.0, 1.2))) {
            for (NominalThickness nominal :
                    List.of(NominalThickness.MM_4, NominalThickness.MM_12)) {
                for (double probability : new double[] {0.0001, 0.001, 0.008, 0.1}) {
                    double pressure = model.resistance(nominal.minimum(), probability, 60);
                    double back =
                            GlassModel.probability(model.respond(nominal.minimum(), pressure), 60);
                    assertThat(back).isCloseTo(probability, within(1e-6 * probability));
                }
            }
        }
    }
}
