package org.bayledger.drawing;

import static org.bayledger.drawing.ResultTree.get;
import static org.bayledger.drawing.ResultTree.list;
import static org.bayledger.drawing.ResultTree.say;
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
            List<Picture> pictures,
            UnitSystem units) {
        return PAGE.write(
                new Content(
                        text(document, "name"),
                        origin,
                        units == UnitSystem.US ? "letter" : "A4",
                        VerdictMark.text(verdict(result)),
                        site(document),
                        governing(result),
                        wind(result),
                        list(result, "notes").stream().map(ReviewSheet::note).toList(),
                        list(result, "findings").stream().map(ReviewSheet::finding).toList(),
                        list(result, "bays").stream().map(bay -> SheetBay.of(bay, result)).toList(),
                        pictures,
                        strings(result, "notChecked"),
                        strings(result, "cautions")));
    }

    /** A drawing on the sheet. */
    record Picture(String title, String dataUri) {}

    /** What the template shows. */
    record Content(
            String name,
            SheetOrigin origin,
            String paper,
            String verdict,
            List<SheetOrigin.Row> site,
            List<Governing> governing,
            List<Wind> wind,
            List<Note> notes,
            List<Finding> findings,
            List<SheetBay> bays,
            List<Picture> pictures,
            List<String> notChecked,
            List<String> cautions) {

        boolean hasNotes() {
            return !notes.isEmpty();
        }

        boolean hasFindings() {
            return !findings.isEmpty();
        }

        boolean hasPictures() {
            return !pictures.isEmpty();
        }

        boolean hasWind() {
            return !wind.isEmpty();
        }
    }

    record Governing(
            String check,
            String item,
            String verdict,
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

    record Note(String mark, String items, String text) {}

    record Finding(String severity, String code, String items, String text) {}

    static @Nullable String verdict(@Nullable Object tree) {
        return get(tree, "verdict") instanceof String verdict ? verdict : null;
    }

    private static List<SheetOrigin.Row> site(Map<?, ?> document) {
        return get(document, "site") instanceof Map<?, ?> site
                ? site.entrySet().stream()
                        .filter(given -> !(given.getValue() instanceof Map<?, ?>))
                        .map(
                                given ->
                                        new SheetOrigin.Row(
                                                words(String.valueOf(given.getKey())),
                                                say(given.getValue())))
                        .toList()
                : List.of();
    }

    private static List<Governing> governing(Map<?, ?> result) {
        return list(result, "governing").stream()
                .map(
                        row ->
                                new Governing(
                                        words(text(row, "check")),
                                        text(row, "item"),
                                        VerdictMark.text(verdict(row)),
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
        return new Note(
                text(note, "mark"), String.join(", ", strings(note, "items")), text(note, "text"));
    }

    private static Finding finding(Object finding) {
        List<String> items = strings(finding, "items");
        return new Finding(
                words(text(finding, "severity")),
                text(finding, "code"),
                items.isEmpty() ? "the job" : String.join(", ", items),
                text(finding, "text"));
    }

    static List<String> strings(@Nullable Object tree, String name) {
        return list(tree, name).stream().map(ResultTree::say).toList();
    }
}
