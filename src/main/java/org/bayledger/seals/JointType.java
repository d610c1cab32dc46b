package org.bayledger.seals;

import java.util.List;

/**
 * The kinds of joint, in the order in which they are sealed, each with what hides it afterwards.
 *
 * <p>The sequence is that of a stick-built wall with pressure plates: common practice, no source.
 */
public enum JointType {
    /** Upturned end of the sill flashing that keeps its water inside. */
    END_DAM(1, List.of(Obstacle.HORIZONTAL, Obstacle.GLASS)),
    /** Butt of two lengths of a vertical. */
    SPLICE(2, List.of(Obstacle.JOINT_COVER, Obstacle.HORIZONTAL, Obstacle.GLASS)),
    /** Horizontal line across the frame at which one part of the wall moves on the other. */
    STACK_JOINT(3, List.of(Obstacle.JOINT_COVER, Obstacle.GLASS)),
    /** Cover, bedded in sealant, that bridges a joint between two lengths of metal. */
    JOINT_COVER(4, List.of(Obstacle.HORIZONTAL, Obstacle.GLASS)),
    /** Anchor or bracket that pierces the line of the seals. */
    ANCHOR_PENETRATION(5, List.of(Obstacle.GLASS)),
    /** End of a horizontal against the face of a vertical. */
    HORIZONTAL_TO_VERTICAL(6, List.of(Obstacle.JOINT_PLUG, Obstacle.GLASS)),
    /** Head of a fastener inside the glazing pocket. */
    FASTENER_HEAD(7, List.of(Obstacle.JOINT_PLUG, Obstacle.GLASS)),
    /** Plug that closes the pocket at the end of a horizontal in a pressure-equalized wall. */
    JOINT_PLUG(8, List.of(Obstacle.GLASS)),
    /** Joint between the sill and the building. */
    PERIMETER_SILL(9, List.of()),
    /** Joint between a jamb and the building. */
    PERIMETER_JAMB(10, List.of()),
    /** Joint between the head and the building. */
    PERIMETER_HEAD(11, List.of()),
    /** Butt of two pressure plates, at a crossing or along a length. */
    PRESSURE_PLATE_BUTT(13, List.of(Obstacle.SNAP_COVER));

    private final int step;

    @SuppressWarnings("ImmutableEnumChecker") // List.of is immutable
    private final List<Obstacle> hiddenBy;

    JointType(int step, List<Obstacle> hiddenBy) {
        this.step = step;
        this.hiddenBy = hiddenBy;
    }

    /** Step of the sequence at which joints of this kind are sealed. */
    public int step() {
        return step;
    }

    /** What hides joints of this kind, in the order in which it is put in place. */
    public List<Obstacle> hiddenBy() {
        return hiddenBy;
    }

    /** Whether joints of this kind can still be reached once the glass is in. */
    public boolean reachableAfterGlazing() {
        return !hiddenBy.contains(Obstacle.GLASS);
    }

    /** Whether the joint lies against the building rather than inside the system. */
    public boolean perimeter() {
        return this == PERIMETER_SILL || this == PERIMETER_JAMB || this == PERIMETER_HEAD;
    }
}
