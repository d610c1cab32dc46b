package org.bayledger.ledger;

import java.util.List;
import java.util.Map;

/**
 * What a review answers, bay for bay: of a large job the whole is never in memory as one text or
 * one tree.
 *
 * @param shell tree of everything but the bays, with an empty list of them
 * @param bays the bays in their order
 */
record Reviewed(Map<?, ?> shell, List<Bay> bays) {

    Reviewed {
        bays = List.copyOf(bays);
    }

    /**
     * The results of one bay.
     *
     * @param id the bay's identifier
     * @param content its results
     * @param verdicts the verdicts in them
     */
    record Bay(String id, Content content, List<ItemVerdict> verdicts) {}

    /** The verdict on all of it. */
    String verdict() {
        return String.valueOf(shell.get("verdict"));
    }

    /** What is recorded of it. */
    Parts parts() {
        return new Parts(
                new Content(CanonicalJson.bytes(shell)),
                bays.stream().map(bay -> new Parts.Bay(bay.id(), bay.content())).toList());
    }

    /** The verdicts of all bays. */
    List<ItemVerdict> verdicts() {
        return bays.stream().flatMap(bay -> bay.verdicts().stream()).toList();
    }
}
