package org.bayledger.architecture.planted.glazing;

/** Breaks a rule on purpose. */
public class BreachGlazing {

    Object reach() {
        return new org.bayledger.architecture.planted.wind.BreachWind();
    }
}
