package org.bayledger.mechanics;

/**
 * What a support carries.
 *
 * @param at position of the support, m from the beam's start
 * @param force N; positive where the beam presses on the support in the direction of a positive
 *     load, that is where the support pushes back against the load; negative is uplift
 */
public record BeamReaction(double at, double force) {}
