package org.bayledger.anchorage;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import jakarta.validation.constraints.Size;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.bayledger.check.Faults;
import org.jspecify.annotations.Nullable;

/**
 * One vertical run of mullions with its anchors and joints, and what moves it.
 *
 * @param anchors in any order
 * @param stackJoints in any order; empty where the run is one piece, absent where it is not known
 * @param movement what moves the metal and the building
 * @param expansionJoints vertical joints between stretches of this wall; absent: none to be looked
 *     at
 */
public record AnchorageMovementRequest(
        @Size(max = 500) List<Anchor> anchors,
        @Size(max = 500) @Nullable List<StackJoint> stackJoints,
        @JsonUnwrapped Movement movement,
        @Size(max = 500) @Nullable List<ExpansionJoint> expansionJoints) {

    /** Elevations closer than this, m, are the same place. */
    static final double SAME_PLACE = 1e-6;

    public AnchorageMovementRequest {
        anchors = List.copyOf(anchors);
        stackJoints = stackJoints == null ? null : List.copyOf(stackJoints);
        expansionJoints = expansionJoints == null ? null : List.copyOf(expansionJoints);
        Faults faults = new Faults();
        Set<String> ids = new HashSet<>();
        for (int i = 0; i < anchors.size(); i++) {
            faults.require(
                    ids.add(anchors.get(i).id()),
                    "/anchors/" + i + "/id",
                    "is the id of another anchor");
        }
        List<StackJoint> joints = stackJoints == null ? List.of() : stackJoints;
        for (int j = 0; j < joints.size(); j++) {
            double elevation = joints.get(j).elevation();
            String at = "/stackJoints/" + j + "/elevation";
            faults.require(
                    joints.subList(0, j).stream().noneMatch(o -> same(o.elevation(), elevation)),
                    at,
                    "is the elevation of another joint");
            faults.require(
                    anchors.stream().noneMatch(anchor -> same(anchor.elevation(), elevation)),
                    at,
                    "is the elevation of an anchor, which belongs to one piece or the other");
        }
        Set<String> verticals = new HashSet<>();
        for (int j = 0; expansionJoints != null && j < expansionJoints.size(); j++) {
            faults.require(
                    verticals.add(expansionJoints.get(j).id()),
                    "/expansionJoints/" + j + "/id",
                    "is the id of another expansion joint");
        }
        faults.throwIfAny();
    }

    /** The joints that are known of. */
    List<StackJoint> joints() {
        return stackJoints == null ? List.of() : stackJoints;
    }

    /** The expansion joints, none where none were given. */
    List<ExpansionJoint> verticalJoints() {
        return expansionJoints == null ? List.of() : expansionJoints;
    }

    private static boolean same(double one, double other) {
        return Math.abs(one - other) < SAME_PLACE;
    }
}
