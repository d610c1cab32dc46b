package org.bayledger.glazing;

import org.bayledger.check.Measured;
import org.bayledger.quantity.Dimension;

/**
 * The sealed space between two panes of an insulating unit.
 *
 * @param width distance between the panes, m
 */
public record Cavity(
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.POSITIVE, min = 3e-3, max = 0.1)
                double width) {}
