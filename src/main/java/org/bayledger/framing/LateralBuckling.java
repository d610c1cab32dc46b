package org.bayledger.framing;

import org.bayledger.check.Measured;
import org.bayledger.check.Measured.Sign;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * What lateral-torsional buckling under wind depends on. The formula with torsion and warping
 * constants holds for sections that are symmetric about the axis of bending and for closed ones,
 * loaded through the shear center; for others give elasticBucklingMoment.
 *
 * @param unbracedLength greatest length between places where the compressed flange is held sideways
 *     or the section against twisting, m
 * @param weakAxisSecondMomentOfArea second moment of area about the weak axis, m4; absent: the
 *     section's deadLoadSecondMomentOfArea
 * @param torsionConstant torsion constant J, m4
 * @param warpingConstant warping constant Cw, m6; 0 for a closed section
 * @param elasticBucklingMoment elastic lateral-torsional buckling moment from an analysis of this
 *     length, N m; instead of the three constants
 */
public record LateralBuckling(
        @Measured(value = Dimension.DISTANCE, sign = Sign.POSITIVE, max = 100)
                double unbracedLength,
        @Measured(value = Dimension.SECOND_MOMENT_OF_AREA, sign = Sign.POSITIVE)
                @Nullable Double weakAxisSecondMomentOfArea,
        @Measured(value = Dimension.SECOND_MOMENT_OF_AREA, sign = Sign.POSITIVE)
                @Nullable Double torsionConstant,
        @Measured(value = Dimension.WARPING_CONSTANT, sign = Sign.NOT_NEGATIVE)
                @Nullable Double warpingConstant,
        @Measured(value = Dimension.MOMENT, sign = Sign.POSITIVE)
                @Nullable Double elasticBucklingMoment) {}
