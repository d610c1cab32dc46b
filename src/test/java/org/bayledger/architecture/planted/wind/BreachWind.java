package org.bayledger.architecture.planted.wind;

/** Breaks a rule on purpose. */
public class BreachWind {

    Object reach() {
        return new org.bayledger.architecture.planted.glass.BreachGlass();
    }
}
