package org.bayledger.anchorage;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import org.bayledger.check.Measured;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * A lite in its frame and the room it has when the frame racks.
 *
 * @param glassWidth bp, m
 * @param glassHeight hp, m
 * @param sideClearance c1, average of the clearances at both vertical edges, m
 * @param topBottomClearance c2, average of the clearances at top and bottom edge, m
 * @param importanceFactor Ie, seismic importance factor of the building, 1.0 to 1.5
 */
public record DriftClearance(
        @Measured(value = Dimension.DISTANCE, sign = Measured.Sign.POSITIVE, max = 30)
                double glassWidth,
        @Measured(value = Dimension.DISTANCE, sign = Measured.Sign.POSITIVE, max = 30)
                double glassHeight,
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.POSITIVE, max = 1)
                double sideClearance,
        @Measured(value = Dimension.LENGTH, sign = Measured.Sign.NOT_NEGATIVE, max = 1)
                double topBottomClearance,
        @DecimalMin("1") @DecimalMax("1.5") @Nullable Double importanceFactor) {

    DriftClearance withSideClearance(double clearance) {
        return new DriftClearance(
                glassWidth, glassHeight, clearance, topBottomClearance, importanceFactor);
    }

    /**
     * Drift over the height of the lite at which the glass first touches the frame, m.
     *
     * <pre>
     *   Dclear = 2 c1 (1 + hp c2 / (bp c1))
     * </pre>
     *
     * <p>ASCE/SEI 7-16, 13.5.9.1, for rectangular lites in a frame that racks to a parallelogram
     * (from memory).
     */
    double capacity() {
        return 2
                * sideClearance
                * (1 + glassHeight * topBottomClearance / (glassWidth * sideClearance));
    }

    /**
     * The side clearance, m, at which the capacity reaches a demand with all else as it is.
     *
     * @param demand m
     */
    double sideClearanceFor(double demand) {
        return demand / 2 - glassHeight * topBottomClearance / glassWidth;
    }
}
