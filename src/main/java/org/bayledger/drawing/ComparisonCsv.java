package org.bayledger.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.bayledger.ledger.Comparison;
import org.jspecify.annotations.Nullable;

/** A comparison of two revisions as CSV: one line for each thing that changed. */
final class ComparisonCsv {

    private static final List<String> HEADING =
            List.of(
                    "kind",
                    "item",
                    "check",
                    "pointer",
                    "from",
                    "to",
                    "utilizationFrom",
                    "utilizationTo",
                    "utilizationChange");

    private final List<List<@Nullable Object>> rows = new ArrayList<>();

    private ComparisonCsv() {}

    static byte[] write(Comparison comparison) {
        ComparisonCsv csv = new ComparisonCsv();
        for (Comparison.InputChange input : comparison.inputs()) {
            csv.row(
                    "INPUT",
                    input.item(),
                    null,
                    input.pointer(),
                    ComparedValue.text(input.from()),
                    ComparedValue.text(input.to()));
        }
        csv.effect("", new Comparison.Effect(comparison.verdicts(), comparison.notes()));
        Comparison.Recomputed recomputed = comparison.recomputed();
        if (recomputed != null) {
            csv.effect("ENGINE_EFFECT_", recomputed.engineEffect());
            csv.effect("INPUT_EFFECT_", recomputed.inputEffect());
            for (Comparison.Refusal refusal : recomputed.refusals()) {
                csv.row(
                        "REFUSED_TODAY",
                        "revision " + refusal.revision(),
                        null,
                        refusal.pointer(),
                        null,
                        refusal.detail());
            }
        }
        return CsvText.write(HEADING, csv.rows);
    }

    private void effect(String prefix, Comparison.@Nullable Effect effect) {
        if (effect == null) {
            return;
        }
        for (Comparison.VerdictChange change : effect.verdicts()) {
            rows.add(
                    Arrays.asList(
                            prefix + "VERDICT",
                            change.item(),
                            change.check(),
                            null,
                            change.from(),
                            change.to(),
                            ComparedValue.text(change.utilizationFrom()),
                            ComparedValue.text(change.utilizationTo()),
                            ComparedValue.text(change.utilizationChange())));
        }
        for (Object note : effect.notes().added()) {
            note(prefix + "NOTE_ADDED", null, note);
        }
        for (Object note : effect.notes().removed()) {
            note(prefix + "NOTE_REMOVED", note, null);
        }
        for (Comparison.NoteChange note : effect.notes().changed()) {
            note(prefix + "NOTE_CHANGED", note.from(), note.to());
        }
    }

    private void note(String kind, @Nullable Object from, @Nullable Object to) {
        row(
                kind,
                ComparedValue.items(to == null ? from : to),
                null,
                null,
                ComparedValue.note(from),
                ComparedValue.note(to));
    }

    private void row(
            String kind,
            String item,
            @Nullable String check,
            @Nullable String pointer,
            @Nullable String from,
            @Nullable String to) {
        rows.add(Arrays.asList(kind, item, check, pointer, from, to, null, null, null));
    }
}
