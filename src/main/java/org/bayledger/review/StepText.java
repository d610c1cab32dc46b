package org.bayledger.review;

import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The letters of a STEP string beyond basic Latin: ISO 10303-21:2016, 6.4.3. */
final class StepText {

    private static final Pattern CONTROL =
            Pattern.compile(
                    "\\\\X2\\\\((?:[0-9A-F]{4})+)\\\\X0\\\\"
                            + "|\\\\X4\\\\((?:[0-9A-F]{8})+)\\\\X0\\\\"
                            + "|\\\\X\\\\([0-9A-F]{2})"
                            + "|\\\\S\\\\([\\x20-\\x7e])"
                            + "|\\\\P[A-I]\\\\"
                            + "|\\\\\\\\");

    private static final Pattern LONE = Pattern.compile("\\p{Cs}");

    private StepText() {}

    static String decoded(String coded) {
        return CONTROL.matcher(coded).replaceAll(found -> Matcher.quoteReplacement(letter(found)));
    }

    private static String letter(MatchResult found) {
        if (found.group(1) != null) {
            return units(found.group(1), 4);
        }
        if (found.group(2) != null) {
            return units(found.group(2), 8);
        }
        if (found.group(3) != null) {
            return units(found.group(3), 2);
        }
        if (found.group(4) != null) {
            return String.valueOf((char) (found.group(4).charAt(0) + 128));
        }
        return found.group().equals("\\\\") ? "\\" : "";
    }

    private static String units(String digits, int each) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < digits.length(); i += each) {
            int point = Integer.parseUnsignedInt(digits.substring(i, i + each), 16);
            if (each < 8) {
                text.append((char) point);
            } else if (Character.isValidCodePoint(point)) {
                text.appendCodePoint(point);
            }
        }
        // half a pair of UTF-16 is no letter that could be written on
        return LONE.matcher(text).replaceAll("\ufffd");
    }
}
