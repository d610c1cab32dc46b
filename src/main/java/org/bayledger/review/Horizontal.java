package org.bayledger.review;

/**
 * The horizontals of a bay.
 *
 * @param section name of their section
 */
public record Horizontal(String section) {}
