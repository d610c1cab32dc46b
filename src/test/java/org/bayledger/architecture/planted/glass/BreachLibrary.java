package org.bayledger.architecture.planted.glass;

/** Breaks a rule on purpose. */
public class BreachLibrary {

    Object reach() {
        return org.assertj.core.api.Assertions.class;
    }
}
