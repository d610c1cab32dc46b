package org.bayledger.framing;

/** Spans of a member. */
public enum SpanArrangement {
    /** One span between two anchors. */
    SINGLE(1),
    /** Two equal spans, continuous over the middle anchor. */
    TWO_EQUAL(2),
    /** Three equal spans, continuous over both inner anchors. */
    THREE_EQUAL(3);

    private final int spans;

    SpanArrangement(int spans) {
        this.spans = spans;
    }

    int spans() {
        return spans;
    }
}
