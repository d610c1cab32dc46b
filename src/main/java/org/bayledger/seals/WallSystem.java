package org.bayledger.seals;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * How a wall is made, and with it which joints it has, in which order they are sealed and what
 * hides them afterwards: common practice, no source.
 */
public enum WallSystem {
    /** Verticals and horizontals put up piece by piece; the glass is held by pressure plates. */
    STICK_BUILT(
            Stages.STICK,
            Map.ofEntries(
                    Map.entry(JointType.END_DAM, List.of(Obstacle.HORIZONTAL, Obstacle.GLASS)),
                    Map.entry(
                            JointType.SPLICE,
                            List.of(Obstacle.JOINT_COVER, Obstacle.HORIZONTAL, Obstacle.GLASS)),
                    Map.entry(JointType.STACK_JOINT, List.of(Obstacle.JOINT_COVER, Obstacle.GLASS)),
                    Map.entry(JointType.JOINT_COVER, List.of(Obstacle.HORIZONTAL, Obstacle.GLASS)),
                    Map.entry(JointType.ANCHOR_PENETRATION, List.of(Obstacle.GLASS)),
                    Map.entry(
                            JointType.HORIZONTAL_TO_VERTICAL,
                            List.of(Obstacle.JOINT_PLUG, Obstacle.GLASS)),
                    Map.entry(
                            JointType.FASTENER_HEAD, List.of(Obstacle.JOINT_PLUG, Obstacle.GLASS)),
                    Map.entry(JointType.JOINT_PLUG, List.of(Obstacle.GLASS)),
                    Map.entry(JointType.PRESSURE_PLATE_BUTT, List.of(Obstacle.SNAP_COVER)))),
    /**
     * Units glazed in the shop and hung one beside and above the other; they interlock at their
     * verticals and stand in one another at stack joints. The edges of the frame are edges of
     * units: where the wall goes on below, a stack joint lies.
     */
    UNITIZED(
            Stages.UNITS,
            Map.ofEntries(
                    Map.entry(JointType.FRAME_CORNER, List.of(Obstacle.GLASS)),
                    Map.entry(JointType.HORIZONTAL_TO_VERTICAL, List.of(Obstacle.GLASS)),
                    Map.entry(JointType.VERTICAL_TO_HORIZONTAL, List.of(Obstacle.GLASS)),
                    Map.entry(JointType.FASTENER_HEAD, List.of(Obstacle.GLASS)),
                    Map.entry(JointType.RECEPTOR_SPLICE, List.of(Obstacle.UNIT)),
                    Map.entry(JointType.END_DAM, List.of(Obstacle.UNIT)),
                    Map.entry(JointType.PERIMETER_SILL, List.of(Obstacle.UNIT)),
                    Map.entry(JointType.ANCHOR_PENETRATION, List.of(Obstacle.UNIT)),
                    Map.entry(JointType.UNIT_VERTICAL, List.of(Obstacle.UNIT)),
                    Map.entry(JointType.END_CAP, List.of(Obstacle.UNIT_ABOVE)),
                    Map.entry(JointType.SPLICE_SLEEVE, List.of(Obstacle.UNIT_ABOVE)),
                    Map.entry(JointType.STACK_JOINT, List.of(Obstacle.UNIT_ABOVE)))),
    /**
     * Frames that stand between slabs in a receptor at head and sill. Every storey has its own head
     * and sill, whatever goes on above or below it.
     */
    WINDOW_WALL(
            Stages.WINDOWS,
            Map.ofEntries(
                    Map.entry(JointType.RECEPTOR_SPLICE, List.of(Obstacle.FRAME, Obstacle.GLASS)),
                    Map.entry(JointType.END_DAM, List.of(Obstacle.FRAME, Obstacle.GLASS)),
                    Map.entry(JointType.END_CAP, List.of(Obstacle.FRAME, Obstacle.GLASS)),
                    Map.entry(
                            JointType.ANCHOR_PENETRATION, List.of(Obstacle.FRAME, Obstacle.GLASS)),
                    Map.entry(
                            JointType.HORIZONTAL_TO_VERTICAL,
                            List.of(Obstacle.JOINT_PLUG, Obstacle.GLASS)),
                    Map.entry(
                            JointType.FASTENER_HEAD,
                            List.of(Obstacle.JOINT_PLUG, Obstacle.FRAME, Obstacle.GLASS)),
                    Map.entry(JointType.JOINT_PLUG, List.of(Obstacle.GLASS)),
                    Map.entry(JointType.PERIMETER_SILL, List.of(Obstacle.FRAME))));

    @SuppressWarnings("ImmutableEnumChecker") // made by List.of, never changed
    private final List<Stage> stages;

    @SuppressWarnings("ImmutableEnumChecker") // made by Map.ofEntries, never changed
    private final Map<JointType, List<Obstacle>> hides;

    @SuppressWarnings("ImmutableEnumChecker") // filled here, never changed
    private final Map<JointType, Integer> steps = new EnumMap<>(JointType.class);

    WallSystem(List<Stage> stages, Map<JointType, List<Obstacle>> hides) {
        this.stages = stages;
        this.hides = hides;
        stages.forEach(stage -> stage.seals().forEach(type -> steps.put(type, stage.step())));
    }

    /** The steps of the work, in order. */
    List<Stage> stages() {
        return stages;
    }

    /** The kinds of joint that such a wall can have, in the order of their steps. */
    public List<JointType> jointTypes() {
        return stages.stream().flatMap(stage -> stage.seals().stream()).toList();
    }

    /** Step, from 1, at which joints of a kind are sealed. */
    public int step(JointType type) {
        Integer step = steps.get(type);
        if (step == null) {
            throw new IllegalArgumentException(this + " has no " + type);
        }
        return step;
    }

    /** Step at which a thing is put in place. */
    public int step(Obstacle obstacle) {
        for (Stage stage : stages) {
            if (stage.places() == obstacle) {
                return stage.step();
            }
        }
        throw new IllegalArgumentException(this + " has no " + obstacle);
    }

    /** What hides joints of a kind, in the order in which it is put in place. */
    public List<Obstacle> hiddenBy(JointType type) {
        return hides.getOrDefault(type, List.of());
    }

    /** Whether joints of a kind can still be reached once the wall is glazed. */
    public boolean reachableAfterGlazing(JointType type) {
        return hiddenBy(type).stream().allMatch(Obstacle::removable);
    }

    /** Whether a line is closed by gaskets and takes no sealant. */
    public boolean gasketed(JointType type) {
        return this == UNITIZED
                && (type == JointType.UNIT_VERTICAL || type == JointType.STACK_JOINT);
    }

    /**
     * One step of the work. What is put in place is there before joints of the same step are
     * sealed.
     *
     * @param step number, from 1
     * @param title what is done
     * @param seals kinds of joint that are sealed
     * @param places what is put in place, and hides what lies behind it
     */
    record Stage(int step, String title, List<JointType> seals, @Nullable Obstacle places) {}

    /** The three sequences. */
    private static final class Stages {

        static final List<Stage> STICK =
                numbered(
                        seal("Seal the end dams of the sill flashing", JointType.END_DAM),
                        seal("Seal the splices of the verticals", JointType.SPLICE),
                        seal("Seal the stack joints", JointType.STACK_JOINT),
                        put("Bed the joint covers", Obstacle.JOINT_COVER, JointType.JOINT_COVER),
                        seal("Seal round anchors", JointType.ANCHOR_PENETRATION),
                        put(
                                "Set the horizontals and seal their ends",
                                Obstacle.HORIZONTAL,
                                JointType.HORIZONTAL_TO_VERTICAL),
                        seal("Cap the heads of the fasteners", JointType.FASTENER_HEAD),
                        put(
                                "Bed, cap and tool the joint plugs",
                                Obstacle.JOINT_PLUG,
                                JointType.JOINT_PLUG),
                        seal("Seal the sill to the building", JointType.PERIMETER_SILL),
                        seal("Seal the jambs to the building", JointType.PERIMETER_JAMB),
                        seal("Seal the head to the building", JointType.PERIMETER_HEAD),
                        put("Set the glass", Obstacle.GLASS),
                        seal(
                                "Seal the butts of the pressure plates",
                                JointType.PRESSURE_PLATE_BUTT),
                        put("Snap on the covers", Obstacle.SNAP_COVER));

        static final List<Stage> UNITS =
                numbered(
                        seal("In the shop: seal the corners of the units", JointType.FRAME_CORNER),
                        seal(
                                "In the shop: seal the ends of the units' inner members",
                                JointType.HORIZONTAL_TO_VERTICAL,
                                JointType.VERTICAL_TO_HORIZONTAL),
                        seal(
                                "In the shop: cap the heads of the fasteners",
                                JointType.FASTENER_HEAD),
                        put("In the shop: set the glass", Obstacle.GLASS),
                        seal("Seal the splices of the starter sill", JointType.RECEPTOR_SPLICE),
                        seal("Seal the end dams of the starter sill", JointType.END_DAM),
                        seal("Seal the starter sill to the building", JointType.PERIMETER_SILL),
                        seal("Seal round anchors", JointType.ANCHOR_PENETRATION),
                        seal(
                                "Check the gaskets of each unit's verticals before its neighbour"
                                        + " is hung",
                                JointType.UNIT_VERTICAL),
                        put("Hang the units of a tier", Obstacle.UNIT),
                        seal("Close the ends of the gutter on top of the tier", JointType.END_CAP),
                        seal(
                                "Bed the splice sleeves in the gutter from unit to unit",
                                JointType.SPLICE_SLEEVE),
                        seal(
                                "Fill the gutter with water, then check the gaskets of the stack"
                                        + " joint",
                                JointType.STACK_JOINT),
                        put("Hang the units of the tier above", Obstacle.UNIT_ABOVE),
                        seal("Seal the jambs to the building", JointType.PERIMETER_JAMB),
                        seal("Seal the head to the building", JointType.PERIMETER_HEAD));

        static final List<Stage> WINDOWS =
                numbered(
                        seal("Seal the splices of the receptors", JointType.RECEPTOR_SPLICE),
                        seal("Seal the end dams of the sill receptors", JointType.END_DAM),
                        seal("Close the ends of the head receptors", JointType.END_CAP),
                        seal("Seal round anchors", JointType.ANCHOR_PENETRATION),
                        seal("Seal the ends of the horizontals", JointType.HORIZONTAL_TO_VERTICAL),
                        seal("Cap the heads of the fasteners", JointType.FASTENER_HEAD),
                        put(
                                "Bed, cap and tool the joint plugs",
                                Obstacle.JOINT_PLUG,
                                JointType.JOINT_PLUG),
                        seal("Seal the sill receptors to the slab", JointType.PERIMETER_SILL),
                        put("Stand the frames in their receptors", Obstacle.FRAME),
                        seal("Seal the jambs to the building", JointType.PERIMETER_JAMB),
                        seal("Seal the head receptors to the slab", JointType.PERIMETER_HEAD),
                        put("Set the glass", Obstacle.GLASS),
                        seal("Seal the butts of the slab-edge covers", JointType.SLAB_COVER_BUTT),
                        seal(
                                "Seal the slab-edge covers to the frames above and below",
                                JointType.SLAB_EDGE_JOINT));

        private Stages() {}

        private static Stage seal(String title, JointType... types) {
            return new Stage(0, title, List.of(types), null);
        }

        private static Stage put(String title, Obstacle obstacle, JointType... types) {
            return new Stage(0, title, List.of(types), Objects.requireNonNull(obstacle));
        }

        private static List<Stage> numbered(Stage... stages) {
            List<Stage> numbered = new ArrayList<>();
            for (Stage stage : stages) {
                numbered.add(
                        new Stage(
                                numbered.size() + 1, stage.title(), stage.seals(), stage.places()));
            }
            return List.copyOf(numbered);
        }
    }
}
