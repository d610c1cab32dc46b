package org.bayledger.ledger;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 (FIPS 180-4), written as 64 lower-case hexadecimal digits. */
final class Sha256 {

    private Sha256() {}

    /** The hash of some bytes, in hexadecimal. */
    static String hex(byte[] bytes) {
        return HexFormat.of().formatHex(digest(bytes));
    }

    /** The 32 bytes that a hexadecimal hash stands for. */
    static byte[] bytes(String hex) {
        return HexFormat.of().parseHex(hex);
    }

    /** A hash as the database keeps it, in hexadecimal. */
    static String hexOf(byte[] stored) {
        return HexFormat.of().formatHex(stored);
    }

    static byte[] digest(byte[] bytes) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(bytes);
        } catch (NoSuchAlgorithmException everyJavaHasIt) {
            throw new IllegalStateException(everyJavaHasIt);
        }
    }
}
