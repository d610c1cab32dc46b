package org.bayledger.architecture.planted.wind;

/** Breaks a rule on purpose. */
public class BreachSpring {

    Object reach() {
        return org.springframework.http.HttpStatus.OK;
    }
}
