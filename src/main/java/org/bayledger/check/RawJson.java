package org.bayledger.check;

import org.jspecify.annotations.Nullable;

/** A JSON body both as it was sent and as it was read, for those who keep what was sent. */
public final class RawJson {

    private final byte[] bytes;
    private final @Nullable Object tree;

    private RawJson(byte[] bytes, @Nullable Object tree) {
        this.bytes = bytes;
        this.tree = tree;
    }

    /**
     * Reads a body strictly.
     *
     * @throws FaultsException where it is not one JSON value or names a property twice
     */
    public static RawJson read(byte[] utf8) {
        return new RawJson(utf8.clone(), StrictJson.read(utf8));
    }

    /** The body as it was sent. */
    public byte[] bytes() {
        return bytes.clone();
    }

    /** Maps, lists, strings, {@link java.math.BigDecimal}, booleans and nulls. */
    public @Nullable Object tree() {
        return tree;
    }
}
