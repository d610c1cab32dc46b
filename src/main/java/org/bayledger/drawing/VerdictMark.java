package org.bayledger.drawing;

import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** A verdict on a page: told by its word and its shape; tone only helps. */
final class VerdictMark {

    private VerdictMark() {}

    /** The sign before the word. */
    static String sign(@Nullable String verdict) {
        if (verdict == null) {
            return "";
        }
        return switch (verdict) {
            case "SATISFIED" -> "\u25cf";
            case "EXCEEDED" -> "\u25b2";
            case "UNDETERMINED" -> "\u25ca";
            default -> "";
        };
    }

    /** Sign and word as they stand in a sentence; a dash where there is no verdict. */
    static String text(@Nullable String verdict) {
        return verdict == null
                ? "\u2013"
                : sign(verdict)
                        + " "
                        + verdict.charAt(0)
                        + verdict.substring(1).toLowerCase(Locale.ROOT);
    }
}
