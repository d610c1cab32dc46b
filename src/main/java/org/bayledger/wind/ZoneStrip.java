package org.bayledger.wind;

/**
 * A vertical strip of an elevation that lies in one wind zone.
 *
 * @param from distance of its left edge from the elevation's left edge, seen from outside, m
 * @param to distance of its right edge from the elevation's left edge, m
 * @param zone zone of the standard
 */
public record ZoneStrip(double from, double to, String zone) {}
