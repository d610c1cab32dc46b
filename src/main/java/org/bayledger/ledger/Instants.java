package org.bayledger.ledger;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;

/** Instants as the ledger keeps and hashes them: RFC 3339 in UTC with six decimals, always. */
final class Instants {

    private static final DateTimeFormatter TEXT =
            DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss.SSSSSS'Z'").withZone(ZoneOffset.UTC);

    private Instants() {}

    /** Now, cut to what the database keeps, so that the hash is over what is stored. */
    static Instant now(Clock clock) {
        return clock.instant().truncatedTo(ChronoUnit.MICROS);
    }

    /** For example 2026-03-05T14:07:31.250000Z. */
    static String text(Instant instant) {
        return TEXT.format(instant);
    }
}
