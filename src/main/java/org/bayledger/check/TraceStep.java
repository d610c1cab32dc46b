package org.bayledger.check;

import org.bayledger.quantity.Quantity;

/**
 * One line of a sum that can be redone by hand.
 *
 * @param symbol symbol as the source writes it
 * @param meaning what it stands for
 * @param value its value
 * @param formula how it was obtained; "input" where it was given
 * @param source publication with edition and clause, or common practice
 */
public record TraceStep(
        String symbol, String meaning, Quantity value, String formula, String source) {}
