package org.bayledger.seals;

import org.bayledger.quantity.Quantity;

/**
 * The work of one step, as a count of joints.
 *
 * @param step step of the sequence
 * @param title what is done
 * @param joints joints to be made
 * @param length length of their beads together
 */
public record StepLabour(int step, String title, int joints, Quantity length) {}
