package org.bayledger.anchorage;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.check.Remedy;
import org.jspecify.annotations.Nullable;

/** A request while changes to it are being found, and the changes so far. */
final class AnchorageChanges {

    final List<Anchor> anchors;
    final @Nullable List<StackJoint> joints;
    final @Nullable List<ExpansionJoint> expansionJoints;
    Movement movement;
    private final List<Remedy.Change> changes = new ArrayList<>();
    private final List<String> words = new ArrayList<>();

    AnchorageChanges(AnchorageMovementRequest request) {
        anchors = new ArrayList<>(request.anchors());
        joints = request.stackJoints() == null ? null : new ArrayList<>(request.stackJoints());
        expansionJoints =
                request.expansionJoints() == null
                        ? null
                        : new ArrayList<>(request.expansionJoints());
        movement = request.movement();
    }

    /** Notes a change with the sentence for it. */
    void add(String pointer, String to, String text) {
        also(pointer, to);
        words.add(text);
    }

    /** Notes a change that goes with the one before it. */
    void also(String pointer, String to) {
        changes.add(new Remedy.Change(pointer, to));
    }

    /** The request with all changes. */
    AnchorageMovementRequest request() {
        return new AnchorageMovementRequest(anchors, joints, movement, expansionJoints);
    }

    List<Remedy.Change> list() {
        return changes;
    }

    /** All changes in a sentence. */
    String text() {
        return String.join("; ", words) + ".";
    }

    /** Place of an anchor in the request. */
    int index(String id) {
        int i = 0;
        while (!anchors.get(i).id().equals(id)) {
            i++;
        }
        return i;
    }
}
