package org.bayledger.seals;

/**
 * How many joints of a kind there are and how long their beads are together.
 *
 * @param type kind of joint
 * @param count number of joints
 * @param countFormula the count as a sum to be redone by hand
 * @param length length of all beads together, m
 * @param lengthFormula the length likewise
 */
record JointCount(
        JointType type, int count, String countFormula, double length, String lengthFormula) {}
