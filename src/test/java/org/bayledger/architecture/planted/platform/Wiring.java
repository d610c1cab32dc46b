package org.bayledger.architecture.planted.platform;

/** Breaks a rule on purpose. */
public class Wiring {

    public Wiring() {}
}
