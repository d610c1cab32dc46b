package org.bayledger.framing;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import org.bayledger.check.Outcome;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * How the glass is held against suction.
 *
 * @param outcome verdict, utilization, findings, remedies, trace, cautions
 * @param fastenerTension tension of one fastener; null where there are none
 * @param requiredBite width of structural silicone needed; null where there is none
 */
public record RetentionResult(
        @JsonUnwrapped Outcome outcome,
        @Nullable Quantity fastenerTension,
        @Nullable Quantity requiredBite) {}
