package org.bayledger.review;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.bayledger.blocks.SettingBlocksResult;
import org.jspecify.annotations.Nullable;

/** The notes for the shop drawings: one for all lites that share its words. */
final class NoteSchedule {

    private NoteSchedule() {}

    /**
     * What one lite calls for.
     *
     * @param item the lite
     * @param moved words of the note on its blocks, or null
     * @param shimmed words on the shims under its sill, or null
     */
    record Noted(String item, @Nullable String moved, @Nullable String shimmed) {}

    /** Adds what an item calls for. */
    static void add(List<Noted> notes, ReviewItem item) {
        if (item.result() instanceof SettingBlocksResult result) {
            notes.add(new Noted(item.id(), result.shopDrawingNote().text(), result.shimNote()));
        }
    }

    static List<ReviewResult.Note> of(List<BaySummary> bays) {
        Map<String, List<String>> moved = new LinkedHashMap<>();
        Map<String, List<String>> shimmed = new LinkedHashMap<>();
        for (BaySummary bay : bays) {
            for (Noted noted : bay.notes()) {
                add(moved, noted.moved(), noted.item());
                add(shimmed, noted.shimmed(), noted.item());
            }
        }
        List<ReviewResult.Note> notes = new ArrayList<>();
        int number = 0;
        for (Map.Entry<String, List<String>> note : moved.entrySet()) {
            number++;
            notes.add(new ReviewResult.Note("*" + number, note.getValue(), note.getKey()));
        }
        shimmed.forEach((text, items) -> notes.add(new ReviewResult.Note(null, items, text)));
        return notes;
    }

    private static void add(Map<String, List<String>> notes, @Nullable String text, String item) {
        if (text != null) {
            notes.computeIfAbsent(text, words -> new ArrayList<>()).add(item);
        }
    }
}
