package org.bayledger.seals;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.bayledger.check.Reporting;
import org.jspecify.annotations.Nullable;

/**
 * The steps of the work on one frame, with what each needs and what must be signed before it is
 * covered. Common practice, no source, but for what the sealant maker says.
 */
final class SealSequence {

    private final SealDetails details;
    private final WallSystem system;
    private final SealPractice practice;

    /** The kinds of joint in this frame, with what hides each. */
    private final Map<JointType, List<Obstacle>> present = new EnumMap<>(JointType.class);

    private SealSequence(SealDetails details, JointTally counts, Reporting reporting) {
        this.details = details;
        this.system = details.systemOrDefault();
        this.practice = new SealPractice(reporting);
        for (JointCount count : counts.counts()) {
            if (count.count() > 0) {
                present.put(count.type(), hiddenBy(count.type(), details));
            }
        }
        for (JointType type : counts.notCounted()) {
            present.put(type, hiddenBy(type, details));
        }
    }

    static List<SequenceStep> of(SealDetails details, JointTally counts, Reporting reporting) {
        return new SealSequence(details, counts, reporting).steps();
    }

    /** What hides joints of a kind in this frame, in the order in which it is put in place. */
    static List<Obstacle> hiddenBy(JointType type, SealDetails details) {
        Integer covers = details.jointCovers();
        return details.systemOrDefault().hiddenBy(type).stream()
                .filter(
                        obstacle ->
                                obstacle != Obstacle.JOINT_PLUG
                                        || details.drainage() == Drainage.PRESSURE_EQUALIZED)
                .filter(
                        obstacle ->
                                obstacle != Obstacle.JOINT_COVER || covers == null || covers > 0)
                .toList();
    }

    private List<SequenceStep> steps() {
        List<SequenceStep> steps = new ArrayList<>();
        for (WallSystem.Stage stage : system.stages()) {
            List<JointType> types = stage.seals().stream().filter(present::containsKey).toList();
            List<Integer> hidden = hiddenFrom(stage.places());
            if (!types.isEmpty()) {
                steps.add(joints(stage, types, hidden));
            } else if (stage.seals().isEmpty()
                    && (!hidden.isEmpty() || stage.places() != Obstacle.UNIT_ABOVE)) {
                steps.add(
                        new SequenceStep(
                                stage.step(),
                                stage.title(),
                                List.of(),
                                null,
                                null,
                                null,
                                null,
                                null,
                                before(hidden),
                                List.of()));
            }
        }
        return steps;
    }

    private SequenceStep joints(
            WallSystem.Stage stage, List<JointType> types, List<Integer> hidden) {
        JointType first = types.get(0);
        List<Obstacle> obstacles =
                types.stream()
                        .flatMap(type -> present.getOrDefault(type, List.of()).stream())
                        .distinct()
                        .sorted(Comparator.comparingInt(system::step))
                        .toList();
        String sign = obstacles.isEmpty() ? null : signed(obstacles.get(0));
        String wait = before(hidden);
        String hold = sign == null ? wait : wait == null ? sign : wait + " " + sign;
        if (system.gasketed(first)) {
            return new SequenceStep(
                    stage.step(),
                    stage.title(),
                    types,
                    null,
                    null,
                    null,
                    SealInstructions.of(first, system),
                    null,
                    hold,
                    obstacles);
        }
        Sealant sealant = details.sealantOf(first);
        return new SequenceStep(
                stage.step(),
                stage.title(),
                types,
                // the same words for every frame of a wall: kept once
                practice.preparation(sealant).intern(),
                practice.primer(sealant).intern(),
                practice.weather(sealant).intern(),
                (types.stream().map(SealInstructions::tooling).collect(Collectors.joining(" "))
                                + " "
                                + practice.tooling(sealant))
                        .intern(),
                practice.cure(sealant).intern(),
                hold == null ? null : hold.intern(),
                obstacles);
    }

    private String signed(Obstacle obstacle) {
        String what =
                switch (obstacle) {
                    case JOINT_COVER -> "a joint cover";
                    case HORIZONTAL -> "a horizontal";
                    case JOINT_PLUG -> "a joint plug";
                    case GLASS -> "the glass";
                    case SNAP_COVER -> "a snap-on cover";
                    case UNIT -> "a unit";
                    case UNIT_ABOVE -> "the unit above";
                    case FRAME -> "the frame";
                };
        return "Inspect and sign before "
                + what
                + " hides it at step "
                + system.step(obstacle)
                + ".";
    }

    /** Steps of joints that a thing hides once it is put in place. */
    private List<Integer> hiddenFrom(@Nullable Obstacle obstacle) {
        if (obstacle == null) {
            return List.of();
        }
        SortedSet<Integer> steps = new TreeSet<>();
        present.forEach(
                (type, hiding) -> {
                    if (hiding.contains(obstacle)) {
                        steps.add(system.step(type));
                    }
                });
        return List.copyOf(steps);
    }

    private static @Nullable String before(List<Integer> steps) {
        return steps.isEmpty()
                ? null
                : "Do not begin before "
                        + (steps.size() == 1 ? "step " : "steps ")
                        + steps.stream().map(String::valueOf).collect(Collectors.joining(", "))
                        + (steps.size() == 1 ? " is" : " are")
                        + " inspected and signed.";
    }
}
