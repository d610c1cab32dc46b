package org.bayledger.seals;

/** What limits a flow through a gap. */
public enum FlowRegime {
    /** The speed with which the fluid leaves the gap. */
    ORIFICE,
    /** Friction along the walls of the gap. */
    VISCOUS_SLOT,
    /**
     * The gap is so narrow that surface tension could hold the water back at its inner edge; it
     * wets by wicking all the same, and the rate is that of a gap that is wet on both sides.
     */
    WICKING,
    /** The water that the spray supplies. */
    SPRAY_SUPPLY,
    /** Nothing flows: the whole length has been sealed. */
    SEALED
}
