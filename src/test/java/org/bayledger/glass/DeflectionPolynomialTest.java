package org.bayledger.glass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.bayledger.glass.GlassRequests.GUST;
import static org.bayledger.glass.GlassRequests.lite;
import static org.bayledger.glass.GlassRequests.pane;
import static org.bayledger.glass.GlassRequests.run;

import java.util.List;
import java.util.Locale;
import org.bayledger.check.TraceStep;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The practice's approximate formula for deflection (E1300, from memory) against the plate. */
@NullMarked
class DeflectionPolynomialTest {

    private static final double THICKNESS = 0.00556;

    /** Pressure with a load number on a lite 1 m wide. */
    private static double pressure(double aspect, double load) {
        return load * GlassModel.ELASTIC_MODULUS * Math.pow(THICKNESS, 4) / (aspect * aspect);
    }

    private static double deviation(double aspect, double load) {
        GlassModel model = new GlassModel(1, aspect, 0);
        double pressure = pressure(aspect, load);
        Double formula = DeflectionPolynomial.deflection(model, THICKNESS, pressure);
        assertThat(formula).isNotNull();
        return formula / model.respond(THICKNESS, pressure).centreDeflection() - 1;
    }

    /**
     * The whole range of the formula, 30 to 500 in load number: the greatest deviations either way,
     * kept here and reported.
     */
    @ParameterizedTest
    @CsvSource({
        "1.0, 1.7, -0.0201, 0.0188",
        "1.7, 2.0, -0.0388, 0.0195",
        "2.0, 3.0, -0.0866, 0.0553",
        "3.0, 4.0, -0.0883, 0.0491",
        "4.0, 5.0, -0.0775, -0.0163"
    })
    void deviatesFromThePlateByKnownAmounts(
            double from, double to, double least, double most, TestReporter reporter) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int i = 0; i <= 20; i++) {
            for (int j = 0; j <= 40; j++) {
                double load = 30.001 * Math.pow(499.999 / 30.001, j / 40.0);
                double deviation = deviation(from + (to - from) * i / 20, load);
                low = Math.min(low, deviation);
                high = Math.max(high, deviation);
            }
        }
        reporter.publishEntry(
                "deflection formula against plate, aspect %.1f to %.1f".formatted(from, to),
                String.format(Locale.ROOT, "%+.4f to %+.4f", low, high));
        assertThat(low).isCloseTo(least, within(0.0005));
        assertThat(high).isCloseTo(most, within(0.0005));
    }

    @Test
    void isNotGivenOutsideItsRange() {
        GlassModel model = new GlassModel(1, 1.5, 0);
        assertThat(DeflectionPolynomial.deflection(model, THICKNESS, pressure(1.5, 29))).isNull();
        assertThat(DeflectionPolynomial.deflection(model, THICKNESS, pressure(1.5, 501))).isNull();
        GlassModel narrow = new GlassModel(1, 5.1, 0);
        assertThat(DeflectionPolynomial.deflection(narrow, THICKNESS, pressure(5.1, 100))).isNull();
    }

    /** It stands in the trace beside the deflection and is never the answer. */
    @Test
    void isACrossCheckInTheTrace() {
        GlassResult result = run(lite("1200 mm", "1500 mm", pane("6 mm", "ANNEALED")));
        double plate = step(result, "w1").value().si();
        double formula = step(result, "wx1").value().si();
        assertThat(formula).isCloseTo(plate, within(0.02 * plate)).isNotEqualTo(plate);
        assertThat(step(result, "wx1").meaning()).contains("not used");
        assertThat(result.panes().get(0).centerDeflection()).isNotNull();
        assertThat(result.panes().get(0).centerDeflection().si()).isEqualTo(plate);
        String two =
                lite("600 mm", "1500 mm", List.of(pane("12 mm", "ANNEALED")), GUST, "")
                        .replace("FOUR", "TWO");
        assertThat(run(two).outcome().trace())
                .extracting(TraceStep::symbol)
                .contains("w1")
                .doesNotContain("wx1");
    }

    private static TraceStep step(GlassResult result, String symbol) {
        return result.outcome().trace().stream()
                .filter(step -> step.symbol().equals(symbol))
                .findFirst()
                .orElseThrow();
    }
}
