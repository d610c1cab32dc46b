package org.bayledger.seals;

/** What hides a joint once it is in place. */
public enum Obstacle {
    /** The cover that bridges a splice, a stack joint or a butt of the sill flashing. */
    JOINT_COVER(4),
    /** The horizontals, the lowest of which stands on the sill flashing. */
    HORIZONTAL(6),
    /** The plug in the pocket at the end of a horizontal. */
    JOINT_PLUG(8),
    /** The lites, with their blocks, gaskets and pressure plates. */
    GLASS(12),
    /** The snap-on cover outside the pressure plates; it comes off again. */
    SNAP_COVER(14);

    private final int step;

    Obstacle(int step) {
        this.step = step;
    }

    /** The step of the sequence at which it is put in place. */
    public int step() {
        return step;
    }
}
