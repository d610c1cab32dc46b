package org.bayledger.architecture.planted.framing;

/** Breaks a rule on purpose. */
public class BreachClock {

    Object reach() {
        return java.time.Instant.now();
    }
}
