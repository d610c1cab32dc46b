package org.bayledger.review;

import org.bayledger.check.Measured;
import org.bayledger.check.Measured.Sign;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * The horizontals of a bay. With both face widths and the bite of the glazing pocket the glass is
 * as large as the opening that is seen and a bite on every side, faces centered on the lines of
 * columns and rows; without them it is taken as large as its column and row for its weight and
 * blocks.
 *
 * @param section name of their section
 * @param faceWidth height of their face as it is seen, m
 * @param verticalFaceWidth width of the face of the verticals between which they span, as it is
 *     seen, m; with it they span no further than between these
 * @param torsionConstant torsion constant J, m4; absent: that of the section's lateralBuckling
 * @param shearModulus shear modulus, Pa; absent: that of aluminum from the elastic modulus
 * @param warpingConstant warping constant Cw, m6; absent: that of the section's lateralBuckling
 * @param eccentricity horizontal distance from their shear center to the center of gravity of the
 *     glass, m
 * @param rotationLimit greatest rotation under the glass; absent: 1 degree
 * @param endReactionAllowable what the shear block at one end and its fasteners may carry, N
 * @param endTorqueAllowable the torque about the horizontal's axis that they may carry, N m
 */
public record Horizontal(
        String section,
        @Measured(value = Dimension.LENGTH, sign = Sign.POSITIVE, max = 1)
                @Nullable Double faceWidth,
        @Measured(value = Dimension.LENGTH, sign = Sign.POSITIVE, max = 1)
                @Nullable Double verticalFaceWidth,
        @Measured(value = Dimension.SECOND_MOMENT_OF_AREA, sign = Sign.POSITIVE)
                @Nullable Double torsionConstant,
        @Measured(value = Dimension.STRESS, sign = Sign.POSITIVE) @Nullable Double shearModulus,
        @Measured(value = Dimension.WARPING_CONSTANT, sign = Sign.NOT_NEGATIVE)
                @Nullable Double warpingConstant,
        @Measured(value = Dimension.LENGTH, min = -1, max = 1) @Nullable Double eccentricity,
        @Measured(value = Dimension.ANGLE, sign = Sign.POSITIVE, max = 0.2)
                @Nullable Double rotationLimit,
        @Measured(value = Dimension.FORCE, sign = Sign.POSITIVE)
                @Nullable Double endReactionAllowable,
        @Measured(value = Dimension.MOMENT, sign = Sign.POSITIVE)
                @Nullable Double endTorqueAllowable) {}
