package org.bayledger.drawing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.bayledger.blocks.BlockPlace;
import org.bayledger.blocks.SettingBlocksResult;
import org.bayledger.check.Verdict;
import org.jspecify.annotations.Nullable;

/** The setting blocks of a bay by kind: lites whose blocks are alike share a letter. */
final class BlockSchedule {

    private static final String NONE = "\u2013";

    /** What blocks have in common, as it is written. */
    record Kind(
            String glass, String points, String corner, String length, String on, String note) {}

    private final Map<Kind, List<LiteBlocks>> kinds = new LinkedHashMap<>();
    private final Map<String, String> letters = new HashMap<>();
    private final Set<String> firsts = new HashSet<>();

    BlockSchedule(Job job, List<LiteBlocks> lites) {
        for (LiteBlocks lite : lites) {
            kinds.computeIfAbsent(kind(job, lite), kind -> new ArrayList<>()).add(lite);
        }
        int n = 0;
        for (List<LiteBlocks> alike : kinds.values()) {
            String letter = letter(n);
            alike.forEach(lite -> letters.put(lite.name(), letter));
            firsts.add(alike.get(0).name());
            n++;
        }
    }

    private static Kind kind(Job job, LiteBlocks lite) {
        SettingBlocksResult result = lite.result();
        BlockPlace place = lite.place();
        return new Kind(
                glass(lite),
                place == null ? NONE : LiteBlocks.words(place.point()),
                place == null ? NONE : job.length(place.distanceFromCorner().si()),
                result == null ? NONE : job.length(result.blockCutLength().si()),
                result == null ? NONE : lite.shimmed() ? "shims" : "member",
                note(lite));
    }

    /** The build-up of a lite in words. */
    static String glass(LiteBlocks lite) {
        return lite.glass() == null ? "no glass type" : lite.glass();
    }

    /** What a lite's blocks are marked with; in words where they are not settled. */
    private static String note(LiteBlocks lite) {
        String mark = lite.mark() == null ? "" : lite.mark();
        String state = state(lite);
        return state == null ? (mark.isEmpty() ? NONE : mark) : (mark + " " + state).strip();
    }

    /** What is to be written of blocks that may not be set so, or null. */
    static @Nullable String state(LiteBlocks lite) {
        if (lite.settled()) {
            return null;
        }
        return lite.verdict() == Verdict.EXCEEDED ? "NO PLACE PASSES" : "UNDETERMINED";
    }

    /** The letter of a lite's blocks. */
    String letter(LiteBlocks lite) {
        return letters.getOrDefault(lite.name(), NONE);
    }

    /** A to Z, then AA, AB and so on. */
    private static String letter(int n) {
        String last = String.valueOf((char) ('A' + n % 26));
        return n < 26 ? last : letter(n / 26 - 1) + last;
    }

    Table table() {
        List<List<String>> heads =
                List.of(
                        List.of("Blocks", ""),
                        List.of("Glass", ""),
                        List.of("Place", ""),
                        List.of("Corner to", "center"),
                        List.of("Block", "length"),
                        List.of("On", ""),
                        List.of("No. of", "lites"),
                        List.of("Note", ""));
        List<List<String>> rows = new ArrayList<>();
        kinds.forEach(
                (kind, lites) ->
                        rows.add(
                                List.of(
                                        letter(rows.size()),
                                        Words.fit(kind.glass(), Label.SMALL, 45),
                                        kind.points(),
                                        kind.corner(),
                                        kind.length(),
                                        kind.on(),
                                        "" + lites.size(),
                                        kind.note())));
        return new Table(heads, rows);
    }

    /** The same in sentences. */
    List<String> sentences() {
        List<String> said = new ArrayList<>();
        kinds.forEach(
                (kind, lites) ->
                        said.add(
                                "Blocks "
                                        + letter(said.size())
                                        + ", lites "
                                        + names(lites)
                                        + ", glass "
                                        + kind.glass()
                                        + ": "
                                        + (kind.points().equals(NONE)
                                                ? "no place"
                                                : kind.points()
                                                        + ", "
                                                        + kind.corner()
                                                        + " from each glass corner to the center,"
                                                        + " each "
                                                        + kind.length()
                                                        + " long, on "
                                                        + kind.on())
                                        + (kind.note().equals(NONE) ? "" : ", " + kind.note())
                                        + "."));
        return said;
    }

    /** Lites by column and row, neighbours in a row together. */
    static String names(List<LiteBlocks> lites) {
        List<String> names = new ArrayList<>();
        int first = 0;
        for (int i = 1; i <= lites.size(); i++) {
            boolean goesOn =
                    i < lites.size()
                            && lites.get(i).row() == lites.get(i - 1).row()
                            && lites.get(i).column() == lites.get(i - 1).column() + 1;
            if (!goesOn) {
                String from = lites.get(first).name();
                String to = lites.get(i - 1).name();
                names.add(
                        switch (i - first) {
                            case 1 -> from;
                            case 2 -> from + ", " + to;
                            default -> from + " to " + to;
                        });
                first = i;
            }
        }
        return String.join(", ", names);
    }

    /** Whether a lite is the first of its kind. */
    boolean isFirst(LiteBlocks lite) {
        return firsts.contains(lite.name());
    }
}
