package org.bayledger.drawing;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.bayledger.check.Cautions;
import org.bayledger.ledger.Comparison;
import org.jspecify.annotations.Nullable;

/** A comparison of two revisions as a page that a reviewer reads and prints. */
final class ComparisonPage {

    private static final Page PAGE = Page.of("comparison.html");

    private ComparisonPage() {}

    static byte[] write(Comparison comparison) {
        Comparison.Recomputed recomputed = comparison.recomputed();
        return PAGE.write(
                new Content(
                        comparison.base(),
                        comparison.head(),
                        comparison.engineChanged()
                                ? "Another engine version computed the results of the head:"
                                        + " ask with recompute=true to tell its effect from that of"
                                        + " the input."
                                : "The same engine version computed both.",
                        inputs(comparison),
                        effect(
                                "Verdicts and utilizations that moved, as recorded",
                                comparison.verdicts(),
                                comparison.notes()),
                        recomputed == null ? List.of() : recomputed(recomputed),
                        recomputed == null
                                ? List.of()
                                : recomputed.refusals().stream()
                                        .map(
                                                refusal ->
                                                        "Today's engine refuses revision "
                                                                + refusal.revision()
                                                                + " at "
                                                                + refusal.pointer()
                                                                + ": "
                                                                + refusal.detail())
                                        .toList(),
                        Cautions.with()));
    }

    /** What the template shows. */
    record Content(
            int base,
            int head,
            String engine,
            List<Input> inputs,
            Effect recorded,
            List<Effect> recomputed,
            List<String> refusals,
            List<String> cautions) {

        boolean hasInputs() {
            return !inputs.isEmpty();
        }
    }

    record Input(String item, String pointer, String from, String to) {}

    record Effect(String title, List<Move> moves, List<Note> notes) {

        boolean hasMoves() {
            return !moves.isEmpty();
        }

        boolean hasNotes() {
            return !notes.isEmpty();
        }
    }

    record Move(
            String item,
            String check,
            String from,
            String to,
            String utilizationFrom,
            String utilizationTo,
            String change) {}

    record Note(String kind, String items, String from, String to) {}

    private static List<Input> inputs(Comparison comparison) {
        return comparison.inputs().stream()
                .map(
                        input ->
                                new Input(
                                        input.item(),
                                        input.pointer(),
                                        orNone(ComparedValue.text(input.from())),
                                        orNone(ComparedValue.text(input.to()))))
                .toList();
    }

    private static List<Effect> recomputed(Comparison.Recomputed recomputed) {
        return Stream.of(
                        named(
                                "What today's engine ("
                                        + recomputed.engineVersion()
                                        + ") makes of the base, against what was recorded: the"
                                        + " engine's effect",
                                recomputed.engineEffect()),
                        named(
                                "What today's engine makes of the head, against what it makes of"
                                        + " the base: the input's effect",
                                recomputed.inputEffect()))
                .flatMap(List::stream)
                .toList();
    }

    private static List<Effect> named(String title, Comparison.@Nullable Effect effect) {
        return effect == null
                ? List.of()
                : List.of(effect(title, effect.verdicts(), effect.notes()));
    }

    /** Verdicts first that became worse, then those that moved most. */
    private static Effect effect(
            String title, List<Comparison.VerdictChange> verdicts, Comparison.NoteChanges notes) {
        List<Move> moves =
                verdicts.stream()
                        .sorted(
                                Comparator.comparing(ComparisonPage::sameVerdict)
                                        .thenComparing(
                                                ComparisonPage::moved, Comparator.reverseOrder()))
                        .map(ComparisonPage::move)
                        .toList();
        return new Effect(title, moves, notes(notes));
    }

    private static boolean sameVerdict(Comparison.VerdictChange change) {
        return change.from() != null && change.from().equals(change.to());
    }

    private static BigDecimal moved(Comparison.VerdictChange change) {
        BigDecimal moved = change.utilizationChange();
        return moved == null ? BigDecimal.ZERO : moved.abs();
    }

    private static Move move(Comparison.VerdictChange change) {
        BigDecimal moved = change.utilizationChange();
        return new Move(
                change.item(),
                change.check(),
                VerdictMark.text(change.from()),
                VerdictMark.text(change.to()),
                orNone(ComparedValue.text(change.utilizationFrom())),
                orNone(ComparedValue.text(change.utilizationTo())),
                moved == null
                        ? "\u2013"
                        : (moved.signum() > 0 ? "+" : "") + ComparedValue.text(moved));
    }

    private static List<Note> notes(Comparison.NoteChanges notes) {
        return Stream.of(
                        notes.added().stream()
                                .map(
                                        note ->
                                                note(
                                                        "Appeared",
                                                        ComparedValue.items(note),
                                                        null,
                                                        note)),
                        notes.removed().stream()
                                .map(note -> note("Went", ComparedValue.items(note), note, null)),
                        notes.changed().stream()
                                .map(
                                        note ->
                                                note(
                                                        "Changed",
                                                        ComparedValue.items(note.to()),
                                                        note.from(),
                                                        note.to())))
                .flatMap(rows -> rows)
                .toList();
    }

    private static Note note(
            String kind, String items, @Nullable Object from, @Nullable Object to) {
        return new Note(
                kind, items, orNone(ComparedValue.note(from)), orNone(ComparedValue.note(to)));
    }

    private static String orNone(String text) {
        return text.isEmpty() ? "\u2013" : text;
    }
}
