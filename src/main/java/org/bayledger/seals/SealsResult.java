package org.bayledger.seals;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.util.List;
import org.bayledger.check.Outcome;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * The internal seals of one frame.
 *
 * @param outcome verdict, utilization (the greatest of water head over end-dam height and, where
 *     they were given, of what passes a missed joint and observed ones over what may pass, of the
 *     share on the outer line over its limit and of the head that the weeps need over what they
 *     have), findings, remedies, trace and cautions
 * @param joints the joints by kind, in the order of their steps
 * @param notCounted kinds that could not be counted from what was given; a finding says what for
 * @param glazingStep step of the same sequence at which the glass is set
 * @param sealantVolume sealant in place for all counted joints, without waste
 * @param cartridges whole cartridges that hold it, waste included; of every sealant its own
 * @param waterTestPressure pressure of the laboratory water test; null where the positive design
 *     pressure is missing
 * @param fieldTestPressure two thirds of it, for tests on site; null likewise
 * @param waterHead height of water that the water test pressure holds; null likewise
 * @param sequence the steps of the work in order
 * @param takeOff sealant and labour as rows of tables
 * @param inspection how many joints to inspect; null where no plan was asked for
 * @param unsealedJoint what one unsealed joint lets through
 * @param waterAndAir what drives water and air, how the frame drains, and what observed joints cost
 */
public record SealsResult(
        @JsonUnwrapped Outcome outcome,
        List<SealJoint> joints,
        List<JointType> notCounted,
        int glazingStep,
        Quantity sealantVolume,
        long cartridges,
        @Nullable Quantity waterTestPressure,
        @Nullable Quantity fieldTestPressure,
        @Nullable Quantity waterHead,
        List<SequenceStep> sequence,
        TakeOff takeOff,
        @Nullable InspectionPlan inspection,
        UnsealedJoint unsealedJoint,
        @JsonUnwrapped WaterAndAirResult waterAndAir) {

    public SealsResult {
        joints = List.copyOf(joints);
        notCounted = List.copyOf(notCounted);
        sequence = List.copyOf(sequence);
    }
}
