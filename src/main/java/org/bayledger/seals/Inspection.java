package org.bayledger.seals;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Size;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.bayledger.check.Faults;
import org.jspecify.annotations.Nullable;

/**
 * How sure an inspection of a sample is to be, and what one found. The usual choice is a confidence
 * of 0.95 at a defect rate of 0.10.
 *
 * @param confidence chance with which a sample of the plan holds a defective joint where the share
 *     of defective joints is defectRate
 * @param defectRate share of defective joints that must not go unnoticed
 * @param found what an inspection found; a kind of joint once
 */
public record Inspection(
        @DecimalMin("0.5") @DecimalMax("0.9999") double confidence,
        @DecimalMin("0.001") @DecimalMax("0.5") double defectRate,
        @Size(max = 100) @Nullable List<InspectedJoints> found) {

    public Inspection {
        found = found == null ? null : List.copyOf(found);
        Faults faults = new Faults();
        Set<JointType> seen = new HashSet<>();
        for (int i = 0; found != null && i < found.size(); i++) {
            faults.require(
                    seen.add(found.get(i).type()), "/found/" + i + "/type", "is listed twice");
        }
        faults.throwIfAny();
    }

    /** What was found on a kind of joint, or null. */
    @Nullable InspectedJoints found(JointType type) {
        return found == null
                ? null
                : found.stream().filter(joints -> joints.type() == type).findFirst().orElse(null);
    }
}
