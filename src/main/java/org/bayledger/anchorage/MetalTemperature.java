package org.bayledger.anchorage;

import org.bayledger.check.Faults;
import org.bayledger.check.Measured;
import org.bayledger.quantity.Dimension;

/**
 * Temperatures of the metal, not of the air.
 *
 * @param installed when the mullions are fixed, K
 * @param minimum coldest in service, K
 * @param maximum hottest in service, K
 */
public record MetalTemperature(
        @Measured(value = Dimension.TEMPERATURE, min = 173.15, max = 423.15) double installed,
        @Measured(value = Dimension.TEMPERATURE, min = 173.15, max = 423.15) double minimum,
        @Measured(value = Dimension.TEMPERATURE, min = 173.15, max = 423.15) double maximum) {

    public MetalTemperature {
        Faults faults = new Faults();
        faults.require(minimum < maximum, "/minimum", "must be below the maximum");
        faults.require(
                installed >= minimum && installed <= maximum,
                "/installed",
                "must lie between the minimum and the maximum");
        faults.throwIfAny();
    }

    /** Rise from installation to the hottest, K. */
    double warming() {
        return maximum - installed;
    }

    /** Fall from installation to the coldest, K. */
    double cooling() {
        return installed - minimum;
    }
}
