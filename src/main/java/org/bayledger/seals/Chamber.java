package org.bayledger.seals;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import org.bayledger.check.FaultsException;
import org.bayledger.check.Measured;
import org.bayledger.check.Measured.Sign;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * One chamber of a pressure-equalized wall: vented to the outside, leaking to the inside.
 *
 * @param ventArea free area of all openings between the chamber and the outside, m2; zero where
 *     they are closed
 * @param leakArea area of a sharp-edged opening that leaks as the chamber's inner line does, m2;
 *     where absent that through which chamberArea leaks just as much as the limit on air leakage
 * @param chamberArea area of wall that the chamber serves, m2
 * @param flowExponent n in Q = C A dp^n, the same for vents and leaks, from 0.5 (openings) to 1
 *     (hairlines); 0.5 where absent
 * @param volume volume of air in the chamber, m3
 * @param outerShareLimit greatest share of the pressure that may stay on the outer line, over 0 and
 *     under 1
 */
public record Chamber(
        @Measured(value = Dimension.SECTION_AREA, sign = Sign.NOT_NEGATIVE, max = 10)
                double ventArea,
        @Measured(value = Dimension.SECTION_AREA, sign = Sign.POSITIVE, max = 10)
                @Nullable Double leakArea,
        @Measured(value = Dimension.AREA, sign = Sign.POSITIVE, max = 10_000)
                @Nullable Double chamberArea,
        @DecimalMin(value = "0.5", message = "must be at least 0.5")
                @DecimalMax(value = "1", message = "must be at most 1")
                @Nullable Double flowExponent,
        @Measured(value = Dimension.VOLUME, sign = Sign.POSITIVE, max = 1000)
                @Nullable Double volume,
        @DecimalMin(value = "0.001", message = "must be at least 0.001")
                @DecimalMax(value = "0.999", message = "must be at most 0.999")
                @Nullable Double outerShareLimit) {

    public Chamber {
        if (leakArea == null && chamberArea == null) {
            throw FaultsException.outOfRange(
                    "/leakArea",
                    "is needed; or give chamberArea, whose leakage is then taken to be the limit on"
                            + " air leakage");
        }
    }

    double flowExponentOrDefault() {
        return flowExponent == null ? 0.5 : flowExponent;
    }

    Chamber withVentArea(double area) {
        return new Chamber(area, leakArea, chamberArea, flowExponent, volume, outerShareLimit);
    }
}
