package org.bayledger.architecture.planted.drawing;

/** Breaks a rule on purpose. */
public class BreachDrawing {

    Object reach() {
        return new org.bayledger.architecture.planted.platform.Wiring();
    }
}
