package org.bayledger.architecture.planted.seals;

/** Breaks a rule on purpose. */
public class BreachSeals {

    Object reach() {
        return new org.bayledger.architecture.planted.wind.BreachWind();
    }
}
