package org.bayledger.anchorage;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import org.bayledger.check.Measured;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * A joint between two pieces of mullion that lets them move against each other.
 *
 * @param elevation above the building datum, m
 * @param nominalWidth width as drawn, m
 * @param sealantMovementCapability movement that the sealant takes either way, over the joint's
 *     width: 0.5 for 50 %
 */
public record StackJoint(
        @Measured(Dimension.DISTANCE) double elevation,
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.POSITIVE, max = 1)
                @Nullable Double nominalWidth,
        @DecimalMin("0.01") @DecimalMax("1") @Nullable Double sealantMovementCapability) {

    StackJoint withNominalWidth(double width) {
        return new StackJoint(elevation, width, sealantMovementCapability);
    }
}
