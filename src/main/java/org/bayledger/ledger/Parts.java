package org.bayledger.ledger;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A document, or its results, taken apart: the shell with an empty list of bays, and each bay, all
 * as canonical bytes.
 *
 * <p>Because the parts are canonical, putting the bays back between the shell's brackets gives
 * exactly the canonical bytes of the whole.
 *
 * @param shell everything but the bays
 * @param bays the bays in their order
 */
record Parts(Content shell, List<Bay> bays) {

    /** One bay's identifier and canonical bytes. */
    record Bay(String id, Content content) {}

    private static final String BAYS = "bays";

    Parts {
        bays = List.copyOf(bays);
    }

    /** Takes a tree apart; one without a list of bays is all shell. */
    static Parts of(Map<?, ?> tree) {
        Map<Object, @Nullable Object> shell = new LinkedHashMap<>(tree);
        List<Bay> bays = new ArrayList<>();
        if (tree.get(BAYS) instanceof List<?> elements) {
            for (Object element : elements) {
                bays.add(new Bay(idOf(element), new Content(CanonicalJson.bytes(element))));
            }
            shell.put(BAYS, Collections.emptyList());
        }
        return new Parts(new Content(CanonicalJson.bytes(shell)), bays);
    }

    private static String idOf(@Nullable Object bay) {
        if (bay instanceof Map<?, ?> properties && properties.get("id") instanceof String id) {
            return id;
        }
        throw new IllegalStateException("A bay without an id passed the review");
    }

    /**
     * Puts bays back into a shell.
     *
     * @throws IllegalArgumentException where the shell has no place for them
     */
    static byte[] join(byte[] shell, List<byte[]> bays) {
        if (bays.isEmpty()) {
            return shell;
        }
        int gap = endOfEmptyBays(shell);
        ByteArrayOutputStream whole = new ByteArrayOutputStream(shell.length);
        whole.write(shell, 0, gap);
        for (int i = 0; i < bays.size(); i++) {
            if (i > 0) {
                whole.write(',');
            }
            whole.writeBytes(bays.get(i));
        }
        whole.write(shell, gap, shell.length - gap);
        return whole.toByteArray();
    }

    /** The index of the bracket that closes the shell's own (not a nested) empty list of bays. */
    private static int endOfEmptyBays(byte[] shell) {
        byte[] wanted = "\"bays\":[".getBytes(StandardCharsets.US_ASCII);
        int depth = 0;
        for (int i = 0; i < shell.length; i++) {
            switch (shell[i]) {
                case '{', '[' -> depth++;
                case '}', ']' -> depth--;
                case '"' -> {
                    if (depth == 1 && startsWith(shell, i, wanted)) {
                        return i + wanted.length;
                    }
                    i = endOfString(shell, i);
                }
                default -> {
                    // numbers, literals, separators
                }
            }
        }
        throw new IllegalArgumentException("the shell has no list of bays");
    }

    private static int endOfString(byte[] json, int openingQuote) {
        int i = openingQuote + 1;
        while (json[i] != '"') {
            i += json[i] == '\\' ? 2 : 1;
        }
        return i;
    }

    private static boolean startsWith(byte[] json, int from, byte[] wanted) {
        return from + wanted.length < json.length
                && Arrays.equals(json, from, from + wanted.length, wanted, 0, wanted.length);
    }
}
