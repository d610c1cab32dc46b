package org.bayledger.seals;

import static org.bayledger.quantity.Constants.INCH;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.bayledger.check.Reporting;
import org.bayledger.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/** How an observed joint is opened up and repaired. Common practice, no source. */
final class ObservedRepair {

    private ObservedRepair() {}

    /** Cleaning, sealant and sealing. */
    static String repair(ObservedJoint joint, WallSystem system, Reporting reporting) {
        JointType type = joint.type();
        if (joint.repaired()) {
            return "Repaired: have it inspected and signed before anything hides it.";
        }
        String first =
                system.gasketed(type)
                        ? "Take the gasket out as far as the fault reaches and put in the one that"
                                + " the job specifies, whole and clean, its ends joined as the"
                                + " drawings ask."
                        : clearing(joint.condition(), reporting)
                                + " Use the sealant that the job specifies, or one of which its"
                                + " maker confirms that it bonds to whatever is left.";
        return first
                + " Then as in step "
                + system.step(type)
                + " of the sequence: "
                + SealInstructions.of(type, system)
                + (system.reachableAfterGlazing(type)
                        ? ""
                        : " Have it inspected and signed again before anything hides it.");
    }

    private static String clearing(ObservedCondition condition, Reporting reporting) {
        return switch (condition) {
            case UNSEALED -> "Clear the joint of shavings and water.";
            case CRACKED ->
                    "Cut the sealant out to sound, bonded material, at least "
                            + reporting.text(Dimension.LENGTH, INCH)
                            + " beyond each end of the crack, and find out what moved.";
            case NOT_TOOLED ->
                    "While the sealant can still be tooled, tool it. Once it has skinned, cut out"
                            + " what does not bond and bed fresh sealant of the same kind on the"
                            + " clean rest.";
            case DIRTY ->
                    "Cut the sealant out over the whole of the joint: dirt under a bead can't be"
                            + " cleaned through it.";
            case WRONG_MATERIAL ->
                    "Cut the material out over the whole of the joint and take its film off the"
                            + " metal: fresh sealant may not bond to what it left.";
        };
    }

    /**
     * What has to come out to reach a joint that is hidden by these, the outermost first; nothing
     * once it has been repaired.
     */
    static List<Obstacle> toOpen(ObservedJoint joint, List<Obstacle> hiddenBy, WallSystem system) {
        if (joint.repaired()) {
            return List.of();
        }
        List<Obstacle> open = new ArrayList<>(hiddenBy);
        if (open.contains(Obstacle.GLASS) && system == WallSystem.STICK_BUILT) {
            open.add(Obstacle.SNAP_COVER); // it stands before the pressure plates of the glass
        }
        Collections.reverse(open);
        return List.copyOf(open);
    }

    /** The same in words, with what else to look at. */
    static String opening(
            ObservedJoint joint, List<Obstacle> toOpen, @Nullable Integer othersToInspect) {
        String lite =
                joint.column() == null || joint.row() == null
                        ? "the lite next to it"
                        : "the lite in column " + joint.column() + ", row " + joint.row();
        String names =
                toOpen.stream()
                        .map(
                                obstacle ->
                                        obstacle == Obstacle.GLASS
                                                ? lite
                                                : "the "
                                                        + obstacle.name()
                                                                .toLowerCase(Locale.ROOT)
                                                                .replace('_', ' '))
                        .collect(Collectors.joining(", then "));
        String reach =
                joint.repaired()
                        ? ""
                        : toOpen.isEmpty()
                                ? "It can be reached as it is. "
                                : "Whatever of this is in place comes out first: " + names + ". ";
        return reach + others(joint.type(), othersToInspect);
    }

    private static String others(JointType type, @Nullable Integer count) {
        if (count == null) {
            return "How many others of type "
                    + type
                    + " there are is not known; all of them are suspect.";
        }
        return count == 0
                ? "No others of type " + type + " are left to inspect."
                : "Inspect the other "
                        + count
                        + " of type "
                        + type
                        + " in this frame as well, or as many as the inspection plan asks after a"
                        + " defect: a sample that was to show none no longer speaks for the rest.";
    }
}
