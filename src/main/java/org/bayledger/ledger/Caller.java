package org.bayledger.ledger;

import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContextHolder;

/**
 * Who is asking, as far as the service knows.
 *
 * @param organisation whose projects the caller sees
 * @param recordedBy under which name the caller's writes are recorded: issuer and subject of the
 *     caller's token
 */
public record Caller(String organisation, String recordedBy) {

    /** Everybody, as long as the service is open (and listens on this machine alone). */
    public static final Caller OPEN = new Caller("local", "local");

    /**
     * Who sent the request that this thread answers. There is no default: a request that passed
     * without being asked for a token must not see what the open service recorded.
     */
    static Caller current() {
        Authentication authentication = SecurityContextHolder.getContext().getAuthentication();
        if (authentication != null && authentication.getPrincipal() instanceof Caller caller) {
            return caller;
        }
        throw new IllegalStateException("It is not known who is asking");
    }
}
