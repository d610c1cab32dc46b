package org.bayledger.drawing;

import static org.bayledger.drawing.ResultTree.get;
import static org.bayledger.drawing.ResultTree.list;
import static org.bayledger.drawing.ResultTree.text;
import static org.bayledger.drawing.ResultTree.words;

import java.util.List;
import java.util.Map;
import org.bayledger.quantity.UnitSystem;
import org.jspecify.annotations.Nullable;

/**
 * The review sheet: what a reviewer hands over. Made from the results as they are answered and
 * recorded, so that a recorded sheet shows what was recorded, whatever today's engine would say.
 */
final class ReviewSheet {

    private static final Page PAGE = Page.of("sheet.html");

    /** Widths at which a drawing, with its title and the foot, fills a sheet of paper. */
    private static final String LETTER_PLATE = "232mm";

    private static final String A4_PLATE = "246mm";

    private ReviewSheet() {}

    /**
     * The sheet as a page.
     *
     * @param document the document's tree
     * @param result the results' tree
     * @param units which paper a print is on: letter or A4
     */
    static byte[] page(
            Map<?, ?> document,
            Map<?, ?> result,
            SheetOrigin origin,
            SheetPictures pictures,
            UnitSystem units) {
        Map<String, String> marks = SheetBay.marks(result);
        return PAGE.write(
                new Content(
                        text(document, "name"),
                        origin,
                        units == UnitSystem.US ? "letter" : "A4",
                        units == UnitSystem.US ? LETTER_PLATE : A4_PLATE,
                        Status.of(verdict(result)),
                        SheetSite.rows(document),
                        governing(result),
                        wind(result),
                        list(result, "notes").stream().map(ReviewSheet::note).toList(),
                        SheetFinding.ofJob(result),
                        SheetFinding.assumptions(result),
                        list(result, "bays").stream()
                                .map(bay -> SheetBay.of(bay, marks, pictures))
                                .toList(),
                        SheetSeals.of(result),
                        pictures,
                        strings(result, "notChecked"),
                        strings(result, "cautions")));
    }

    /** Items in the results, which is how long a sheet becomes. */
    static long items(Map<?, ?> result) {
        return list(result, "bays").stream().mapToLong(bay -> list(bay, "items").size()).sum();
    }

    /** What the template shows. */
    record Content(
            String name,
            SheetOrigin origin,
            String paper,
            String plate,
            Status status,
            List<SheetOrigin.Row> site,
            List<Governing> governing,
            List<Wind> wind,
            List<Note> notes,
            List<SheetFinding> findings,
            List<SheetFinding> assumptions,
            List<SheetBay> bays,
            List<SheetSeals> seals,
            SheetPictures drawings,
            List<String> notChecked,
            List<String> cautions) {

        boolean hasSite() {
            return !site.isEmpty();
        }

        boolean hasNotes() {
            return !notes.isEmpty();
        }

        boolean hasFindings() {
            return !findings.isEmpty();
        }

        boolean hasAssumptions() {
            return !assumptions.isEmpty();
        }

        boolean hasWind() {
            return !wind.isEmpty();
        }

        boolean hasSeals() {
            return !seals.isEmpty();
        }
    }

    record Governing(
            String check,
            String item,
            Status status,
            String utilization,
            String satisfied,
            String undetermined,
            String exceeded) {}

    record Wind(
            String elevation,
            String zone,
            String component,
            String where,
            String height,
            String area,
            String positive,
            String negative,
            String basis,
            String source) {}

    record Note(String mark, List<Name> items, String text) {}

    static @Nullable String verdict(@Nullable Object tree) {
        return get(tree, "verdict") instanceof String verdict ? verdict : null;
    }

    private static List<Governing> governing(Map<?, ?> result) {
        return list(result, "governing").stream()
                .map(
                        row ->
                                new Governing(
                                        words(text(row, "check")),
                                        text(row, "item"),
                                        Status.of(verdict(row)),
                                        text(row, "utilization"),
                                        text(row, "satisfied"),
                                        text(row, "undetermined"),
                                        text(row, "exceeded")))
                .toList();
    }

    private static List<Wind> wind(Map<?, ?> result) {
        return list(result, "windSchedule").stream()
                .map(
                        row ->
                                new Wind(
                                        text(row, "elevation"),
                                        text(row, "zone"),
                                        words(text(row, "component")),
                                        String.join(
                                                "; ",
                                                list(row, "strips").stream()
                                                        .map(ReviewSheet::strip)
                                                        .toList()),
                                        text(row, "height"),
                                        text(row, "effectiveWindArea"),
                                        text(row, "positive"),
                                        text(row, "negative"),
                                        words(text(row, "basis")),
                                        words(text(row, "source"))))
                .toList();
    }

    private static String strip(Object strip) {
        return text(strip, "from") + " to " + text(strip, "to");
    }

    private static Note note(Object note) {
        return new Note(text(note, "mark"), Name.all(strings(note, "items")), text(note, "text"));
    }

    static List<String> strings(@Nullable Object tree, String name) {
        return list(tree, name).stream().map(ResultTree::say).toList();
    }
}
