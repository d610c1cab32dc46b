package org.bayledger.blocks;

import org.jspecify.annotations.Nullable;

/** What a setting block found on site is made of. */
public enum BlockMaterial {
    /** EPDM rubber. */
    EPDM(true, null, "EPDM"),
    /** Neoprene rubber. */
    NEOPRENE(true, null, "neoprene"),
    /** Silicone rubber. */
    SILICONE(true, null, "silicone"),
    /** PVC, whose plasticizer may go into the sealants that touch it. */
    PVC(false, 3e9, "PVC"),
    /** Wood. */
    WOOD(false, 0.5e9, "wood"),
    /** Metal. */
    METAL(false, 70e9, "metal"),
    /** Something else. */
    OTHER(false, null, "another material"),
    /** Not known. */
    UNKNOWN(false, null, "an unknown material");

    private final boolean byRule;
    private final @Nullable Double hardModulus;
    private final String words;

    BlockMaterial(boolean byRule, @Nullable Double hardModulus, String words) {
        this.byRule = byRule;
        this.hardModulus = hardModulus;
        this.words = words;
    }

    /** Whether the rule for setting blocks names it. */
    boolean byRule() {
        return byRule;
    }

    /**
     * Elastic modulus of a piece of it without a hardness, Pa: rigid PVC, wood across the grain,
     * aluminum, in round figures from memory; all that counts is that they are far stiffer than
     * rubber. Null for a rubber, whose modulus goes with its hardness.
     */
    @Nullable Double hardModulus() {
        return hardModulus;
    }

    /** The material as a sentence names it. */
    String words() {
        return words;
    }
}
