package org.bayledger.architecture.planted.anchorage;

/** Breaks a rule on purpose. */
public class BreachTime {

    Object reach() {
        return System.nanoTime();
    }
}
