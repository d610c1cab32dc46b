package org.bayledger.seals;

import java.util.List;
import org.bayledger.quantity.Quantity;

/**
 * The joints of one kind in the frame.
 *
 * @param type kind of joint
 * @param count number of joints
 * @param countFormula the count as a sum to be redone by hand
 * @param length length of all their beads together
 * @param lengthFormula the length as a sum to be redone by hand
 * @param sealantVolume sealant in place, without waste; zero where there is no such joint
 * @param step step of the sequence at which they are sealed, from 1
 * @param holdPoint whether somebody must inspect and sign before the next thing hides them
 * @param reachableAfterGlazing whether they can still be reached once the glass is in
 * @param hiddenBy what hides them, in the order in which it is put in place
 * @param instruction what the installer does
 */
public record SealJoint(
        JointType type,
        int count,
        String countFormula,
        Quantity length,
        String lengthFormula,
        Quantity sealantVolume,
        int step,
        boolean holdPoint,
        boolean reachableAfterGlazing,
        List<Obstacle> hiddenBy,
        String instruction) {

    public SealJoint {
        hiddenBy = List.copyOf(hiddenBy);
    }
}
