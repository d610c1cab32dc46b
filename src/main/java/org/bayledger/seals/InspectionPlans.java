package org.bayledger.seals;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.bayledger.check.Finding;
import org.jspecify.annotations.Nullable;

/** Draws up the inspection of a frame's joints and reads what one found. */
final class InspectionPlans {

    private final Inspection asked;
    private final List<Finding> open = new ArrayList<>();
    private final List<Finding> notes = new ArrayList<>();
    private final InspectionPlan plan;

    InspectionPlans(Inspection asked, List<SealJoint> joints) {
        this.asked = asked;
        this.plan =
                new InspectionPlan(
                        asked.confidence(),
                        asked.defectRate(),
                        joints.stream().filter(joint -> joint.count() > 0).map(this::row).toList());
        List<InspectedJoints> found = asked.found() == null ? List.of() : asked.found();
        for (int i = 0; i < found.size(); i++) {
            JointType type = found.get(i).type();
            if (plan.rows().stream().noneMatch(row -> row.type() == type && row.found() != null)) {
                open.add(
                        Finding.action(
                                "INSPECTED_JOINTS_DO_NOT_FIT",
                                "/inspection/found/" + i,
                                "Inspected were "
                                        + found.get(i).inspected()
                                        + " joints of type "
                                        + type
                                        + ", more than are counted in this frame; correct the"
                                        + " number or what the count rests on."));
            }
        }
    }

    InspectionPlan plan() {
        return plan;
    }

    /** What leaves the verdict open. */
    List<Finding> open() {
        return List.copyOf(open);
    }

    /** What else there is to say. */
    List<Finding> notes() {
        return List.copyOf(notes);
    }

    private InspectionRow row(SealJoint joint) {
        int joints = joint.count();
        double confidence = asked.confidence();
        int defective = Sampling.defective(joints, asked.defectRate());
        int sample = Sampling.size(joints, defective, confidence, 0);
        double missed = Sampling.noneFound(joints, defective, sample);
        int boundAfterOne = Sampling.upperBound(joints, sample, 1, confidence);
        int afterOne = defective > 1 ? Sampling.size(joints, defective, confidence, 1) : joints;
        return new InspectionRow(
                joint.step(),
                joint.type(),
                joints,
                defective,
                sample,
                missed,
                "N = %d, D = %s x %d rounded up = %d; P(0 of n) = product of (N - D - i) / (N - i), i = 0 to n - 1; n = %d: %s, not over 1 - %s"
                        .formatted(
                                joints,
                                number(asked.defectRate()),
                                joints,
                                defective,
                                sample,
                                String.format(Locale.ROOT, "%.4f", missed),
                                number(confidence)),
                boundAfterOne,
                afterOne,
                shown(joint, sample, afterOne, defective));
    }

    private @Nullable InspectionShown shown(
            SealJoint joint, int sample, int afterOne, int defective) {
        InspectedJoints found = asked.found(joint.type());
        if (found == null || found.inspected() > joint.count()) {
            return null;
        }
        int bound =
                Sampling.upperBound(
                        joint.count(), found.inspected(), found.defective(), asked.confidence());
        int left = joint.count() - found.inspected();
        String action;
        if (found.defective() == 0) {
            action =
                    bound < defective
                            ? "None was defective and the sample is large enough."
                            : "None was defective, but the sample is too small: inspect "
                                    + (sample - found.inspected())
                                    + " more.";
        } else if (left == 0) {
            action = "All were inspected: repair the " + found.defective() + " defective ones.";
        } else {
            action =
                    "Repair what was found and inspect the other "
                            + left
                            + " joints of this type as well.";
            if (found.defective() == 1 && afterOne < joint.count()) {
                action +=
                        afterOne > found.inspected()
                                ? " Where that can't be done, inspect "
                                        + (afterOne - found.inspected())
                                        + " more; with another defect among them all must be"
                                        + " opened."
                                : " No other was defective among the "
                                        + found.inspected()
                                        + ", which shows the defect rate all the same.";
            }
        }
        report(joint, found, bound, action);
        return new InspectionShown(found.inspected(), found.defective(), bound, action);
    }

    private void report(SealJoint joint, InspectedJoints found, int bound, String action) {
        String pointer =
                "/inspection/found/" + (asked.found() == null ? 0 : asked.found().indexOf(found));
        String text =
                "%d of %d inspected joints of type %s were defective; of all %d, with a confidence of %s, at most %d are. %s"
                        .formatted(
                                found.defective(),
                                found.inspected(),
                                joint.type(),
                                joint.count(),
                                number(asked.confidence()),
                                bound,
                                action);
        if (found.defective() > 0) {
            open.add(Finding.action("DEFECTIVE_JOINTS_FOUND", pointer, text));
        } else {
            notes.add(Finding.note("INSPECTION_FOUND_NO_DEFECT", pointer, text));
        }
    }

    private static String number(double value) {
        return new java.math.BigDecimal(Double.toString(value))
                .stripTrailingZeros()
                .toPlainString();
    }
}
