package org.bayledger.seals;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.bayledger.seals.Frames.run;
import static org.bayledger.seals.Frames.two;
import static org.bayledger.seals.Frames.with;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.NullMarked;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The order of the work and what it takes. */
@NullMarked
class SealSequenceTest {

    /** A thing of a sequence: a kind of joint or what is put in place. */
    private record Fact(Object first, Object then) {}

    /** What is done first in the physical world, written down apart from the tables of steps. */
    private static List<Fact> facts(WallSystem system) {
        return switch (system) {
            case STICK_BUILT ->
                    List.of(
                            // a cover is bedded over a finished joint
                            new Fact(JointType.SPLICE, Obstacle.JOINT_COVER),
                            new Fact(JointType.STACK_JOINT, Obstacle.JOINT_COVER),
                            // the lowest horizontal stands on the flashing
                            new Fact(JointType.END_DAM, Obstacle.HORIZONTAL),
                            new Fact(JointType.SPLICE, Obstacle.HORIZONTAL),
                            // a plug stands over a seam and screws that are done
                            new Fact(JointType.HORIZONTAL_TO_VERTICAL, Obstacle.JOINT_PLUG),
                            new Fact(JointType.FASTENER_HEAD, Obstacle.JOINT_PLUG),
                            new Fact(Obstacle.HORIZONTAL, Obstacle.JOINT_PLUG),
                            // glass closes the pocket, plates hold glass, covers hide plates
                            new Fact(JointType.JOINT_PLUG, Obstacle.GLASS),
                            new Fact(JointType.ANCHOR_PENETRATION, Obstacle.GLASS),
                            new Fact(Obstacle.JOINT_COVER, Obstacle.GLASS),
                            new Fact(Obstacle.GLASS, JointType.PRESSURE_PLATE_BUTT),
                            new Fact(JointType.PRESSURE_PLATE_BUTT, Obstacle.SNAP_COVER));
            case UNITIZED ->
                    List.of(
                            // units are made and glazed in the shop, then hung
                            new Fact(JointType.FRAME_CORNER, Obstacle.GLASS),
                            new Fact(JointType.HORIZONTAL_TO_VERTICAL, Obstacle.GLASS),
                            new Fact(JointType.VERTICAL_TO_HORIZONTAL, Obstacle.GLASS),
                            new Fact(JointType.FASTENER_HEAD, Obstacle.GLASS),
                            new Fact(JointType.FRAME_CORNER, JointType.FASTENER_HEAD),
                            new Fact(Obstacle.GLASS, Obstacle.UNIT),
                            // they stand in the starter sill
                            new Fact(JointType.RECEPTOR_SPLICE, Obstacle.UNIT),
                            new Fact(JointType.END_DAM, Obstacle.UNIT),
                            new Fact(JointType.PERIMETER_SILL, Obstacle.UNIT),
                            new Fact(JointType.UNIT_VERTICAL, Obstacle.UNIT),
                            new Fact(JointType.ANCHOR_PENETRATION, Obstacle.UNIT),
                            // the gutter is on top of hung units, and the next tier stands in it
                            new Fact(Obstacle.UNIT, JointType.SPLICE_SLEEVE),
                            new Fact(Obstacle.UNIT, JointType.END_CAP),
                            new Fact(JointType.SPLICE_SLEEVE, JointType.STACK_JOINT),
                            new Fact(JointType.END_CAP, Obstacle.UNIT_ABOVE),
                            new Fact(JointType.STACK_JOINT, Obstacle.UNIT_ABOVE));
            case WINDOW_WALL ->
                    List.of(
                            // the frame stands in receptors that are tight
                            new Fact(JointType.RECEPTOR_SPLICE, Obstacle.FRAME),
                            new Fact(JointType.END_DAM, Obstacle.FRAME),
                            new Fact(JointType.END_CAP, Obstacle.FRAME),
                            new Fact(JointType.PERIMETER_SILL, Obstacle.FRAME),
                            new Fact(JointType.ANCHOR_PENETRATION, Obstacle.FRAME),
                            new Fact(JointType.FASTENER_HEAD, Obstacle.FRAME),
                            new Fact(JointType.FASTENER_HEAD, Obstacle.JOINT_PLUG),
                            new Fact(JointType.HORIZONTAL_TO_VERTICAL, Obstacle.JOINT_PLUG),
                            new Fact(JointType.JOINT_PLUG, Obstacle.GLASS),
                            new Fact(Obstacle.FRAME, Obstacle.GLASS));
        };
    }

    private static int at(List<WallSystem.Stage> stages, Object thing) {
        return stages.stream()
                .filter(stage -> thing == stage.places() || stage.seals().contains(thing))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no step for " + thing))
                .step();
    }

    /** Everything in an order that the world does not allow. */
    private static List<String> impossible(WallSystem system, List<WallSystem.Stage> stages) {
        List<String> wrong = new ArrayList<>();
        List<Fact> facts = new ArrayList<>(facts(system));
        for (JointType type : system.jointTypes()) {
            system.hiddenBy(type).forEach(obstacle -> facts.add(new Fact(type, obstacle)));
        }
        for (Fact fact : facts) {
            if (at(stages, fact.first()) >= at(stages, fact.then())) {
                wrong.add(fact.first() + " after " + fact.then());
            }
        }
        return wrong;
    }

    @ParameterizedTest
    @EnumSource(WallSystem.class)
    void noStepComesAfterWhatHidesIt(WallSystem system) {
        assertThat(impossible(system, system.stages())).isEmpty();
        assertThat(system.jointTypes()).doesNotHaveDuplicates();
        for (JointType type : system.jointTypes()) {
            List<Integer> steps = system.hiddenBy(type).stream().map(system::step).toList();
            assertThat(steps).as("%s", type).isSorted();
            assertThat(system.reachableAfterGlazing(type))
                    .as("%s", type)
                    .isEqualTo(
                            system.hiddenBy(type).isEmpty()
                                    || system.hiddenBy(type).equals(List.of(Obstacle.SNAP_COVER)));
        }
    }

    /** The proof sees an order turned round, wherever a step is put behind what hides it. */
    @ParameterizedTest
    @EnumSource(WallSystem.class)
    void aWrongOrderIsSeen(WallSystem system) {
        for (JointType type : system.jointTypes()) {
            for (Obstacle obstacle : system.hiddenBy(type)) {
                List<WallSystem.Stage> turned = new ArrayList<>(system.stages());
                Collections.swap(turned, system.step(type) - 1, system.step(obstacle) - 1);
                List<WallSystem.Stage> numbered = new ArrayList<>();
                for (WallSystem.Stage stage : turned) {
                    numbered.add(
                            new WallSystem.Stage(
                                    numbered.size() + 1,
                                    stage.title(),
                                    stage.seals(),
                                    stage.places()));
                }
                assertThat(impossible(system, numbered)).contains(type + " after " + obstacle);
            }
        }
    }

    private static Map<String, @Nullable Object> frame(WallSystem system) {
        return switch (system) {
            case STICK_BUILT -> with(two(), "stackJoints", List.of("12 ft"));
            case UNITIZED -> SystemCountsTest.units();
            case WINDOW_WALL -> SystemCountsTest.windows();
        };
    }

    /** The answer's sequence: in order, with every joint once and each hold point before cover. */
    @ParameterizedTest
    @EnumSource(WallSystem.class)
    void sequenceOfAFrame(WallSystem system) {
        SealsResult result = run(frame(system));
        List<SequenceStep> steps = result.sequence();
        assertThat(steps).extracting(SequenceStep::step).isSorted().doesNotHaveDuplicates();
        assertThat(steps.stream().flatMap(step -> step.jointTypes().stream()).toList())
                .containsExactlyElementsOf(
                        result.joints().stream()
                                .filter(joint -> joint.count() > 0)
                                .map(SealJoint::type)
                                .toList());
        for (SequenceStep step : steps) {
            if (step.jointTypes().isEmpty()) {
                assertThat(step.preparation()).isNull();
                assertThat(step.hiddenBy()).isEmpty();
                continue;
            }
            assertThat(step.tooling()).isNotBlank();
            if (system.gasketed(step.jointTypes().get(0))) {
                assertThat(step.cure()).isNull();
            } else {
                assertThat(step.preparation()).contains("solvent", "second, clean one", "within");
                assertThat(step.primer()).isEqualTo("Prime where the sealant maker directs.");
                assertThat(step.cure()).contains("as the sealant maker directs");
                assertThat(step.weather()).doesNotContainPattern("\\d");
                assertThat(step.preparation()).doesNotContainPattern("\\d");
            }
            for (Obstacle obstacle : step.hiddenBy()) {
                assertThat(step.step()).isLessThan(system.step(obstacle));
            }
            if (!step.hiddenBy().isEmpty()) {
                int covered = system.step(step.hiddenBy().get(0));
                assertThat(step.holdPoint()).contains("sign before", "at step " + covered);
                SequenceStep cover =
                        steps.stream().filter(s -> s.step() == covered).findFirst().orElseThrow();
                assertThat(cover.holdPoint())
                        .containsPattern(
                                "Do not begin before steps? (\\d+, )*" + step.step() + "[ ,]");
            }
        }
        assertThat(steps)
                .filteredOn(step -> step.step() == result.glazingStep())
                .extracting(SequenceStep::title)
                .allSatisfy(title -> assertThat(title).containsIgnoringCase("set the glass"));
    }

    /** The maker's numbers stand where they were given, each sealant's in its own joints. */
    @Test
    void makersNumbersAreUsed() {
        Map<String, @Nullable Object> tree =
                with(
                        two(),
                        "sealant",
                        Frames.tree(
                                """
                                {"name":"inner","solvent":"solvent A","dryTime":"5 min",
                                 "sealWithin":"90 min","primer":true,"toolingTime":"10 min",
                                 "minimumSurfaceTemperature":"5 degC",
                                 "maximumSurfaceTemperature":"40 degC","cureTime":"36 h"}"""));
        tree =
                with(
                        tree,
                        "perimeterSealant",
                        Frames.tree(
                                "{\"primer\":false,\"maximumSurfaceTemperature\":\"50 degC\",\"dryTime\":\"90 s\"}"));
        List<SequenceStep> steps = run(tree).sequence();
        SequenceStep splice = step(steps, JointType.SPLICE);
        assertThat(splice.preparation())
                .contains("solvent A on one cloth", "dry for 5 min", "within 1.5 h of cleaning");
        assertThat(splice.primer()).startsWith("Prime both surfaces");
        assertThat(splice.weather()).contains("from 5 degC to 40 degC");
        assertThat(splice.tooling()).contains("Tool within 10 min of placing.");
        assertThat(splice.cure()).isEqualTo("No water for 1.5 d after sealing.");
        SequenceStep head = step(steps, JointType.PERIMETER_HEAD);
        assertThat(head.preparation()).contains("dry for 1.5 min", "maker allows after cleaning");
        assertThat(head.primer()).startsWith("No primer");
        assertThat(head.weather()).contains("at 50 degC or below");
        assertThat(head.holdPoint()).isNull();
        Map<String, @Nullable Object> cold =
                with(two(), "sealant", Map.of("minimumSurfaceTemperature", "40 degF"));
        assertThat(step(run(cold, Frames.US).sequence(), JointType.SPLICE).weather())
                .contains("at 40 degF or above");
    }

    private static SequenceStep step(List<SequenceStep> steps, JointType type) {
        return steps.stream().filter(s -> s.jointTypes().contains(type)).findFirst().orElseThrow();
    }

    /** What the frame does not have has no step. */
    @Test
    void stepsThatAreNotNeededAreLeftOut() {
        SealsResult drained = run(with(with(two(), "drainage", "DRAINED"), "jointCovers", 0));
        assertThat(drained.sequence().stream().flatMap(step -> step.jointTypes().stream()))
                .doesNotContain(JointType.JOINT_PLUG, JointType.JOINT_COVER);
        assertThat(drained.sequence())
                .noneMatch(step -> step.hiddenBy().contains(Obstacle.JOINT_PLUG));
        SealsResult tier =
                run(
                        with(
                                with(SystemCountsTest.units(), "rows", List.of("1 m", "2 m")),
                                "stackJoints",
                                List.of()));
        assertThat(tier.sequence()).noneMatch(step -> step.title().contains("above"));
    }

    /**
     * By hand from the frame of two columns and three rows: 430.1 in of bead at 1/16 in2 = 26.88
     * in3 inside, 552 in at 1/8 in2 = 69 in3 at the perimeter; with 10 % 29.57 in3 = 484.6 mL: 2
     * cartridges, 1 sausage; 75.9 in3 = 1243.8 mL: 5 cartridges, 3 sausages.
     */
    @Test
    void takeOffOfTwoSealants() {
        Map<String, @Nullable Object> tree = with(two(), "sealant", Map.of("name", "inner"));
        tree = with(tree, "perimeterSealant", Map.of("name", "outer"));
        SealsResult result = run(tree);
        assertThat(result.takeOff().sealants())
                .extracting("use", "name", "cartridges", "sausages")
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(SealantUse.INSIDE, "inner", 2L, 1L),
                        org.assertj.core.groups.Tuple.tuple(SealantUse.PERIMETER, "outer", 5L, 3L));
        double inch = 0.0254 * 0.0254 * 0.0254;
        assertThat(result.takeOff().sealants().get(0).volumeWithWaste().si())
                .isCloseTo(430.1 / 16 * 1.1 * inch, within(1e-12));
        assertThat(result.cartridges()).isEqualTo(7);
        // one sealant: 1728 mL in sausages of 600 mL
        assertThat(run(two()).takeOff().sealants())
                .extracting("use", "name", "cartridges", "sausages")
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(SealantUse.EVERYWHERE, null, 6L, 3L));
        assertThat(
                        run(with(two(), "sausageVolume", "1728 mL"))
                                .takeOff()
                                .sealants()
                                .get(0)
                                .sausages())
                .isEqualTo(2);
        conserves(result);
    }

    private static void conserves(SealsResult result) {
        double rows = result.takeOff().rows().stream().mapToDouble(r -> r.volume().si()).sum();
        double sealants =
                result.takeOff().sealants().stream().mapToDouble(r -> r.volume().si()).sum();
        assertThat(rows).isCloseTo(result.sealantVolume().si(), within(1e-15));
        assertThat(sealants).isCloseTo(result.sealantVolume().si(), within(1e-15));
        int joints = result.joints().stream().mapToInt(SealJoint::count).sum();
        assertThat(result.takeOff().labour().stream().mapToInt(StepLabour::joints).sum())
                .isEqualTo(joints);
        for (TakeOffRow row : result.takeOff().rows()) {
            if (row.sealant() != null) {
                assertThat(row.volume().si())
                        .isCloseTo(
                                row.beadWidth().si() * row.beadDepth().si() * row.length().si(),
                                within(1e-15));
            }
        }
    }

    @ParameterizedTest
    @EnumSource(WallSystem.class)
    void volumesAndLabourAddUp(WallSystem system) {
        conserves(run(frame(system)));
        conserves(run(with(frame(system), "perimeterSealant", Map.of("name", "outer"))));
    }
}
