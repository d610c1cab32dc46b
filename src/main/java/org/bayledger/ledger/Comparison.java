package org.bayledger.ledger;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What changed from one revision to another.
 *
 * @param base number of the revision compared from
 * @param head number of the revision compared to
 * @param inputs what changed in the documents, as it was posted
 * @param verdicts verdicts and utilizations that moved, as they were recorded
 * @param notes shop-drawing notes that appeared, went or changed, as they were recorded
 * @param engineChanged whether another engine version computed the head's results
 * @param recomputed what today's engine makes of both; null unless asked for
 */
public record Comparison(
        int base,
        int head,
        List<InputChange> inputs,
        List<VerdictChange> verdicts,
        NoteChanges notes,
        boolean engineChanged,
        @Nullable Recomputed recomputed) {

    /**
     * One changed input.
     *
     * @param item the item it belongs to, such as N-03/anchor/L3
     * @param pointer where in the head's document; in the base's where the head has it no longer
     * @param from as posted in the base; null where it was absent
     * @param to as posted in the head; null where it is absent
     */
    public record InputChange(
            String item, String pointer, @Nullable Object from, @Nullable Object to) {}

    /**
     * One check of one item that came out differently.
     *
     * @param item the item's identifier
     * @param check the check
     * @param from the base's verdict; null where the base has no such check
     * @param to the head's verdict; null where the head has none
     * @param utilizationFrom the base's utilization; null where there is none
     * @param utilizationTo the head's utilization; null where there is none
     * @param utilizationChange the head's less the base's; null where either has none
     */
    public record VerdictChange(
            String item,
            String check,
            @Nullable String from,
            @Nullable String to,
            @Nullable BigDecimal utilizationFrom,
            @Nullable BigDecimal utilizationTo,
            @Nullable BigDecimal utilizationChange) {}

    /**
     * Shop-drawing notes, as the results hold them.
     *
     * @param added notes of the head alone
     * @param removed notes of the base alone
     * @param changed notes of both, with other words, another mark or other items
     */
    public record NoteChanges(List<Object> added, List<Object> removed, List<NoteChange> changed) {}

    /**
     * A note before and after.
     *
     * @param from the note in the base's results
     * @param to the note in the head's results
     */
    public record NoteChange(Object from, Object to) {}

    /**
     * The comparison with today's engine, which tells an effect of the engine from an effect of the
     * input.
     *
     * @param engineVersion today's
     * @param engineEffect today's results of the base against its recorded ones; null where today's
     *     engine refuses the base
     * @param inputEffect today's results of the head against today's results of the base; null
     *     where today's engine refuses either
     * @param refusals why today's engine refuses a document that was once accepted
     */
    public record Recomputed(
            String engineVersion,
            @Nullable Effect engineEffect,
            @Nullable Effect inputEffect,
            List<Refusal> refusals) {}

    /**
     * What differs between two sets of results.
     *
     * @param verdicts verdicts and utilizations that differ
     * @param notes shop-drawing notes that differ
     */
    public record Effect(List<VerdictChange> verdicts, NoteChanges notes) {}

    /**
     * A fault that today's engine finds in a recorded document.
     *
     * @param revision number of the revision
     * @param pointer where in its document, as a JSON pointer
     * @param detail what today's engine does not accept
     */
    public record Refusal(int revision, String pointer, String detail) {}
}
