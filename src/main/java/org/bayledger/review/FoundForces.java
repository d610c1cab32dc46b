package org.bayledger.review;

import java.util.HashMap;
import java.util.Map;
import org.bayledger.anchorage.Anchor;
import org.bayledger.framing.FramingResult;
import org.jspecify.annotations.Nullable;

/** The greatest forces of one vertical on what holds it, over all the loads it was run under. */
final class FoundForces {

    private final MullionLine held;
    private final Map<String, VerticalRun.Force> onAnchors = new HashMap<>();
    private VerticalRun.@Nullable Force onJoint;

    FoundForces(MullionLine held) {
        this.held = held;
    }

    /** Takes up the reactions of one run. */
    void of(Bay bay, FramingResult result) {
        boolean first = MullionLine.standsInJoint(bay);
        for (FramingResult.Reaction reaction : result.reactions()) {
            if (reaction.underPositive() != null && reaction.underNegative() != null) {
                VerticalRun.Force force =
                        new VerticalRun.Force(
                                reaction.underPositive().si(), reaction.underNegative().si());
                Anchor anchor = held.anchorAt(bay, reaction.at().si());
                if (anchor != null) {
                    onAnchors.merge(anchor.id(), force, VerticalRun.Force::orGreater);
                } else if (first) {
                    onJoint = onJoint == null ? force : onJoint.orGreater(force);
                }
            }
            first = false;
        }
    }

    boolean isEmpty() {
        return onAnchors.isEmpty() && onJoint == null;
    }

    Map<String, VerticalRun.Force> onAnchors() {
        return Map.copyOf(onAnchors);
    }

    VerticalRun.@Nullable Force onJoint() {
        return onJoint;
    }
}
