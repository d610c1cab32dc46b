package org.bayledger.glass;

/** The way in which a lite on two edges spans. */
public enum SpanDirection {
    /** From the held head to the held sill; the span is the height. */
    VERTICAL,
    /** From held jamb to held jamb; the span is the width. */
    HORIZONTAL
}
