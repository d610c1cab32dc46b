package org.bayledger.platform;

import com.github.therapi.runtimejavadoc.Comment;
import com.github.therapi.runtimejavadoc.CommentFormatter;
import com.github.therapi.runtimejavadoc.FieldJavadoc;
import com.github.therapi.runtimejavadoc.ParamJavadoc;
import com.github.therapi.runtimejavadoc.RuntimeJavadoc;
import java.util.Locale;
import java.util.regex.Pattern;

/** The Javadoc of records and enums as plain sentences: what the contract says of them. */
final class Javadocs {

    private static final CommentFormatter FORMATTER = new CommentFormatter();

    /** A link, as the formatter leaves it: a reference and a label. */
    private static final Pattern LINK =
            Pattern.compile("\\{@link(?:plain)? [^ }]+ (?:[^ }]*[#.])?([^}]+)}");

    /**
     * The SI unit that a docstring names for the value inside, which is no part of the contract.
     */
    private static final Pattern INTERNAL_UNIT =
            Pattern.compile(
                    ",? \\(?(?:in )?(?:m|m2|m3|m4|Pa|N|N/m|N m|N\\*m|kg|kg/m|kg/m2|m/s|K|1/K|rad|m3/s|s)\\)?"
                            + "(?=[,;.:]|$)");

    /** A symbol such as q at the beginning of a sentence keeps its case. */
    private static final Pattern SYMBOL = Pattern.compile("(?!a )[a-z](?:[^a-z]|$)");

    private Javadocs() {}

    /** What a type is. */
    static String of(Class<?> type) {
        return sentence(RuntimeJavadoc.getJavadoc(type).getComment());
    }

    /** What a record component is; its own unit is left out where the contract has units. */
    static String of(Class<?> record, String component, boolean quantity) {
        for (ParamJavadoc parameter : RuntimeJavadoc.getJavadoc(record).getRecordComponents()) {
            if (parameter.getName().equals(component)) {
                String text = sentence(parameter.getComment());
                return quantity ? INTERNAL_UNIT.matcher(text).replaceAll("") : text;
            }
        }
        return "";
    }

    /** What every constant of an enum means. */
    static String constants(Class<?> type) {
        StringBuilder text = new StringBuilder();
        for (Object constant : type.getEnumConstants()) {
            FieldJavadoc javadoc = RuntimeJavadoc.getJavadoc((Enum<?>) constant);
            text.append(text.isEmpty() ? "" : "\n")
                    .append("- `")
                    .append(((Enum<?>) constant).name())
                    .append("`: ")
                    .append(sentence(javadoc.getComment()));
        }
        return text.toString();
    }

    private static String sentence(Comment comment) {
        String text = LINK.matcher(FORMATTER.format(comment)).replaceAll("$1");
        text = text.replaceAll("</?[a-z]+>", " ");
        text = text.replaceAll("\\s+", " ").strip();
        if (text.isEmpty()) {
            return text;
        }
        boolean word = Character.isLowerCase(text.charAt(0)) && !SYMBOL.matcher(text).lookingAt();
        String first = text.substring(0, 1);
        first = word ? first.toUpperCase(Locale.ROOT) : first;
        return first + text.substring(1) + (text.matches(".*[.!?:]") ? "" : ".");
    }
}
