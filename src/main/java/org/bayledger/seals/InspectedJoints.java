package org.bayledger.seals;

import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import org.bayledger.check.FaultsException;

/**
 * Joints of one kind that were inspected.
 *
 * @param type kind of joint
 * @param inspected joints inspected, picked at random
 * @param defective how many of them were defective
 */
public record InspectedJoints(
        JointType type,
        @Min(1) @Max(10_000_000) int inspected,
        @Min(0) @Max(10_000_000) int defective) {

    public InspectedJoints {
        if (defective > inspected) {
            throw FaultsException.outOfRange(
                    "/defective", "must not be more than the joints inspected");
        }
    }
}
