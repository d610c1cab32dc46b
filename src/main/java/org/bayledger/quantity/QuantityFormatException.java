package org.bayledger.quantity;

/** A text that is no quantity of the dimension asked for; the message advises the caller. */
public final class QuantityFormatException extends IllegalArgumentException {

    public QuantityFormatException(String message) {
        super(message);
    }
}
