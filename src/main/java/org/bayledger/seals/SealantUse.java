package org.bayledger.seals;

/** Where a sealant is used. */
public enum SealantUse {
    /** In all joints: no other sealant was named for the perimeter. */
    EVERYWHERE,
    /** In the joints inside the system. */
    INSIDE,
    /** At head, jambs and sill, at stack joints and slab edges. */
    PERIMETER
}
