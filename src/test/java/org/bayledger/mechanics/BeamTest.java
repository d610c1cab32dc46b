package org.bayledger.mechanics;

import static java.lang.Math.pow;
import static java.lang.Math.sqrt;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Beams against closed forms. The formulas are those of the usual tables of beam formulas (as in
 * the AISC manual's part on beam diagrams) and of textbook coefficients for continuous beams, from
 * memory; those that are derived by hand say so.
 */
class BeamTest {

    private static final double L = 4.0;
    private static final double EI = 7000.0;
    private static final double W = 1300.0;
    private static final double P = 2500.0;

    private static final double TIGHT = 1e-12;

    private static BeamSolution simple(BeamLoad... loads) {
        return Beam.solve(BeamModel.uniform(L, List.of(0.0, L), List.of(), EI, List.of(loads)));
    }

    private static BeamSolution equalSpans(int spans) {
        List<Double> supports =
                java.util.stream.IntStream.rangeClosed(0, spans).mapToObj(i -> i * L).toList();
        return Beam.solve(
                BeamModel.uniform(
                        spans * L,
                        supports,
                        List.of(),
                        EI,
                        List.of(BeamLoad.uniform(0, spans * L, W))));
    }

    private static void assertClose(double actual, double expected) {
        assertThat(actual).isCloseTo(expected, within(TIGHT * Math.max(1, Math.abs(expected))));
    }

    private static void assertExtreme(BeamExtreme extreme, double at, double value) {
        assertThat(extreme.at()).isCloseTo(at, within(1e-7 * L));
        assertThat(extreme.value()).isCloseTo(value, within(TIGHT * (Math.abs(value) + 1e-3)));
    }

    private static void assertReactions(BeamSolution beam, double unit, double... coefficients) {
        assertThat(beam.reactions()).hasSize(coefficients.length);
        for (int i = 0; i < coefficients.length; i++) {
            assertClose(beam.reactions().get(i).force(), coefficients[i] * unit);
        }
    }

    @Test
    void uniformLoadOnOneSpan() {
        BeamSolution beam = simple(BeamLoad.uniform(0, L, W));

        assertExtreme(beam.greatestDeflection(), L / 2, 5 * W * pow(L, 4) / (384 * EI));
        assertExtreme(beam.greatestMoment(), L / 2, W * L * L / 8);
        assertReactions(beam, W * L, 0.5, 0.5);
        assertClose(beam.shear(0), W * L / 2);
        assertClose(beam.shear(L), -W * L / 2);
        assertClose(beam.slope(0), W * pow(L, 3) / (24 * EI));
        assertClose(beam.slope(L), -W * pow(L, 3) / (24 * EI));
        double x = 1.1;
        assertClose(
                beam.deflection(x), W * x * (pow(L, 3) - 2 * L * x * x + pow(x, 3)) / (24 * EI));
        assertClose(Math.abs(beam.greatestShear().value()), W * L / 2);
        assertThat(beam.overhangs()).isEmpty();
        assertThat(beam.spans()).hasSize(1);
        assertThat(beam.spans().get(0).length()).isEqualTo(L);
        assertThat(beam.spans().get(0).deflection()).isEqualTo(beam.greatestDeflection());
        assertThat(beam.length()).isEqualTo(L);
    }

    @Test
    void twoEqualForcesSymmetricallyPlaced() {
        double a = L / 8;
        BeamSolution beam = simple(new BeamLoad.Force(a, P), new BeamLoad.Force(L - a, P));

        assertExtreme(
                beam.greatestDeflection(), L / 2, P * a * (3 * L * L - 4 * a * a) / (24 * EI));
        assertClose(beam.greatestMoment().value(), P * a);
        assertThat(beam.greatestMoment().at()).isBetween(a - 1e-9, L - a + 1e-9);
        assertReactions(beam, P, 1, 1);
        assertClose(beam.shear(L / 2), 0);
    }

    @Test
    void oneForceOffCentre() {
        double a = 0.7 * L;
        double b = L - a;
        BeamSolution beam = simple(new BeamLoad.Force(a, P));

        assertExtreme(
                beam.greatestDeflection(),
                sqrt((L * L - b * b) / 3),
                P * b * pow(L * L - b * b, 1.5) / (9 * sqrt(3) * L * EI));
        assertExtreme(beam.greatestMoment(), a, P * a * b / L);
        assertClose(beam.deflection(a), P * a * a * b * b / (3 * EI * L));
        assertReactions(beam, P, b / L, a / L);
        assertClose(beam.shear(a), -P * a / L);
    }

    @Test
    void loadRisingInAStraightLineFromZero() {
        BeamSolution beam = simple(new BeamLoad.Distributed(0, L, 0, W));

        // the root of 15 x^4 - 30 x^2 + 7 = 0, tabulated as 0.519 L and 0.00652 w L^4 / EI
        double x = sqrt(1 - sqrt(8.0 / 15));
        double c = x * (3 * pow(x, 4) - 10 * x * x + 7) / 360;
        assertThat(x).isCloseTo(0.519, within(5e-4));
        assertThat(c).isCloseTo(0.00652, within(5e-6));
        assertExtreme(beam.greatestDeflection(), x * L, c * W * pow(L, 4) / EI);
        assertExtreme(beam.greatestMoment(), L / sqrt(3), W * L * L / (9 * sqrt(3)));
        assertReactions(beam, W * L, 1.0 / 6, 1.0 / 3);
    }

    @Test
    void trianglePeakedAtMidSpan() {
        BeamSolution beam =
                simple(
                        new BeamLoad.Distributed(0, L / 2, 0, W),
                        new BeamLoad.Distributed(L / 2, L, W, 0));

        assertExtreme(beam.greatestDeflection(), L / 2, W * pow(L, 4) / (120 * EI));
        assertExtreme(beam.greatestMoment(), L / 2, W * L * L / 12);
    }

    @Test
    void uniformLoadOverPartOfTheSpan() {
        double a = 0.6;
        double b = 1.7;
        double c = L - a - b;
        BeamSolution beam = simple(BeamLoad.uniform(a, a + b, W));

        double left = W * b * (2 * c + b) / (2 * L);
        assertReactions(beam, 1, left, W * b - left);
        assertExtreme(beam.greatestMoment(), a + left / W, left * (a + left / (2 * W)));
    }

    @Test
    void momentAtAnEndAndAtMidSpan() {
        double m = 900;
        BeamSolution atEnd = simple(new BeamLoad.Moment(0, m));
        assertClose(atEnd.slope(0), m * L / (3 * EI));
        assertClose(atEnd.slope(L), -m * L / (6 * EI));
        assertClose(atEnd.moment(0), m);
        assertExtreme(
                atEnd.greatestDeflection(), L * (1 - 1 / sqrt(3)), m * L * L / (9 * sqrt(3) * EI));

        BeamSolution atFarEnd = simple(new BeamLoad.Moment(L, m));
        assertClose(atFarEnd.slope(L), m * L / (3 * EI));
        assertClose(atFarEnd.moment(L), -m);

        BeamSolution atMiddle = simple(new BeamLoad.Moment(L / 2, m));
        assertClose(atMiddle.slope(L / 2), m * L / (12 * EI));
        assertClose(atMiddle.moment(L / 2), m / 2);
        assertClose(atMiddle.minimumMoment().value(), -m / 2);
        assertClose(atMiddle.maximumMoment().value(), m / 2);
        assertReactions(atMiddle, m / L, -1, 1);
    }

    @Test
    void twoEqualSpansUnderUniformLoad() {
        BeamSolution beam = equalSpans(2);

        assertReactions(beam, W * L, 3.0 / 8, 10.0 / 8, 3.0 / 8);
        assertExtreme(beam.greatestMoment(), L, -W * L * L / 8);
        assertExtreme(beam.minimumMoment(), L, -W * L * L / 8);
        assertClose(beam.maximumMoment().value(), 9 * W * L * L / 128);
        // each span is a propped cantilever: the root of 8 x^3 - 9 x^2 + 1 = 0, and w L^4 / 185 EI
        double x = (1 + sqrt(33)) / 16;
        double c = x * (1 - 3 * x * x + 2 * pow(x, 3)) / 48;
        assertThat(1 / c).isCloseTo(185, within(0.5));
        assertExtreme(beam.spans().get(0).deflection(), x * L, c * W * pow(L, 4) / EI);
        assertExtreme(beam.spans().get(1).deflection(), (2 - x) * L, c * W * pow(L, 4) / EI);
        assertClose(beam.slope(L), 0);
    }

    @Test
    void oneOfTwoEqualSpansLoaded() {
        BeamSolution beam =
                Beam.solve(
                        BeamModel.uniform(
                                2 * L,
                                List.of(0.0, L, 2 * L),
                                List.of(),
                                EI,
                                List.of(BeamLoad.uniform(0, L, W))));

        assertReactions(beam, W * L, 7.0 / 16, 10.0 / 16, -1.0 / 16);
        assertClose(beam.moment(L), -W * L * L / 16);
    }

    @Test
    void threeAndFourEqualSpansUnderUniformLoad() {
        BeamSolution three = equalSpans(3);
        assertReactions(three, W * L, 0.4, 1.1, 1.1, 0.4);
        assertClose(three.moment(L), -0.1 * W * L * L);
        assertExtreme(three.maximumMoment(), 0.4 * L, 0.08 * W * L * L);
        assertExtreme(three.greatestMoment(1.3 * L, 1.7 * L), 1.5 * L, 0.025 * W * L * L);
        assertThat(three.greatestDeflection().value())
                .isCloseTo(0.0069 * W * pow(L, 4) / EI, within(0.00005 * W * pow(L, 4) / EI));

        BeamSolution four = equalSpans(4);
        assertReactions(four, W * L / 28, 11, 32, 26, 32, 11);
        assertClose(four.moment(L), -3 * W * L * L / 28);
        assertClose(four.moment(2 * L), -2 * W * L * L / 28);
    }

    @Test
    void uniformLoadOnASpanAndItsOverhang() {
        double a = 1.3;
        BeamSolution beam =
                Beam.solve(
                        BeamModel.uniform(
                                L + a,
                                List.of(0.0, L),
                                List.of(),
                                EI,
                                List.of(BeamLoad.uniform(0, L + a, W))));

        assertReactions(beam, W / (2 * L), L * L - a * a, (L + a) * (L + a));
        assertClose(beam.moment(L), -W * a * a / 2);
        assertExtreme(
                beam.maximumMoment(),
                L / 2 * (1 - a * a / (L * L)),
                W * pow(L + a, 2) * pow(L - a, 2) / (8 * L * L));
        BeamOverhang overhang = beam.overhangs().get(0);
        assertClose(
                overhang.tipDeflection(),
                W * a * (4 * a * a * L - pow(L, 3) + 3 * pow(a, 3)) / (24 * EI));
        assertThat(overhang.support()).isEqualTo(L);
        assertThat(overhang.tip()).isEqualTo(L + a);
        assertClose(overhang.length(), a);
        assertClose(beam.shear(L + a), 0);
        assertClose(beam.moment(L + a), 0);
    }

    @Test
    void forceAtTheTipOfAnOverhangOnEitherSide() {
        double a = 1.3;
        BeamSolution right =
                Beam.solve(
                        BeamModel.uniform(
                                L + a,
                                List.of(0.0, L),
                                List.of(),
                                EI,
                                List.of(new BeamLoad.Force(L + a, P))));
        double tip = P * a * a * (L + a) / (3 * EI);
        assertClose(right.overhangs().get(0).tipDeflection(), tip);
        assertExtreme(right.greatestDeflection(), L + a, tip);
        assertExtreme(
                right.spans().get(0).deflection(),
                L / sqrt(3),
                -P * a * L * L / (9 * sqrt(3) * EI));
        assertReactions(right, P / L, -a, L + a);

        BeamSolution left =
                Beam.solve(
                        BeamModel.uniform(
                                L + a,
                                List.of(a, L + a),
                                List.of(),
                                EI,
                                List.of(new BeamLoad.Force(0, P))));
        assertClose(left.overhangs().get(0).tipDeflection(), tip);
        assertExtreme(left.overhangs().get(0).deflection(), 0, tip);
        assertReactions(left, P / L, L + a, -a);
        assertClose(left.moment(a), -P * a);
    }

    @Test
    void momentAtTheTipOfAnOverhang() {
        double a = 1.5;
        double m = 800;
        BeamSolution beam =
                Beam.solve(
                        BeamModel.uniform(
                                L + a,
                                List.of(0.0, L),
                                List.of(),
                                EI,
                                List.of(new BeamLoad.Moment(L + a, m))));

        // by hand: a constant -m on the overhang, and m L / 3 EI at the support
        assertClose(beam.moment(L + a / 2), -m);
        assertClose(
                beam.overhangs().get(0).tipDeflection(),
                m * L * a / (3 * EI) + m * a * a / (2 * EI));
        assertReactions(beam, m / L, -1, 1);
    }

    @Test
    void loadsAtASupportGoStraightIntoItOrTurnTheBeamThere() {
        BeamModel model =
                BeamModel.uniform(
                        2 * L, List.of(0.0, L, 2 * L), List.of(), EI, List.<BeamLoad>of());

        for (int i = 0; i < 3; i++) {
            double[] shares = {0, 0, 0};
            shares[i] = 1;
            BeamModel overSupport = model.withLoads(List.of(new BeamLoad.Force(i * L, P)));
            assertReactions(Beam.solve(overSupport), P, shares);
        }

        // by symmetry half of the moment goes to either span, as to the end of a simple span
        double m = 900;
        BeamSolution turned = Beam.solve(model.withLoads(List.of(new BeamLoad.Moment(L, m))));
        assertClose(turned.slope(L), m / 2 * L / (3 * EI));
        assertClose(turned.moment(L), m / 2);
        assertReactions(turned, m / 2 / L, -1, 0, 1);
    }

    @Test
    void hingeMakesTheBeamDeterminate() {
        // by hand: the piece beyond the hinge is a simple span of 2 m that rests on the other's tip
        BeamSolution beam =
                Beam.solve(
                        BeamModel.uniform(
                                8,
                                List.of(0.0, 4.0, 8.0),
                                List.of(6.0),
                                EI,
                                List.of(BeamLoad.uniform(0, 8, W))));

        assertClose(beam.moment(6), 0);
        assertClose(beam.shear(6), W);
        assertClose(beam.moment(4), -W * 1 * 2 - W * 2 * 2 / 2);
        assertReactions(beam, W, 1, 6, 1);
        // tip of an overhang of 2 m under w and the force w at its end
        double tip = W * 2 * (4 * 4 * 4 - 64 + 3 * 8) / (24 * EI) + W * 2 * 2 * (4 + 2) / (3 * EI);
        assertClose(beam.deflection(6), tip);
        assertThat(beam.spans().get(1).deflection().at()).isGreaterThanOrEqualTo(6.0);
    }

    @Test
    void pieceHungBetweenTwoHinges() {
        BeamSolution beam =
                Beam.solve(
                        BeamModel.uniform(
                                16,
                                List.of(0.0, 4.0, 12.0, 16.0),
                                List.of(7.0, 9.0),
                                EI,
                                List.of(BeamLoad.uniform(0, 16, W), new BeamLoad.Force(8, P))));

        // by hand: a simple span of 2 m on the tips of overhangs of 3 m
        double hung = W + P / 2;
        assertClose(beam.moment(7), 0);
        assertClose(beam.moment(9), 0);
        assertClose(beam.moment(8), W * 2 * 2 / 8 + P * 2 / 4);
        assertClose(beam.moment(4), -hung * 3 - W * 9 / 2);
        assertClose(beam.deflection(7), beam.deflection(9));
    }

    @Test
    void hingeOverASupportPartsTheBeamInTwo() {
        BeamSolution beam =
                Beam.solve(
                        BeamModel.uniform(
                                2 * L,
                                List.of(0.0, L, 2 * L),
                                List.of(L + 1e-10),
                                EI,
                                List.of(BeamLoad.uniform(0, L, W))));

        assertReactions(beam, W * L, 0.5, 0.5, 0);
        assertExtreme(beam.greatestDeflection(), L / 2, 5 * W * pow(L, 4) / (384 * EI));
        assertClose(beam.greatestMoment(L, 2 * L).value(), 0);
    }

    @Test
    void stiffMiddleHalf() {
        // by hand, the unit-load integral of the two halves: 2 int w x (L - x) x / 4 EI dx
        BeamSolution beam =
                Beam.solve(
                        new BeamModel(
                                L,
                                List.of(0.0, L),
                                List.of(),
                                List.of(
                                        new BeamRigidityStep(0, EI),
                                        new BeamRigidityStep(L / 4, 4 * EI),
                                        new BeamRigidityStep(3 * L / 4, EI)),
                                List.of(BeamLoad.uniform(0, L, W))));

        assertExtreme(beam.greatestDeflection(), L / 2, 119.0 / 24576 * W * pow(L, 4) / EI);
    }

    @Test
    void spansOfUnlikeRigidityUpToTheGreatestRatio() {
        // by hand: m L / 3 (1 / EI1 + 1 / EI2) = -w L^3 / (24 EI1), the first span loaded
        for (double ratio : new double[] {2e-6, 1e-3, 1.0 / 3, 1, 40, 5e5}) {
            BeamSolution beam =
                    Beam.solve(
                            new BeamModel(
                                    2 * L,
                                    List.of(0.0, L, 2 * L),
                                    List.of(),
                                    List.of(
                                            new BeamRigidityStep(0, EI),
                                            new BeamRigidityStep(L, EI * ratio)),
                                    List.of(BeamLoad.uniform(0, L, W))));

            double m = W * L * L / 8 / (1 + 1 / ratio);
            assertThat(beam.moment(L)).isCloseTo(-m, within(TIGHT * m));
            assertThat(beam.deflection(2 * L)).isCloseTo(0, within(TIGHT));
            assertThat(beam.slope(2 * L))
                    .isCloseTo(m * L / (6 * EI * ratio), within(TIGHT * W * L * L * L / EI));
        }
    }

    @Test
    void chordOfAPartOfTheSpan() {
        BeamSolution beam = simple(BeamLoad.uniform(0, L, W));

        // a parabola's own: the middle half sags from its chord by v(L/2) - v(L/4)
        assertExtreme(
                beam.greatestDeflectionFromChord(L / 4, 3 * L / 4),
                L / 2,
                (5.0 / 384 - 57.0 / 6144) * W * pow(L, 4) / EI);
        assertExtreme(
                beam.greatestDeflectionFromChord(0, L), L / 2, 5 * W * pow(L, 4) / (384 * EI));
        // off the middle the farthest point is where the slope is that of the chord
        BeamExtreme far = beam.greatestDeflectionFromChord(0.3, 1.6);
        double chordSlope = (beam.deflection(1.6) - beam.deflection(0.3)) / 1.3;
        assertClose(beam.slope(far.at()), chordSlope);
    }

    @Test
    void noLoadNoAnswer() {
        BeamSolution beam = simple();

        assertThat(beam.greatestDeflection().value()).isZero();
        assertThat(beam.greatestMoment().value()).isZero();
        assertThat(beam.greatestShear().value()).isZero();
    }

    @Test
    void aVeryShortLoadBesideASupportCostsNoAccuracy() {
        double tiny = 1e-7;
        BeamSolution beam =
                simple(
                        BeamLoad.uniform(0, L, W),
                        BeamLoad.uniform(0, tiny, P),
                        BeamLoad.uniform(L - tiny, L, P));

        assertThat(beam.greatestDeflection().value())
                .isCloseTo(5 * W * pow(L, 4) / (384 * EI), within(1e-12));
    }

    @Test
    void placesOffTheBeamAreRefused() {
        BeamSolution beam = simple(BeamLoad.uniform(0, L, W));

        assertThatThrownBy(() -> beam.moment(-0.1)).hasMessageContaining("off the beam");
        assertThatThrownBy(() -> beam.deflection(L + 0.1)).hasMessageContaining("off the beam");
        assertThatThrownBy(() -> beam.slope(Double.NaN)).hasMessageContaining("off the beam");
        assertThatThrownBy(() -> beam.greatestMoment(2, 1)).hasMessageContaining("run forward");
        assertThatThrownBy(() -> beam.greatestDeflectionFromChord(1, L + 1))
                .hasMessageContaining("off the beam");
    }
}
