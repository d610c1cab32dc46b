package org.bayledger.seals;

/**
 * The kinds of joint. Which of them a wall has, in which order they are sealed and what hides them
 * afterwards goes by its {@link WallSystem}.
 */
public enum JointType {
    /** Upturned end of a sill flashing, starter sill or sill receptor: it keeps water inside. */
    END_DAM,
    /** Butt of two lengths of a vertical. */
    SPLICE,
    /** Horizontal line across the frame at which one part of the wall moves on the other. */
    STACK_JOINT,
    /** Cover, bedded in sealant, that bridges a joint between two lengths of metal. */
    JOINT_COVER,
    /** Anchor or bracket that pierces the line of the seals. */
    ANCHOR_PENETRATION,
    /** End of a horizontal against the face of a vertical. */
    HORIZONTAL_TO_VERTICAL,
    /** Head of a fastener inside the glazing pocket. */
    FASTENER_HEAD,
    /** Plug that closes the pocket at the end of a horizontal in a pressure-equalized wall. */
    JOINT_PLUG,
    /** Joint between the sill and the building. */
    PERIMETER_SILL,
    /** Joint between a jamb and the building. */
    PERIMETER_JAMB,
    /** Joint between the head and the building. */
    PERIMETER_HEAD,
    /** Butt of two pressure plates, at a crossing or along a length. */
    PRESSURE_PLATE_BUTT,
    /** Corner of a unit's frame, sealed in the shop. */
    FRAME_CORNER,
    /** End of a unit's inner vertical against its head or sill. */
    VERTICAL_TO_HORIZONTAL,
    /** Male and female vertical of two units that interlock. */
    UNIT_VERTICAL,
    /** Sleeve that carries the gutter of a stack joint from one unit to the next. */
    SPLICE_SLEEVE,
    /** Cap that closes the end of a gutter or of a head receptor where the wall ends. */
    END_CAP,
    /** Butt of two lengths of a receptor or of a starter sill. */
    RECEPTOR_SPLICE,
    /** Line along the upper or lower edge of a slab-edge cover. */
    SLAB_EDGE_JOINT,
    /** Butt of two lengths of a slab-edge cover. */
    SLAB_COVER_BUTT;

    /** Whether the joint lies against the building rather than inside the system. */
    public boolean perimeter() {
        return this == PERIMETER_SILL || this == PERIMETER_JAMB || this == PERIMETER_HEAD;
    }

    /** Whether its bead is that of the perimeter, sealed with the sealant of the perimeter. */
    public boolean weatherSeal() {
        return perimeter()
                || this == STACK_JOINT
                || this == UNIT_VERTICAL
                || this == SLAB_EDGE_JOINT
                || this == SLAB_COVER_BUTT;
    }
}
