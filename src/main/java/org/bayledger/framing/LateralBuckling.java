package org.bayledger.framing;

import jakarta.validation.constraints.Size;
import java.util.List;
import org.bayledger.check.Faults;
import org.bayledger.check.Measured;
import org.bayledger.check.Measured.Sign;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * What lateral-torsional buckling under wind depends on. The formula with torsion and warping
 * constants holds for sections that are symmetric about the axis of bending and for closed ones,
 * loaded through the shear center; for others give elasticBucklingMoment. Either unbracedLength or
 * bracePoints says how the member is braced.
 *
 * @param unbracedLength greatest length between places where the compressed flange is held sideways
 *     or the section against twisting, m; the moment is taken as uniform along it
 * @param weakAxisSecondMomentOfArea second moment of area about the weak axis, m4; absent: the
 *     section's deadLoadSecondMomentOfArea
 * @param torsionConstant torsion constant J, m4
 * @param warpingConstant warping constant Cw, m6; 0 for a closed section
 * @param elasticBucklingMoment elastic lateral-torsional buckling moment from an analysis of this
 *     length, N m; instead of the three constants
 * @param bracePoints all places that hold the flange compressed under either sign of wind sideways,
 *     or the section against twisting, from the member's start, increasing, m; from the first
 *     support or before it to the last or beyond. Instead of unbracedLength: the moments between
 *     them then count as they are
 */
public record LateralBuckling(
        @Measured(value = Dimension.DISTANCE, sign = Sign.POSITIVE, max = 100)
                @Nullable Double unbracedLength,
        @Measured(value = Dimension.SECOND_MOMENT_OF_AREA, sign = Sign.POSITIVE)
                @Nullable Double weakAxisSecondMomentOfArea,
        @Measured(value = Dimension.SECOND_MOMENT_OF_AREA, sign = Sign.POSITIVE)
                @Nullable Double torsionConstant,
        @Measured(value = Dimension.WARPING_CONSTANT, sign = Sign.NOT_NEGATIVE)
                @Nullable Double warpingConstant,
        @Measured(value = Dimension.MOMENT, sign = Sign.POSITIVE)
                @Nullable Double elasticBucklingMoment,
        @Size(min = 2, max = 100) @Measured(value = Dimension.DISTANCE, sign = Sign.NOT_NEGATIVE)
                @Nullable List<Double> bracePoints) {

    public LateralBuckling {
        bracePoints = bracePoints == null ? null : List.copyOf(bracePoints);
        Faults faults = new Faults();
        if (unbracedLength == null && bracePoints == null) {
            faults.malformed(
                    "/unbracedLength",
                    "is required where no bracePoints are given; units: mm, cm, m, in, ft");
        }
        faults.require(
                unbracedLength == null || bracePoints == null,
                "/bracePoints",
                "are given besides unbracedLength; give one of the two");
        faults.require(
                elasticBucklingMoment == null || bracePoints == null,
                "/bracePoints",
                "are given besides elasticBucklingMoment, which is that of one length; give"
                        + " unbracedLength");
        for (int i = 1; bracePoints != null && i < bracePoints.size(); i++) {
            faults.require(
                    bracePoints.get(i) > bracePoints.get(i - 1),
                    "/bracePoints/" + i,
                    "must lie beyond the one before it");
        }
        faults.throwIfAny();
    }

    LateralBuckling withUnbracedLength(double length) {
        return with(length, null);
    }

    LateralBuckling withBracePoints(List<Double> places) {
        return with(null, places);
    }

    private LateralBuckling with(@Nullable Double length, @Nullable List<Double> places) {
        return new LateralBuckling(
                length,
                weakAxisSecondMomentOfArea,
                torsionConstant,
                warpingConstant,
                elasticBucklingMoment,
                places);
    }
}
