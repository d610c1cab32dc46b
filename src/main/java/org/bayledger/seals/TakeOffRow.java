package org.bayledger.seals;

import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * The sealant of one kind of joint.
 *
 * @param step step at which they are sealed
 * @param type kind of joint
 * @param count number of joints
 * @param beadWidth width of the bead
 * @param beadDepth depth of the bead
 * @param length length of all their beads together
 * @param sealant which sealant; null for a line that is closed by gaskets
 * @param volume sealant in place
 * @param volumeWithWaste sealant in place with what is wasted
 */
public record TakeOffRow(
        int step,
        JointType type,
        int count,
        Quantity beadWidth,
        Quantity beadDepth,
        Quantity length,
        @Nullable SealantUse sealant,
        Quantity volume,
        Quantity volumeWithWaste) {}
