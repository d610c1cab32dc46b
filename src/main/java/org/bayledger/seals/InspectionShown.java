package org.bayledger.seals;

/**
 * What an inspection of joints of a kind showed.
 *
 * @param inspected joints inspected
 * @param defective how many of them were defective
 * @param upperBound most joints that may be defective, the ones found included, with the confidence
 *     of the plan
 * @param action what to do
 */
public record InspectionShown(int inspected, int defective, int upperBound, String action) {}
