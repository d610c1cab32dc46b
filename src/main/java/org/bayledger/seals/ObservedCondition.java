package org.bayledger.seals;

/** What was found at a joint. */
public enum ObservedCondition {
    /** There is no sealant. */
    UNSEALED,
    /** The sealant has split or has let go of the metal. */
    CRACKED,
    /** The sealant was left as it came out of the nozzle. */
    NOT_TOOLED,
    /** There is dirt, oil or water under or in the sealant. */
    DIRTY,
    /** The sealant is not the one that was specified. */
    WRONG_MATERIAL;

    /** Whether what leaks is all that is wrong: else nothing shows that the rest will hold. */
    boolean onlyAGap() {
        return this == UNSEALED || this == CRACKED;
    }
}
