package org.bayledger.mechanics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Beams against CalculiX 2.20, which knows nothing of beam theory here: it expands its B32R
 * elements into solids. Data and deck come from {@code src/test/oracle/beam/generate.py}.
 *
 * <p>Tolerances, relative to the greatest value of the kind in the case. Deflection 5e-5: at a
 * depth of 10 mm on spans of 2.5 m and more, shear adds 9.6 x 0.2 (h/L)^2 = 3e-5 to a simple span's
 * deflection, and a continuous span deflects less in bending while as much in shear. Bending
 * moments 1e-4: the section forces are carried from the points of integration to the nodes of
 * elements of 25 mm, over which the moment is curved. Reactions 1e-5: shear moves them less than
 * deflections. The figures themselves have seven digits.
 */
class BeamOracleTest {

    private static final double DEFLECTION = 5e-5;
    private static final double BENDING = 1e-4;
    private static final double REACTION = 1e-5;

    record Case(String name, List<String[]> rows) {

        List<String[]> of(String kind) {
            return rows.stream().filter(row -> row[1].equals(kind)).toList();
        }

        List<Double> places(String kind) {
            return of(kind).stream().map(row -> number(row, 0)).toList();
        }

        BeamModel model() {
            List<BeamLoad> loads = new ArrayList<>();
            for (String[] row : of("distributed")) {
                loads.add(
                        new BeamLoad.Distributed(
                                number(row, 0), number(row, 1), number(row, 2), number(row, 3)));
            }
            of("force").forEach(r -> loads.add(new BeamLoad.Force(number(r, 0), number(r, 1))));
            of("moment").forEach(r -> loads.add(new BeamLoad.Moment(number(r, 0), number(r, 1))));
            return new BeamModel(
                    number(of("length").get(0), 0),
                    places("support"),
                    places("hinge"),
                    of("rigidity").stream()
                            .map(r -> new BeamRigidityStep(number(r, 0), number(r, 1)))
                            .toList(),
                    loads);
        }

        @Override
        public String toString() {
            return name;
        }
    }

    private static double number(String[] row, int column) {
        return Double.parseDouble(row[2 + column]);
    }

    static Stream<Case> cases() throws IOException {
        Map<String, List<String[]>> cases = new LinkedHashMap<>();
        try (InputStream in =
                Objects.requireNonNull(
                        BeamOracleTest.class.getResourceAsStream("/mechanics/beam-oracle.csv"))) {
            new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .skip(1)
                    .map(line -> line.split(",", -1))
                    .forEach(row -> cases.computeIfAbsent(row[0], n -> new ArrayList<>()).add(row));
        }
        return cases.entrySet().stream().map(e -> new Case(e.getKey(), e.getValue()));
    }

    @Test
    void thereAreSixCases() throws IOException {
        assertThat(cases()).hasSize(6);
    }

    @ParameterizedTest
    @MethodSource("cases")
    void agreesWithSolidElements(Case oracle) {
        BeamSolution beam = Beam.solve(oracle.model());

        List<String[]> deflections = oracle.of("deflection");
        assertThat(deflections).hasSizeGreaterThan(20);
        for (String[] row : deflections) {
            assertThat(beam.deflection(number(row, 0)))
                    .as("deflection at %s", row[2])
                    .isCloseTo(number(row, 1), within(DEFLECTION * greatest(deflections)));
        }
        List<String[]> moments = oracle.of("bending");
        assertThat(moments).hasSizeGreaterThan(20);
        for (String[] row : moments) {
            assertThat(beam.moment(number(row, 0)))
                    .as("bending moment at %s", row[2])
                    .isCloseTo(number(row, 1), within(BENDING * greatest(moments)));
        }
        List<String[]> reactions = oracle.of("reaction");
        assertThat(reactions).hasSize(beam.reactions().size());
        for (int i = 0; i < reactions.size(); i++) {
            assertThat(beam.reactions().get(i).force())
                    .as("reaction at %s", reactions.get(i)[2])
                    .isCloseTo(number(reactions.get(i), 1), within(REACTION * greatest(reactions)));
        }
    }

    private static double greatest(List<String[]> rows) {
        return rows.stream().mapToDouble(row -> Math.abs(number(row, 1))).max().orElseThrow();
    }
}
