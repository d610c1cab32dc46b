package org.bayledger.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.bayledger.blocks.BlockSupport;
import org.bayledger.review.Bay;
import org.jspecify.annotations.Nullable;

/**
 * A horizontal that carries glass and bends under it, by the review's name of it or of a lite that
 * stands on it.
 *
 * @param line its line, from 1 at the sill
 * @param column column of the lite; null where the line was named and the worst of its lites counts
 */
record HorizontalItem(int line, @Nullable Integer column) {

    private static final Pattern PLACE =
            Pattern.compile("(?:horizontal/(\\d{1,3})|lite/(\\d{1,3})-(\\d{1,3}))");

    /** Lines of a bay that carry glass and bend: all under lites but a sill that is shimmed. */
    static List<Integer> lines(Bay bay) {
        List<Integer> lines = new ArrayList<>();
        boolean shimmed = bay.sillSupport() == BlockSupport.Kind.SHIMMED_SILL;
        for (int line = shimmed ? 2 : 1; line <= bay.rows().size(); line++) {
            lines.add(line);
        }
        return lines;
    }

    /** Names of those lines. */
    static List<String> names(Bay bay) {
        return lines(bay).stream().map(line -> bay.id() + "/horizontal/" + line).toList();
    }

    /** The horizontal that a name stands for, or null where the bay has none of that name. */
    static @Nullable HorizontalItem of(Bay bay, String name) {
        String start = bay.id() + "/";
        Matcher place = PLACE.matcher(name.startsWith(start) ? name.substring(start.length()) : "");
        if (!place.matches()) {
            return null;
        }
        boolean ofLite = place.group(1) == null;
        int line = Integer.parseInt(place.group(ofLite ? 3 : 1));
        Integer column = ofLite ? Integer.valueOf(place.group(2)) : null;
        boolean there = column == null || (column >= 1 && column <= bay.columns().size());
        return there && lines(bay).contains(line) ? new HorizontalItem(line, column) : null;
    }
}
