package org.bayledger.blocks;

import org.bayledger.check.Measured;
import org.bayledger.quantity.Dimension;

/**
 * Another lite that stands on the same span, its blocks at the same part of its width.
 *
 * @param offset from the member's left support to the left corner of its glass, m
 * @param width of its glass, m
 * @param glassWeight its mass, kg
 */
public record SecondLite(
        @Measured(value = Dimension.DISTANCE, min = -2, max = 30) double offset,
        @Measured(
                        value = Dimension.DISTANCE,
                        min = SettingBlocksRequest.LEAST_WIDTH,
                        max = SettingBlocksRequest.GREATEST_SIZE)
                double width,
        @Measured(value = Dimension.MASS, sign = Measured.Sign.POSITIVE) double glassWeight) {}
