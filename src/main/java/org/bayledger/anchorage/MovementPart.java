package org.bayledger.anchorage;

import org.bayledger.quantity.Quantity;

/**
 * The share of one cause in the movement of a joint.
 *
 * @param cause what moves
 * @param opening by which it opens the joint from the installed state
 * @param closing by which it closes the joint
 */
public record MovementPart(Cause cause, Quantity opening, Quantity closing) {

    /** What moves a joint. */
    public enum Cause {
        /** Temperature of the metal. */
        THERMAL,
        /** Live load on the slab above, or on the one below. */
        SLAB_LIVE_LOAD,
        /** Shortening of the building's columns. */
        COLUMN_SHORTENING,
        /** Creep and long-term deflection of the slab above, or of the one below. */
        SLAB_CREEP,
        /** Creep of the building's columns. */
        COLUMN_CREEP,
        /** Sway of the building in the plane of the wall. */
        BUILDING_SWAY,
        /** Tolerances, combined as asked. */
        TOLERANCES
    }
}
