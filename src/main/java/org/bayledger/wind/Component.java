package org.bayledger.wind;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;
import org.bayledger.check.Faults;
import org.bayledger.check.Measured;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * A part of the wall whose wind pressure is asked for. Its effective wind area is given, or follows
 * from its span and tributary width.
 *
 * @param id the caller's name for it, unique in the request
 * @param span span between supports, m
 * @param tributaryWidth width of wall that loads it, m
 * @param effectiveWindArea area to read the coefficients for, m2, instead of span and width; for a
 *     fastener the area tributary to one
 * @param height height of its top above ground, m
 */
public record Component(
        @NotBlank @Size(max = 200) String id,
        @Measured(value = Dimension.DISTANCE, sign = Measured.Sign.POSITIVE) @Nullable Double span,
        @Measured(value = Dimension.DISTANCE, sign = Measured.Sign.POSITIVE)
                @Nullable Double tributaryWidth,
        @Measured(value = Dimension.AREA, sign = Measured.Sign.POSITIVE)
                @Nullable Double effectiveWindArea,
        @Measured(value = Dimension.DISTANCE, sign = Measured.Sign.POSITIVE) double height) {

    public Component {
        Faults faults = new Faults();
        if (effectiveWindArea == null) {
            if (span == null) {
                faults.malformed("/span", "is required where no effectiveWindArea is given");
            }
            if (tributaryWidth == null) {
                faults.malformed(
                        "/tributaryWidth", "is required where no effectiveWindArea is given");
            }
        } else {
            faults.require(
                    span == null && tributaryWidth == null,
                    "/effectiveWindArea",
                    "give either the effective wind area or span and tributaryWidth");
        }
        faults.throwIfAny();
    }

    /** The area to read the coefficients for on a site, m2. */
    double area(SitePressures pressures) {
        return area(pressures.scheme());
    }

    /** The area to read a table of pressures for, m2, by the rule of a standard. */
    double area(ZoneScheme scheme) {
        if (effectiveWindArea != null) {
            return effectiveWindArea;
        }
        if (span == null || tributaryWidth == null) {
            throw new IllegalStateException("a component without an area has a span and a width");
        }
        return scheme.effectiveWindArea(span, tributaryWidth);
    }
}
