package org.bayledger.mechanics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

/** What is refused, with what words: mechanisms first. */
class BeamModelTest {

    private static BeamModel beam(double length, List<Double> supports, Double... hinges) {
        return BeamModel.uniform(
                length, supports, List.of(hinges), 5000, List.of(BeamLoad.uniform(0, length, 1)));
    }

    private static void refused(ThrowingCallable making, String... words) {
        assertThatThrownBy(making)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContainingAll(words);
    }

    @Test
    void tooFewSupports() {
        refused(() -> beam(4, List.of()), "at least two supports", "nothing holds it");
        refused(() -> beam(4, List.of(1.5)), "at least two supports", "turn about", "1.5 m");
    }

    @Test
    void hingeAtTheEndOfTheBeam() {
        refused(() -> beam(4, List.of(0.0, 4.0), 0.0), "hinge at 0 m", "joins nothing");
        refused(() -> beam(4, List.of(0.0, 4.0), 4.0), "hinge at 4 m", "joins nothing");
    }

    @Test
    void hingeInAnOverhangOrAtItsSupport() {
        refused(
                () -> beam(6, List.of(1.0, 5.0), 0.5),
                "hinge at 0.5 m",
                "piece before it",
                "first support at 1 m");
        refused(() -> beam(6, List.of(1.0, 5.0), 5.5), "piece beyond it", "last support at 5 m");
        refused(() -> beam(6, List.of(1.0, 5.0), 5.0), "piece beyond it", "swing");
        refused(() -> beam(6, List.of(1.0, 5.0), 1.0), "piece before it", "swing");
    }

    @Test
    void hingeInASingleSpan() {
        refused(
                () -> beam(4, List.of(0.0, 4.0), 2.0),
                "mechanism",
                "between 0 m and 4 m",
                "at 2 m");
    }

    @Test
    void twoHingesInAnEndSpan() {
        refused(
                () -> beam(8, List.of(0.0, 4.0, 8.0), 1.0, 3.0),
                "mechanism",
                "between 0 m and 3 m",
                "at 1 m, at 3 m",
                "1 of them");
    }

    @Test
    void threeHingesInAnInnerSpan() {
        refused(
                () -> beam(12, List.of(0.0, 4.0, 8.0, 12.0), 5.0, 6.0, 7.0),
                "mechanism",
                "between 5 m and 7 m",
                "0 of them",
                "in that stretch");
    }

    @Test
    void aHingeInEachOfTwoSpans() {
        refused(
                () -> beam(8, List.of(0.0, 4.0, 8.0), 2.0, 6.0),
                "mechanism",
                "at 2 m, at 6 m",
                "3 of them");
    }

    @Test
    void aHingeOverAnInnerSupportAndOneInTheSpanBeside() {
        refused(
                () -> beam(8, List.of(0.0, 4.0, 8.0), 4.0, 6.0),
                "mechanism",
                "between 4 m and 8 m");
        refused(
                () -> beam(8, List.of(0.0, 4.0, 8.0), 2.0, 4.0),
                "mechanism",
                "between 0 m and 4 m");
    }

    @Test
    void hingesThatLeaveTheBeamStable() {
        assertThat(beam(8, List.of(0.0, 4.0, 8.0), 3.0)).isNotNull();
        assertThat(beam(8, List.of(0.0, 4.0, 8.0), 4.0)).isNotNull();
        assertThat(beam(12, List.of(0.0, 4.0, 8.0, 12.0), 3.0, 7.0)).isNotNull();
        assertThat(beam(12, List.of(0.0, 4.0, 8.0, 12.0), 5.0, 7.0)).isNotNull();
        assertThat(beam(12, List.of(0.0, 4.0, 8.0, 12.0), 4.0, 8.0)).isNotNull();
    }

    /**
     * Every placing of up to four hinges on a grid against the count of rigid motions: a beam is a
     * mechanism exactly when a piecewise straight line with kinks at its hinges can be other than
     * zero and yet vanish at all supports, that is when the matrix of its values there has not full
     * column rank.
     */
    @Test
    void stabilityIsThatOfTheRigidMotions() {
        List<List<Double>> arrangements =
                List.of(
                        List.of(0.0, 4.0),
                        List.of(0.0, 4.0, 8.0),
                        List.of(1.0, 4.0, 7.0, 8.0),
                        List.of(0.0, 2.0, 4.0, 6.0, 8.0));
        int refused = 0;
        int accepted = 0;
        for (List<Double> supports : arrangements) {
            for (int mask = 0; mask < 1 << 15; mask++) {
                if (Integer.bitCount(mask) > 4) {
                    continue;
                }
                List<Double> hinges = new ArrayList<>();
                for (int k = 0; k < 15; k++) {
                    if ((mask >> k & 1) == 1) {
                        hinges.add((k + 1) * 0.5);
                    }
                }
                boolean stable = rigidRank(supports, hinges) == 2 + hinges.size();
                boolean made;
                try {
                    beam(8, supports, hinges.toArray(Double[]::new));
                    made = true;
                } catch (IllegalArgumentException e) {
                    made = false;
                }
                assertThat(made).as("supports %s, hinges %s", supports, hinges).isEqualTo(stable);
                if (made) {
                    accepted++;
                } else {
                    refused++;
                }
            }
        }
        assertThat(refused).isGreaterThan(1000);
        assertThat(accepted).isGreaterThan(100);
    }

    private static int rigidRank(List<Double> supports, List<Double> hinges) {
        int columns = 2 + hinges.size();
        double[][] a = new double[supports.size()][columns];
        for (int i = 0; i < a.length; i++) {
            double x = supports.get(i);
            a[i][0] = 1;
            a[i][1] = x;
            for (int k = 0; k < hinges.size(); k++) {
                a[i][2 + k] = Math.max(0, x - hinges.get(k));
            }
        }
        int rank = 0;
        for (int column = 0; column < columns && rank < a.length; column++) {
            int pivot = rank;
            for (int i = rank; i < a.length; i++) {
                if (Math.abs(a[i][column]) > Math.abs(a[pivot][column])) {
                    pivot = i;
                }
            }
            if (Math.abs(a[pivot][column]) < 1e-9) {
                continue;
            }
            double[] swap = a[pivot];
            a[pivot] = a[rank];
            a[rank] = swap;
            for (int i = rank + 1; i < a.length; i++) {
                double factor = a[i][column] / a[rank][column];
                for (int j = column; j < columns; j++) {
                    a[i][j] -= factor * a[rank][j];
                }
            }
            rank++;
        }
        return rank;
    }

    @Test
    void placesTooCloseToTell() {
        refused(() -> beam(4, List.of(0.0, 1e-7, 4.0)), "closer than a millionth");
        refused(() -> beam(8, List.of(0.0, 4.0, 8.0), 4.0 + 1e-7), "closer than a millionth");
        refused(() -> beam(8, List.of(0.0, 4.0, 6.0, 8.0), 5.0, 5.0 + 1e-7), "millionth");
    }

    @Test
    void positionsOffTheBeamOrOutOfOrder() {
        refused(() -> beam(4, List.of(0.0, 4.1)), "support at 4.1 m", "off the beam", "4 m");
        refused(() -> beam(4, List.of(-0.1, 4.0)), "support at -0.1 m", "off the beam");
        refused(() -> beam(4, List.of(0.0, 3.0, 3.0)), "increasing order", "3 m follows 3 m");
        refused(() -> beam(8, List.of(0.0, 4.0, 8.0), 9.0), "hinge at 9 m", "off the beam");
        refused(() -> beam(4, List.of(0.0, Double.NaN)), "not a finite number");
        refused(() -> unloaded(0), "above zero");
        refused(() -> unloaded(-4), "above zero");
        refused(() -> unloaded(Double.POSITIVE_INFINITY), "not a finite number");
    }

    private static BeamModel unloaded(double length) {
        return BeamModel.uniform(length, List.of(0.0, 4.0), List.of(), 5000, List.of());
    }

    @Test
    void roundingOfAConversionIsForgiven() {
        double length = 13 * 0.3048;
        BeamModel model = beam(length, List.of(-1e-12, length * (1 + 1e-12)));

        assertThat(Beam.solve(model).overhangs()).isEmpty();
        assertThat(Beam.solve(model).reactions().get(1).at()).isEqualTo(length);
    }

    @Test
    void rigidityThatDoesNotCoverTheBeam() {
        refused(() -> new BeamRigidityStep(0, 0), "rigidity must be above zero");
        refused(() -> rigid(), "from 0 m on");
        refused(() -> rigid(new BeamRigidityStep(1, 5)), "from 0 m on");
        refused(
                () -> rigid(new BeamRigidityStep(0, 5), new BeamRigidityStep(0, 6)),
                "increasing order");
        refused(
                () -> rigid(new BeamRigidityStep(0, 5), new BeamRigidityStep(4, 6)),
                "on the beam",
                "4 m");
        refused(
                () -> rigid(new BeamRigidityStep(0, 5), new BeamRigidityStep(2, 5.1e6)),
                "more than a millionfold");
    }

    private static BeamModel rigid(BeamRigidityStep... steps) {
        return new BeamModel(4, List.of(0.0, 4.0), List.of(), List.of(steps), List.of());
    }

    @Test
    void loadsThatDoNotFit() {
        BeamModel model = beam(8, List.of(0.0, 4.0, 8.0), 3.0);
        refused(() -> BeamLoad.uniform(2, 2, 1), "end beyond its start");
        refused(() -> new BeamLoad.Force(1, Double.NaN), "not a finite number");
        refused(() -> model.withLoads(List.of(BeamLoad.uniform(-1, 2, 1))), "off the beam");
        refused(() -> model.withLoads(List.of(BeamLoad.uniform(1, 8.1, 1))), "off the beam");
        refused(
                () -> model.withLoads(List.of(BeamLoad.uniform(1, 1 + 1e-9, 1))),
                "give it as a force");
        refused(() -> model.withLoads(List.of(new BeamLoad.Force(9, 1))), "off the beam");
        refused(() -> model.withLoads(List.of(new BeamLoad.Moment(-9, 1))), "off the beam");
        refused(
                () -> model.withLoads(List.of(new BeamLoad.Moment(3, 1))),
                "acts at a hinge",
                "one side");
    }

    @Test
    void listsAreCopied() {
        List<Double> supports = new ArrayList<>(List.of(0.0, 4.0));
        BeamModel model = beam(4, supports);
        supports.clear();

        assertThat(model.supports()).containsExactly(0.0, 4.0);
        assertThatIllegalArgumentException().isThrownBy(() -> beam(4, supports));
    }
}
