package org.bayledger.architecture.planted.seals;

/** Breaks a rule on purpose. */
public class BreachRandom {

    Object reach() {
        return new java.util.Random(1);
    }
}
