package org.bayledger.check;

import org.bayledger.quantity.UnitSystem;

/**
 * A result together with the units in which it is to be written.
 *
 * @param units units of every quantity in the body
 * @param body the result, written in place of this record
 */
public record Answer<T>(UnitSystem units, T body) {}
