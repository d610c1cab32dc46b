package org.bayledger.check;

/**
 * One thing wrong with a request.
 *
 * @param pointer where, as a JSON pointer (RFC 6901) into the body
 * @param detail what was wrong and what would be accepted
 * @param kind whether the body could not be read or asks for what the rules do not cover
 */
public record Fault(String pointer, String detail, Kind kind) {

    /** The two classes of fault that callers handle differently. */
    public enum Kind {
        /** Syntax, shape, unknown property, unit, dimension: answered with 400. */
        MALFORMED,
        /** Well-formed, but outside the rules' validity: answered with 422. */
        OUT_OF_RANGE
    }

    /** The same fault seen from an enclosing object. */
    public Fault below(String prefix) {
        return new Fault(prefix + pointer, detail, kind);
    }
}
