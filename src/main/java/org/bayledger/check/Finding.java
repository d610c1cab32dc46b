package org.bayledger.check;

/**
 * Something a reviewer should read.
 *
 * @param code stable name of the kind of finding, UPPER_SNAKE_CASE
 * @param severity how much it matters
 * @param pointer the input it is about, as a JSON pointer into the request; empty for the whole
 * @param text the finding in a sentence
 */
public record Finding(String code, Severity severity, String pointer, String text) {

    /** How much a finding matters. */
    public enum Severity {
        /** Good to know. */
        INFO,
        /** Affects how the numbers are read. */
        NOTE,
        /** Somebody has to do something. */
        ACTION
    }

    public static Finding info(String code, String pointer, String text) {
        return new Finding(code, Severity.INFO, pointer, text);
    }

    public static Finding note(String code, String pointer, String text) {
        return new Finding(code, Severity.NOTE, pointer, text);
    }

    public static Finding action(String code, String pointer, String text) {
        return new Finding(code, Severity.ACTION, pointer, text);
    }

    /** The same finding seen from an enclosing document. */
    public Finding below(String prefix) {
        return new Finding(code, severity, prefix + pointer, text);
    }
}
