package org.bayledger.architecture.planted.anchorage;

/** Breaks a rule on purpose. */
public class BreachAnchorage {

    Object reach() {
        return new org.bayledger.architecture.planted.blocks.BreachBlocks();
    }
}
