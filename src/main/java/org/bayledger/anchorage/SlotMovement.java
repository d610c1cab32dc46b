package org.bayledger.anchorage;

import org.bayledger.check.Verdict;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * Movement of the mullion past one wind-load anchor, from the installed position.
 *
 * <pre>
 *   above the dead-load anchor by l:
 *     up   = alpha l (Tmax - Tinst) + own slab loaded + column shortening + t
 *     down = alpha l (Tinst - Tmin) + dead-load anchor's slab loaded + t
 *   below it by l:
 *     up   = alpha l (Tinst - Tmin) + own slab loaded + t
 *     down = alpha l (Tmax - Tinst) + dead-load anchor's slab loaded + column shortening + t
 * </pre>
 *
 * <p>Statics of a piece held at one place, t the erection tolerance, added as a plain sum. When the
 * columns shorten, a floor above the dead-load anchor comes down along the mullion, and the
 * dead-load anchor comes down toward a floor below it.
 *
 * @param anchor the wind-load anchor
 * @param from the dead-load anchor
 * @param samePiece whether both hold the same piece
 * @param movement what moves
 */
record SlotMovement(Anchor anchor, Anchor from, boolean samePiece, Movement movement) {

    private double length() {
        return Math.abs(anchor.elevation() - from.elevation());
    }

    private boolean isAbove() {
        return anchor.elevation() > from.elevation();
    }

    double up() {
        Double strain = isAbove() ? movement.warmingStrain() : movement.coolingStrain();
        return orZero(strain) * length()
                + orZero(anchor.slabLiveLoadDeflection())
                + (isAbove() ? orZero(movement.columnShortening()) : 0)
                + orZero(movement.erectionTolerance());
    }

    double down() {
        Double strain = isAbove() ? movement.coolingStrain() : movement.warmingStrain();
        return orZero(strain) * length()
                + orZero(from.slabLiveLoadDeflection())
                + (isAbove() ? 0 : orZero(movement.columnShortening()))
                + orZero(movement.erectionTolerance());
    }

    /** Whether everything that the sums rest on was given. */
    boolean known() {
        return samePiece
                && movement.warmingStrain() != null
                && movement.columnShortening() != null
                && movement.erectionTolerance() != null
                && anchor.slabLiveLoadDeflection() != null
                && from.slabLiveLoadDeflection() != null;
    }

    /** Demand over the room that was given, or null where none was. */
    private @Nullable Double utilization() {
        Double used = anchor.slotUp() == null ? null : up() / anchor.slotUp();
        if (anchor.slotDown() != null) {
            double below = down() / anchor.slotDown();
            used = used == null ? below : Math.max(used, below);
        }
        return used;
    }

    SlotResult result() {
        Double utilization = utilization();
        boolean halfGiven = (anchor.slotUp() == null) != (anchor.slotDown() == null);
        Verdict verdict = known() && !halfGiven ? Verdict.SATISFIED : Verdict.UNDETERMINED;
        return new SlotResult(
                anchor.id(),
                from.id(),
                Quantity.of(Dimension.LENGTH, up()),
                Quantity.of(Dimension.LENGTH, down()),
                utilization,
                utilization == null ? verdict : verdict.and(Verdict.ofUtilization(utilization)));
    }

    private static double orZero(@Nullable Double value) {
        return value == null ? 0 : value;
    }
}
