package org.bayledger.framing;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import org.bayledger.check.Measured;
import org.bayledger.check.Measured.Sign;
import org.bayledger.quantity.Dimension;

/**
 * Steel that fits into the candidates, for the zones in which a section alone is too weak.
 *
 * @param steel the steel
 * @param massPerLength its mass, kg/m
 */
public record SelectionReinforcement(
        @JsonUnwrapped Reinforcement steel,
        @Measured(value = Dimension.LINE_MASS, sign = Sign.POSITIVE) double massPerLength) {}
