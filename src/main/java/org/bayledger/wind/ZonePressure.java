package org.bayledger.wind;

import org.bayledger.check.Load;
import org.bayledger.check.LoadBasis;
import org.jspecify.annotations.Nullable;

/**
 * Wind pressure on a component that lies in one zone, both signs.
 *
 * @param zone zone of the standard
 * @param effectiveWindArea area that the coefficients were read for, m2; the load itself acts on
 *     the tributary area
 * @param height height of the component's top above ground, m
 * @param pressure what to design with; its type is its level
 * @param serviceability for deflection limits only; null where the site states no factor
 */
public record ZonePressure(
        String zone,
        double effectiveWindArea,
        double height,
        DesignPressure pressure,
        @Nullable ServiceabilityPressure serviceability) {

    /** Pressure toward the wall, Pa, greater than zero. */
    public double positive() {
        return pressure.positive();
    }

    /** Pressure away from the wall, Pa, less than zero. */
    public double negative() {
        return pressure.negative();
    }

    /** Level of both pressures. */
    public LoadBasis basis() {
        return pressure.basis();
    }

    /** The pressures with their basis, as the checks that depend on them take a load. */
    public Load load() {
        return pressure.load();
    }
}
