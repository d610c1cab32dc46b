package org.bayledger.seals;

/** What hides a joint once it is in place. */
public enum Obstacle {
    /** The cover that bridges a splice, a stack joint or a butt of the sill flashing. */
    JOINT_COVER,
    /** The horizontals, the lowest of which stands on the sill flashing. */
    HORIZONTAL,
    /** The plug in the pocket at the end of a horizontal. */
    JOINT_PLUG,
    /** The lites, with their blocks, gaskets and pressure plates. */
    GLASS,
    /** The snap-on cover outside the pressure plates; it comes off again. */
    SNAP_COVER,
    /** The glazed units of a tier of a unitized wall. */
    UNIT,
    /** The units of the next tier, which stand in the gutter of those below. */
    UNIT_ABOVE,
    /** The frame of a window wall, which stands in its receptors. */
    FRAME;

    /** Whether it comes off again without taking the wall apart. */
    public boolean removable() {
        return this == SNAP_COVER;
    }
}
