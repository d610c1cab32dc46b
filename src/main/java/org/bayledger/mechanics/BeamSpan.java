package org.bayledger.mechanics;

/**
 * The stretch between two neighbouring supports.
 *
 * @param from position of its first support, m from the beam's start
 * @param to position of its second support, m
 * @param deflection greatest deflection in absolute value, m, from the chord between the two
 *     supports, which do not move
 */
public record BeamSpan(double from, double to, BeamExtreme deflection) {

    /** Distance between the two supports, m. */
    public double length() {
        return to - from;
    }
}
