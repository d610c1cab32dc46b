package org.bayledger.anchorage;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.anchorage.MovementPart.Cause;
import org.bayledger.check.Finding;
import org.bayledger.check.Reporting;
import org.bayledger.check.Trace;
import org.bayledger.check.Verdict;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * Movement of one vertical expansion joint from the installed state, and the width that takes it.
 *
 * <pre>
 *   closing = alpha L (Tmax - Tinst) + sway
 *   opening = alpha L (Tinst - Tmin) + sway
 * </pre>
 *
 * <p>Statics; added as a plain sum. The width: {@link JointWidth}. Shear of the sealant, where the
 * two sides move up and down or in and out against each other, is not in it.
 *
 * @param joint the joint
 * @param movement what moves
 */
record ExpansionJointMovement(ExpansionJoint joint, Movement movement) {

    private MovementSum sum(@Nullable Double strain) {
        Double length = joint.thermalLength();
        return new MovementSum()
                .with(Cause.THERMAL, strain == null || length == null ? null : strain * length)
                .with(Cause.BUILDING_SWAY, joint.inPlaneMovement());
    }

    private boolean known() {
        return movement.warmingStrain() != null
                && movement.erectionTolerance() != null
                && joint.thermalLength() != null
                && joint.inPlaneMovement() != null;
    }

    ExpansionJointResult result() {
        MovementSum closing = sum(movement.warmingStrain());
        MovementSum opening = sum(movement.coolingStrain());
        double tolerance = movement.tolerance();
        Double capability = joint.sealantMovementCapability();
        Double width = joint.nominalWidth();
        Double metal = movement.metalClearance();
        Double required =
                capability == null
                        ? null
                        : (Double)
                                JointWidth.required(
                                        closing.total(),
                                        opening.total(),
                                        capability,
                                        tolerance,
                                        metal == null ? 0 : metal);
        Double utilization = required == null || width == null ? null : required / width;
        Verdict verdict =
                utilization == null ? Verdict.UNDETERMINED : Verdict.ofUtilization(utilization);
        return new ExpansionJointResult(
                joint.id(),
                Quantity.of(Dimension.LENGTH, opening.total()),
                Quantity.of(Dimension.LENGTH, closing.total()),
                opening.shares(tolerance),
                closing.shares(tolerance),
                required == null ? null : Quantity.of(Dimension.LENGTH, required),
                width == null
                        ? null
                        : Quantity.of(Dimension.LENGTH, width - closing.total() - tolerance),
                utilization,
                verdict.and(known() ? Verdict.SATISFIED : Verdict.UNDETERMINED));
    }

    /** What was not given for the joint, and whether it is too narrow. */
    List<Finding> findings(int index, ExpansionJointResult result, Reporting reporting) {
        String at = "/expansionJoints/" + index;
        List<Finding> findings = new ArrayList<>();
        missing(findings, joint.nominalWidth(), at + "/nominalWidth", "width");
        missing(
                findings,
                joint.sealantMovementCapability(),
                at + "/sealantMovementCapability",
                "movement capability of the sealant");
        missing(
                findings,
                joint.inPlaneMovement(),
                at + "/inPlaneMovement",
                "movement from sway of the building in the plane of the wall");
        missing(
                findings,
                joint.thermalLength(),
                at + "/thermalLength",
                "length of metal whose thermal movement goes into it");
        Quantity required = result.requiredWidth();
        if (result.verdict() == Verdict.EXCEEDED && required != null) {
            findings.add(
                    Finding.action(
                            "EXPANSION_JOINT_TOO_NARROW",
                            at + "/nominalWidth",
                            "Expansion joint "
                                    + joint.id()
                                    + " must be at least "
                                    + required.text(reporting.units())
                                    + " wide."));
        }
        return findings;
    }

    private void missing(
            List<Finding> findings, @Nullable Double given, String pointer, String name) {
        if (given == null) {
            findings.add(
                    Finding.action(
                            "EXPANSION_JOINT_INCOMPLETE",
                            pointer,
                            "For expansion joint "
                                    + joint.id()
                                    + " the "
                                    + name
                                    + " was not given; it is not in the numbers, which are least"
                                    + " values."));
        }
    }

    static void trace(Trace trace, ExpansionJointResult result) {
        Quantity required = result.requiredWidth();
        trace.detail(
                        "closing " + result.joint(),
                        "closing of expansion joint " + result.joint(),
                        Dimension.LENGTH,
                        result.closing().si(),
                        "alpha L (Tmax - Tinst) + sway",
                        "statics")
                .detail(
                        "opening " + result.joint(),
                        "opening of expansion joint " + result.joint(),
                        Dimension.LENGTH,
                        result.opening().si(),
                        "alpha L (Tinst - Tmin) + sway",
                        "statics");
        if (required != null) {
            trace.detail(
                    "W " + result.joint(),
                    "required width of expansion joint " + result.joint(),
                    Dimension.LENGTH,
                    required.si(),
                    JointWidth.FORMULA,
                    JointWidth.SOURCE);
        }
    }
}
