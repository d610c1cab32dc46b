package org.bayledger.ledger;

/**
 * Who is asking, as far as the service knows.
 *
 * @param organisation whose projects the caller sees
 * @param recordedBy under which name the caller's writes are recorded
 */
record Caller(String organisation, String recordedBy) {

    /** Everybody, as long as the service is open (and listens on this machine alone). */
    static final Caller OPEN = new Caller("local", "local");
}
