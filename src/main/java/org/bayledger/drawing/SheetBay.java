package org.bayledger.drawing;

import static org.bayledger.drawing.ResultTree.get;
import static org.bayledger.drawing.ResultTree.list;
import static org.bayledger.drawing.ResultTree.text;
import static org.bayledger.drawing.ResultTree.words;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * One bay on a review sheet.
 *
 * @param id the bay
 * @param status its verdict
 * @param counts how many of its items have each verdict
 * @param check check with the greatest utilization
 * @param governing item with that
 * @param utilization that utilization
 * @param items every item's result
 * @param remedies for each item that exceeds a limit what would pass
 * @param blocks where the setting blocks stand
 * @param joints the joints to seal, in the order of their steps
 * @param drawings the drawings of the bay further on
 * @param sums for each check the sums of the item that governs it in this bay
 */
record SheetBay(
        String id,
        Status status,
        Counts counts,
        String check,
        Name governing,
        String utilization,
        List<Item> items,
        List<Remedies> remedies,
        List<Blocks> blocks,
        List<SheetSeals.Joint> joints,
        List<SheetPictures.Picture> drawings,
        List<SheetSums> sums) {

    /**
     * Quantities that a row shows of each check, the rest being in the answer: what limits it, what
     * it carries on to others. All of a check that isn't listed.
     */
    private static final Map<String, List<String>> FIGURES =
            Map.of(
                    "glass",
                    List.of("designPressure", "loadResistance", "weight"),
                    "framing",
                    List.of("maxDeflection", "deflectionLimit", "bendingStress"),
                    "framing-dead-load",
                    List.of("maxDeflection", "deflectionLimit", "bendingStress"),
                    "setting-blocks",
                    List.of("governingLimit"),
                    "internal-seals",
                    List.of("sealantVolume", "waterTestPressure", "fieldTestPressure"));

    record Counts(long satisfied, long undetermined, long exceeded) {}

    record Item(String id, String check, Status status, String utilization, String figures) {}

    record Remedies(String title, List<String> texts) {}

    record Blocks(
            String lite, String mark, String place, String distance, String length, String sag) {}

    boolean hasBlocks() {
        return !blocks.isEmpty();
    }

    boolean hasJoints() {
        return !joints.isEmpty();
    }

    boolean hasRemedies() {
        return !remedies.isEmpty();
    }

    boolean hasSums() {
        return !sums.isEmpty();
    }

    boolean hasDrawings() {
        return !drawings.isEmpty();
    }

    static SheetBay of(Object bay, Map<String, String> marks, SheetPictures pictures) {
        List<Object> items = list(bay, "items");
        Object worst = items.stream().max(Comparator.comparing(SheetSums::utilization)).orElse(bay);
        String id = text(bay, "id");
        return new SheetBay(
                id,
                Status.of(ReviewSheet.verdict(bay)),
                new Counts(
                        count(items, "SATISFIED"),
                        count(items, "UNDETERMINED"),
                        count(items, "EXCEEDED")),
                words(text(worst, "check")),
                new Name(text(worst, "id")),
                text(worst, "utilization"),
                items.stream().map(SheetBay::item).toList(),
                items.stream()
                        .filter(item -> "EXCEEDED".equals(get(item, "verdict")))
                        .map(SheetBay::remedies)
                        .toList(),
                items.stream()
                        .filter(item -> "setting-blocks".equals(get(item, "check")))
                        .map(item -> blocks(item, marks))
                        .toList(),
                SheetSeals.joints(items),
                pictures.pictures().stream().filter(p -> id.equals(p.bay())).toList(),
                SheetSums.of(items));
    }

    private static long count(List<Object> items, String verdict) {
        return items.stream().filter(item -> verdict.equals(get(item, "verdict"))).count();
    }

    private static Item item(Object item) {
        return new Item(
                text(item, "id"),
                words(text(item, "check")),
                Status.of(ReviewSheet.verdict(item)),
                text(item, "utilization"),
                figures(text(item, "check"), get(item, "result")));
    }

    private static String figures(String check, @Nullable Object result) {
        List<String> figures = new ArrayList<>();
        List<String> shown = FIGURES.get(check);
        if (result instanceof Map<?, ?> properties) {
            properties.forEach(
                    (name, value) -> {
                        if (ResultTree.isQuantity(value)
                                && (shown == null || shown.contains(String.valueOf(name)))) {
                            figures.add(words(String.valueOf(name)) + " " + ResultTree.say(value));
                        }
                    });
        }
        return figures.isEmpty() ? "\u2013" : String.join("; ", figures);
    }

    private static Remedies remedies(Object item) {
        List<String> texts =
                list(item, "result", "remedies").stream()
                        .map(
                                remedy ->
                                        text(remedy, "text")
                                                + (get(remedy, "utilization") == null
                                                        ? ""
                                                        : " Utilization then: "
                                                                + text(remedy, "utilization")
                                                                + "."))
                        .toList();
        return new Remedies(
                words(text(item, "check")) + ", " + text(item, "id"),
                texts.isEmpty() ? List.of("The engine found none that passes.") : texts);
    }

    /** The mark on the shop drawings of every item that has one. */
    static Map<String, String> marks(Map<?, ?> result) {
        Map<String, String> marks = new LinkedHashMap<>();
        for (Object note : list(result, "notes")) {
            for (Object item : list(note, "items")) {
                marks.merge(
                        String.valueOf(item),
                        text(note, "mark"),
                        (known, other) -> known.equals("\u2013") ? other : known);
            }
        }
        return marks;
    }

    private static Blocks blocks(Object item, Map<String, String> marks) {
        String id = text(item, "id");
        return new Blocks(
                id,
                marks.getOrDefault(id, "\u2013"),
                place(item),
                text(item, "result", "recommended", "distanceFromCorner"),
                text(item, "result", "blockCutLength"),
                text(item, "result", "recommended", "memberDeflection"));
    }

    private static String place(Object item) {
        return get(item, "result", "recommended", "point") instanceof String point
                ? words(point) + " points"
                : "\u2013";
    }
}
