package org.bayledger.architecture.planted.ledger;

/** Breaks a rule on purpose. */
public class BreachLedger {

    Object reach() {
        return new org.bayledger.architecture.planted.drawing.BreachDrawing();
    }
}
