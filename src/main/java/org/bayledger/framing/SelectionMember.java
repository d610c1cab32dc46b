package org.bayledger.framing;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.bayledger.check.Load;
import org.bayledger.check.Measured;
import org.bayledger.check.Measured.Sign;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * A member that the chosen section has to serve as.
 *
 * @param id its name in the answer
 * @param supports positions of its anchors from its start, increasing, m
 * @param hinges positions of splices that carry shear but no moment, increasing, m
 * @param length its length, m
 * @param tributaryWidth width of wall that it carries: the spacing of the members, m
 * @param zones names of the zones in which it stands; absent: all
 */
public record SelectionMember(
        @NotBlank @Size(max = 80) String id,
        @NotEmpty @Size(max = 50) @Measured(value = Dimension.DISTANCE, sign = Sign.NOT_NEGATIVE)
                List<Double> supports,
        @Size(max = 50) @Measured(value = Dimension.DISTANCE, sign = Sign.POSITIVE)
                @Nullable List<Double> hinges,
        @Measured(value = Dimension.DISTANCE, sign = Sign.POSITIVE, max = 100) double length,
        @Measured(value = Dimension.DISTANCE, sign = Sign.POSITIVE, max = 100)
                double tributaryWidth,
        @Size(min = 1, max = 200) @Nullable List<String> zones) {

    public SelectionMember {
        supports = List.copyOf(supports);
        hinges = hinges == null ? null : List.copyOf(hinges);
        zones = zones == null ? null : List.copyOf(zones);
    }

    boolean standsIn(String zone) {
        return zones == null || zones.contains(zone);
    }

    FramingRequest with(Section section, Load load, @Nullable DeflectionRule rule) {
        return underWind(supports, hinges, length, tributaryWidth, section, load, rule);
    }

    /** A member of one width under wind alone. */
    static FramingRequest underWind(
            List<Double> supports,
            @Nullable List<Double> hinges,
            double length,
            double tributaryWidth,
            Section section,
            Load load,
            @Nullable DeflectionRule rule) {
        return new FramingRequest(
                Axis.WIND,
                supports,
                hinges,
                length,
                tributaryWidth,
                section,
                load,
                null,
                null,
                null,
                null,
                rule,
                null,
                null);
    }
}
