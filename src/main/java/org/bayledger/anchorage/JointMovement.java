package org.bayledger.anchorage;

import java.util.List;
import org.bayledger.check.Verdict;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * Movement of one joint from the installed state, and the width that takes it.
 *
 * <pre>
 *   closing = alpha L (Tmax - Tinst) + slab above loaded + column shortening
 *   opening = alpha L (Tinst - Tmin) + slab below loaded
 *   W       = max(max(closing, opening) / S + t,  closing + t + m)
 * </pre>
 *
 * <p>L is the length between the dead-load anchors on either side ({@link Piece#stillPoint}), S the
 * sealant's movement capability, t the erection tolerance, m the clearance asked for between the
 * metal. Practice of ASTM C1193 and C1472, from memory; the parts are added as a plain sum. The
 * building itself is taken to keep its temperature.
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

    double thermalClosing() {
        return orZero(movement.warmingStrain()) * freeLength();
    }

    double thermalOpening() {
        return orZero(movement.coolingStrain()) * freeLength();
    }

    double slabClosing() {
        return orZero(above.slabDeflection(joint.elevation()));
    }

    double slabOpening() {
        return orZero(below.slabDeflection(joint.elevation()));
    }

    double shortening() {
        return orZero(movement.columnShortening());
    }

    double closing() {
        return thermalClosing() + slabClosing() + shortening();
    }

    double opening() {
        return thermalOpening() + slabOpening();
    }

    /** Required width, m, or null without the sealant's movement capability. */
    @Nullable Double requiredWidth() {
        Double capability = joint.sealantMovementCapability();
        if (capability == null) {
            return null;
        }
        double tolerance = orZero(movement.erectionTolerance());
        return Math.max(
                Math.max(closing(), opening()) / capability + tolerance,
                closing() + tolerance + orZero(movement.metalClearance()));
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
        Double required = requiredWidth();
        Double width = joint.nominalWidth();
        Double utilization = required == null || width == null ? null : required / width;
        Double closed =
                width == null ? null : width - closing() - orZero(movement.erectionTolerance());
        Verdict verdict =
                utilization == null ? Verdict.UNDETERMINED : Verdict.ofUtilization(utilization);
        return new JointResult(
                Quantity.of(Dimension.DISTANCE, joint.elevation()),
                Quantity.of(Dimension.DISTANCE, freeLength()),
                length(opening()),
                length(closing()),
                List.of(
                        part(MovementPart.Cause.THERMAL, thermalOpening(), thermalClosing()),
                        part(MovementPart.Cause.SLAB_LIVE_LOAD, slabOpening(), slabClosing()),
                        part(MovementPart.Cause.COLUMN_SHORTENING, 0, shortening())),
                required == null ? null : length(required),
                closed == null ? null : length(closed),
                utilization,
                verdict.and(known() ? Verdict.SATISFIED : Verdict.UNDETERMINED));
    }

    private static MovementPart part(MovementPart.Cause cause, double opening, double closing) {
        return new MovementPart(cause, length(opening), length(closing));
    }

    private static Quantity length(double metres) {
        return Quantity.of(Dimension.LENGTH, metres);
    }

    private static double orZero(@Nullable Double value) {
        return value == null ? 0 : value;
    }
}
