package org.bayledger.seals;

import org.bayledger.check.Measured;
import org.bayledger.quantity.Dimension;

/**
 * The cross-section of a bead of sealant, taken as a rectangle.
 *
 * @param width width across the joint, m, at most 100 mm
 * @param depth depth into the joint, m, at most 100 mm
 */
public record Bead(
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.POSITIVE, max = 0.1) double width,
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.POSITIVE, max = 0.1)
                double depth) {

    /** Width times depth, m2. */
    double area() {
        return width * depth;
    }
}
