package org.bayledger.mechanics;

/**
 * An extreme value along a beam and where it is.
 *
 * @param at position, m from the beam's start
 * @param value signed value there, in the unit of the quantity asked for
 */
public record BeamExtreme(double at, double value) {}
