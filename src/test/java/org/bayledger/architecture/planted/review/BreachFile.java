package org.bayledger.architecture.planted.review;

/** Breaks a rule on purpose. */
public class BreachFile {

    Object reach() {
        return java.nio.file.Path.of("x");
    }
}
