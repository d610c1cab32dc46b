package org.bayledger.architecture.planted.check;

/** Breaks a rule on purpose. */
public class BreachCheck {

    Object reach() {
        return new org.bayledger.architecture.planted.glazing.BreachGlazing();
    }
}
