package org.bayledger.architecture.planted.drawing;

/** Breaks a rule on purpose. */
public class BreachWeb {

    Object answer() {
        return org.springframework.http.MediaType.APPLICATION_JSON;
    }
}
