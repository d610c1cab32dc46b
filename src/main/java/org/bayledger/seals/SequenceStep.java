package org.bayledger.seals;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One step of the work. A step that only puts something in place has no joints to prepare. Numbers
 * are those of the sealant maker, where they were given; the rest is common practice.
 *
 * @param step number, from 1; a step that the frame does not need is left out
 * @param title what is done
 * @param jointTypes kinds of joint that are sealed
 * @param preparation how the surfaces are cleaned, and how long before sealing
 * @param primer whether they are primed
 * @param weather when the work may be done
 * @param tooling how the bead is placed and tooled
 * @param cure how long no water may reach it
 * @param holdPoint what must be inspected and signed, and before what
 * @param hiddenBy what hides these joints later, in the order in which it is put in place
 */
public record SequenceStep(
        int step,
        String title,
        List<JointType> jointTypes,
        @Nullable String preparation,
        @Nullable String primer,
        @Nullable String weather,
        @Nullable String tooling,
        @Nullable String cure,
        @Nullable String holdPoint,
        List<Obstacle> hiddenBy) {

    public SequenceStep {
        jointTypes = List.copyOf(jointTypes);
        hiddenBy = List.copyOf(hiddenBy);
    }
}
