package org.bayledger.framing;

import org.bayledger.check.Measured;
import org.bayledger.check.Measured.Sign;
import org.bayledger.quantity.Dimension;

/**
 * One half of a split vertical of unitized panels.
 *
 * @param secondMomentOfArea its own second moment of area for bending under wind, m4
 * @param sectionModulus its own least section modulus for bending under wind, m3
 */
public record SectionHalf(
        @Measured(value = Dimension.SECOND_MOMENT_OF_AREA, sign = Sign.POSITIVE)
                double secondMomentOfArea,
        @Measured(value = Dimension.SECTION_MODULUS, sign = Sign.POSITIVE) double sectionModulus) {}
