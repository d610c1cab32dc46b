package org.bayledger.architecture.planted.unmarked;

/** Breaks a rule on purpose. */
public class BreachUnmarked {

    Object reach() {
        return "no package-info here";
    }
}
