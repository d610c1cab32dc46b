package org.bayledger.framing;

import org.bayledger.check.Measured;
import org.bayledger.check.Measured.Sign;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * What a member's cross-section brings, as its maker or engineer gives it.
 *
 * @param secondMomentOfArea second moment of area for bending under wind, m4
 * @param elasticModulus modulus of elasticity, Pa; aluminum 69.6 GPa (10 100 ksi)
 * @param sectionModulus least section modulus for bending under wind, m3; without it stress is not
 *     checked
 * @param allowableBendingStress allowable bending stress at allowable-stress level, Pa; without it
 *     stress is not checked
 * @param deadLoadSecondMomentOfArea second moment of area for bending parallel to the wall, m4;
 *     without it a check under dead load is at best UNDETERMINED
 * @param deadLoadSectionModulus least section modulus for bending parallel to the wall, m3
 * @param massPerLength mass of the member with what is fixed to it, kg/m
 * @param bucklingCovered true where the allowable stress already covers local and lateral-torsional
 *     buckling of this member as it is braced; without that statement the verdict is UNDETERMINED
 * @param construction how the section is made up; absent: one piece of metal
 * @param compositeProperties true where the properties of a thermally broken or split section are
 *     those of the parts as they work together, from test or calculation
 */
public record Section(
        @Measured(value = Dimension.SECOND_MOMENT_OF_AREA, sign = Sign.POSITIVE)
                double secondMomentOfArea,
        @Measured(value = Dimension.STRESS, sign = Sign.POSITIVE) double elasticModulus,
        @Measured(value = Dimension.SECTION_MODULUS, sign = Sign.POSITIVE)
                @Nullable Double sectionModulus,
        @Measured(value = Dimension.STRESS, sign = Sign.POSITIVE)
                @Nullable Double allowableBendingStress,
        @Measured(value = Dimension.SECOND_MOMENT_OF_AREA, sign = Sign.POSITIVE)
                @Nullable Double deadLoadSecondMomentOfArea,
        @Measured(value = Dimension.SECTION_MODULUS, sign = Sign.POSITIVE)
                @Nullable Double deadLoadSectionModulus,
        @Measured(value = Dimension.LINE_MASS, sign = Sign.NOT_NEGATIVE)
                @Nullable Double massPerLength,
        @Nullable Boolean bucklingCovered,
        @Nullable Construction construction,
        @Nullable Boolean compositeProperties) {

    /** How a section is made up. */
    public enum Construction {
        /** One piece of metal. */
        SINGLE,
        /** Two pieces of metal joined by a thermal break that shares load only in part. */
        THERMALLY_BROKEN,
        /** Two halves that meet in a unitized joint. */
        SPLIT
    }

    /** Whether the given properties are known to be those of the section as it works. */
    boolean worksAsGiven() {
        return construction == null
                || construction == Construction.SINGLE
                || Boolean.TRUE.equals(compositeProperties);
    }
}
