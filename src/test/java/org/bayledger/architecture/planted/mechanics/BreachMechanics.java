package org.bayledger.architecture.planted.mechanics;

/** Breaks a rule on purpose. */
public class BreachMechanics {

    Object reach() {
        return new org.bayledger.architecture.planted.check.BreachCheck();
    }
}
