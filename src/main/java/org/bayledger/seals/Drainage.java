package org.bayledger.seals;

/** How a wall gets rid of the water that passes its outer line. */
public enum Drainage {
    /**
     * Each lite's pocket is a chamber of its own, vented to the outside and closed against its
     * neighbours by a joint plug at each end of each horizontal.
     */
    PRESSURE_EQUALIZED,
    /** The horizontals drain into the verticals and these to the sill; there are no joint plugs. */
    DRAINED
}
