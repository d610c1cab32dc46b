package org.bayledger.review;

import jakarta.validation.constraints.Size;
import java.util.List;
import org.bayledger.check.Measured;
import org.bayledger.check.Measured.Sign;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * The verticals of a bay.
 *
 * @param section name of their section
 * @param supports positions of their anchors above the bay's sill, m; derived from the bay's
 *     anchors where these are given
 * @param hinges positions of splices that carry shear but no moment, above the bay's sill, m
 */
public record Mullion(
        String section,
        @Size(max = 50) @Measured(value = Dimension.DISTANCE, sign = Sign.NOT_NEGATIVE)
                @Nullable List<Double> supports,
        @Size(max = 50) @Measured(value = Dimension.DISTANCE, sign = Sign.POSITIVE)
                @Nullable List<Double> hinges) {}
