package org.bayledger.wind;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;
import org.bayledger.check.Faults;
import org.bayledger.check.Load;
import org.bayledger.check.Measured;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * The caller's own choice of a wind load for deflection limits; ASCE/SEI 7 only. Exactly one of
 * factor and windSpeed. Without it deflections are checked under 0.6 W.
 *
 * @param factor share of the strength-level pressure W, such as 0.42 (IBC 2021 Table 1604.3, note
 *     f, which does not hold for members that support glass) or 0.6 (IBC 2021, 1604.3.7, for those)
 * @param windSpeed serviceability wind speed, 3 s gust at 33 ft in exposure C, such as that of a
 *     10-year mean recurrence interval, m/s; the factor is the square of its ratio to the basic
 *     wind speed
 * @param reason why it is allowed here: code, clause and who agreed
 */
public record Serviceability(
        @Measured(value = Dimension.NONE, sign = Measured.Sign.POSITIVE, max = 1)
                @Nullable Double factor,
        @Measured(value = Dimension.SPEED, sign = Measured.Sign.POSITIVE)
                @Nullable Double windSpeed,
        @NotBlank @Size(max = 500) String reason) {

    /** Least factor for members that support glass (IBC 2021, 1604.3.7; from memory): 0.6 W. */
    static final double LEAST_FOR_GLASS = Load.ALLOWABLE_STRESS_FACTOR;

    public Serviceability {
        Faults faults = new Faults();
        faults.require(
                (factor == null) != (windSpeed == null),
                "/factor",
                "give either factor or windSpeed");
        faults.throwIfAny();
    }

    /** Share of the strength-level pressure, for a basic wind speed in m/s. */
    double of(double basicWindSpeed) {
        if (factor != null) {
            return factor;
        }
        if (windSpeed == null) {
            throw new IllegalStateException("neither a factor nor a wind speed");
        }
        double ratio = windSpeed / basicWindSpeed;
        return ratio * ratio;
    }
}
