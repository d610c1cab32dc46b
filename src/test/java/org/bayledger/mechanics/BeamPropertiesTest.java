package org.bayledger.mechanics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What must hold for every beam, on seeded random ones with hinges, overhangs, steps and loads. */
class BeamPropertiesTest {

    private static final int BEAMS = 400;

    /** One of the places on a grid of 200 steps, which binary numbers can state exactly. */
    private static double grid(Random random, double length) {
        return length / 200 * random.nextInt(201);
    }

    /** A stable beam of two to six supports, up to three hinges and up to three rigidities. */
    private static BeamModel randomBeam(Random random) {
        while (true) {
            double length = 200 * (1 + random.nextInt(8)) / 128.0;
            List<Double> supports =
                    random.doubles(2 + random.nextInt(5), 0, 1.0)
                            .map(x -> length / 200 * (5 * Math.round(x * 40)))
                            .distinct()
                            .sorted()
                            .boxed()
                            .toList();
            List<Double> hinges =
                    random.doubles(random.nextInt(4), 0, 1)
                            .map(x -> length / 200 * (5 * Math.round(x * 40)))
                            .distinct()
                            .sorted()
                            .boxed()
                            .toList();
            List<BeamRigidityStep> rigidity = new ArrayList<>();
            rigidity.add(new BeamRigidityStep(0, 2000 + 20000 * random.nextDouble()));
            random.doubles(random.nextInt(3), 0.05, 0.95)
                    .map(x -> length / 200 * (10 * Math.round(x * 20)))
                    .distinct()
                    .sorted()
                    .forEach(
                            x ->
                                    rigidity.add(
                                            new BeamRigidityStep(
                                                    x, 2000 + 20000 * random.nextDouble())));
            try {
                BeamModel bare = new BeamModel(length, supports, hinges, rigidity, List.of());
                return bare.withLoads(randomLoads(random, bare));
            } catch (IllegalArgumentException mechanism) {
                assertThat(mechanism).hasMessageNotContaining("finite");
            }
        }
    }

    private static List<BeamLoad> randomLoads(Random random, BeamModel beam) {
        List<BeamLoad> loads = new ArrayList<>();
        int count = 1 + random.nextInt(4);
        while (loads.size() < count) {
            double a = grid(random, beam.length());
            double b = grid(random, beam.length());
            switch (random.nextInt(3)) {
                case 0 -> loads.add(new BeamLoad.Force(a, 1000 * random.nextGaussian()));
                case 1 -> {
                    if (!beam.hinges().contains(a)) {
                        loads.add(new BeamLoad.Moment(a, 1000 * random.nextGaussian()));
                    }
                }
                default -> {
                    if (a != b) {
                        loads.add(
                                new BeamLoad.Distributed(
                                        Math.min(a, b),
                                        Math.max(a, b),
                                        500 * random.nextGaussian(),
                                        500 * random.nextGaussian()));
                    }
                }
            }
        }
        return loads;
    }

    /** Both loads at once, each times a factor, against the beam solved for their sum. */
    @Test
    void solutionsOfTheSameBeamAddUp() {
        Random random = new Random(20261125);
        for (int i = 0; i < BEAMS; i++) {
            BeamModel model = randomBeam(random);
            List<BeamLoad> others = randomLoads(random, model);
            double a = random.nextGaussian();
            double b = random.nextGaussian();
            BeamSolution one = Beam.solve(model.withLoads(both(model.loads(), 1, others, 0)));
            BeamSolution other = Beam.solve(model.withLoads(both(model.loads(), 0, others, 1)));
            BeamSolution sum = one.superposed(a, other, b);
            BeamSolution direct = Beam.solve(model.withLoads(both(model.loads(), a, others, b)));
            double scale =
                    Math.abs(a) * deflectionScale(one) + Math.abs(b) * deflectionScale(other);
            double moments =
                    Math.abs(a * one.greatestMoment().value())
                            + Math.abs(b * other.greatestMoment().value());
            assertThat(sum.greatestDeflection().value())
                    .isCloseTo(direct.greatestDeflection().value(), within(1e-7 * scale));
            assertThat(Math.abs(sum.greatestMoment().value()))
                    .isCloseTo(
                            Math.abs(direct.greatestMoment().value()),
                            within(1e-8 * (moments + 1e-3)));
            for (int r = 0; r < sum.reactions().size(); r++) {
                assertThat(sum.reactions().get(r).force())
                        .isCloseTo(
                                a * one.reactions().get(r).force()
                                        + b * other.reactions().get(r).force(),
                                within(1e-9 * (moments + 1e3)));
            }
        }
    }

    @Test
    void solutionsOfOtherBeamsAreNotAdded() {
        BeamModel whole = BeamModel.uniform(4, List.of(0.0, 4.0), List.of(), 1000, List.of());
        BeamSolution one = Beam.solve(whole);
        BeamSolution cut = Beam.solve(whole.withLoads(List.of(new BeamLoad.Force(1, 10))));
        BeamSolution stiffer =
                Beam.solve(BeamModel.uniform(4, List.of(0.0, 4.0), List.of(), 2000, List.of()));
        assertThatThrownBy(() -> one.superposed(1, cut, 1))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> one.superposed(1, stiffer, 1))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static List<BeamLoad> both(
            List<BeamLoad> loads, double factor, List<BeamLoad> others, double otherFactor) {
        List<BeamLoad> both = new ArrayList<>();
        loads.forEach(load -> both.add(times(load, factor)));
        others.forEach(load -> both.add(times(load, otherFactor)));
        return both;
    }

    private static BeamLoad times(BeamLoad load, double factor) {
        if (load instanceof BeamLoad.Force force) {
            return new BeamLoad.Force(force.at(), factor * force.force());
        }
        if (load instanceof BeamLoad.Moment moment) {
            return new BeamLoad.Moment(moment.at(), factor * moment.moment());
        }
        BeamLoad.Distributed spread = (BeamLoad.Distributed) load;
        return new BeamLoad.Distributed(
                spread.from(), spread.to(), factor * spread.atFrom(), factor * spread.atTo());
    }

    /** A beam that deflects by more than its length is numerically fine, yet sets the scale. */
    private static double deflectionScale(BeamSolution beam) {
        return Math.abs(beam.greatestDeflection().value()) + 1e-12;
    }

    private static double momentScale(BeamSolution beam) {
        return Math.abs(beam.greatestMoment().value()) + 1e-9;
    }

    @Test
    void agreesWithAssembledHermiteElements() {
        Random random = new Random(20260101);
        for (int n = 0; n < BEAMS; n++) {
            BeamModel model = randomBeam(random);
            BeamSolution beam = Beam.solve(model);
            BeamByStiffness other = new BeamByStiffness(model);
            double forceScale =
                    beam.reactions().stream().mapToDouble(r -> Math.abs(r.force())).max().orElse(0);
            for (int i = 0; i < other.places.length; i++) {
                assertThat(beam.deflection(other.places[i]))
                        .as("%s at %s", model, other.places[i])
                        .isCloseTo(other.deflections[i], within(1e-7 * deflectionScale(beam)));
            }
            for (int i = 0; i < other.reactions.length; i++) {
                assertThat(beam.reactions().get(i).force())
                        .as("%s support %s", model, i)
                        .isCloseTo(other.reactions[i], within(1e-7 * forceScale + 1e-6));
            }
        }
    }

    @Test
    void reactionsBalanceTheLoads() {
        Random random = new Random(7);
        for (int n = 0; n < BEAMS; n++) {
            BeamModel model = randomBeam(random);
            double force = 0;
            double moment = 0;
            double scale = 1;
            for (BeamLoad load : model.loads()) {
                double f = 0;
                double m = 0;
                if (load instanceof BeamLoad.Force p) {
                    f = p.force();
                    m = f * p.at();
                } else if (load instanceof BeamLoad.Moment c) {
                    m = c.moment();
                } else if (load instanceof BeamLoad.Distributed d) {
                    double l = d.to() - d.from();
                    f = l * (d.atFrom() + d.atTo()) / 2;
                    m = f * d.from() + l * l * (d.atFrom() + 2 * d.atTo()) / 6;
                }
                force += f;
                moment += m;
                scale += Math.abs(m) + Math.abs(f);
            }
            for (BeamReaction reaction : Beam.solve(model).reactions()) {
                force -= reaction.force();
                moment -= reaction.force() * reaction.at();
                scale += Math.abs(reaction.force()) * model.length();
            }
            assertThat(force).isCloseTo(0, within(1e-12 * scale));
            assertThat(moment).isCloseTo(0, within(1e-12 * scale));
        }
    }

    @Test
    void supportsHoldHingesDoNotBendAndFreeEndsCarryNothing() {
        Random random = new Random(8);
        for (int n = 0; n < BEAMS; n++) {
            BeamModel model = randomBeam(random);
            BeamSolution beam = Beam.solve(model);
            for (double support : model.supports()) {
                assertThat(beam.deflection(support))
                        .isCloseTo(0, within(1e-11 * deflectionScale(beam)));
            }
            for (double hinge : model.hinges()) {
                assertThat(beam.moment(hinge)).isCloseTo(0, within(1e-11 * momentScale(beam)));
            }
            for (double end : List.of(0.0, model.length())) {
                if (model.loads().stream()
                        .anyMatch(load -> load instanceof BeamLoad.Moment m && m.at() == end)) {
                    continue;
                }
                assertThat(beam.moment(end)).isCloseTo(0, within(1e-11 * momentScale(beam)));
            }
        }
    }

    @Test
    void effectsOfLoadsAddUp() {
        Random random = new Random(9);
        for (int n = 0; n < BEAMS; n++) {
            BeamModel first = randomBeam(random);
            BeamModel second = first.withLoads(randomLoads(random, first));
            List<BeamLoad> all = new ArrayList<>(first.loads());
            all.addAll(second.loads());
            BeamSolution both = Beam.solve(first.withLoads(all));
            BeamSolution one = Beam.solve(first);
            BeamSolution other = Beam.solve(second);
            double scale = deflectionScale(one) + deflectionScale(other);
            double bending = momentScale(one) + momentScale(other);
            for (int i = 0; i <= 50; i++) {
                double x = first.length() * i / 50;
                assertThat(both.deflection(x))
                        .isCloseTo(one.deflection(x) + other.deflection(x), within(1e-9 * scale));
                assertThat(both.moment(x))
                        .isCloseTo(one.moment(x) + other.moment(x), within(1e-9 * bending));
            }
        }
    }

    @Test
    void workOfOneForceOnTheOthersDeflectionIsMutual() {
        Random random = new Random(10);
        for (int n = 0; n < BEAMS; n++) {
            BeamModel bare = randomBeam(random);
            double a = grid(random, bare.length());
            double b = grid(random, bare.length());
            if (bare.hinges().contains(b)) {
                continue;
            }
            BeamSolution atA = Beam.solve(bare.withLoads(List.of(new BeamLoad.Force(a, 1000))));
            BeamSolution atB = Beam.solve(bare.withLoads(List.of(new BeamLoad.Force(b, 1000))));
            BeamSolution turnedB =
                    Beam.solve(bare.withLoads(List.of(new BeamLoad.Moment(b, 1000))));
            double scale = deflectionScale(atA) + deflectionScale(atB);

            assertThat(atA.deflection(b)).isCloseTo(atB.deflection(a), within(1e-10 * scale));
            assertThat(atA.slope(b))
                    .isCloseTo(
                            turnedB.deflection(a),
                            within(1e-10 * (scale + deflectionScale(turnedB))));
        }
    }

    @Test
    void aMirroredBeamAnswersMirrored() {
        Random random = new Random(11);
        for (int n = 0; n < BEAMS; n++) {
            BeamModel model = randomBeam(random);
            BeamSolution beam = Beam.solve(model);
            BeamSolution mirrored = Beam.solve(mirror(model));
            for (int i = 0; i <= 40; i++) {
                // off the grid on which loads stand, so that no jump is met
                double x = model.length() * (i + 0.3137) / 41;
                double y = model.length() - x;
                assertThat(mirrored.deflection(y))
                        .isCloseTo(beam.deflection(x), within(1e-9 * deflectionScale(beam)));
                assertThat(mirrored.moment(y))
                        .isCloseTo(beam.moment(x), within(1e-9 * momentScale(beam)));
                assertThat(mirrored.shear(y))
                        .isCloseTo(
                                -beam.shear(x),
                                within(1e-9 * (1 + Math.abs(beam.greatestShear().value()))));
            }
            assertThat(mirrored.maximumMoment().value())
                    .isCloseTo(beam.maximumMoment().value(), within(1e-9 * momentScale(beam)));
        }
    }

    private static BeamModel mirror(BeamModel model) {
        double length = model.length();
        List<BeamRigidityStep> rigidity = new ArrayList<>();
        for (int i = model.rigidity().size() - 1; i >= 0; i--) {
            boolean last = i == model.rigidity().size() - 1;
            double end = last ? length : model.rigidity().get(i + 1).from();
            rigidity.add(
                    new BeamRigidityStep(
                            last ? 0 : length - end, model.rigidity().get(i).rigidity()));
        }
        List<BeamLoad> loads = new ArrayList<>();
        for (BeamLoad load : model.loads()) {
            if (load instanceof BeamLoad.Force f) {
                loads.add(new BeamLoad.Force(length - f.at(), f.force()));
            } else if (load instanceof BeamLoad.Moment m) {
                loads.add(new BeamLoad.Moment(length - m.at(), -m.moment()));
            } else if (load instanceof BeamLoad.Distributed d) {
                loads.add(
                        new BeamLoad.Distributed(
                                length - d.to(),
                                length - d.from(),
                                /* atFrom= */ d.atTo(),
                                /* atTo= */ d.atFrom()));
            }
        }
        return new BeamModel(
                length,
                model.supports().stream().map(x -> length - x).sorted().toList(),
                model.hinges().stream().map(x -> length - x).sorted().toList(),
                rigidity,
                loads);
    }

    @Test
    void extremesAreNoLessThanAnySampleAndStandWhereTheyAreSaidTo() {
        Random random = new Random(12);
        for (int n = 0; n < BEAMS; n++) {
            BeamModel model = randomBeam(random);
            BeamSolution beam = Beam.solve(model);
            double from = model.length() * random.nextDouble() / 2;
            double to = from + (model.length() - from) * (0.2 + 0.7 * random.nextDouble());
            BeamExtreme inPart = beam.greatestDeflection(from, to);
            BeamExtreme offChord = beam.greatestDeflectionFromChord(from, to);
            BeamExtreme bendingInPart = beam.greatestMoment(from, to);
            double slack = 1e-9 * deflectionScale(beam);
            double bendingSlack = 1e-9 * momentScale(beam);
            double chord = (beam.deflection(to) - beam.deflection(from)) / (to - from);
            for (int i = 0; i <= 1000; i++) {
                double x = from + (to - from) * i / 1000;
                x = Math.min(x, to);
                assertThat(Math.abs(beam.deflection(x)))
                        .isLessThanOrEqualTo(Math.abs(inPart.value()) + slack);
                assertThat(
                                Math.abs(
                                        beam.deflection(x)
                                                - beam.deflection(from)
                                                - chord * (x - from)))
                        .isLessThanOrEqualTo(Math.abs(offChord.value()) + slack);
                assertThat(Math.abs(beam.moment(x)))
                        .isLessThanOrEqualTo(Math.abs(bendingInPart.value()) + bendingSlack);
                assertThat(beam.moment(x))
                        .isBetween(
                                beam.minimumMoment().value() - bendingSlack,
                                beam.maximumMoment().value() + bendingSlack);
                assertThat(Math.abs(beam.shear(x)))
                        .isLessThanOrEqualTo(Math.abs(beam.greatestShear().value()) + 1e-6);
            }
            assertThat(beam.deflection(inPart.at())).isCloseTo(inPart.value(), within(slack));
            assertThat(inPart.at()).isBetween(from, to);
            assertThat(beam.greatestDeflection().value())
                    .isCloseTo(beam.deflection(beam.greatestDeflection().at()), within(slack));
        }
    }

    @Test
    void greatestDeflectionOfTheWholeIsThatOfOneOfItsParts() {
        Random random = new Random(13);
        for (int n = 0; n < BEAMS; n++) {
            BeamSolution beam = Beam.solve(randomBeam(random));
            double most = 0;
            for (BeamSpan span : beam.spans()) {
                most = Math.max(most, Math.abs(span.deflection().value()));
            }
            for (BeamOverhang overhang : beam.overhangs()) {
                most = Math.max(most, Math.abs(overhang.deflection().value()));
                assertThat(overhang.tipDeflection()).isEqualTo(beam.deflection(overhang.tip()));
            }
            assertThat(most).isEqualTo(Math.abs(beam.greatestDeflection().value()));
        }
    }

    @Test
    void scaling() {
        Random random = new Random(14);
        for (int n = 0; n < BEAMS; n++) {
            BeamModel model = randomBeam(random);
            List<BeamRigidityStep> stiffer =
                    model.rigidity().stream()
                            .map(s -> new BeamRigidityStep(s.from(), 3 * s.rigidity()))
                            .toList();
            BeamSolution beam = Beam.solve(model);
            BeamSolution stiff =
                    Beam.solve(
                            new BeamModel(
                                    model.length(),
                                    model.supports(),
                                    model.hinges(),
                                    stiffer,
                                    model.loads()));

            assertThat(3 * stiff.greatestDeflection().value())
                    .isCloseTo(
                            beam.greatestDeflection().value(),
                            within(1e-9 * deflectionScale(beam)));
            assertThat(Math.abs(stiff.greatestMoment().value()))
                    .isCloseTo(
                            Math.abs(beam.greatestMoment().value()),
                            within(1e-9 * momentScale(beam)));
        }
    }
}
