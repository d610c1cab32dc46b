package org.bayledger.drawing;

import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * A verdict in a cell of a page.
 *
 * @param text sign and word
 * @param tone name of its style, which only helps: sign and word tell it without
 */
record Status(String text, String tone) {

    static Status of(@Nullable String verdict) {
        return new Status(
                VerdictMark.text(verdict),
                verdict == null ? "none" : verdict.toLowerCase(Locale.ROOT));
    }
}
