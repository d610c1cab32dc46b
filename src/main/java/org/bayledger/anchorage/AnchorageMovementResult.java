package org.bayledger.anchorage;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.util.List;
import org.bayledger.check.Outcome;
import org.bayledger.check.Remedy;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * How the wall is held, and what moves at its joints, slots and lites.
 *
 * @param outcome verdict and what goes with it; the utilization includes that of the drift, whose
 *     shortfall leaves the verdict undetermined
 * @param thermalMovement over the whole range of temperature, of the length that moves into a
 *     joint, the greatest of the joints; without joints, of the length from the dead-load anchor to
 *     the anchor farthest from it; null where it is not known
 * @param pieces from the lowest up
 * @param joints in the order of the request
 * @param slots of the wind-load anchors, in the order of the request
 * @param anchors those with a force or an allowable, in the order of the request
 * @param driftCapacity drift over the height of the lite at which the glass touches the frame; null
 *     where the lite was not given
 * @param driftDemand drift over the height of the lite that must stay below that; where the
 *     importance factor or the story height is missing, the most that it can be; null where the
 *     drift is not known
 * @param driftUtilization demand over capacity; null where either is not known
 * @param expansionJoints in the order of the request
 */
public record AnchorageMovementResult(
        @JsonUnwrapped Outcome outcome,
        @Nullable Quantity thermalMovement,
        List<PieceResult> pieces,
        List<JointResult> joints,
        List<SlotResult> slots,
        List<AnchorForceResult> anchors,
        @Nullable Quantity driftCapacity,
        @Nullable Quantity driftDemand,
        @Nullable Double driftUtilization,
        List<ExpansionJointResult> expansionJoints) {

    public AnchorageMovementResult {
        pieces = List.copyOf(pieces);
        joints = List.copyOf(joints);
        slots = List.copyOf(slots);
        anchors = List.copyOf(anchors);
        expansionJoints = List.copyOf(expansionJoints);
    }

    AnchorageMovementResult withRemedies(List<Remedy> remedies) {
        return new AnchorageMovementResult(
                new Outcome(
                        outcome.verdict(),
                        outcome.utilization(),
                        outcome.findings(),
                        remedies,
                        outcome.trace(),
                        outcome.cautions()),
                thermalMovement,
                pieces,
                joints,
                slots,
                anchors,
                driftCapacity,
                driftDemand,
                driftUtilization,
                expansionJoints);
    }
}
