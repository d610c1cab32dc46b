package org.bayledger.wind;

/**
 * A pressure for deflection limits only. It is no {@link DesignPressure} and makes no load: no
 * check of strength or of glass can take it.
 *
 * @param positive pressure toward the wall, Pa
 * @param negative pressure away from the wall, Pa
 */
public record ServiceabilityPressure(double positive, double negative) {}
