package org.bayledger.anchorage;

import java.util.List;
import java.util.stream.Stream;
import org.bayledger.anchorage.MovementPart.Cause;
import org.bayledger.check.Verdict;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * Movement of one joint from the installed state, and the width that takes it.
 *
 * <pre>
 *   closing = alpha L (Tmax - Tinst) + slab above loaded + column shortening
 *             + creep of the slab above + creep of the columns
 *   opening = alpha L (Tinst - Tmin) + slab below loaded + creep of the slab below
 * </pre>
 *
 * <p>L is the length between the dead-load anchors on either side ({@link Piece#stillPoint}). Each
 * slab is taken to be loaded, and to creep, with the other one as it was. Statics; the parts are
 * added as a plain sum. The building itself is taken to keep its temperature. The width: {@link
 * JointWidth}.
 *
 * @param joint the joint
 * @param below the piece under it
 * @param above the piece over it
 * @param movement what moves
 */
record JointMovement(StackJoint joint, Piece below, Piece above, Movement movement) {

    /** L, m. */
    double freeLength() {
        return above.stillPoint(joint.elevation()) - below.stillPoint(joint.elevation());
    }

    /** Thermal movement over the whole range of temperature, m, or null where it is not known. */
    @Nullable Double thermalRange() {
        Double warming = movement.warmingStrain();
        Double cooling = movement.coolingStrain();
        return warming == null || cooling == null ? null : freeLength() * (warming + cooling);
    }

    MovementSum closing() {
        return new MovementSum()
                .with(Cause.THERMAL, orZero(movement.warmingStrain()) * freeLength())
                .with(Cause.SLAB_LIVE_LOAD, above.slabDeflection(joint.elevation()))
                .with(Cause.COLUMN_SHORTENING, movement.columnShortening())
                .withOptional(Cause.SLAB_CREEP, above.slabCreep(joint.elevation()))
                .withOptional(Cause.COLUMN_CREEP, movement.columnCreep());
    }

    MovementSum opening() {
        return new MovementSum()
                .with(Cause.THERMAL, orZero(movement.coolingStrain()) * freeLength())
                .with(Cause.SLAB_LIVE_LOAD, below.slabDeflection(joint.elevation()))
                .withOptional(Cause.SLAB_CREEP, below.slabCreep(joint.elevation()));
    }

    /** Required width, m, or null without the sealant's movement capability. */
    @Nullable Double requiredWidth() {
        Double capability = joint.sealantMovementCapability();
        return capability == null
                ? null
                : (Double)
                        JointWidth.required(
                                closing().total(),
                                opening().total(),
                                capability,
                                movement.tolerance(),
                                orZero(movement.metalClearance()));
    }

    /** Whether everything that the sums rest on was given. */
    boolean known() {
        return movement.warmingStrain() != null
                && movement.columnShortening() != null
                && movement.erectionTolerance() != null
                && above.slabDeflection(joint.elevation()) != null
                && below.slabDeflection(joint.elevation()) != null
                && !above.fixed().isEmpty()
                && !below.fixed().isEmpty();
    }

    JointResult result() {
        MovementSum closing = closing();
        MovementSum opening = opening();
        double tolerance = movement.tolerance();
        Double required = requiredWidth();
        Double width = joint.nominalWidth();
        Double utilization = required == null || width == null ? null : required / width;
        Double closed = width == null ? null : width - closing.total() - tolerance;
        Verdict verdict =
                utilization == null ? Verdict.UNDETERMINED : Verdict.ofUtilization(utilization);
        return new JointResult(
                Quantity.of(Dimension.DISTANCE, joint.elevation()),
                Quantity.of(Dimension.DISTANCE, freeLength()),
                length(opening.total()),
                length(closing.total()),
                parts(opening, closing),
                length(tolerance),
                opening.shares(tolerance),
                closing.shares(tolerance),
                required == null ? null : length(required),
                closed == null ? null : length(closed),
                utilization,
                verdict.and(known() ? Verdict.SATISFIED : Verdict.UNDETERMINED));
    }

    private static List<MovementPart> parts(MovementSum opening, MovementSum closing) {
        return Stream.concat(closing.causes().stream(), opening.causes().stream())
                .distinct()
                .map(
                        cause ->
                                new MovementPart(
                                        cause,
                                        length(opening.of(cause)),
                                        length(closing.of(cause))))
                .toList();
    }

    private static Quantity length(double metres) {
        return Quantity.of(Dimension.LENGTH, metres);
    }

    private static double orZero(@Nullable Double value) {
        return value == null ? 0 : value;
    }
}
