package org.bayledger.check;

import java.util.List;

/**
 * A change that was computed and does pass.
 *
 * @param text the change in a sentence
 * @param changes the inputs to change, all of them together
 * @param utilization the governing utilization after the change, at most 1
 */
public record Remedy(String text, List<Change> changes, double utilization) {

    public Remedy {
        changes = List.copyOf(changes);
        if (!(utilization <= 1)) {
            throw new IllegalArgumentException("a remedy must pass, not reach " + utilization);
        }
    }

    /**
     * One input to change.
     *
     * @param pointer JSON pointer to the input in the request
     * @param to the value to put there, as a request takes it: a quantity, a text or a number
     */
    public record Change(String pointer, Object to) {}
}
