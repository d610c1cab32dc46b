package org.bayledger.blocks;

/** What a setting block found on site rests on. */
public enum BlockSeat {
    /** The flat seat of the horizontal or sill itself. */
    MEMBER("the flat seat of the horizontal"),
    /** One solid shim under the full length of the block. */
    SHIM("a solid shim"),
    /** Several loose shims on top of one another. */
    STACKED_SHIMS("stacked loose shims"),
    /** Something that was at hand. */
    PACKER("an improvised packer"),
    /** The lips of a screw spline or another groove of the horizontal. */
    SCREW_SPLINE("the lips of a screw spline"),
    /** The head of a fastener. */
    FASTENER_HEAD("the head of a fastener"),
    /** Not known. */
    UNKNOWN("something unknown");

    private final String words;

    BlockSeat(String words) {
        this.words = words;
    }

    /** The seat as a sentence names it. */
    String words() {
        return words;
    }
}
