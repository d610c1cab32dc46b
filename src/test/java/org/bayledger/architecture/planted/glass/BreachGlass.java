package org.bayledger.architecture.planted.glass;

/** Breaks a rule on purpose. */
public class BreachGlass {

    Object reach() {
        return new org.bayledger.architecture.planted.framing.BreachFraming();
    }
}
