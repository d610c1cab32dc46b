package org.bayledger.ledger;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import org.bayledger.check.Fault;
import org.bayledger.check.FaultsException;
import org.jspecify.annotations.Nullable;

/** Where a list goes on, written so that callers take it as it is. */
final class Cursor {

    static final int DEFAULT_LIMIT = 50;
    static final int MAX_LIMIT = 200;

    private Cursor() {}

    static String encode(String position) {
        return Base64.getUrlEncoder()
                .withoutPadding()
                .encodeToString(position.getBytes(StandardCharsets.UTF_8));
    }

    /** The position in a cursor that this service gave out; null without a cursor. */
    static @Nullable String decode(@Nullable String cursor) {
        if (cursor == null) {
            return null;
        }
        try {
            return new String(Base64.getUrlDecoder().decode(cursor), StandardCharsets.UTF_8);
        } catch (IllegalArgumentException notBase64) {
            throw malformed();
        }
    }

    static int limit(@Nullable Integer limit) {
        if (limit == null) {
            return DEFAULT_LIMIT;
        }
        if (limit < 1 || limit > MAX_LIMIT) {
            throw new FaultsException(
                    List.of(
                            new Fault(
                                    "",
                                    "limit must be from 1 to " + MAX_LIMIT,
                                    Fault.Kind.MALFORMED)));
        }
        return limit;
    }

    static FaultsException malformed() {
        return new FaultsException(
                List.of(
                        new Fault(
                                "",
                                "cursor must be a nextCursor that this service answered",
                                Fault.Kind.MALFORMED)));
    }
}
