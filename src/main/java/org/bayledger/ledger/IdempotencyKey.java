package org.bayledger.ledger;

import java.util.List;
import java.util.UUID;
import java.util.regex.Pattern;
import org.bayledger.check.Fault;
import org.bayledger.check.FaultsException;

/**
 * A writer's own name for a request, so that sending it twice records once.
 *
 * @param organisation whose project
 * @param recordedBy the writer, as authenticated
 * @param projectId the project
 * @param key the header's value
 */
record IdempotencyKey(String organisation, String recordedBy, UUID projectId, String key) {

    private static final Pattern ACCEPTED = Pattern.compile("[\\x21-\\x7E]{1,200}");

    IdempotencyKey {
        if (!ACCEPTED.matcher(key).matches()) {
            throw new FaultsException(
                    List.of(
                            new Fault(
                                    "",
                                    "Idempotency-Key must have 1 to 200 visible ASCII characters",
                                    Fault.Kind.MALFORMED)));
        }
    }
}
