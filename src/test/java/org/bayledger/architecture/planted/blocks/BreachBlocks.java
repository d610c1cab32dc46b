package org.bayledger.architecture.planted.blocks;

/** Breaks a rule on purpose. */
public class BreachBlocks {

    Object reach() {
        return new org.bayledger.architecture.planted.seals.BreachSeals();
    }
}
