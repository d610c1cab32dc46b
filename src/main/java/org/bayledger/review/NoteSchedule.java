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

    static List<ReviewResult.Note> of(List<BayResult> bays) {
        Map<String, List<String>> moved = new LinkedHashMap<>();
        Map<String, List<String>> shimmed = new LinkedHashMap<>();
        for (BayResult bay : bays) {
            for (ReviewItem item : bay.items()) {
                if (item.result() instanceof SettingBlocksResult result) {
                    add(moved, result.shopDrawingNote().text(), item.id());
                    add(shimmed, result.shimNote(), item.id());
                }
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
