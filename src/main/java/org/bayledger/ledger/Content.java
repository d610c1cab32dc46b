package org.bayledger.ledger;

/** Canonical bytes and their hash: what the ledger stores once. Nobody changes the bytes. */
final class Content {

    private final byte[] bytes;
    private final String hash;

    Content(byte[] bytes) {
        this.bytes = bytes;
        this.hash = Sha256.hex(bytes);
    }

    byte[] bytes() {
        return bytes;
    }

    /** SHA-256 of the bytes, in hexadecimal. */
    String hash() {
        return hash;
    }
}
