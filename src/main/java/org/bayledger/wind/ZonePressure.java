package org.bayledger.wind;

import org.bayledger.check.Load;
import org.bayledger.check.LoadBasis;

/**
 * Design wind pressure on a component that lies in one zone, both signs.
 *
 * @param zone zone of the standard
 * @param effectiveWindArea area that the coefficients were read for, m2; the load itself acts on
 *     the tributary area
 * @param height height of the component's top above ground, m
 * @param positive pressure toward the wall, Pa, greater than zero
 * @param negative pressure away from the wall, Pa, less than zero
 * @param basis level of both pressures
 */
public record ZonePressure(
        String zone,
        double effectiveWindArea,
        double height,
        double positive,
        double negative,
        LoadBasis basis) {

    public ZonePressure {
        if (!(positive > 0) || !(negative < 0)) {
            throw new IllegalArgumentException("a wall has a pressure of either sign");
        }
    }

    /** The pressures with their basis, as the checks that depend on them take a load. */
    public Load load() {
        return new Load(positive, negative, basis);
    }
}
