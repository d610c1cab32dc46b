package org.bayledger.architecture.planted.quantity;

/** Breaks a rule on purpose. */
public class BreachQuantity {

    Object reach() {
        return new org.bayledger.architecture.planted.mechanics.BreachMechanics();
    }
}
