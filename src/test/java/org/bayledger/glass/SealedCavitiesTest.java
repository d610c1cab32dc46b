package org.bayledger.glass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Collections;
import java.util.List;
import org.bayledger.glass.SealedCavities.Air;
import org.bayledger.glass.SealedCavities.Sheet;
import org.bayledger.glass.SealedCavities.State;
import org.bayledger.mechanics.StandardAtmosphere;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The gas in sealed cavities: limits, closed forms and the gas law itself. */
@NullMarked
class SealedCavitiesTest {

    private static final double SEA = StandardAtmosphere.SEA_LEVEL;
    private static final double MILD = 293.15;

    private static State solve(
            double width,
            double height,
            List<Double> thicknesses,
            List<Double> cavities,
            double ambient,
            double temperature,
            double wind) {
        GlassModel model = new GlassModel(width, height, 0);
        return SealedCavities.solve(
                thicknesses.stream().map(t -> new Sheet(model, t)).toList(),
                width * height,
                cavities,
                new Air(SEA, MILD, ambient, Collections.nCopies(cavities.size(), temperature)),
                wind);
    }

    private static State windOn(List<Double> thicknesses, double cavity, double wind) {
        return solve(1.0, 1.0, thicknesses, List.of(cavity), SEA, MILD, wind);
    }

    @Test
    void nothingHappensWithoutWindInTheAirOfSealing() {
        State state = windOn(List.of(0.006, 0.004), 0.012, 0);
        assertThat(state.panePressures()).allSatisfy(q -> assertThat(q).isCloseTo(0, within(1e-6)));
        assertThat(state.cavityPressures().get(0)).isCloseTo(SEA, within(1e-6));
    }

    /** What each pane carries adds up to the wind, and the gas keeps to its law. */
    @ParameterizedTest
    @CsvSource({
        "1500, 0.006, 0.004, 0.016, 330",
        "-2200, 0.004, 0.01, 0.012, 260",
        "0, 0.004, 0.004, 0.02, 250"
    })
    void keepsEquilibriumAndTheGasLaw(
            double wind, double outer, double inner, double gap, double temperature) {
        double ambient = 97e3;
        State state =
                solve(1.2, 1.8, List.of(outer, inner), List.of(gap), ambient, temperature, wind);
        assertThat(state.beyond()).isFalse();
        double first = state.panePressures().get(0);
        double second = state.panePressures().get(1);
        assertThat(first + second).isCloseTo(wind, within(1e-6));
        GlassModel model = new GlassModel(1.2, 1.8, 0);
        double area = 1.2 * 1.8;
        double volume =
                area * gap
                        - new Sheet(model, outer).volume(first)
                        + new Sheet(model, inner).volume(second);
        assertThat(state.cavityPressures().get(0) * volume / temperature)
                .isCloseTo(SEA * area * gap / MILD, withinPercentage(1e-8));
    }

    /**
     * Small loads on a square unit against the closed form of EN 16612:2019, annex C (from memory):
     * insulating unit factor phi = 1/(1 + (a/a*)^4), a* = 28.9 [s t1^3 t2^3/((t1^3 + t2^3)
     * chi)]^(1/4) in mm, chi 0.0194 for a square: the inner pane carries (1 - phi) delta2 of the
     * wind. The factor's 28.9 stands for a round atmospheric pressure and Young's modulus.
     */
    @ParameterizedTest
    @CsvSource({"0.006, 0.006, 0.012, 0.5", "0.006, 0.004, 0.016, 0.7", "0.01, 0.006, 0.012, 0.4"})
    void sharesASmallWindAsTheClosedFormSays(double t1, double t2, double gap, double side) {
        State state = solve(side, side, List.of(t1, t2), List.of(gap), SEA, MILD, 20);
        double a = side * 1000;
        double c1 = Math.pow(t1 * 1000, 3);
        double c2 = Math.pow(t2 * 1000, 3);
        double star = 28.9 * Math.pow(gap * 1000 * c1 * c2 / ((c1 + c2) * 0.0194), 0.25);
        double phi = 1 / (1 + Math.pow(a / star, 4));
        assertThat(state.panePressures().get(1))
                .isCloseTo(20 * (1 - phi) * c2 / (c1 + c2), withinPercentage(2.5));
    }

    /**
     * The isochore pressure of small units, whose panes hardly give: c_T 0.34 kPa/K and c_H 0.012
     * kPa/m (EN 16612:2019, annex C, from memory).
     */
    @Test
    void stiffPanesHoldTheIsochorePressure() {
        List<Double> stiff = List.of(0.019, 0.019);
        State warm = solve(0.25, 0.25, stiff, List.of(0.016), SEA, MILD + 20, 0);
        assertThat(warm.cavityPressures().get(0) - SEA).isCloseTo(0.34e3 * 20, withinPercentage(3));
        State high =
                solve(0.25, 0.25, stiff, List.of(0.016), StandardAtmosphere.pressure(300), MILD, 0);
        assertThat(high.cavityPressures().get(0) - StandardAtmosphere.pressure(300))
                .isCloseTo(0.012e3 * 300, withinPercentage(3));
    }

    /** A very stiff inner pane behind a thin cavity carries all of the wind. */
    @Test
    void stiffPaneTakesTheWind() {
        State state = windOn(List.of(0.003, 0.05), 0.006, 500);
        assertThat(state.panePressures().get(1)).isGreaterThan(0.99 * 500);
    }

    /** Across a very wide cavity the gas gives way, and the outer pane is alone. */
    @Test
    void wideCavityLeavesTheOuterPaneAlone() {
        State state = windOn(List.of(0.006, 0.006), 500.0, 1000);
        assertThat(state.panePressures().get(0)).isCloseTo(1000, withinPercentage(0.5));
    }

    /** Equal panes with little between them share alike, as by stiffness (ASTM E1300). */
    @ParameterizedTest
    @ValueSource(doubles = {100, 1000, 2500})
    void equalPanesShareAlikeAcrossAThinCavity(double wind) {
        State state = windOn(List.of(0.006, 0.006), 1e-4, wind);
        assertThat(state.panePressures().get(0)).isCloseTo(wind / 2, withinPercentage(0.6));
    }

    /**
     * Unequal panes across a thin cavity share by the cube of the thickness while they bend little.
     */
    @Test
    void thinCavitySharesByStiffness() {
        State state = windOn(List.of(0.006, 0.008), 1e-5, 50);
        double share = Math.pow(6, 3) / (Math.pow(6, 3) + Math.pow(8, 3));
        assertThat(state.panePressures().get(0)).isCloseTo(50 * share, withinPercentage(1));
    }

    /**
     * A symmetric triple unit in a new climate: outer panes mirror each other, the middle rests.
     */
    @Test
    void symmetricTripleIsSymmetric() {
        State state =
                solve(
                        1.2,
                        1.5,
                        List.of(0.005, 0.004, 0.005),
                        List.of(0.014, 0.014),
                        95e3,
                        MILD + 15,
                        0);
        List<Double> q = state.panePressures();
        assertThat(q.get(1)).isCloseTo(0, within(1e-3));
        assertThat(q.get(0)).isCloseTo(-q.get(2), within(1e-3));
        assertThat(q.get(0)).isNegative();
    }

    /** Turned round, with the air of each side where it was, the same unit does the same. */
    @Test
    void turnedRoundItIsTheSameUnit() {
        State one =
                solve(
                        1.0,
                        1.4,
                        List.of(0.006, 0.004, 0.008),
                        List.of(0.012, 0.016),
                        99e3,
                        270,
                        900);
        State other =
                solve(
                        1.0,
                        1.4,
                        List.of(0.008, 0.004, 0.006),
                        List.of(0.016, 0.012),
                        99.9e3,
                        270,
                        -900);
        for (int i = 0; i < 3; i++) {
            assertThat(one.panePressures().get(i))
                    .isCloseTo(-other.panePressures().get(2 - i), within(1e-4));
        }
    }

    @Test
    void heightInflatesAndColdDrawsTogether() {
        State high =
                solve(
                        1.0,
                        1.0,
                        List.of(0.006, 0.006),
                        List.of(0.012),
                        StandardAtmosphere.pressure(1500),
                        MILD,
                        0);
        assertThat(high.panePressures().get(0)).isNegative();
        State cold = solve(1.0, 1.0, List.of(0.006, 0.006), List.of(0.012), SEA, MILD - 40, 0);
        assertThat(cold.panePressures().get(0)).isPositive();
    }

    /** The wider the cavity, the less of the wind crosses it. */
    @Test
    void widerCavitiesPassOnLess() {
        double before = Double.POSITIVE_INFINITY;
        for (double gap : new double[] {0.006, 0.01, 0.016, 0.03, 0.1}) {
            double inner = windOn(List.of(0.006, 0.006), gap, 1200).panePressures().get(1);
            assertThat(inner).isLessThan(before);
            before = inner;
        }
    }

    @Test
    void saysWhereAPlateIsBeyondItsLimits() {
        State state = windOn(List.of(0.003, 0.003), 0.012, 500e3);
        assertThat(state.beyond()).isTrue();
    }

    /** ISO 2533:1975, tables (from memory): 89 875 Pa at 1000 m, 79 495 Pa at 2000 m. */
    @Test
    void standardAtmosphereIsThePublishedOne() {
        assertThat(StandardAtmosphere.pressure(1000)).isCloseTo(89_875, within(10.0));
        assertThat(StandardAtmosphere.pressure(2000)).isCloseTo(79_495, within(15.0));
    }
}
