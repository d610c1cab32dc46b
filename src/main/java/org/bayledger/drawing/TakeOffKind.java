package org.bayledger.drawing;

/** What is taken off. */
enum TakeOffKind {
    /** Lites by build-up and size: count, area, weight. */
    GLASS,
    /** Setting blocks by length and material: count. */
    BLOCKS,
    /** Sealant by kind of joint: count of joints, length, volume. */
    SEALANT,
    /** Members by section: count, length, mass. */
    ALUMINUM,
    /** Anchors by role: count. */
    ANCHORS
}
