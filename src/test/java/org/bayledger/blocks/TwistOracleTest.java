package org.bayledger.blocks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.bayledger.mechanics.BeamLoad;
import org.bayledger.mechanics.TwistedBar;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Twisted horizontals and lites on blocks against CalculiX 2.20 with solid, shell and plane-stress
 * elements; data from {@code src/test/oracle/twist/generate.py}.
 *
 * <p>Tolerances. Rotation at mid-span 0.5 % of solid bar and tube, whose J is exact or Bredt's, and
 * 2 % of the I-section, whose J and Cw are those of thin strips and whose flanges shear; at a
 * weight 3 %, the section being strained locally where the weight enters. Deflection 2 %, of the I
 * 9 %: shear of its web, P a/(G A), adds 7.8 % to the short one.
 */
@NullMarked
class TwistOracleTest {

    record Row(String kind, String name, List<Double> numbers) {
        double[] v() {
            return numbers.stream().mapToDouble(Double::doubleValue).toArray();
        }

        @Override
        public String toString() {
            return name;
        }
    }

    private static List<Row> rows() throws IOException {
        try (InputStream in =
                Objects.requireNonNull(
                        TwistOracleTest.class.getResourceAsStream("/mechanics/twist-oracle.csv"))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(line -> line.split(",", -1))
                    .map(
                            f ->
                                    new Row(
                                            f[0],
                                            f[1],
                                            Stream.of(f).skip(2).map(Double::valueOf).toList()))
                    .toList();
        }
    }

    static Stream<Row> bars() throws IOException {
        return rows().stream().filter(row -> row.kind().equals("bar"));
    }

    static Stream<Row> lites() throws IOException {
        return rows().stream().filter(row -> row.kind().equals("lite"));
    }

    @Test
    void thereAreSevenBarsAndFifteenLites() throws IOException {
        assertThat(bars()).hasSize(7);
        assertThat(lites()).hasSize(15);
    }

    @ParameterizedTest
    @MethodSource("bars")
    void agreesWithElements(Row row) {
        double[] v = row.v();
        double span = v[3];
        double a = v[4];
        double torque = v[5] * v[6];
        TwistedBar bar =
                new TwistedBar(
                        span,
                        v[1],
                        v[2],
                        List.of(
                                new TwistedBar.Torque(a, torque),
                                new TwistedBar.Torque(span - a, torque)));
        boolean open = v[2] > 0;
        assertThat(bar.rotation(span / 2)).isCloseTo(v[7], withinPercentage(open ? 2 : 0.5));
        assertThat(bar.rotation(a)).isCloseTo(v[8], withinPercentage(3));
        assertThat(
                        new HorizontalDeflection(span, v[0], 0, false)
                                .under(
                                        List.of(
                                                new BeamLoad.Force(a, v[5]),
                                                new BeamLoad.Force(span - a, v[5])))
                                .deflection(span / 2))
                .isCloseTo(v[9], withinPercentage(open ? 9 : 2));
    }

    /** The stress that is told covers both edges, and is near it where the lite is a beam. */
    @ParameterizedTest
    @MethodSource("lites")
    void coversTheTensionInTheEdges(Row row) {
        double[] v = row.v();
        double told = new GlassOnBlocks(v[0], v[1]).stress(v[2]);
        double found = Math.max(v[3], v[4]);
        assertThat(told).isBetween(found, found * 10);
        if (v[0] > 4 * v[1]) {
            assertThat(told).isBetween(found, found * 1.35);
        }
    }
}
