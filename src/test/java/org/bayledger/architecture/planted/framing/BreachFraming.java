package org.bayledger.architecture.planted.framing;

/** Breaks a rule on purpose. */
public class BreachFraming {

    Object reach() {
        return new org.bayledger.architecture.planted.anchorage.BreachAnchorage();
    }
}
