package org.bayledger.blocks;

/** What can govern at a place of the blocks. */
public enum BlockLimit {
    /** The horizontal bends by more than its own limit. */
    DEFLECTION("the horizontal bends too far"),
    /** The glazing below loses too much of its bite. */
    BITE("too little of the bite is left below"),
    /** The glazing below loses too much of its edge clearance. */
    CLEARANCE("too little edge clearance is left below"),
    /** The horizontal turns too far about its axis. */
    ROTATION("the horizontal turns too far about its axis"),
    /** The shear block at one end or its fasteners carry too much. */
    END_CONNECTION("the shear block at an end and its fasteners carry too much"),
    /** A block is pressed too hard. */
    BLOCK_PRESSURE("the glass presses too hard on its blocks"),
    /** The edge of the glass is stressed too far as it bends in its own plane. */
    GLASS_EDGE_STRESS("the edge of the glass is stressed too far");

    private final String words;

    BlockLimit(String words) {
        this.words = words;
    }

    /** What is wrong where this limit is exceeded, as a sentence goes on. */
    String words() {
        return words;
    }
}
