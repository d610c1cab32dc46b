package org.bayledger.architecture.planted.blocks;

/** Breaks a rule on purpose. */
public class BreachChance {

    Object reach() {
        return Math.random();
    }
}
