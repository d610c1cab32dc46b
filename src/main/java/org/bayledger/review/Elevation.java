package org.bayledger.review;

import jakarta.validation.constraints.Pattern;
import org.bayledger.check.Measured;
import org.bayledger.check.Measured.Sign;
import org.bayledger.quantity.Dimension;

/**
 * One flat face of the building.
 *
 * @param id its name in this document
 * @param width width, m
 * @param height height above its base, m
 * @param base level of its base above the building datum, which is the ground, m
 * @param cornerAtLeft whether its left end, seen from outside, is an outside corner of the building
 * @param cornerAtRight whether its right end is one
 */
public record Elevation(
        @Pattern(regexp = ReviewDocument.ID, message = ReviewDocument.ID_RULE) String id,
        @Measured(value = Dimension.DISTANCE, sign = Sign.POSITIVE, max = 2000) double width,
        @Measured(value = Dimension.DISTANCE, sign = Sign.POSITIVE, max = 1000) double height,
        @Measured(value = Dimension.DISTANCE, sign = Sign.NOT_NEGATIVE, max = 1000) double base,
        boolean cornerAtLeft,
        boolean cornerAtRight) {}
