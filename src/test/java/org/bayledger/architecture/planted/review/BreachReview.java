package org.bayledger.architecture.planted.review;

/** Breaks a rule on purpose. */
public class BreachReview {

    Object reach() {
        return new org.bayledger.architecture.planted.ledger.BreachLedger();
    }
}
