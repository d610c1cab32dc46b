package org.bayledger.seals;

import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * How a chamber divides the pressure between its outer line and its inner one, in a steady wind
 * that is the same at all its vents.
 *
 * @param ventArea free area of the vents
 * @param leakArea area of a sharp-edged opening that leaks as the inner line does
 * @param areaRatio ventArea over leakArea
 * @param outerShare share of the pressure that stays on the outer line
 * @param outerShareWithMissedJoint the same with the missed joint open into this chamber; null
 *     where none is open
 * @param pressure pressure that is divided: what drives water; null where not known
 * @param outerPressure what of it is left on the outer line, the missed joint included; null
 *     likewise
 * @param requiredVentArea vent area that keeps the limit with the inner line sealed; null without a
 *     limit
 * @param requiredAreaRatio the same over leakArea; null likewise
 * @param equalizationTime time in which the chamber follows a step of that pressure, a textbook
 *     estimate for a rigid chamber; null where its volume or the pressure is not known or it has no
 *     vent
 */
public record PressureEqualization(
        Quantity ventArea,
        Quantity leakArea,
        double areaRatio,
        double outerShare,
        @Nullable Double outerShareWithMissedJoint,
        @Nullable Quantity pressure,
        @Nullable Quantity outerPressure,
        @Nullable Quantity requiredVentArea,
        @Nullable Double requiredAreaRatio,
        @Nullable Quantity equalizationTime) {

    /** The greater share, with the missed joint where one is open. */
    double worstShare() {
        return outerShareWithMissedJoint == null ? outerShare : outerShareWithMissedJoint;
    }
}
