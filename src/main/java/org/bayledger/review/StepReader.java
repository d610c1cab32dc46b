package org.bayledger.review;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.bayledger.check.Fault;
import org.bayledger.check.FaultsException;
import org.bayledger.review.StepEntity.Keyword;
import org.bayledger.review.StepEntity.Reference;
import org.bayledger.review.StepEntity.Typed;
import org.jspecify.annotations.Nullable;

/**
 * Reads the clear text of an exchange structure, strictly: ISO 10303-21:2016, clauses 5 to 11,
 * without anchors, signatures and references to other files.
 */
final class StepReader {

    /** Instances of one file; a larger one is refused. */
    private static final int MOST = 2_000_000;

    private static final int DEEPEST = 50;

    private final String text;
    private int at;

    private StepReader(String text) {
        this.text = text;
    }

    /** Header records by name, and instances by number. */
    record File(Map<String, List<@Nullable Object>> header, Map<Integer, StepEntity> entities) {}

    /**
     * Reads a file.
     *
     * @throws FaultsException where it is no such file, with the line
     */
    static File read(byte[] bytes) {
        return new StepReader(letters(bytes)).file();
    }

    /**
     * The file's letters: UTF-8, as the edition of 2016 has it, or where it is none ISO 8859-1, in
     * which a file of the older editions has only basic Latin and its own way of writing others.
     */
    private static String letters(byte[] bytes) {
        try {
            String text =
                    StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
            return text.startsWith("\ufeff") ? text.substring(1) : text;
        } catch (CharacterCodingException older) {
            return new String(bytes, StandardCharsets.ISO_8859_1);
        }
    }

    private File file() {
        expect("ISO-10303-21;");
        expect("HEADER;");
        Map<String, List<@Nullable Object>> header = new LinkedHashMap<>();
        while (!take("ENDSEC;")) {
            String name = keyword();
            header.put(name, list(0));
            expect(";");
        }
        Map<Integer, StepEntity> entities = new LinkedHashMap<>();
        expect("DATA;");
        do {
            while (!take("ENDSEC;")) {
                StepEntity entity = entity();
                if (entities.put(entity.id(), entity) != null) {
                    throw fault("instance #" + entity.id() + " stands in the file twice");
                }
                if (entities.size() > MOST) {
                    throw fault("the file has more than " + MOST + " instances");
                }
            }
        } while (take("DATA;"));
        expect("END-ISO-10303-21;");
        blanks();
        if (at < text.length()) {
            throw fault("nothing may follow END-ISO-10303-21;");
        }
        return new File(header, entities);
    }

    private StepEntity entity() {
        expect("#");
        int id = integer();
        expect("=");
        if (take("(")) {
            // an instance of several types at once; none of what is read here is one
            while (!take(")")) {
                keyword();
                list(0);
            }
            expect(";");
            return new StepEntity(id, "", List.of());
        }
        String type = keyword();
        List<@Nullable Object> arguments = list(0);
        expect(";");
        return new StepEntity(id, type, arguments);
    }

    private List<@Nullable Object> list(int depth) {
        if (depth > DEEPEST) {
            throw fault("lists are nested deeper than " + DEEPEST);
        }
        expect("(");
        List<@Nullable Object> values = new ArrayList<>();
        if (take(")")) {
            return values;
        }
        do {
            values.add(value(depth));
        } while (take(","));
        expect(")");
        return values;
    }

    private @Nullable Object value(int depth) {
        blanks();
        char next = peek();
        if (next == '$' || next == '*') {
            at++;
            return null;
        }
        if (next == '#') {
            at++;
            return new Reference(integer());
        }
        if (next == '\'') {
            return string();
        }
        if (next == '"') {
            return binary();
        }
        if (next == '.') {
            return enumeration();
        }
        if (next == '(') {
            return list(depth + 1);
        }
        if (next == '-' || next == '+' || isDigit(next)) {
            return number();
        }
        if (isLetter(next)) {
            String type = keyword();
            List<@Nullable Object> typed = list(depth + 1);
            if (typed.size() != 1) {
                throw fault("a value with its type is one value");
            }
            return typed.get(0) instanceof List<?> values ? new Typed(type, values) : typed.get(0);
        }
        throw fault("a value was expected");
    }

    private Keyword enumeration() {
        int end = text.indexOf('.', at + 1);
        if (end < 0 || !text.substring(at + 1, end).matches("[A-Z_][A-Z0-9_]*")) {
            throw fault("an enumeration value such as .METRE. was expected");
        }
        Keyword value = new Keyword(text.substring(at + 1, end));
        at = end + 1;
        return value;
    }

    private String binary() {
        int end = text.indexOf('"', at + 1);
        if (end < 0) {
            throw fault("a binary value does not end");
        }
        String digits = text.substring(at + 1, end);
        at = end + 1;
        return digits;
    }

    private Double number() {
        int start = at;
        at++;
        while (at < text.length()
                && (isDigit(text.charAt(at)) || "+-.E".indexOf(text.charAt(at)) >= 0)) {
            at++;
        }
        String digits = text.substring(start, at);
        if (!digits.matches("[+-]?\\d+(\\.\\d*(E[+-]?\\d+)?)?")) {
            throw fault("'" + digits + "' is not a number of ISO 10303-21");
        }
        double number = Double.parseDouble(digits);
        if (Double.isInfinite(number)) {
            throw fault("'" + digits + "' is too large a number");
        }
        return number;
    }

    private int integer() {
        int start = at;
        while (at < text.length() && isDigit(text.charAt(at))) {
            at++;
        }
        if (start == at || at - start > 9) {
            throw fault("an instance number of one to nine digits was expected");
        }
        return Integer.parseInt(text.substring(start, at));
    }

    private String keyword() {
        blanks();
        int start = at;
        while (at < text.length()
                && (isLetter(text.charAt(at))
                        || isDigit(text.charAt(at))
                        || text.charAt(at) == '_')) {
            at++;
        }
        if (start == at) {
            throw fault("a keyword was expected");
        }
        return text.substring(start, at).toUpperCase(Locale.ROOT);
    }

    private String string() {
        int start = ++at;
        while (true) {
            int end = text.indexOf('\'', at);
            if (end < 0) {
                at = start;
                throw fault("a string does not end");
            }
            at = end + 1;
            if (at >= text.length() || text.charAt(at) != '\'') {
                return StepText.decoded(text.substring(start, end).replace("''", "'"));
            }
            at++;
        }
    }

    private void expect(String token) {
        if (!take(token)) {
            throw fault("'" + token + "' was expected");
        }
    }

    /** Takes a token where it stands next; blanks, line ends and comments may come before it. */
    private boolean take(String token) {
        blanks();
        boolean there = text.startsWith(token, at);
        at += there ? token.length() : 0;
        return there;
    }

    private void blanks() {
        while (at < text.length()) {
            if (Character.isWhitespace(text.charAt(at))) {
                at++;
            } else if (text.startsWith("/*", at)) {
                int end = text.indexOf("*/", at + 2);
                if (end < 0) {
                    throw fault("a comment does not end");
                }
                at = end + 2;
            } else {
                return;
            }
        }
    }

    private char peek() {
        if (at >= text.length()) {
            throw fault("the file ends too early");
        }
        return text.charAt(at);
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    private static boolean isLetter(char c) {
        return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z');
    }

    private FaultsException fault(String what) {
        long line = text.substring(0, Math.min(at, text.length())).lines().count();
        return new FaultsException(
                List.of(
                        new Fault(
                                "",
                                "is not a file of ISO 10303-21 (STEP) from line "
                                        + Math.max(line, 1)
                                        + " on: "
                                        + what,
                                Fault.Kind.MALFORMED)));
    }
}
