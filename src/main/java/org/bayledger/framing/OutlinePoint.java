package org.bayledger.framing;

import org.bayledger.check.Measured;
import org.bayledger.quantity.Dimension;

/**
 * A corner of a section's outline.
 *
 * @param x along the wall, m
 * @param y at right angles to the wall, along the depth, m
 */
public record OutlinePoint(
        @Measured(value = Dimension.LENGTH, min = -10, max = 10) double x,
        @Measured(value = Dimension.LENGTH, min = -10, max = 10) double y) {}
