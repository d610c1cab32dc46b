package org.bayledger.anchorage;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;
import org.bayledger.check.Measured;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * A vertical joint between two stretches of wall that lets them move along the wall.
 *
 * @param id the caller's name for it, once in a request
 * @param nominalWidth width as drawn, m
 * @param sealantMovementCapability movement that the sealant takes either way, over the joint's
 *     width: 0.5 for 50 %
 * @param inPlaneMovement by which the two sides may come together or draw apart as the building
 *     sways in the plane of the wall, either way from the installed state, m; 0 says that they do
 *     not
 * @param thermalLength length of metal along the wall whose thermal movement goes into the joint:
 *     from where one side is held to where the other is, m
 */
public record ExpansionJoint(
        @NotBlank @Size(max = 100) String id,
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.POSITIVE, max = 1)
                @Nullable Double nominalWidth,
        @DecimalMin("0.01") @DecimalMax("1") @Nullable Double sealantMovementCapability,
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.NOT_NEGATIVE, max = 1)
                @Nullable Double inPlaneMovement,
        @Measured(value = Dimension.DISTANCE, sign = Measured.Sign.NOT_NEGATIVE, max = 500)
                @Nullable Double thermalLength) {

    ExpansionJoint withNominalWidth(double width) {
        return new ExpansionJoint(
                id, width, sealantMovementCapability, inPlaneMovement, thermalLength);
    }
}
