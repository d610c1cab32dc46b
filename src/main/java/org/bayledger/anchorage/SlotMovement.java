package org.bayledger.anchorage;

import org.bayledger.anchorage.MovementPart.Cause;
import org.bayledger.check.Verdict;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * Movement of the mullion past one wind-load anchor, from the installed position.
 *
 * <pre>
 *   above the dead-load anchor by l:
 *     up   = alpha l (Tmax - Tinst) + own slab loaded and creeping + columns + t
 *     down = alpha l (Tinst - Tmin) + dead-load anchor's slab loaded and creeping + t
 *   below it by l:
 *     up   = alpha l (Tinst - Tmin) + own slab loaded and creeping + t
 *     down = alpha l (Tmax - Tinst) + dead-load anchor's slab loaded and creeping + columns + t
 *   slot from end to end = bolt diameter + up + down
 * </pre>
 *
 * <p>Statics of a piece held at one place, t the tolerances ({@link Movement#tolerance}), columns
 * their shortening and creep; movements are added as a plain sum. When the columns shorten, a floor
 * above the dead-load anchor comes down along the mullion, and the dead-load anchor comes down
 * toward a floor below it.
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

    private MovementSum upward() {
        Double strain = isAbove() ? movement.warmingStrain() : movement.coolingStrain();
        return sum(strain, anchor, isAbove());
    }

    private MovementSum downward() {
        Double strain = isAbove() ? movement.coolingStrain() : movement.warmingStrain();
        return sum(strain, from, !isAbove());
    }

    /** What moves the mullion one way: metal, the slab that goes down for it, and the columns. */
    private MovementSum sum(@Nullable Double strain, Anchor sinking, boolean columns) {
        MovementSum sum =
                new MovementSum()
                        .with(Cause.THERMAL, strain == null ? 0 : strain * length())
                        .with(Cause.SLAB_LIVE_LOAD, sinking.slabLiveLoadDeflection())
                        .withOptional(Cause.SLAB_CREEP, sinking.slabCreepDeflection());
        return columns
                ? sum.with(Cause.COLUMN_SHORTENING, movement.columnShortening())
                        .withOptional(Cause.COLUMN_CREEP, movement.columnCreep())
                : sum;
    }

    double up() {
        return upward().total() + movement.tolerance();
    }

    double down() {
        return downward().total() + movement.tolerance();
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
                anchor.boltDiameter() == null
                        ? null
                        : Quantity.of(Dimension.LENGTH, anchor.boltDiameter() + up() + down()),
                upward().shares(movement.tolerance()),
                downward().shares(movement.tolerance()),
                utilization,
                utilization == null ? verdict : verdict.and(Verdict.ofUtilization(utilization)));
    }
}
